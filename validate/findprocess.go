package validate

import (
	"slices"
	"strings"

	"stillroom/content"
)

// Missing says why no process was found. The zero Missing says that one was.
type Missing struct {
	Unknown bool           // nothing is published by that ID
	Nearest []string       // with Unknown: the IDs most like it, best first; empty if none is near
	Ways    []content.Way  // the ID is known, but for these methods only
	Packs   []content.Pack // the ID is known for the method, but for these packs only
	Instead []string       // with Ways or Packs: IDs of the same food that have what was asked for
}

// FindProcess gives the process of that ID for a way of keeping and a pack;
// an empty pack stands for any. Atmospheric steam uses the boiling-water
// processes of acid and acidified foods. If p is nil, why says what is missing.
func FindProcess(id string, way content.Way, pack content.Pack) (p *Process, why Missing) {
	all := processes()
	i, ok := slices.BinarySearchFunc(all, id, func(p *Process, id string) int { return strings.Compare(p.ID, id) })
	if !ok {
		return nil, Missing{Unknown: true, Nearest: nearestIDs(id)}
	}
	method := way
	if way == content.AtmosphericSteam {
		method = content.BoilingWater
	}
	for ; i < len(all) && all[i].ID == id; i++ {
		p := all[i]
		switch {
		case p.Method != method, way == content.AtmosphericSteam && p.Acidity == LowAcid:
			why.Ways = append(why.Ways, p.Method)
		case pack != "" && p.Pack != "" && p.Pack != pack:
			why.Packs = append(why.Packs, p.Pack)
		default:
			return p, Missing{}
		}
	}
	if len(why.Packs) > 0 {
		why.Ways = nil
	}
	why.Instead = sameFood(all[i-1].Food, method, pack)
	return nil, why
}

// sameFood gives the IDs of the processes of a food for a method and a pack.
func sameFood(food string, method content.Way, pack content.Pack) []string {
	var ids []string
	for _, p := range processes() {
		if p.Food == food && p.Method == method && (pack == "" || p.Pack == pack) {
			ids = append(ids, p.ID)
		}
	}
	return ids
}

// nearestIDs gives the IDs that are most like a misspelt one, at most three.
func nearestIDs(id string) []string {
	if id == "" {
		return nil
	}
	var ids []string
	for _, p := range processes() {
		ids = append(ids, p.ID)
	}
	return nearest(id, slices.Compact(ids), 3)
}
