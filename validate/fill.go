package validate

import (
	"bytes"
	"fmt"
	"slices"

	"stillroom/content"
)

// A Filled is a recipe into which the figures of the processes that it cites
// were written.
type Filled struct {
	Data    []byte    // the whole file; what was given if nothing had to be changed
	Written []string  // what was written: "boiling-water: headspace: 1/2 in, was 1 in"
	Left    []Finding // errors that are still there, so that the recipe is not said to be checked
	Remarks []string  // what else to look at: sentences
}

// Fill writes into a recipe the figures of the processes that it cites, where
// they are missing or fall short, and on which day it was checked. Every other
// byte of the file stays as it was, and so does a value that agrees with the
// process, however it is written. Where it is not plain what to write, nothing
// is written, and what stands in the way is refused.
func Fill(name string, data []byte, day content.Date) (f Filled, refused []Finding) {
	patch, faults := content.NewPatch(name, data, content.RecipeKeys)
	if patch == nil {
		return Filled{}, findingsOfFaults(faults)
	}
	r, _ := content.ReadRecipe(name, data)
	w := filler{recipe: r, items: itemsOf(r)}
	entries := patch.Top().Entries("keeping")
	for i := range r.Keeping {
		k := &r.Keeping[i]
		if e := placeAt(entries, k.Pos); e != nil && k.Way.V.Canned() && k.TestedBy == nil {
			w.fillWay(*e, k)
		}
	}
	if len(w.refused) > 0 {
		return Filled{}, w.refused
	}
	filled, faults := patch.Bytes()
	if len(faults) > 0 {
		return Filled{}, findingsOfFaults(faults)
	}
	f = Filled{Data: filled, Written: w.written, Remarks: w.remarks}
	f.sign(name, day)
	return f, nil
}

// sign writes the edition and the day of the check, unless errors are left, the
// recipe is not written to its end, or the same edition stands there and nothing was changed.
func (f *Filled) sign(name string, day content.Date) {
	r, faults := content.ReadRecipe(name, f.Data)
	f.Left = append(findingsOfFaults(faults), checkRecipe(r, Rules)...)
	f.Left = slices.DeleteFunc(f.Left, func(f Finding) bool { return f.Severity != Error })
	sortFindings(f.Left)
	c := r.Checked
	same := c.Edition.V.String() == Edition && c.Date.Set()
	if !isCanned(r) || unfinished(r) || len(f.Left) > 0 || same && len(f.Written) == 0 {
		return
	}
	if c.Edition.Set() {
		for _, reason := range reasonsSince(r, c.Edition.V) {
			f.Remarks = append(f.Remarks, fmt.Sprintf("Since the edition of %s: %s. %s", c.Edition.V, reason.Says, reason.Look))
		}
	}
	patch, _ := content.NewPatch(name, f.Data, content.RecipeKeys)
	top := patch.Top()
	if below, ok := top.Under("checked"); ok {
		below.Set("edition", content.Writing{Text: Edition})
		below.Set("date", content.Writing{Text: day.String()})
	} else {
		top.Set("checked", content.Writing{Text: fmt.Sprintf("{edition: %s, date: %s}", Edition, day)})
	}
	signed, faults := patch.Bytes()
	if len(faults) > 0 || bytes.Equal(signed, f.Data) {
		return
	}
	f.Data = signed
	f.Written = append(f.Written, fmt.Sprintf("checked: against the edition of %s, on %s", Edition, day))
}

func findingsOfFaults(faults []content.Fault) []Finding {
	var fs []Finding
	for _, f := range faults {
		fs = append(fs, faultFinding(f))
	}
	return fs
}

// placeAt gives the map of a list that begins at a place, or nil.
func placeAt(places []content.Place, at content.Pos) *content.Place {
	for i := range places {
		if places[i].Pos() == at {
			return &places[i]
		}
	}
	return nil
}

// A filler gathers what is written into one recipe.
type filler struct {
	recipe  *content.Recipe
	items   []Item
	written []string
	remarks []string
	refused []Finding
}

// set writes a value, and tells of it.
func (w *filler) set(t content.Place, where, key, value, was string) {
	t.Set(key, content.Writing{Text: value})
	w.tell(where, key+": "+value, was)
}

func (w *filler) tell(where, what, was string) {
	if was != "" {
		what += ", was " + was
	}
	w.written = append(w.written, where+": "+what)
}

func (w *filler) refuse(fs ...Finding) { w.refused = append(w.refused, fs...) }
