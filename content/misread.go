package content

import (
	"errors"
	"fmt"
)

// A misreading is a text that cannot be read as what it should be: what is
// wrong, and what to write. The cook's own words are all in the first part.
type misreading struct{ wrong, advice string }

func (m *misreading) Error() string { return m.wrong + ": " + m.advice }

// misread makes a misreading of a reason that says what to write. One that is
// a misreading already stays as it is.
func misread(text string, reason error) error {
	if _, ok := errors.AsType[*misreading](reason); ok {
		return reason
	}
	if text == "" {
		return &misreading{"nothing is written", reason.Error()}
	}
	return &misreading{fmt.Sprintf("%q cannot be read", clip(text)), reason.Error()}
}
