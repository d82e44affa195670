package content

// A Unit is a unit of measure by its short name, or something that is
// counted: cup, lb, ml, clove. The empty Unit is a bare number.
type Unit string

// The units that have a factor.
const (
	Inch       Unit = "in"
	Millimetre Unit = "mm"
	Centimetre Unit = "cm"

	Ounce    Unit = "oz"
	Pound    Unit = "lb"
	Gram     Unit = "g"
	Kilogram Unit = "kg"

	Teaspoon   Unit = "tsp"
	Tablespoon Unit = "tbsp"
	FluidOunce Unit = "fl oz"
	Cup        Unit = "cup"
	Pint       Unit = "pint"
	Quart      Unit = "quart"
	Gallon     Unit = "gallon"
	Millilitre Unit = "ml"
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
func (u Unit) Dimension() Dimension { return Count }
