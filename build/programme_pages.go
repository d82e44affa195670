package build

import "fmt"

// inPage is how many episodes a page of the programme's feed holds. Past a few
// hundred, a feed goes on in further pages.
// https://github.com/Podcastindex-org/podcast-namespace
const inPage = 500

// programmePages parts a feed, which has its newest episode first, into pages
// that lead to one another: RFC 5005, 3. They are filled from the oldest
// episode on, and so a full one keeps its bytes; /programme.xml holds the
// newest: one page, and what does not fill another.
func (e *edition) programmePages(all programme, most int) []File {
	older := max(len(all.Items)/most-1, 0) // pages besides the first
	newest := len(all.Items) - older*most
	var files []File
	for page := older; page >= 0; page-- {
		channel, address := all, pageOfProgramme(page, older)
		from, to := 0, newest
		if page < older {
			from = newest + (older-1-page)*most
			to = from + most
		}
		channel.Items = all.Items[from:to]
		channel.Pages = e.programmeLinks(page, older)
		files = append(files, NewFile(address[1:], mustXML(programmeFeed{
			Version: "2.0",
			ITunes:  "http://www.itunes.com/dtds/podcast-1.0.dtd",
			Podcast: "https://podcastindex.org/namespace/1.0",
			Atom:    "http://www.w3.org/2005/Atom",
			Content: "http://purl.org/rss/1.0/modules/content/",
			Channel: channel,
		})))
	}
	return files
}

// pageOfProgramme is the address of a page, counted from 0, which has the oldest
// episodes, to the last, which has the newest.
func pageOfProgramme(page, last int) string {
	if page == last {
		return programmeAddress
	}
	return fmt.Sprintf("/programme-%d.xml", page+1)
}

// programmeLinks lead from a page to itself and the others. To a reader of the
// feed, the first is the newest.
func (e *edition) programmeLinks(page, last int) []atomLink {
	link := func(rel string, page int) atomLink {
		return atomLink{rel, "application/rss+xml", e.absolute(pageOfProgramme(page, last))}
	}
	links := []atomLink{link("self", page)}
	if last == 0 {
		return links
	}
	links = append(links, link("first", last), link("last", 0))
	if page > 0 {
		links = append(links, link("next", page-1))
	}
	if page < last {
		links = append(links, link("previous", page+1))
	}
	return links
}
