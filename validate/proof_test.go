package validate

import (
	"fmt"
	"math/big"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"stillroom/content"
)

// TestPublishedRecipes judges the recipes of the guide and of the National
// Center for Home Food Preservation that published-recipes.tsv holds, with the
// minutes and the headspace that were printed beside the recipe itself (not
// those of the process tables). None may be refused; with one value made
// worse, each must be.
func TestPublishedRecipes(t *testing.T) {
	passed, mutants := 0, 0
	for _, p := range PublishedRecipes() {
		d := publishedDraft(t, p)
		if fs := d.errorsIn(); len(fs) > 0 {
			t.Errorf("%s is refused: %v\n%s", p.Name, fs, d.text())
			continue
		}
		passed++
		mutants += refuseWorse(t, d)
	}
	if passed < 25 {
		t.Errorf("%d published recipes pass, want at least 25", passed)
	}
	t.Logf("%d published recipes pass; %d made worse are all refused", passed, mutants)
}

// TestEveryProcess does the same with a recipe made from each process of the
// tables, for every method that it is published for.
func TestEveryProcess(t *testing.T) {
	passed, mutants := 0, 0
	for _, p := range Processes() {
		if !p.Method.Canned() {
			continue
		}
		for _, d := range processDrafts(p) {
			if fs := d.errorsIn(); len(fs) > 0 {
				t.Errorf("%s is refused: %v\n%s", d.name, fs, d.text())
				continue
			}
			passed++
			mutants += refuseWorse(t, d)
		}
	}
	if passed < 100 || mutants < 5000 {
		t.Errorf("%d recipes pass and %d mutants are refused, want 100 and 5,000", passed, mutants)
	}
	t.Logf("%d recipes from the tables pass; %d made worse are all refused", passed, mutants)
}

// refuseWorse makes every value of the draft worse, one at a time, and reports
// each that is not refused. It gives their number.
func refuseWorse(t *testing.T, d draft) int {
	t.Helper()
	n := 0
	for _, m := range worse(d) {
		n++
		if len(m.errorsIn()) == 0 {
			t.Errorf("%s passes\n%s", m.name, m.text())
		}
	}
	return n
}

// worse gives the draft with one value worse, for each value that it has.
func worse(d draft) []draft {
	var all []draft
	with := func(what string, change func(*draft)) {
		c := d.clone()
		c.name += ": " + what
		change(&c)
		all = append(all, c)
	}
	with("no headspace", func(c *draft) { c.headspace = "" })
	for _, h := range []string{"1/16 in", "2 in", "3 mm", "1/4-1/2 in"} {
		if !sameLength(h, d.headspace) {
			with("headspace "+h, func(c *draft) { c.headspace = h })
		}
	}
	with("no pack", func(c *draft) { c.pack = "" })
	with("no process", func(c *draft) { c.process = "" })
	with("another process", func(c *draft) { c.process += "-quick" })
	with("no jars", func(c *draft) { c.jars = nil })
	with("peas", func(c *draft) { c.produce = "peas"; c.process = elsewhere(d) })
	if d.way != content.PressureCanner {
		with("no acid said", func(c *draft) { c.acid = "" })
		with("under pressure", func(c *draft) { c.way = content.PressureCanner })
	} else {
		with("boiled", func(c *draft) { c.way = content.BoilingWater })
		with("steamed", func(c *draft) { c.way = content.AtmosphericSteam })
	}
	if d.sterilised {
		with("jars not sterilised", func(c *draft) { c.sterilised = false })
	}
	for i := range d.jars {
		all = append(all, worseJar(d, i)...)
	}
	return append(all, worseAcid(d)...)
}

// elsewhere is a process that no pea was tested with.
func elsewhere(d draft) string {
	if d.way == content.PressureCanner {
		return "beets"
	}
	return "peaches-halved-hot"
}

func worseJar(d draft, i int) []draft {
	var all []draft
	with := func(what string, change func(*draftJar)) {
		c := d.clone()
		c.name += fmt.Sprintf(": %s: %s", c.jars[i].jar, what)
		change(&c.jars[i])
		all = append(all, c)
	}
	with("no size", func(j *draftJar) { j.jar = "" })
	with("a gallon", func(j *draftJar) { j.jar = "3785 ml" })
	if d.jars[i].time > 0 {
		with("a minute short", func(j *draftJar) { j.time-- })
		with("no time", func(j *draftJar) { j.time = 0 })
		with("no gauge", func(j *draftJar) { j.dial, j.weighted = nil, nil })
	}
	for _, table := range []func(*draftJar) *[]draftBand{
		func(j *draftJar) *[]draftBand { return &j.altitude },
		func(j *draftJar) *[]draftBand { return &j.dial },
		func(j *draftJar) *[]draftBand { return &j.weighted },
	} {
		bands := *table(&d.jars[i])
		for b := range bands {
			with(fmt.Sprintf("band %d one short", b), func(j *draftJar) { (*table(j))[b].value-- })
			with(fmt.Sprintf("band %d half", b), func(j *draftJar) { (*table(j))[b].value /= 2 })
			if len(bands) > 1 {
				with(fmt.Sprintf("band %d left out", b), func(j *draftJar) { *table(j) = slices.Delete(*table(j), b, b+1) })
			}
			if b > 0 && bands[b].value > bands[b-1].value {
				with(fmt.Sprintf("band %d begins later", b), func(j *draftJar) { (*table(j))[b-1].to++; (*table(j))[b].from++ })
			}
		}
		if len(bands) > 0 {
			with("begins at 1 foot", func(j *draftJar) { (*table(j))[0].from = 1 })
		}
	}
	return all
}

// amount is the number that an ingredient line begins with.
var amount = regexp.MustCompile(`^[0-9]+( [0-9]+/[0-9]+|/[0-9]+|\.[0-9]+)?`)

// worseAcid makes the acid weaker, where the recipe relies on it.
func worseAcid(d draft) []draft {
	p, _ := FindProcess(d.process, d.way, d.pack)
	if p == nil {
		return nil
	}
	if from := AcidFor(p).Origin; from != AcidInEachJar && from != AcidFromRecipe {
		return nil
	}
	var all []draft
	with := func(what string, change func(*draft)) {
		c := d.clone()
		c.name += ": " + what
		change(&c)
		all = append(all, c)
	}
	with("acid called natural", func(c *draft) { c.acid = "natural" })
	with("no acid said", func(c *draft) { c.acid = "" })
	if d.acid != "in-recipe" {
		with("acid halved", func(c *draft) { c.acid = halved(c.acid) })
		if strings.Contains(d.acid, "bottled") {
			with("acid fresh", func(c *draft) { c.acid = strings.Replace(c.acid, "bottled", "fresh", 1) })
		}
		with("vitamin C", func(c *draft) { c.acid = "1 tbsp ascorbic acid per quart" })
		return all
	}
	for i, in := range d.ingredients {
		switch k := ClassifyItem(content.ParseIngredient(in).Item, in).Kind; k {
		case ItemVinegar, ItemCitrusJuice:
			with("acid left out", func(c *draft) { c.ingredients = slices.Delete(c.ingredients, i, i+1) })
			if known(p, k) {
				with("acid halved", func(c *draft) { c.ingredients[i] = halved(in) })
			}
			if k == ItemVinegar {
				with("vinegar of 4%", func(c *draft) { c.ingredients[i] = strings.Replace(in, "5%", "4%", 1) })
				with("home-made vinegar", func(c *draft) { c.ingredients[i] = strings.Replace(in, "vinegar", "homemade vinegar", 1) })
			} else {
				with("fresh juice", func(c *draft) { c.ingredients[i] = strings.Replace(in, "bottled", "fresh", 1) })
			}
		}
	}
	return all
}

// known reports whether an amount of that acid was published for the process.
func known(p *Process, k ItemKind) bool {
	return slices.ContainsFunc(AcidFor(p).Choices, func(c AcidChoice) bool {
		return slices.ContainsFunc(c.Doses, func(d AcidDose) bool { return d.Kind == k && d.perPint != nil })
	})
}

func halved(line string) string {
	return amount.ReplaceAllStringFunc(line, func(s string) string {
		q, err := content.ParseQuantity(s)
		if err != nil {
			panic(err)
		}
		half := new(big.Rat).Mul(q.Low, big.NewRat(1, 2))
		return strings.TrimSpace(kitchenAmount(half, ""))
	})
}

func sameLength(a, b string) bool {
	la, errA := content.ParseLength(a)
	lb, errB := content.ParseLength(b)
	return errA == nil && errB == nil && !la.IsRange() && sameHeadspace(la, lb.Inches())
}

// processDrafts makes recipes of a process: one for each of its choices of
// acid, and for pressure one for each schedule.
func processDrafts(p *Process) []draft {
	base := draft{
		name: p.ID, kind: "other", produce: tested(p), yield: "7 quart jars",
		ingredients: []string{"1 lb " + tested(p)},
		way:         p.Method, process: p.ID, pack: p.Pack, acid: "natural",
		headspace: inches(p.Jars[0].Headspace),
	}
	if base.pack == "" {
		base.pack = content.Hot
	}
	var all []draft
	for _, d := range acidDrafts(p, base) {
		for _, j := range p.Jars {
			all = append(all, scheduleDrafts(j, d)...)
		}
	}
	return all
}

// tested is the produce that a process names first, with the word that a
// notice asks for.
func tested(p *Process) string {
	switch name := p.Produce[0]; name {
	case "peach", "nectarine", "peaches", "nectarines":
		return "yellow " + name
	case "mango":
		return "unripe mango"
	case "pepper":
		return "hot peppers"
	case "any":
		return "carrot"
	default:
		return name
	}
}

// acidDrafts gives the draft with each published choice of acid.
func acidDrafts(p *Process, base draft) []draft {
	need := AcidFor(p)
	if need.Origin == AcidFromRecipe {
		base.acid = "in-recipe"
		base.ingredients = append(base.ingredients, "9 cups vinegar (5%)", "9 cups bottled lemon juice")
	}
	if p.Method == content.PressureCanner && need.Origin == AcidNotNeeded {
		base.acid = ""
	}
	if len(need.Choices) == 0 || need.Origin != AcidInEachJar && need.Origin != AcidFromRecipe {
		return []draft{base}
	}
	var all []draft
	for _, c := range need.Choices {
		d := base.clone()
		d.name += ": " + c.String()
		if need.Origin == AcidInEachJar {
			d.acid = fmt.Sprintf("%s per %s", doseLine(c.Doses[0]), c.Jar)
		} else {
			d.ingredients = []string{"1 oz " + d.produce} // far under what the acid was tested with
			for _, x := range c.Doses {
				d.ingredients = append(d.ingredients, doseLine(x))
			}
			if c.High != nil {
				d.yield = c.High.RatString() + " " + c.Jar + " jars"
			}
		}
		all = append(all, d)
	}
	return all
}

func doseLine(d AcidDose) string {
	what := map[ItemKind]string{
		ItemVinegar: "vinegar (5%)", ItemCitrusJuice: "bottled lemon juice", ItemCitricAcid: "citric acid",
	}[d.Kind]
	if d.Amount == nil {
		return "9 cups " + what
	}
	return kitchenAmount(d.Amount, d.Unit) + " " + what
}

// scheduleDrafts gives the draft for one size of jar: for boiling water as it
// is, and with the times raised where the jars are not sterilised; for
// pressure by each pair of time and pressure that is published.
func scheduleDrafts(j JarProcess, base draft) []draft {
	base.headspace = inches(j.Headspace)
	base.name += " in " + j.Jar
	var all []draft
	for _, s := range j.Schedules {
		d := base.clone()
		dj := draftJar{jar: j.Jar}
		switch s.Gauge {
		case "":
			dj.altitude = draftBands(s.Bands, func(b TestedBand) int { return b.Minutes })
			if short := 10 - s.Bands[0].Minutes; short > 0 {
				d.jars = []draftJar{raised(dj, short)}
				all = append(all, d.clone())
				d.sterilised = true
			}
		case DialGauge:
			dj.time, dj.dial = s.minutes(), draftBands(s.Bands, func(b TestedBand) int { return b.PSI })
		default:
			dj.time, dj.weighted = s.minutes(), draftBands(s.Bands, func(b TestedBand) int { return b.PSI })
		}
		d.jars = []draftJar{dj}
		d.name += " " + s.Name
		all = append(all, d)
	}
	return all
}

func raised(j draftJar, minutes int) draftJar {
	j.altitude = slices.Clone(j.altitude)
	for i := range j.altitude {
		j.altitude[i].value += minutes
	}
	return j
}

func draftBands(bands []TestedBand, value func(TestedBand) int) []draftBand {
	var out []draftBand
	for _, b := range bands {
		out = append(out, draftBand{b.From, b.To, value(b)})
	}
	return out
}

// publishedDraft writes a row of published-recipes.tsv as a recipe.
func publishedDraft(t *testing.T, p PublishedRecipe) draft {
	t.Helper()
	proc, _ := FindProcess(p.Process, content.BoilingWater, "")
	if proc == nil {
		t.Fatalf("%s has no boiling-water process", p.Process)
	}
	d := draft{
		name: p.Name, kind: "jam", produce: fruitNamed(p, proc), yield: firstYield(p.Yield),
		way: content.BoilingWater, process: p.Process, pack: content.Hot,
		headspace: inches(p.Headspace), acid: "natural",
		ingredients: []string{p.Sugar + " sugar"},
	}
	for in := range strings.SplitSeq(p.Fruit, " + ") {
		d.ingredients = append(d.ingredients, in)
	}
	if p.Acid != "none" {
		d.ingredients = append(d.ingredients, p.Acid)
	}
	if AcidFor(proc).Origin == AcidFromRecipe {
		d.acid = "in-recipe"
	}
	for part := range strings.SplitSeq(p.Minutes, " | ") {
		jars, times, _ := strings.Cut(part, ": ")
		for jar := range strings.SplitSeq(jars, " or ") {
			dj := draftJar{jar: jar, altitude: printedBands(t, times)}
			d.sterilised = d.sterilised || dj.altitude[0].value < 10
			d.jars = append(d.jars, dj)
		}
	}
	return d
}

// fruitNamed gives the produce of the process that the row's fruit names.
func fruitNamed(p PublishedRecipe, proc *Process) string {
	for _, words := range []string{p.Name, p.Fruit} {
		for w := range strings.FieldsSeq(words) {
			if f, ok := LookUpProduce(strings.Trim(w, ",()")); ok && proc.names(f.Name) {
				return strings.Replace(tested(&Process{Facts: Facts{Produce: []string{f.Plural}}}), "unripe ", "", 1)
			}
		}
	}
	return tested(proc)
}

// firstYield reads "7 or 8 half-pints" as the range that it is.
func firstYield(y string) string {
	return strings.Replace(y, " or ", " to ", 1)
}

func printedBands(t *testing.T, times string) []draftBand {
	t.Helper()
	var bands []draftBand
	for part := range strings.SplitSeq(times, "; ") {
		span, minutes, _ := strings.Cut(part, "=")
		from, to, _ := strings.Cut(span, "-")
		b := draftBand{from: number(t, from), value: number(t, minutes)}
		if to != "" {
			b.to = number(t, to)
		}
		bands = append(bands, b)
	}
	return bands
}

func number(t *testing.T, s string) int {
	t.Helper()
	n, err := strconv.Atoi(s)
	if err != nil {
		t.Fatal(err)
	}
	return n
}
