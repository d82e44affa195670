package validate

import (
	"strings"

	"stillroom/content"
)

// formLarger reports food in larger pieces than its process was tested with,
// and low-acid food as a puree.
var formLarger = &Rule{
	ID:       "form-larger",
	Severity: Error,
	Summary:  "larger pieces than were tested, or a dense puree of low-acid food",
	Doc: `Heat takes longer to reach the middle of a whole carrot than of a slice. The form may
be made smaller than the tested one, never larger: halves of what was tested whole, not
whole for sliced.

A mash or puree of low-acid food is so dense that heat barely moves in it: potatoes,
beans, squash and carrots have processes for pieces alone.`,
	Source: Source{
		Title:   "Approved recipes for craft foods, Nevada Department of Agriculture",
		Address: "https://agri.nv.gov/Food/Craft_Foods/Approved_Craft_Foods_Recipes/",
	},
	CheckKeeping: checkFormLarger,
}

// pieceSizes are the words for pieces, the largest first.
var pieceSizes = []struct {
	size  int
	words []string
}{
	{3, []string{"whole", "left whole"}},
	{2, []string{"halved", "halves", "in half", "in halves"}},
	{1, []string{"quartered", "quarters", "in quarters"}},
	{0, []string{"sliced", "slices", "cubed", "cubes", "diced", "chopped", "pieces", "chunks", "strips", "rings", "minced", "ground", "crushed", "in lengths"}},
}

// cuttingWords tell that what is whole in the list is cut in the method.
var cuttingWords = []string{"cut", "slice", "halve", "quarter", "dice", "chop", "crush", "cube", "shred"}

var pureeWords = []string{"mashed", "mash", "puree", "pureed", "refried", "riced", "whipped"}

func checkFormLarger(r *content.Recipe, m *Match) []Finding {
	if m.Process == nil || !m.Keeping.Way.V.Canned() || len(m.Tested) > 0 {
		return nil
	}
	tested := largestPiece(plain(m.Process.Food))
	var fs []Finding
	for _, in := range m.inJar() {
		if !inProduce(r, in.Class.Produce) {
			continue
		}
		said := plain(in.Item + ", " + in.Note)
		f := Finding{Pos: in.Pos, Source: m.Process.Source()}
		switch {
		case m.Process.Acidity == LowAcid && in.Class.Produce.Acidity == LowAcid && saysAny(said+" "+plain(r.Name.V), pureeWords):
			f.Message = in.Item + ": a dense puree of low-acid food has no process"
			f.Advice = "Can it in pieces and mash it when the jar is opened, or freeze the puree."
		case tested >= 0 && smallestPiece(said) > tested && !stepsSay(r, cuttingWords...):
			f.Message = in.Item + ": larger than the tested form, " + m.Process.Food
			f.Advice = "Cut it as the process has it, or smaller."
		default:
			continue
		}
		fs = append(fs, f)
	}
	return fs
}

// largestPiece gives the size of the largest piece that a text names; -1 if
// it names none.
func largestPiece(text string) int {
	for _, p := range pieceSizes {
		if saysAny(withoutKernels(text), p.words) {
			return p.size
		}
	}
	return -1
}

// smallestPiece gives the size of the smallest: what was whole in the shop may
// be sliced in the pot.
func smallestPiece(text string) int {
	size := -1
	for _, p := range pieceSizes {
		if saysAny(withoutKernels(text), p.words) {
			size = p.size
		}
	}
	return size
}

func withoutKernels(text string) string { return strings.ReplaceAll(text, "whole kernel", "kernel") }
