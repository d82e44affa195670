package validate

import (
	"math/big"
	"strings"
)

// lower gives the lesser of two numbers, either of which may be nil.
func lower(a, b *big.Rat) *big.Rat {
	if a == nil || b != nil && compare(b, a) < 0 {
		return b
	}
	return a
}

// strengthIn reads how strong a text says a vinegar is: 5%, 5 percent, 50
// grain. It gives the lowest of several, nil if none is said. A share that no
// vinegar has, as in "50% water", is none.
func strengthIn(text string) *big.Rat {
	var lowest *big.Rat
	for i := 0; i < len(text); {
		number, after := numberAt(text, i)
		if number == nil {
			i++
			continue
		}
		i = after
		if !sharesFollow(text[after:]) {
			continue
		}
		if strings.HasPrefix(strings.TrimLeft(text[after:], " -"), "grain") {
			number.Mul(number, big.NewRat(1, 10))
		}
		if number.Cmp(LimitRat("vinegar-strongest")) <= 0 {
			lowest = lower(lowest, number)
		}
	}
	return lowest
}

// sharesFollow reports whether a unit of strength stands next, or after the
// other end of a range: "-6%".
func sharesFollow(text string) bool {
	text = strings.TrimLeft(text, " -–")
	for _, unit := range []string{"%", "percent", "per cent", "pct", "grain"} {
		if strings.HasPrefix(text, unit) {
			return true
		}
	}
	text = strings.TrimPrefix(text, "to ")
	if number, after := numberAt(text, 0); number != nil {
		return sharesFollow(text[after:])
	}
	return false
}

// numberAt reads the number that begins at i, and where it ends; nil if none
// does.
func numberAt(text string, i int) (*big.Rat, int) {
	end := i
	for end < len(text) && (text[end] >= '0' && text[end] <= '9' || text[end] == '.' && end > i) {
		end++
	}
	if end == i {
		return nil, i
	}
	number, ok := new(big.Rat).SetString(strings.TrimSuffix(text[i:end], "."))
	if !ok {
		return nil, end
	}
	return number, end
}
