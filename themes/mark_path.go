package themes

import (
	"regexp"
	"strconv"
	"strings"
)

// pathWords are the commands and the numbers of a path, which need nothing
// between them. https://www.w3.org/TR/SVG2/paths.html#PathDataBNF
var pathWords = regexp.MustCompile(`[A-Za-z]|[-+]?(?:\d+\.?\d*|\.\d+)|[^\s,]`)

// takes is how many numbers each command has. Arcs are left to browsers.
var takes = map[byte]int{'m': 2, 'l': 2, 'h': 1, 'v': 1, 'q': 4, 'c': 6, 'z': 0}

// A plotter follows a path.
type plotter struct {
	at    spot
	lines [][]spot
}

// readPath gives the lines of a path.
func readPath(d string) ([][]spot, error) {
	var p plotter
	words := pathWords.FindAllString(d, -1)
	command := byte(0)
	for len(words) > 0 {
		if c := words[0][0]; c >= 'A' {
			command, words = c, words[1:]
		} else if command|0x20 == 'z' || command == 0 {
			return nil, errNotPlain
		}
		n, known := takes[command|0x20]
		if !known || len(words) < n || command|0x20 != 'm' && len(p.lines) == 0 {
			return nil, errNotPlain
		}
		numbers := make([]int64, n)
		for i := range numbers {
			var ok bool
			if numbers[i], ok = inParts(words[i]); !ok {
				return nil, errNotPlain
			}
		}
		words = words[n:]
		p.follow(command|0x20, command >= 'a', numbers)
		if command|0x20 == 'm' { // further pairs are lines
			command -= 'm' - 'l'
		}
	}
	return p.lines, nil
}

// inParts reads a number of at most a thousand, with at most three decimals.
func inParts(s string) (int64, bool) {
	whole, decimals, _ := strings.Cut(strings.TrimLeft(s, "-+"), ".")
	if len(whole) > 3 || len(decimals) > 3 {
		return 0, false
	}
	n, err := strconv.ParseInt(whole+(decimals + "000")[:3], 10, 32)
	n = (n*parts + 500) / 1000
	if strings.HasPrefix(s, "-") {
		n = -n
	}
	return n, err == nil
}

// follow does one command. Relative places are counted from where it starts.
func (p *plotter) follow(command byte, relative bool, n []int64) {
	var from spot
	if relative {
		from = p.at
	}
	to := func(i int) spot { return spot{from.x + n[i], from.y + n[i+1]} }
	switch command {
	case 'm':
		p.lines = append(p.lines, nil)
		p.line(to(0))
	case 'l':
		p.line(to(0))
	case 'h':
		p.line(spot{from.x + n[0], p.at.y})
	case 'v':
		p.line(spot{p.at.x, from.y + n[0]})
	case 'q': // a cubic curve whose middle points lie two thirds of the way to the one of this
		third := func(a, b int64) int64 { return a + (b-a)*2/3 }
		a, b, c := p.at, to(0), to(2)
		p.curve(spot{third(a.x, b.x), third(a.y, b.y)}, spot{third(c.x, b.x), third(c.y, b.y)}, c)
	case 'c':
		p.curve(to(0), to(2), to(4))
	case 'z':
		line := p.lines[len(p.lines)-1]
		p.lines = append(p.lines, nil)
		p.line(line[0])
	}
}

func (p *plotter) line(to spot) {
	last := len(p.lines) - 1
	p.lines[last] = append(p.lines[last], to)
	p.at = to
}

// curve draws a curve as short straight lines.
func (p *plotter) curve(b, c, d spot) {
	const steps = 32
	a := p.at
	for t := int64(1); t <= steps; t++ {
		s := steps - t
		mix := func(a, b, c, d int64) int64 {
			return (a*s*s*s + 3*b*s*s*t + 3*c*s*t*t + d*t*t*t) / (steps * steps * steps)
		}
		p.line(spot{mix(a.x, b.x, c.x, d.x), mix(a.y, b.y, c.y, d.y)})
	}
}
