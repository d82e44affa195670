package content

import "testing"

// Volumes are those of US customary measure, NIST Handbook 44, appendix C,
// from memory: a pint is 473.176473 ml.
func TestParseJar(t *testing.T) {
	for _, tt := range []struct{ text, name, ml, printed string }{
		{"quarter-pint", "quarter-pint", "118.29411825", "quarter-pint"},
		{"4 oz", "quarter-pint", "118.29411825", "quarter-pint"},
		{"half-pint", "half-pint", "236.5882365", "half-pint"},
		{"half pint", "half-pint", "236.5882365", "half-pint"},
		{"Half-Pint", "half-pint", "236.5882365", "half-pint"},
		{"half-pint jar", "half-pint", "236.5882365", "half-pint"},
		{"half-pints", "half-pint", "236.5882365", "half-pint"},
		{"1/2 pint", "half-pint", "236.5882365", "half-pint"},
		{"1/2-pint jars", "half-pint", "236.5882365", "half-pint"},
		{"½ pint", "half-pint", "236.5882365", "half-pint"},
		{"8 oz", "half-pint", "236.5882365", "half-pint"},
		{"8-ounce jars", "half-pint", "236.5882365", "half-pint"},
		{"1 cup", "half-pint", "236.5882365", "half-pint"},
		{"12-ounce", "12-ounce", "354.88235475", "12-ounce"},
		{"12 oz", "12-ounce", "354.88235475", "12-ounce"},
		{"12 fl. oz. jar", "12-ounce", "354.88235475", "12-ounce"},
		{"pint", "pint", "473.176473", "pint"},
		{"pints", "pint", "473.176473", "pint"},
		{"1 pint", "pint", "473.176473", "pint"},
		{"pint jars", "pint", "473.176473", "pint"},
		{"16 oz", "pint", "473.176473", "pint"},
		{"pint-and-a-half", "pint-and-a-half", "709.7647095", "pint-and-a-half"},
		{"pint and a half", "pint-and-a-half", "709.7647095", "pint-and-a-half"},
		{"1 1/2 pint", "pint-and-a-half", "709.7647095", "pint-and-a-half"},
		{"1½-pint jars", "pint-and-a-half", "709.7647095", "pint-and-a-half"},
		{"24 oz", "pint-and-a-half", "709.7647095", "pint-and-a-half"},
		{"quart", "quart", "946.352946", "quart"},
		{"quart jar", "quart", "946.352946", "quart"},
		{"32 oz", "quart", "946.352946", "quart"},
		{"half-gallon", "half-gallon", "1892.705892", "half-gallon"},
		{"1/2 gallon", "half-gallon", "1892.705892", "half-gallon"},
		{"250 ml", "", "250", "250 ml"},
		{"250-ml jars", "", "250", "250 ml"},
		{"500 ml", "", "500", "500 ml"},
		{"1 l", "", "1000", "1 l"},
		{"0.5 l", "", "500", "0.5 l"},
		{"10 oz", "", "295.735295625", "10 fl oz"},
	} {
		j, err := ParseJar(tt.text)
		if err != nil {
			t.Errorf("ParseJar(%q): %v", tt.text, err)
			continue
		}
		if j.Name != tt.name || j.Millilitres().Cmp(ratOf(t, tt.ml)) != 0 || j.String() != tt.printed || j.Text != tt.text || j.IsZero() {
			t.Errorf("ParseJar(%q) = %q of %s ml, printed as %q", tt.text, j.Name, j.Millilitres().RatString(), j)
		}
	}
}

func TestParseJarRefuses(t *testing.T) {
	const sizes = "the sizes are quarter-pint, half-pint, 12-ounce, pint, pint-and-a-half, quart, half-gallon, or a volume as in 500 ml"
	for _, tt := range []struct{ text, want string }{
		{"", "nothing is written: a jar is written as in half-pint, 12-ounce, quart or 500 ml"},
		{"jar", `there is no jar "jar": ` + sizes},
		{"s", `there is no jar "s": ` + sizes},
		{"hlaf-pint", `there is no jar "hlaf-pint": did you mean half-pint?`},
		{"qaurt jars", `there is no jar "qaurt jars": did you mean quart?`},
		{"gallon", `there is no jar "gallon": ` + sizes},
		{"tall ones", `there is no jar "tall ones": ` + sizes},
		{"500", `"500" has no unit: a jar is written as in half-pint, 12-ounce, quart or 500 ml`},
		{"1 lb", `"1 lb" is not a jar: write it in pints, quarts, ounces or ml, as in half-pint, 12-ounce, quart or 500 ml`},
		{"1-2 pints", `"1-2 pints" cannot be read: a jar has one size, as in half-pint, 12-ounce, quart or 500 ml`},
		{"0 ml", `"0 ml" cannot be read: a jar has one size, as in half-pint, 12-ounce, quart or 500 ml`},
	} {
		j, err := ParseJar(tt.text)
		if err == nil || err.Error() != tt.want {
			t.Errorf("ParseJar(%q): %v\nwant %s", tt.text, err, tt.want)
		}
		if !j.IsZero() {
			t.Errorf("ParseJar(%q) = %v beside its error", tt.text, j)
		}
	}
}
