package content

// A Unit is a unit of measure by its short name, or something that is
// counted: cup, lb, ml, clove. The empty Unit is a bare number.
type Unit string

// The units that have a factor. Volumes are US customary ones.
const (
	Inch       Unit = "in"
	Millimetre Unit = "mm"
	Centimetre Unit = "cm"

	Ounce     Unit = "oz"
	Pound     Unit = "lb"
	Milligram Unit = "mg"
	Gram      Unit = "g"
	Kilogram  Unit = "kg"

	Teaspoon   Unit = "tsp"
	Tablespoon Unit = "tbsp"
	FluidOunce Unit = "fl oz"
	Cup        Unit = "cup"
	Pint       Unit = "pint"
	Quart      Unit = "quart"
	Gallon     Unit = "gallon"
	Peck       Unit = "peck"
	Bushel     Unit = "bushel"
	Millilitre Unit = "ml"
	Centilitre Unit = "cl"
	Decilitre  Unit = "dl"
	Litre      Unit = "l"

	Fahrenheit Unit = "°F"
	Celsius    Unit = "°C"

	Second Unit = "s"
	Minute Unit = "min"
	Hour   Unit = "h"
	Day    Unit = "day"
	Week   Unit = "week"
	Month  Unit = "month"
	Year   Unit = "year"

	Foot  Unit = "ft"
	Metre Unit = "m"

	PSI        Unit = "psi"
	Kilopascal Unit = "kPa"

	Percent Unit = "%"
)

// Dimension gives what the unit measures.
func (u Unit) Dimension() Dimension {
	if m := unitTable[u]; m != nil {
		return m.dim
	}
	return Count
}

// units holds the units of measure, their factors exact: how many of the
// dimension's base unit one is. The base units are the inch, the gram, the
// millilitre, the degree Fahrenheit, the minute, the foot, the psi and the per
// cent; a degree Celsius has its zero elsewhere, which Quantity.In knows.
//
// The factors follow from the definitions in NIST Handbook 44, appendix C, and
// NIST SP 811 (2008), appendix B, from memory: 1 in = 25.4 mm, 1 lb =
// 453.59237 g, 1 US gallon = 231 cubic inches, 1 bushel = 2,150.42 cubic
// inches, standard gravity = 9.80665 m/s².
var units = []struct {
	unit      Unit
	dim       Dimension
	factor    string
	many      string // the plural as it is printed
	spellings string // in lower case, unless the case alone tells it from another; the first row with a spelling wins
}{
	{Inch, LengthDim, "1", "in", `in, inch, inches, ", ″, ”, “`},
	{Millimetre, LengthDim, "10/254", "mm", "mm, millimetre, millimetres, millimeter, millimeters"},
	{Centimetre, LengthDim, "100/254", "cm", "cm, centimetre, centimetres, centimeter, centimeters"},

	{Ounce, WeightDim, "28.349523125", "oz", "oz, ozs, ounce, ounces"},
	{Pound, WeightDim, "453.59237", "lb", "lb, lbs, pound, pounds, #"},
	{Milligram, WeightDim, "0.001", "mg", "mg, milligram, milligrams"},
	{Gram, WeightDim, "1", "g", "g, gr, gm, gms, gram, grams, gramme, grammes"},
	{Kilogram, WeightDim, "1000", "kg", "kg, kgs, kilo, kilos, kilogram, kilograms, kilogramme, kilogrammes"},

	{Teaspoon, VolumeDim, "4.92892159375", "tsp", "tsp, tsps, t, teaspoon, teaspoons, teaspoonful, teaspoonfuls"},
	{Tablespoon, VolumeDim, "14.78676478125", "tbsp", "tbsp, tbsps, T, tb, tbs, tbl, tbls, tblsp, tblsps, tablespoon, tablespoons, tablespoonful, tablespoonfuls"},
	{FluidOunce, VolumeDim, "29.5735295625", "fl oz", "oz, ozs, ounce, ounces, floz, fl oz, fl ozs, fl ounce, fl ounces, fluid oz, fluid ounce, fluid ounces"},
	{Cup, VolumeDim, "236.5882365", "cups", "cup, cups, c, cupful, cupfuls"},
	{Pint, VolumeDim, "473.176473", "pints", "pint, pints, pt, pts"},
	{Quart, VolumeDim, "946.352946", "quarts", "quart, quarts, qt, qts"},
	{Gallon, VolumeDim, "3785.411784", "gallons", "gallon, gallons, gal, gals"},
	{Peck, VolumeDim, "8809.76754172", "pecks", "peck, pecks"},
	{Bushel, VolumeDim, "35239.07016688", "bushels", "bushel, bushels, bu"},
	{Millilitre, VolumeDim, "1", "ml", "ml, mls, millilitre, millilitres, milliliter, milliliters"},
	{Centilitre, VolumeDim, "10", "cl", "cl, centilitre, centilitres, centiliter, centiliters"},
	{Decilitre, VolumeDim, "100", "dl", "dl, decilitre, decilitres, deciliter, deciliters"},
	{Litre, VolumeDim, "1000", "l", "l, litre, litres, liter, liters, ltr, ltrs"},

	{Fahrenheit, TemperatureDim, "1", "°F", "f, fahrenheit, ° f, ° fahrenheit, ℉, deg f, degree f, degrees f, degree fahrenheit, degrees fahrenheit"},
	{Celsius, TemperatureDim, "9/5", "°C", "c, celsius, ° c, ° celsius, ℃, deg c, degree c, degrees c, degree celsius, degrees celsius, degrees centigrade"},

	{Second, TimeDim, "1/60", "s", "s, sec, secs, second, seconds"},
	{Minute, TimeDim, "1", "min", "min, mins, minute, minutes"},
	{Hour, TimeDim, "60", "h", "h, hr, hrs, hour, hours"},
	{Day, TimeDim, "1440", "days", "day, days, d"},
	{Week, TimeDim, "10080", "weeks", "week, weeks, wk, wks"},
	{Month, TimeDim, "43830", "months", "month, months, mo, mos"},
	{Year, TimeDim, "525960", "years", "year, years, yr, yrs"},

	{Foot, AltitudeDim, "1", "ft", "ft, foot, feet"},
	{Metre, AltitudeDim, "10000/3048", "m", "m, metre, metres, meter, meters"},

	{PSI, PressureDim, "1", "psi", "psi, psig, lb, lbs, pound, pounds, lb pressure, lbs pressure, pound pressure, pounds pressure, lb of pressure, lbs of pressure, pounds of pressure"},
	{Kilopascal, PressureDim, "6451600000000/44482216152605", "kPa", "kpa, kilopascal, kilopascals"},

	{Percent, ShareDim, "1", "%", "%, percent, per cent, pct"},
}

// A form says whether a size may stand before what is counted.
type form int

const (
	loose     form = iota
	piece          // 2-inch piece
	container      // 14-oz can; a size in brackets behind it is that of each
)

// counted holds what is counted, in the singular and the plural, its form, and
// other spellings.
var counted = []struct {
	one, many string
	form      form
	also      string
}{
	{"bag", "bags", container, ""},
	{"basket", "baskets", container, ""},
	{"block", "blocks", piece, ""},
	{"bottle", "bottles", container, ""},
	{"box", "boxes", container, ""},
	{"bulb", "bulbs", piece, ""},
	{"bunch", "bunches", piece, ""},
	{"can", "cans", container, ""},
	{"carton", "cartons", container, ""},
	{"clove", "cloves", loose, ""},
	{"cob", "cobs", loose, ""},
	{"crate", "crates", container, ""},
	{"dash", "dashes", loose, ""},
	{"dessertspoon", "dessertspoons", loose, "dsp, dstspn"},
	{"drop", "drops", loose, ""},
	{"ear", "ears", loose, ""},
	{"envelope", "envelopes", container, ""},
	{"fillet", "fillets", piece, ""},
	{"flat", "flats", loose, ""},
	{"handful", "handfuls", loose, "handsful"},
	{"head", "heads", piece, ""},
	{"jar", "jars", container, ""},
	{"knob", "knobs", piece, ""},
	{"leaf", "leaves", loose, ""},
	{"lug", "lugs", container, ""},
	{"pack", "packs", container, ""},
	{"package", "packages", container, "pkg, pkgs"},
	{"packet", "packets", container, "pkt, pkts"},
	{"part", "parts", loose, ""},
	{"piece", "pieces", piece, "pc, pcs"},
	{"pinch", "pinches", loose, ""},
	{"pod", "pods", loose, ""},
	{"pouch", "pouches", container, ""},
	{"punnet", "punnets", container, ""},
	{"rib", "ribs", loose, ""},
	{"ring", "rings", loose, ""},
	{"sachet", "sachets", container, ""},
	{"sack", "sacks", container, ""},
	{"slab", "slabs", piece, ""},
	{"slice", "slices", loose, ""},
	{"splash", "splashes", loose, ""},
	{"sprig", "sprigs", loose, ""},
	{"stalk", "stalks", loose, ""},
	{"stem", "stems", loose, ""},
	{"stick", "sticks", loose, ""},
	{"strip", "strips", loose, ""},
	{"tin", "tins", container, ""},
	{"tub", "tubs", container, ""},
	{"tube", "tubes", container, ""},
	{"wedge", "wedges", loose, ""},
}
