package content

// A Kind says what sort of food a recipe makes.
type Kind string

// The kinds of the contract.
const (
	Jam         Kind = "jam"
	Jelly       Kind = "jelly"
	Marmalade   Kind = "marmalade"
	Conserve    Kind = "conserve"
	FruitButter Kind = "fruit-butter"
	Syrup       Kind = "syrup"
	Juice       Kind = "juice"
	Sauce       Kind = "sauce"
	Salsa       Kind = "salsa"
	Ketchup     Kind = "ketchup"
	Chutney     Kind = "chutney"
	Relish      Kind = "relish"
	Pickle      Kind = "pickle"
	Fruit       Kind = "fruit"
	PieFilling  Kind = "pie-filling"
	Tomato      Kind = "tomato"
	Vegetable   Kind = "vegetable"
	Legume      Kind = "legume"
	Soup        Kind = "soup"
	Meat        Kind = "meat"
	Poultry     Kind = "poultry"
	Fish        Kind = "fish"
	Ferment     Kind = "ferment"
	Vinegar     Kind = "vinegar"
	Cordial     Kind = "cordial"
	Other       Kind = "other"
)
