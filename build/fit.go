package build

import "strings"

// Fit joins passages, as form gives them, with empty lines between, in no more
// bytes than a limit. What there is no room for it leaves out whole: first what
// is most easily spared, of equals the last. left are the names of that, in
// order; nil if all is there. Only if what cannot be spared is too long itself
// does the text go over the limit.
func Fit(all []Passage, limit int, form func(Passage) string) (text string, left []string) {
	kept := make([]bool, len(all))
	size := len("\n") - len(between) // one follows the last, in the place of another
	for i, p := range all {
		kept[i] = true
		size += len(form(p)) + len(between)
	}
	for size > limit {
		drop := -1
		for i, p := range all {
			if kept[i] && p.Spare > 0 && (drop < 0 || p.Spare >= all[drop].Spare) {
				drop = i
			}
		}
		if drop < 0 {
			break
		}
		kept[drop] = false
		size -= len(form(all[drop])) + len(between)
	}
	var parts []string
	for i, p := range all {
		if kept[i] {
			parts = append(parts, form(p))
		} else {
			left = append(left, p.Name)
		}
	}
	return strings.Join(parts, between) + "\n", left
}

const between = "\n\n"

// inHTML joins passages of which none is left out.
func inHTML(all []Passage) string {
	parts := make([]string, len(all))
	for i, p := range all {
		parts[i] = p.HTML
	}
	return strings.Join(parts, between)
}
