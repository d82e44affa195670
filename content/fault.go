package content

// A Fault is something in a file that cannot be read as what it should be.
type Fault struct {
	Pos     Pos
	Kind    FaultKind
	Message string // what is wrong: one clause, lower case, no full stop
	Advice  string // what to do; may be empty
	Also    Pos    // a second place that the message speaks of; zero if none
	AlsoSay string // what stands at the second place: "first given here"
	Later   bool   // it may wait: a draft lacks what will be written yet
}

// A FaultKind names a family of faults; validate has a rule of the same ID for
// each.
type FaultKind string

// The families of faults.
const (
	FrontMatter FaultKind = "front-matter" // no front matter, never closed, not YAML
	UnknownKey  FaultKind = "unknown-key"
	RepeatedKey FaultKind = "repeated-key"
	WrongType   FaultKind = "wrong-type"  // a list where a text is wanted, 6.5 for a whole number
	BadValue    FaultKind = "bad-value"   // a word or a measure that cannot be read
	MissingKey  FaultKind = "missing-key" // a key that every file of its sort must have
	BadFileName FaultKind = "file-name"   // no slug can be made of the file's name
	BadText     FaultKind = "text"        // not UTF-8, control characters
)
