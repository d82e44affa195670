package content

// A Way is a way of keeping food.
type Way string

// The ways. The first three make food shelf-stable.
const (
	BoilingWater     Way = "boiling-water"
	AtmosphericSteam Way = "atmospheric-steam"
	PressureCanner   Way = "pressure"
	Refrigerator     Way = "refrigerator"
	Freezer          Way = "freezer"
	Drying           Way = "drying"
	Fermenting       Way = "fermenting"
	CoolStore        Way = "cool-store"
)

// Canned reports whether the way makes food shelf-stable in sealed jars.
func (w Way) Canned() bool {
	return w == BoilingWater || w == AtmosphericSteam || w == PressureCanner
}

// A Pack says how food goes into the jar.
type Pack string

// The packs.
const (
	Hot Pack = "hot"
	Raw Pack = "raw"
)

// A Keeping is one way in which a recipe keeps, with all that it needs.
type Keeping struct {
	Pos            Pos // of the entry
	Way            Field[Way]
	Process        Field[string] // id of a published tested process
	TestedBy       *TestedBy     // a written process instead
	Pack           Field[Pack]
	Headspace      Field[Length]
	Acid           Field[Acid]
	JarsSterilised Field[bool]
	Processing     []Processing
	Factor         Field[Quantity] // made from a batch this many times the ingredients'; 1 if not set
	Keeps          Field[Duration]
	PH             Field[Quantity]
	Measured       Field[Date]
	Salt           Field[Share]
	Temperature    Field[Temperature]
	Duration       Field[Duration]
	Blanch         Field[Duration]
	Container      Field[string]
	Keys           map[string]Pos // where each key of the entry stands
}

// A TestedBy is a process that an authority has set in writing.
type TestedBy struct {
	Pos                  Pos
	Authority, Reference Field[string]
	Date                 Field[Date]
}

// An Acid says where a jar's acid comes from: nature, the recipe, or an
// addition to each jar.
type Acid struct {
	Source AcidSource
	Added  Ingredient // what goes into each jar; its Amount is set only for AcidPerJar
	Per    Jar        // the size of jar that the addition is for; set only for AcidPerJar
}

// An AcidSource is where a jar's acid comes from.
type AcidSource int

// The sources. NoAcid, the zero value, means that nothing was said.
const (
	NoAcid AcidSource = iota
	AcidNatural
	AcidInRecipe
	AcidPerJar
)

// A Processing is what one size of jar needs.
type Processing struct {
	Pos      Pos
	Jar      Field[Jar]
	Altitude []Band[Duration] // boiling water and steam: minutes by altitude
	Time     Field[Duration]  // pressure: the same at every altitude
	Dial     []Band[Pressure]
	Weighted []Band[Pressure]
	Keys     map[string]Pos // where altitude, time, dial and weighted stand
}

// A Band is a stretch of altitude and what holds in it.
type Band[T any] struct {
	Pos   Pos      // of its key
	Text  string   // its key as written: 1,001-6,000 ft
	From  Altitude // for "above 6,000 ft", 6,000 ft itself, which is then not part of the band
	Over  bool     // the band begins just above From, not at it
	To    Altitude // zero for a band without an upper end
	Value Field[T]
}

// A Jar is a size of jar.
type Jar struct {
	Name   string // quarter-pint, half-pint, 12-ounce, pint, ...; empty for a size given by volume
	Volume Volume // what it holds to the rim
	Text   string // as written; empty for no jar
}
