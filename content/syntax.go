package content

import (
	"errors"
	"fmt"
	"regexp"
	"strings"

	"go.yaml.in/yaml/v4"
	"go.yaml.in/yaml/v4/plugin/loaderlimits"
)

// maxDepth is how deep lists and keys may stand in one another, by brackets and
// again by indentation. The deepest value of a recipe stands six deep.
const maxDepth = 32

// yamlOptions leave it to the decoder to refuse keys that are repeated and
// references to other places, because it knows where both stand.
var yamlOptions = yaml.Options(
	yaml.WithUniqueKeys(false),
	yaml.WithPlugin(loaderlimits.New(loaderlimits.DepthValue(maxDepth), loaderlimits.AliasNone())),
)

// A trouble is a way in which text is not YAML, in a cook's words.
type trouble struct {
	sign    string // a part of what the library says of it
	context string // and of the place where it began; either may be empty
	message string
	advice  string
	begun   bool // it is told at the place where it began
}

// troubles are tried in order. A table in this package's tests shows each of
// them.
var troubles = []trouble{
	{sign: "unexpected end of stream", context: "quoted", begun: true,
		message: "a text in quotation marks is never closed",
		advice:  "close it with the same mark; a text that begins with an inch sign or an apostrophe goes into the other kind of quotation marks"},
	{sign: "unexpected document indicator", context: "quoted", begun: true,
		message: "a text in quotation marks is never closed",
		advice:  "close it with the same mark"},
	{sign: "escape character", context: "quoted", message: backslashMessage, advice: backslashAdvice},
	{sign: "hexadecimal", context: "quoted", message: backslashMessage, advice: backslashAdvice},
	{sign: "escape code", context: "quoted", message: backslashMessage, advice: backslashAdvice},
	{sign: "tab",
		message: "a tab stands where only spaces can",
		advice:  "indent with spaces"},
	{sign: "mapping values are not allowed",
		message: "a colon with a space after it cannot stand here",
		advice:  "put a text that holds a colon in quotation marks; if this is a key, begin it in the same column as the keys around it"},
	{sign: "could not find expected ':'", context: "simple key", begun: true,
		message: "there is no colon after this key",
		advice:  "write a colon and a space after a key; indent a text that goes on from the line above"},
	{sign: "did not find expected ',' or ']'",
		message: "a list in square brackets is not closed before this place",
		advice:  "write ] at its end, and commas between its entries"},
	{sign: "did not find expected ',' or '}'",
		message: "keys in curly brackets are not closed before this place",
		advice:  "write } at their end, and commas between them"},
	{sign: "did not find expected '-' indicator",
		message: "this stands among the entries of a list and is none",
		advice:  "begin an entry with a hyphen and a space; begin what belongs to an entry in the column of its first key"},
	{sign: "block sequence entries are not allowed",
		message: "a list cannot begin on the line of its key",
		advice:  "begin each entry on a line of its own; put a text that begins with a hyphen in quotation marks"},
	{sign: "mapping keys are not allowed",
		message: "a text cannot begin with a question mark and a space",
		advice:  "put the text in quotation marks"},
	{sign: "did not find expected key",
		message: "this does not fit what stands before it",
		advice:  "begin each key in the same column as the keys around it; put the whole of a text in quotation marks, and write an apostrophe in single ones twice"},
	{sign: "unknown anchor", message: aliasMessage, advice: aliasAdvice},
	{sign: "alphabetic or numeric character", context: "scanning an a", begun: true, message: aliasMessage, advice: aliasAdvice},
	{sign: "exceeded max depth",
		message: "lists and keys stand too deep in one another",
		advice:  "take some of the brackets or the indentation away"},
	{context: "block scalar", begun: true,
		message: "what stands after | or > cannot be read",
		advice:  "write nothing after it on its line, and indent the text below it"},
	{sign: "did not find expected node content",
		message: "a value is missing before this place",
		advice:  "write it, or take the comma or bracket away"},
}

const (
	backslashMessage = "a backslash in double quotation marks does not stand for itself"
	backslashAdvice  = "use single quotation marks"

	aliasMessage = "a text cannot begin with * or &, which stand for other places of the file"
	aliasAdvice  = "put the text in quotation marks, or write out what stands at the other place"
)

// yamlFault reports why the text is not YAML.
func (s *source) yamlFault(err error, m matter) {
	f := Fault{Pos: m.pos, Kind: FrontMatter, Message: "nothing can be read from here on", Advice: "compare the line with its neighbours"}
	var e *yaml.LoadError
	if errors.As(err, &e) {
		f.Pos = s.mark(e.Mark, m)
		if t := troubleOf(e); t != nil {
			f.Message, f.Advice = t.message, t.advice
			if t.begun && e.ContextMark.Line > 0 {
				f.Pos = s.mark(e.ContextMark, m)
			}
		} else if message, advice := signs(s.line(f.Pos.Line), f.Pos.Col); message != "" {
			f.Message, f.Advice = message, advice
		}
		s.tightColon(&f, m)
	}
	s.add(f)
}

func troubleOf(e *yaml.LoadError) *trouble {
	for i, t := range troubles {
		if strings.Contains(e.Message, t.sign) && strings.Contains(e.ContextMsg, t.context) {
			return &troubles[i]
		}
	}
	return nil
}

// mark gives the place in the file of a place in the block.
func (s *source) mark(at yaml.Mark, m matter) Pos {
	if at.Line == 0 {
		return m.pos
	}
	return s.letter(m.first+at.Line-1, at.Column)
}

// signs tells of the sign at a column, if it is one that cannot begin a value.
func signs(line []byte, col int) (message, advice string) {
	if col > len(line) {
		return "", ""
	}
	switch sign := line[col-1]; sign {
	case '\t':
		return "a tab stands where only spaces can", "indent with spaces"
	case '@', '`', '%':
		return fmt.Sprintf("a text cannot begin with %c", sign), "put the text in quotation marks"
	}
	return "", ""
}

var tight = regexp.MustCompile(`^[ -]*[a-z_]+(:)[^ \t]`)

// tightColon moves a fault to a colon without a space after it, in the same
// line or the one before. YAML takes it for a part of a text, and stumbles only
// over what follows.
func (s *source) tightColon(f *Fault, m matter) {
	for n := max(f.Pos.Line-1, m.first); n <= f.Pos.Line; n++ {
		if at := tight.FindSubmatchIndex(s.line(n)); at != nil {
			f.Pos = Pos{s.file, n, at[2] + 1}
			f.Message, f.Advice = "there is no space after this colon", "write a space after it"
			return
		}
	}
}
