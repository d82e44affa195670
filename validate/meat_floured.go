package validate

// meatFloured reports meat floured or battered before it is canned.
var meatFloured = &Rule{
	ID:       "meat-floured",
	Severity: Error,
	Summary:  "meat floured or battered before it is canned",
	Doc: `Flour thickens the liquid in the jar and slows the heat on its way to the
middle. Thicken the gravy when the jar is opened.`,
	Source: Source{
		Title:   "The Daily Meal on thickening",
		Address: "https://www.thedailymeal.com/1511691/safety-tip-thickening-home-canned-goods/",
	},
	Practice: &Practice{
		Phrases: `dredge~|coat~|roll~|dust~|toss~|flour~|batter~|bread~ .. meat|beef|chicken|pork|venison|cubes|pieces|chunks|rabbit|vegetables|okra|@it .. in|with .. flour|batter|breadcrumbs|cornmeal|cornstarch|starch
			flour~|batter~|dredge~ the|your .. meat|beef|chicken|pork|venison|cubes|pieces|chunks; floured|battered|breaded meat|beef|chicken|pork|venison|pieces|cubes|okra`,
		Where:   inCanned,
		Message: "floured meat was never tested in a jar",
		Advice:  "Brown it plain; thicken when serving.",
	},
}
