package content

import "testing"

func TestParseYield(t *testing.T) {
	for _, tt := range []struct{ text, amount, jar, printed string }{
		{"6 half-pint jars", "6 jar", "half-pint", "6 half-pint jars"},
		{"6 half-pints", "6 jar", "half-pint", "6 half-pint jars"},
		{"7 jars of 500 ml", "7 jar", "500 ml", "7 500 ml jars"},
		{"about 6 half-pints", "6 jar", "half-pint", "about 6 half-pint jars"},
		{"3 to 4 half-pints", "3 to 4 jar", "half-pint", "3-4 half-pint jars"},
		{"1 half-pint jar", "1 jar", "half-pint", "1 half-pint jar"},
		{"6 1/2 half-pint jars", "13/2 jar", "half-pint", "6 1/2 half-pint jars"},
		{"four 1/2-pint jars", "4 jar", "half-pint", "4 half-pint jars"},
		{"4 x 500 ml jars", "4 jar", "500 ml", "4 500 ml jars"},
		{"4 500-ml jars", "4 jar", "500 ml", "4 500 ml jars"},
		{"5 12-ounce jars", "5 jar", "12-ounce", "5 12-ounce jars"},
		{"3 pints", "3 pint", "pint", "3 pints"},
		{"about 9 pints", "9 pint", "pint", "about 9 pints"},
		{"4 1/2 pints", "9/2 pint", "pint", "4 1/2 pints"},
		{"2 pint jars", "2 jar", "pint", "2 pint jars"},
		{"7 quarts", "7 quart", "quart", "7 quarts"},
		{"2 half-gallon jars", "2 jar", "half-gallon", "2 half-gallon jars"},
		{"6 jars", "6 jar", "", "6 jars"},
		{"2 cups", "2 cup", "", "2 cups"},
		{"about 2 1/2 cups", "5/2 cup", "", "about 2 1/2 cups"},
		{"1.5 l", "3/2 l", "", "1.5 l"},
		{"700 g", "700 g", "", "700 g"},
		{"1 lb 4 oz", "20 oz", "", "20 oz"},
		{"12 oz", "12 oz", "", "12 oz"},
		{"12 rings", "12 ring", "", "12 rings"},
		{"24 tomato halves", "24 tomato halves", "", "24 tomato halves"},
		{"two dozen rings", "24 ring", "", "24 rings"},
	} {
		y, err := ParseYield(tt.text)
		if err != nil {
			t.Errorf("ParseYield(%q): %v", tt.text, err)
			continue
		}
		jar := ""
		if !y.Jar.IsZero() {
			jar = y.Jar.String()
		}
		if exactly(y.Quantity) != tt.amount || jar != tt.jar || y.String() != tt.printed || y.Text != tt.text {
			t.Errorf("ParseYield(%q) = %q, jar %q, printed as %q", tt.text, exactly(y.Quantity), jar, y)
		}
	}
}

func TestParseYieldRefuses(t *testing.T) {
	for _, tt := range []struct{ text, want string }{
		{"", "nothing is written: a yield is a number of jars or an amount, as in 6 half-pint jars or 2 cups"},
		{"jam", `"jam" cannot be read: a yield is a number of jars or an amount, as in 6 half-pint jars or 2 cups`},
		{"6", `"6" cannot be read: a yield says of what, as in 6 half-pint jars or 2 cups`},
		{"0 half-pints", `"0 half-pints" cannot be read: a recipe makes more than nothing`},
		{"4 1/2-pint jars", `"4 1/2-pint jars" cannot be read: the fraction may belong to the number or to the jar; name the jar, as in 4 half-pint jars`},
		{"4 1/2 pint jars", `"4 1/2 pint jars" cannot be read: the fraction may belong to the number or to the jar; name the jar, as in 4 half-pint jars`},
		{"12-ounce jars", `"12-ounce jars" cannot be read: the number of jars comes first, as in 4 12-ounce jars`},
		{"6 hlaf-pints", `there is no unit "hlaf-pints": did you mean half-pint?`},
		{"6 quatrs", `there is no unit "quatrs": did you mean quart?`},
		{"3 tall jars", `there is no jar "tall jars": the sizes are quarter-pint, half-pint, 12-ounce, pint, pint-and-a-half, quart, half-gallon, or a volume as in 500 ml`},
		{"2 cups sauce", `"sauce" is no part of a yield: it is written as in 6 half-pint jars or 2 cups`},
		{"5-4 pints", `"5-4 pints" cannot be read: a range rises, as in 4-5; for one and a half write 1 1/2`},
		{"6.5.1 pints", `"6.5.1 pints" cannot be read: a number has one point at most, with digits after it, as in 1.5`},
	} {
		y, err := ParseYield(tt.text)
		if err == nil || err.Error() != tt.want {
			t.Errorf("ParseYield(%q): %v\nwant %s", tt.text, err, tt.want)
		}
		if !y.IsZero() || !y.Jar.IsZero() {
			t.Errorf("ParseYield(%q) = %v beside its error", tt.text, y)
		}
	}
}
