package intake

import (
	"fmt"
	"net/url"
	"path"
	"regexp"
	"strconv"
	"strings"
	"unicode/utf8"

	"stillroom/content"
)

// recipe writes a recipe as a draft.
func (r *reader) recipe(t *thing) Arrival {
	name := t.line("name", "headline")
	if name == "" {
		name = strings.TrimSuffix(path.Base(r.Name), path.Ext(r.Name))
	}
	slug := uniqueSlug(name, "recipe", r.slugs)
	method := partsOf(t.all("recipeInstructions", "instructions"))
	f := new(front)
	f.WriteString("---\n")
	f.key("", "name", name, r.origin(t))
	long := writeSummary(f, t.line("description", "abstract"))
	writeDay(f, "published", t.line("datePublished"))
	writeDay(f, "updated", t.line("dateModified"))
	f.WriteString("status: draft\n")
	writeKind(f, name)
	groups := groupsOf(t.all("recipeIngredient", "ingredients"))
	writeProduce(f, name, groups, r.Produce)
	writeYield(f, t.all("recipeYield", "yield"))
	writeTimes(f, t)
	writeIngredients(f, groups)
	picture := r.writePicture(f, t, slug)
	writeFormerly(f, r.address)
	writeKeeping(f, name+"\n"+long+"\n"+wordsOf(method))
	f.WriteString("---\n")
	if long != "" {
		f.WriteString("\n" + toMarkdown(long) + "\n")
	}
	writeMethod(f, method)
	return Arrival{
		Name: name, Text: File{"content/recipes/" + slug + ".md", []byte(f.String())},
		Extra: picture, Checks: f.checks,
	}
}

// origin says where a recipe was read, and who wrote it.
func (r *reader) origin(t *thing) string {
	from := "read from " + path.Base(r.Name)
	if r.address != "" {
		from += ", once at " + r.address
	}
	if by := t.line("author", "creator"); by != "" {
		from += ", by " + by
	}
	return oneLine(from) + ". If it is not yours, ask, and name its author in inspired_by"
}

// maxSummary is the longest summary that is taken, in letters.
const maxSummary = 200

// writeSummary writes the description as a summary, and gives back the whole of
// it if it is too long for one.
func writeSummary(f *front, text string) (long string) {
	switch {
	case text == "":
		f.check("", "write summary: one or two sentences; the page has none")
	case utf8.RuneCountInString(text) <= maxSummary:
		f.key("", "summary", text, "")
	default:
		f.key("", "summary", shortened(text), "the description was longer; all of it stands below")
		return text
	}
	return ""
}

// shortened gives as many whole sentences as fit, or else as many words.
func shortened(text string) string {
	runes := []rune(text)
	cut := string(runes[:maxSummary-1])
	if at := strings.LastIndexAny(cut, ".!?"); at > 0 && (at+1 == len(cut) || cut[at+1] == ' ') {
		return cut[:at+1]
	}
	if at := strings.LastIndexByte(cut, ' '); at > 0 {
		cut = cut[:at]
	}
	return cut + "…"
}

// writeDay writes the day of a date with or without a time.
func writeDay(f *front, name, text string) {
	const day = len("2026-07-31")
	if text == "" {
		return
	}
	if len(text) >= day {
		if d, err := content.ParseDate(text[:day]); err == nil {
			f.WriteString(name + ": " + d.String() + "\n")
			return
		}
	}
	f.check("", fmt.Sprintf("write %s: the page says %q, which is no day", name, text))
}

// writeYield writes the first of several yields that says of what.
func writeYield(f *front, vs []value) {
	says := "the page does not say what it makes"
	for _, v := range vs {
		text := oneLine(v.words())
		if text == "" {
			continue
		}
		if y, err := content.ParseYield(text); err == nil {
			f.key("", "yield", y.Text, "")
			return
		}
		says = fmt.Sprintf("the page says %q", text)
	}
	f.check("", "write yield: as in 6 half-pint jars; "+says)
}

// writeTimes writes the times of work and of cooking. A time in all is told to
// the author and never shared out: how long a jar is processed or kept is
// nobody's guess.
func writeTimes(f *front, t *thing) {
	var lines strings.Builder
	for _, k := range [][2]string{{"prepTime", "hands_on"}, {"cookTime", "cooking"}} {
		text := t.line(k[0])
		d := isoDuration(text)
		switch {
		case d != "":
			lines.WriteString("  " + k[1] + ": " + d + "\n")
		case text != "" && !isNoTime(text):
			f.check("", fmt.Sprintf("write times, %s: the page says %q", k[1], text))
		}
	}
	if total := t.line("totalTime"); total != "" && !isNoTime(total) {
		said := isoDuration(total)
		if said == "" {
			said = total
		}
		f.check("", "the page says "+said+" in all; what of it is waiting, it does not say")
	}
	if lines.Len() > 0 {
		f.WriteString("times:\n" + lines.String())
	}
}

var iso = regexp.MustCompile(`(?i)^P(?:(\d{1,4})D)?(?:T(?:(\d{1,4})H)?(?:(\d{1,5})M)?(?:[\d.]+S)?)?$`)

// isoDuration writes an ISO 8601 duration as a recipe does: PT1H30M is 1 h 30
// min. It is empty for no time, and for what is none.
func isoDuration(text string) string {
	m := iso.FindStringSubmatch(text)
	if m == nil {
		return ""
	}
	n := func(i int) int { v, _ := strconv.Atoi(m[i]); return v }
	minutes := n(1)*24*60 + n(2)*60 + n(3)
	var parts []string
	if h := minutes / 60; h > 0 {
		parts = append(parts, fmt.Sprintf("%d h", h))
	}
	if rest := minutes % 60; rest > 0 {
		parts = append(parts, fmt.Sprintf("%d min", rest))
	}
	return strings.Join(parts, " ")
}

// isNoTime reports whether a text is a time of nothing at all: PT0M.
func isNoTime(text string) bool { return iso.MatchString(text) && isoDuration(text) == "" }

// writeFormerly writes the old address, so that its readers are led to the new
// one.
func writeFormerly(f *front, address string) {
	u, err := url.Parse(address)
	if err != nil || u.RawQuery != "" {
		return
	}
	old, err := content.ParseFormerPath(u.EscapedPath())
	if err != nil {
		return // no folder of pages can answer to it
	}
	f.check("", "readers of the old address will be led here; take it away if it was not on your site")
	f.WriteString("formerly:\n  - " + scalar(old) + "\n")
}

// canningWords tell that a text speaks of food that is canned.
var canningWords = regexp.MustCompile(`(?i)\b(water[- ]bath|cann(er|ing|ed)|process(ed|ing)?|head ?space|pressure|sterili[sz]\w*|seal(s|ed)?|psi|shelf[- ]stable)\b`)

// writeKeeping leaves to the author how the food is kept.
func writeKeeping(f *front, text string) {
	f.check("", "write keeping: nothing of it was taken from the page, neither a way nor a time")
	if word := canningWords.FindString(text); word != "" {
		f.check("", fmt.Sprintf("the page speaks of canning (%q). Cite a tested process for this food (stillroom processes lists them), "+
			"let stillroom fill write its values, and hold the steps below against it: their minutes are the page's own", word))
	}
}

func wordsOf(method []part) string {
	var b strings.Builder
	for _, p := range method {
		b.WriteString(p.heading + "\n" + strings.Join(p.steps, "\n") + "\n")
	}
	return b.String()
}

func writeMethod(f *front, method []part) {
	if len(method) == 0 {
		f.checks = append(f.checks, "the page gives no steps")
		f.WriteString("\n<!-- check: write the steps; the page gives none -->\n")
	}
	for _, p := range method {
		f.WriteString("\n")
		if p.heading != "" {
			f.WriteString("## " + strings.Join(strings.Fields(toMarkdown(p.heading)), " ") + "\n\n")
		}
		for i, s := range p.steps {
			fmt.Fprintf(f, "%d. %s\n", i+1, s)
		}
	}
}
