package content

import "time"

// A Recipe is one file of content/recipes.
type Recipe struct {
	File        string // content/recipes/damson-jam.md
	Slug        string // damson-jam
	Name        Field[string]
	Summary     Field[string]
	Published   Field[Date]
	Updated     Field[Date]
	Status      Field[Status]
	Kind        Field[Kind]
	Produce     []Field[string] // lower case, the main produce first
	Season      []Field[time.Month]
	Yield       Field[Yield]
	Times       Times
	Ingredients []Group
	Picture     *Picture
	Pictures    []Picture
	Gear        []Field[string]
	Cautions    []Field[string]
	Scale       Scale
	Tags        []Field[string]
	Formerly    []Field[string] // old paths, each beginning with /
	InspiredBy  Field[string]
	Keeping     []Keeping // the first is the main one
	Checked     Checked
	Corrections []Correction
	Withdrawn   *Withdrawal // nil unless it was taken back
	Batches     []Batch
	Accept      []Acceptance
	Marks       []Field[string] // what is still to be checked, from comments that begin with "check:"
	Keys        map[string]Pos  // where each top-level key stands
	Body        Body
}

// A Date is a day without a time zone. The zero Date means none.
type Date struct {
	Year  int
	Month time.Month
	Day   int
}

// A Status says whether a file is meant for readers yet.
type Status string

// The statuses; none written means Ready.
const (
	Ready Status = "ready"
	Draft Status = "draft"
)

// A Yield is what a recipe makes: 6 half-pint jars, 2 cups, 3 pints.
type Yield struct {
	Quantity      // the number of jars, or the amount
	Jar      Jar  // zero if the yield is not in jars, or of no size
	About    bool // the number is not quite certain
}

// Times are what a cook has to set aside.
type Times struct {
	HandsOn, Cooking, Waiting Field[Duration]
}

// A Picture is an image of content/pictures and what it shows.
type Picture struct {
	File, Alt, Credit Field[string] // File is relative to content/pictures
}

// Scale holds the smallest and largest factor offered to readers.
type Scale struct {
	Pos               Pos
	Smallest, Largest Field[Quantity] // bare numbers
}

// A Checked says against which edition of the tables of tested processes a
// recipe was last checked, and on which day.
type Checked struct {
	Pos           Pos // zero if nothing was written
	Edition, Date Field[Date]
}

// A Batch is an entry of the kitchen log.
type Batch struct {
	Pos         Pos
	Made        Field[Date]
	Factor      Field[Quantity]
	Yield       Field[Yield]
	PH          Field[Quantity] // a bare number
	Set         Field[string]
	Altitude    Field[Altitude]
	SealsFailed Field[int]
	Note        Field[string]
	Public      Field[bool]
}

// An Acceptance takes the warnings and advice of a rule as read.
type Acceptance struct {
	Rule   Field[string]
	Reason Field[string]
}
