package build

import (
	"strings"

	"stillroom/build/amount"
)

// A Piece is some words of a line. Words that are an amount have its data
// beside them, by which the page's script writes them anew.
type Piece struct {
	Text   string
	Amount string // see amount.Amount.Data; empty for plain words
}

// pieces parts a text at the amounts in it, and sets each for print.
func pieces(text string, mentions []amount.Mention) []Piece {
	var all []Piece
	add := func(p Piece) {
		if p.Text != "" {
			all = append(all, p)
		}
	}
	end := 0
	for _, m := range mentions {
		add(plainPiece(text[end:m.Start]))
		add(Piece{typeset(text[m.Start:m.End]), m.Amount.Data()})
		end = m.End
	}
	add(plainPiece(text[end:]))
	return all
}

// plainPiece keeps the spaces that part it from its neighbours.
func plainPiece(s string) Piece {
	set := typeset(s)
	if set == "" {
		return Piece{Text: s}
	}
	if strings.HasPrefix(s, " ") {
		set = " " + set
	}
	if strings.HasSuffix(s, " ") {
		set += " "
	}
	return Piece{Text: set}
}
