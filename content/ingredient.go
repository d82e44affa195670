package content

// A Group is a part of the ingredients with a heading of its own: "the brine".
type Group struct {
	For   Field[string] // empty for a plain list
	Items []Ingredient
}

// An Ingredient is one line of the list, read as far as it can be.
type Ingredient struct {
	Pos      Pos
	Text     string     // the whole line as written, or as put together from its keys
	Amount   Quantity   // the first amount of the line: 1 1/2 cups; the count of 2 x 400 g tins is 2
	Each     Quantity   // the size of each piece or container: 400 g of 2 x 400 g tins; zero if none
	Same     []Quantity // the same amount in other units, as given in brackets or after a stroke: (225 g)
	Item     string     // what it is: "sugar"; never empty
	Note     string     // what is said after it: "divided"
	Optional bool
	ToTaste  bool   // "to taste", "as needed": no amount on purpose
	Unread   string // what stands where an amount should and could not be read
}

// ParseIngredient reads a line of an ingredient list as people write them. It
// never fails: an amount that cannot be read is left in Unread.
func ParseIngredient(s string) Ingredient { return Ingredient{Text: s, Item: s} }
