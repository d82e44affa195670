package calendar

import (
	"crypto/sha1"
	"fmt"
	"strings"
	"unicode/utf8"

	"stillroom/content"
	"stillroom/validate"
)

// ICalendar gives the calendar as RFC 5545 wants it, in events of whole days.
// An event keeps its UID for as long as its recipe keeps its file, so that a
// calendar which reads it again changes what it has. It is empty if nothing is
// ahead, since a calendar without events is none.
func (c *Calendar) ICalendar() []byte {
	w := &icalendar{stamp: c.Day.Time().Format("20060102T150405Z"), site: siteID(c)}
	w.text("BEGIN", "VCALENDAR")
	w.text("PRODID", "-//Stillroom//Calendar//EN")
	w.text("VERSION", "2.0")
	w.text("METHOD", "PUBLISH")
	w.text("NAME", c.Site)         // RFC 7986
	w.text("X-WR-CALNAME", c.Site) // what programs read that do not know NAME
	for _, e := range c.events() {
		w.event(e)
	}
	w.text("END", "VCALENDAR")
	if w.events == 0 {
		return nil
	}
	return []byte(w.String())
}

// An event takes whole days.
type event struct {
	id       string       // what it is of the site; never another event's
	from, to content.Date // the first day, and the day after the last
	name     string
	says     string // may be empty
	url      string // may be empty
}

func (c *Calendar) events() []event {
	var all []event
	for _, m := range c.Months {
		for _, r := range m.Ripe {
			if r.Starts {
				id := fmt.Sprintf("season/%s/%04d-%02d", r.Produce, m.First.Year, m.First.Month)
				all = append(all, oneDay(m.First, id, "Put up: "+r.Produce+r.until(m), namesOf(r.Recipes), ""))
			}
		}
	}
	for _, h := range c.Planned {
		all = append(all, oneDay(h.Until, "publish/"+h.File, "Published: "+h.Name, h.File, ""))
	}
	for _, a := range c.Again {
		id := fmt.Sprintf("again/%s/%s", a.Recipe.File, a.Season)
		says := fmt.Sprintf("Last shown %s. Its season begins %s.", shortDay(a.Last), shortDay(a.Season))
		all = append(all, event{id, a.From, plus(a.To, 1), "Show again: " + a.Recipe.Name.V, says, c.pageOf(a.Recipe)})
	}
	for _, r := range c.Recheck {
		all = append(all, oneDay(c.Day, "recheck/"+r.Recipe.File, "Check again: "+r.Recipe.Name.V, saysWhy(r), c.pageOf(r.Recipe)))
	}
	for i, b := range c.Best {
		id := fmt.Sprintf("best/%s/%s/%d", b.Recipe.File, b.Batch.Made.V, sameDay(c.Best[:i], b))
		all = append(all, oneDay(b.By, id, "Best used by today: "+b.Recipe.Name.V, capital(b.made())+", if any is left.", ""))
	}
	return all
}

func oneDay(day content.Date, id, name, says, url string) event {
	return event{id, day, plus(day, 1), name, says, url}
}

func saysWhy(r validate.Recheck) string {
	why := append([]string{"Last checked: " + since(r)}, mostReasons(r)...)
	return strings.Join(why, "\n")
}

// sameDay counts the batches of a recipe that were made on the day of another
// one and come before it.
func sameDay(before []Best, b Best) int {
	n := 0
	for _, o := range before {
		if o.Recipe == b.Recipe && o.Batch.Made.V == b.Batch.Made.V {
			n++
		}
	}
	return n
}

// pageOf gives the address of a recipe's page; empty if the site has none.
func (c *Calendar) pageOf(r *content.Recipe) string {
	if c.Address == "" {
		return ""
	}
	return c.Address + "/recipes/" + r.Slug + "/"
}

// An icalendar is a stream that is being written.
type icalendar struct {
	strings.Builder
	stamp  string
	site   uid
	events int
}

func (w *icalendar) event(e event) {
	w.events++
	w.text("BEGIN", "VEVENT")
	w.text("UID", uuid(w.site, e.id).String())
	w.text("DTSTAMP", w.stamp)
	w.text("DTSTART;VALUE=DATE", e.from.Time().Format("20060102"))
	w.text("DTEND;VALUE=DATE", e.to.Time().Format("20060102"))
	w.text("SUMMARY", e.name)
	if e.says != "" {
		w.text("DESCRIPTION", e.says)
	}
	if e.url != "" {
		w.line("URL:" + e.url) // an address is no text: nothing in it is escaped
	}
	w.text("TRANSP", "TRANSPARENT") // nobody is busy because plums are ripe
	w.text("END", "VEVENT")
}

// text writes a property whose value is text, as RFC 5545, 3.3.11 has it.
func (w *icalendar) text(name, value string) {
	w.line(name + ":" + escapes.Replace(strings.Map(printable, value)))
}

var escapes = strings.NewReplacer(`\`, `\\`, ";", `\;`, ",", `\,`, "\n", `\n`)

// printable leaves out what RFC 5545 allows in no text: controls.
func printable(r rune) rune {
	if r != '\n' && r != '\t' && (r < ' ' || r == 0x7f) {
		return -1
	}
	return r
}

// longest is how many bytes a line may hold without its end: RFC 5545, 3.1.
const longest = 75

// line writes a content line, folded between letters.
func (w *icalendar) line(s string) {
	for room := longest; len(s) > room; room = longest - 1 {
		at := room
		for !utf8.RuneStart(s[at]) {
			at--
		}
		w.WriteString(s[:at] + "\r\n ")
		s = s[at:]
	}
	w.WriteString(s + "\r\n")
}

// A uid is a UUID of RFC 9562, version 5, as RFC 7986 asks of a UID.
type uid [16]byte

func (u uid) String() string {
	return fmt.Sprintf("%x-%x-%x-%x-%x", u[:4], u[4:6], u[6:8], u[8:10], u[10:])
}

// uuid names something in a name space.
func uuid(space uid, name string) uid {
	sum := sha1.Sum(append(space[:], name...))
	u := uid(sum[:16])
	u[6] = u[6]&0x0f | 0x50
	u[8] = u[8]&0x3f | 0x80
	return u
}

// addresses is the name space of addresses: RFC 9562, 6.6.
var addresses = uid{0x6b, 0xa7, 0xb8, 0x11, 0x9d, 0xad, 0x11, 0xd1, 0x80, 0xb4, 0x00, 0xc0, 0x4f, 0xd4, 0x30, 0xc8}

// siteID is what tells a site from others: its address, or else its name.
func siteID(c *Calendar) uid {
	if c.Address != "" {
		return uuid(addresses, c.Address)
	}
	return uuid(addresses, c.Site)
}
