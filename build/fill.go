package build

import "stillroom/content"

// fills gives produce the colour of its jar, by the name that the theme's
// styles have for it. What is not listed takes the colour of its kind.
var fills = map[string]string{
	"apples": "amber", "crab apples": "rose", "pears": "amber", "quinces": "copper", "medlars": "copper",
	"apricots": "peach", "peaches": "peach", "nectarines": "peach", "mangoes": "peach", "melons": "peach", "papayas": "peach",
	"oranges": "citrus", "seville oranges": "citrus", "lemons": "citrus", "limes": "glass", "grapefruit": "citrus",
	"clementines": "citrus", "tangerines": "citrus", "kumquats": "citrus", "pineapple": "citrus", "corn": "citrus", "honey": "citrus",
	"plums": "plum", "damsons": "plum", "grapes": "plum", "figs": "plum", "elderberries": "plum", "sloes": "plum", "aubergines": "plum", "eggplants": "plum",
	"blackberries": "berry", "blueberries": "berry", "blackcurrants": "berry", "black currants": "berry", "mulberries": "berry",
	"boysenberries": "berry", "huckleberries": "berry", "saskatoons": "berry",
	"strawberries": "rose", "raspberries": "rose", "red currants": "rose", "redcurrants": "rose", "cranberries": "rose",
	"cherries": "rose", "sour cherries": "rose", "rhubarb": "rose", "pomegranates": "rose", "watermelon": "rose",
	"beets": "beet", "beetroot": "beet", "red cabbage": "beet", "radishes": "beet", "red onions": "beet",
	"tomatoes": "tomato", "red peppers": "tomato", "peppers": "tomato", "chilies": "tomato", "chillies": "tomato", "chiles": "tomato", "hot peppers": "tomato",
	"carrots": "carrot", "pumpkin": "carrot", "pumpkins": "carrot", "winter squash": "carrot", "sweet potatoes": "carrot", "persimmons": "carrot",
	"cucumbers": "brine", "green tomatoes": "brine", "tomatillos": "brine", "gooseberries": "brine", "zucchini": "brine", "courgettes": "brine",
	"jalapenos": "brine", "jalapeños": "brine", "jalapeno peppers": "brine", "okra": "brine", "artichokes": "brine", "olives": "brine",
	"green beans": "leaf", "beans": "leaf", "runner beans": "leaf", "peas": "leaf", "asparagus": "leaf", "spinach": "leaf", "kale": "leaf", "broccoli": "leaf",
	"mint": "leaf", "basil": "leaf", "herbs": "leaf", "green peppers": "leaf", "nettles": "leaf",
	"cabbage": "straw", "onions": "straw", "garlic": "straw", "cauliflower": "straw", "horseradish": "straw", "ginger": "straw", "turnips": "straw",
	"mushrooms": "copper", "chicken": "amber", "turkey": "amber", "beef": "copper", "venison": "copper", "pork": "copper", "fish": "glass", "salmon": "peach", "tuna": "rose",
	"eggs": "straw", "sweet corn": "citrus", "chile peppers": "tomato", "chili peppers": "tomato", "dried beans": "copper", "chickpeas": "straw", "elderflowers": "straw", "lavender": "berry",
}

// kindFills gives the colour of a kind of food whose produce is not listed.
var kindFills = map[content.Kind]string{
	content.Jam: "rose", content.Jelly: "amber", content.Marmalade: "citrus", content.Conserve: "plum",
	content.FruitButter: "copper", content.Syrup: "amber", content.Juice: "rose", content.Sauce: "tomato",
	content.Salsa: "tomato", content.Ketchup: "tomato", content.Chutney: "copper", content.Relish: "brine",
	content.Pickle: "brine", content.Fruit: "peach", content.PieFilling: "copper", content.Tomato: "tomato",
	content.Vegetable: "leaf", content.Legume: "copper", content.Soup: "amber", content.Meat: "copper",
	content.Poultry: "amber", content.Fish: "glass", content.Ferment: "straw", content.Vinegar: "rose",
	content.Cordial: "straw",
}

// fill gives the colour of what is in a recipe's jar.
func fill(r *content.Recipe) string {
	if len(r.Produce) > 0 {
		if f, ok := lookUp(fills, r.Produce[0].V); ok {
			return f
		}
	}
	if f, ok := kindFills[r.Kind.V]; ok {
		return f
	}
	return "glass"
}

// fillOf gives the colour of a produce by itself.
func fillOf(produce string) string {
	if f, ok := lookUp(fills, produce); ok {
		return f
	}
	return "glass"
}
