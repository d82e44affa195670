//go:build unix

package main

import (
	"encoding/binary"
	"fmt"
	"hash/crc32"
	"path"
	"slices"
	"strings"
)

func heavyCases() []heavy {
	return slices.Concat(heavyMatter(), heavyBodies(), heavyFiles(), heavyArrivals(), heavyPictures(), heavyRecordings())
}

// heavyFile is a site with one heavy file.
func heavyFile(name, file string, f filling, says string, most int) heavy {
	return heavy{name, says, most, map[string]filling{file: f}}
}

const (
	heavyRecipe = "content/recipes/a.md"
	tooLong     = ":1:1: error: the file holds more than the 1024 kB that are read"
	noAlias     = "error: a text cannot begin with * or &"
)

// heavyMatter says in few words what takes memory to be said in full: YAML 1.2.2,
// 3.2.2.2, and merge keys of YAML 1.1.
func heavyMatter() (all []heavy) {
	laughs := "a0: &a0 [x, x]\n"
	for i := range 30 {
		laughs += fmt.Sprintf("a%d: &a%d [*a%d, *a%[3]d, *a%[3]d]\n", i+1, i+1, i)
	}
	for _, c := range [][3]string{
		{"aliases of aliases", laughs, ":5:1: error: unknown key a0"},
		{"aliases in a list", "gear: &a [a pot]\ntags: [*a, *a]\n", ":5:7: " + noAlias},
		{"an alias of itself", "gear: [&a [*a]]\n", ":5:8: " + noAlias},
		{"an alias of nothing", "gear: *a\n", ":5:7: " + noAlias},
		{"merged keys", "batches: [{<<: {made: 2026-08-01}}]\n", ":5:12: error: a key must be a word or a text"},
		{"merged aliases", "times: &t {cooking: 1 h}\nscale: {<<: [*t, *t]}\n", ":5:8: " + noAlias},
		{"an alias as a key", "gear: [&a x]\n? *a\n: b\n", ":5:8: " + noAlias},
		{"a binary text", "gear: !!binary [aaaa]\n", ":5:7: error: a value cannot begin with !"},
	} {
		all = append(all, heavyFile(c[0], heavyRecipe, filling{begin: draft + c[1] + "---\n"}, heavyRecipe+c[2], usual))
	}
	return append(all,
		heavyFile("aliases of settings", "content/site.yaml", filling{begin: laughs + "name: &n [x]\ntagline: *n\n"}, "content/site.yaml:32:7: "+noAlias, usual),
		heavyFile("brackets of YAML", heavyRecipe, filling{draft + "gear: ", "[", 100_000, "\n---\n"}, heavyRecipe+":5:39: error: lists and keys stand too deep", usual),
		heavyFile("braces of YAML", heavyRecipe, filling{draft + "gear: ", "{a: ", 25_000, "\n---\n"}, heavyRecipe+":5:135: error: lists and keys stand too deep", usual),
	)
}

// heavyBodies stand 100,000 deep in one another, or want to.
func heavyBodies() (all []heavy) {
	const deep = 100_000
	body := draft + "---\n\n"
	for _, c := range [][2]string{
		{"- ", "more than 40 lists and quotations begin in one another"}, {"> ", "more than 40 lists"}, {">", "more than 40 lists"}, {"1. ", "more than 40 lists"}, {"> - ", "more than 40 lists"},
		{"[", "more than 1000 times ["}, {"![", "more than 1000 times !"}, {"[a](", "more than 1000 times"}, {"(", "more than 1000 times ("}, {"*a ", "more than 1000 times *"}, {"_a", "more than 1000 times _"},
		{"`", "more than 1000 times `"}, {"<div>", "more than 1000 times <"}, {"<b>", "more than 1000 times <"},
	} {
		all = append(all, heavyFile("a hundred thousand "+c[0], heavyRecipe, filling{body, c[0], deep, "\n"}, c[1], usual))
	}
	stairs := ""
	for i := 0; len(stairs) < 1<<19; i++ {
		stairs += strings.Repeat("\t", i) + "- a\n"
	}
	return append(all,
		heavyFile("lists step by step", heavyRecipe, filling{begin: body + stairs}, "lists, quotations or emphasis stand more than 40 deep", 500),
		heavyFile("a paragraph each", heavyRecipe, filling{body, "> a\n\n", 50_000, ""}, "0 errors", 500),
	)
}

// heavyFiles are of 100 MB, in one line or in many.
func heavyFiles() []heavy {
	return []heavy{
		heavyFile("a small site", heavyRecipe, filling{begin: draft + "---\n"}, "0 errors", usual),
		heavyFile("a line of front matter", heavyRecipe, filling{"---\nname: ", "a", hundredMB, "\n---\n"}, heavyRecipe+tooLong, usual),
		heavyFile("lines of front matter", heavyRecipe, filling{"---\n", "- a\n", hundredMB / 4, "\n---\n"}, heavyRecipe+tooLong, usual),
		heavyFile("a line of a body", heavyRecipe, filling{draft + "---\n", "a", hundredMB, ""}, heavyRecipe+tooLong, usual),
		heavyFile("a line of settings", "content/site.yaml", filling{"name: ", "a", hundredMB, ""}, "content/site.yaml"+tooLong, usual),
		heavyFile("lines of settings", "content/site.yaml", filling{"", "a: b\n", hundredMB / 5, ""}, "content/site.yaml"+tooLong, usual),
		heavyFile("a line of guids", "content/guids.txt", filling{"", "a", hundredMB, ""}, "content/guids.txt"+tooLong, usual),
		heavyFile("a style", "themes/enamel/files/style.css", filling{"", "a{}\n", hundredMB / 4, ""}, "files/style.css of the theme holds 100 MB, and no more than 20", usual),
		heavyFile("a page of the theme", "themes/enamel/pages/recipe.html", filling{"", "<p>\n", hundredMB / 4, ""}, "pages/recipe.html of the theme holds 100 MB, and no more than 20", usual),
	}
}

// heavyArrivals are saved pages and feeds. Before there were limits the
// attributes of one tag took 6 GB.
func heavyArrivals() []heavy {
	const page, feed, endless = "saved/p.html", "saved/feed.xml", ": on line 1 begins a tag or a text of more than 8 MB"
	return []heavy{
		heavyFile("a line of a page", page, filling{"<p>", "a", hundredMB, ""}, page+": holds 100 MB, and no more than 64 are read", usual),
		heavyFile("a line of a feed", feed, filling{"<rss><title>", "a", hundredMB, ""}, feed+": holds 100 MB, and no more than 64 are read", usual),
		heavyFile("attributes of a page", page, filling{"<p ", "a ", 8 << 20, ">"}, page+endless, 600),
		heavyFile("attributes of a feed", feed, filling{`<rss version="2.0" `, `a="b" `, 3 << 20, ">"}, feed+endless, 600),
		heavyFile("references of a page", page, filling{"<p>", "&amp;", 7 << 20 / 5, "<p>"}, page+": holds no recipe", 400),
		heavyFile("tags of a page", page, filling{"", "<p>", 1 << 20, ""}, page+": holds no recipe", 600),
		heavyFile("tags of a feed", feed, filling{"<rss>", "<item/>", 2 << 20, ""}, feed+": it holds more than 1048576 tags", 300),
	}
}

// heavyPictures say that they are larger than they are, or use their parts
// again and again.
func heavyPictures() []heavy {
	picture := func(name, file string, f filling, says string, most int) heavy {
		shower := strings.Replace(plainRecipe, "formerly: [/old/]", "picture: {file: "+file+", alt: A jar}", 1)
		return heavy{name, says, most, map[string]filling{"content/pictures/" + file: f, heavyRecipe: {begin: shower}}}
	}
	const at = heavyRecipe + ":12:17: error: the picture "
	return []heavy{
		picture("65,535 by 65,535", "a.png", filling{begin: pngOf(65_535, 65_535)}, at+"a.png has 65535 by 65535 pixels, more than 60 million", usual),
		picture("one row", "a.png", filling{begin: pngOf(59_000_000, 1)}, at+"a.png has 59000000 by 1 pixels: one side is 40 or more times the other", usual),
		picture("one column", "a.png", filling{begin: pngOf(1, 59_000_000)}, at+"a.png has 1 by 59000000 pixels: one side", usual),
		picture("no pixels", "a.png", filling{begin: pngOf(7_700, 7_700)}, at+"a.png is broken within", 700),
		picture("parts of a JPEG", "a.jpg", filling{"\xff\xd8", "\xff\xe1\x00\x04aa", 16 << 20, ""}, at+"a.jpg is broken", 700),
		picture("a GIF", "a.jpg", filling{begin: "GIF89a\xff\xff\xff\xff"}, at+"a.jpg holds GIF", usual),
		picture("a drawing", "a.svg", filling{`<svg viewBox="0 0 9 9">`, "<g/>", hundredMB / 4, "</svg>"}, "content/pictures/a.svg: error: the file holds 100 MB, and no more than 4 MB are read", usual),
		picture("parts of a drawing", "a.svg", filling{`<svg viewBox="0 0 9 9">`, "<g/>", 300_000, "</svg>"}, at+"a.svg is an SVG picture of more than 200000 parts", 700),
	}
}

// heavyRecordings are transcripts, and recordings that say of themselves what no
// file is.
func heavyRecordings() []heavy {
	heard := func(file string, f filling, says string, most int) heavy {
		set := "audio: {file: " + file + "}"
		if path.Ext(file) == ".vtt" || path.Ext(file) == ".srt" {
			set = `audio: {address: "https://a.example/a.mp3", duration: 1 min, bytes: 1000, type: audio/mpeg}` + "\ntranscript: " + file
		}
		notes := "---\nname: Plums\nnumber: 1\nsummary: Plums.\nstatus: draft\n" + set + "\n---\nNotes.\n"
		return heavy{file, says, most, map[string]filling{"content/episodes/" + file: f, "content/episodes/a.md": {begin: notes}}}
	}
	const cue = "WEBVTT\n\n00:00.000 --> 00:01.000\n"
	const tooLarge = ": error: the file holds 100 MB, and no more than 1 MB are read"
	return []heavy{
		heard("line.vtt", filling{cue, "a", hundredMB, ""}, "content/episodes/line.vtt"+tooLarge, usual),
		heard("lines.srt", filling{cue, "a\n", hundredMB / 2, ""}, "content/episodes/lines.srt"+tooLarge, usual),
		heard("cues.vtt", filling{"WEBVTT\n\n", "00:00.000 --> 00:01.000\na\n\n", 38_000, ""}, "0 errors", 400),
		heard("late.vtt", filling{"WEBVTT\n\n", "9", 1_000_000, ":00:00.000 --> 00:01.000\na\n"}, "0 errors", 200),
		heard("box.m4a", filling{"\x00\x00\x00\x0cftypM4A \x00\x00\x00\x01moov\x7f\xff\xff\xff\xff\xff\xff\xff", "\x00", hundredMB, ""}, "box.m4a is cut short", usual),
		heard("boxes.m4a", filling{"\x00\x00\x00\x0cftypM4A ", "\x00\x00\x00\x08free", hundredMB / 8, ""}, "boxes.m4a is cut short", usual),
		heard("tag.mp3", filling{"ID3\x04\x00\x00\x7f\x7f\x7f\x7f", "\x00", hundredMB, ""}, "tag.mp3 is no recording", usual),
		heard("tags.mp3", filling{"", "ID3\x04\x00\x00\x00\x00\x00\x00", hundredMB / 10, ""}, "tags.mp3 is no recording", usual),
		heard("pages.ogg", filling{"", "OggS", hundredMB / 4, ""}, "pages.ogg holds neither Vorbis nor Opus", usual),
	}
}

// pngOf is a PNG of a size, without a pixel: PNG 3rd edition, 5.
func pngOf(w, h uint32) string {
	b := []byte("\x89PNG\r\n\x1a\n")
	add := func(name, data string) {
		b = binary.BigEndian.AppendUint32(b, uint32(len(data)))
		b = append(append(b, name...), data...)
		b = binary.BigEndian.AppendUint32(b, crc32.ChecksumIEEE([]byte(name+data)))
	}
	size := binary.BigEndian.AppendUint32(binary.BigEndian.AppendUint32(nil, w), h)
	add("IHDR", string(size)+"\x08\x02\x00\x00\x00")
	add("IDAT", "\x78\x9c\x03\x00\x00\x00\x00\x01") // nothing, deflated: RFC 1950
	add("IEND", "")
	return string(b)
}
