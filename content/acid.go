package content

import (
	"errors"
	"strings"
)

// What can be wrong with an acid.
var (
	errNoAcid     = errors.New("write natural, in-recipe, or what goes into each jar, as in 2 tbsp bottled lemon juice per quart")
	errAcidAmount = errors.New("an exact amount comes first, as in 2 tbsp bottled lemon juice per quart")
	errAcidRange  = errors.New("write one amount that goes into each jar, not a range")
	errAcidChoice = errors.New("name one acid, not a choice of two")
	errAcidPer    = errors.New("the size of the jar comes last, as in 2 tbsp bottled lemon juice per quart")
)

// ParseAcid reads where a jar's acid comes from: natural, in-recipe, or 2 tbsp
// bottled lemon juice per quart.
func ParseAcid(s string) (Acid, error) {
	text := trimSpace(s)
	switch strings.ToLower(strings.ReplaceAll(text, " ", "-")) {
	case "natural":
		return Acid{Source: AcidNatural}, nil
	case "in-recipe":
		return Acid{Source: AcidInRecipe}, nil
	}
	a, err := acidPerJar(text)
	if err != nil {
		return Acid{}, misread(text, err)
	}
	return a, nil
}

// acidPerJar reads an addition to each jar.
func acidPerJar(s string) (Acid, error) {
	i := strings.LastIndex(s, " per ")
	if i < 0 {
		return Acid{}, notPerJar(s)
	}
	per, err := ParseJar(s[i+len(" per "):])
	if err != nil {
		return Acid{}, err
	}
	added := ParseIngredient(s[:i])
	switch {
	case added.Amount.IsZero() || added.Unread != "" || added.Amount.Low.Sign() == 0:
		return Acid{}, errAcidAmount
	case added.Amount.IsRange():
		return Acid{}, errAcidRange
	case strings.HasPrefix(added.Note, "or "):
		return Acid{}, errAcidChoice
	}
	return Acid{AcidPerJar, added, per}, nil
}

// notPerJar tells what is missing of a text that names no jar.
func notPerJar(s string) error {
	if near := nearest(s, []string{"natural", "in-recipe"}); near != "" {
		return errors.New("did you mean " + near + "?")
	}
	if startsNumber(s) == nil {
		return errAcidPer
	}
	return errNoAcid
}
