package validate

import (
	"slices"

	"stillroom/content"
)

// Candidates gives the processes that a recipe of some produce may be one of,
// in order of ID: those that were tested for the produce, and for the kind of
// recipe unless it is empty. They are no more than a list to choose from: which
// one is meant, if any, only its author can tell.
func Candidates(kind content.Kind, produce string) []*Process {
	food, ok := LookUpProduce(produce)
	if !ok {
		return nil
	}
	return slices.DeleteFunc(slices.Clone(processes()), func(p *Process) bool {
		return !slices.Contains(p.Produce, food.Name) || kind != "" && !slices.Contains(p.Kinds, kind)
	})
}
