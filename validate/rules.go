package validate

import (
	"slices"
	"strings"
)

// Rules is every rule, in order of ID.
var Rules = []*Rule{
	acceptRule,
	acidMissing,
	acidNatural,
	acidOther,
	acidShort,
	addressTaken,
	altitudeFalls,
	altitudeGap,
	altitudeMissing,
	altitudeReach,
	alum,
	badValue,
	breadInJar,
	canningTablet,
	checkedMissing,
	chocolate,
	cupsAndGrams,
	dairy,
	dryGoods,
	dryingIncomplete,
	egg,
	fat,
	fermentIncomplete,
	fileName,
	flakeSalt,
	foreignMeasure,
	freezerIncomplete,
	frontMatter,
	gaugeMissing,
	gelatin,
	grain,
	headspace,
	headspaceMissing,
	herbsOver,
	jarMissing,
	jarTooLarge,
	jarsNotSterilised,
	juiceNotBottled,
	lowAcid,
	lowAcidOver,
	lowSugarTime,
	missingFile,
	missingKey,
	noMeasure,
	notTestedWith,
	oilDays,
	oilKeptWarm,
	otherFood,
	outOfPlace,
	overruled,
	packMissing,
	packUntested,
	phHigh,
	picklingLime,
	pictureBroken,
	pressureShort,
	processMethod,
	processMissing,
	processUnknown,
	recheckRule,
	repeatedKey,
	saltSubstitute,
	savouryJelly,
	soupBeans,
	soupFoods,
	soupHalfFull,
	spicesOver,
	starch,
	steamTooLong,
	sugarCut,
	sweetener,
	textRule,
	timeMissing,
	timeShort,
	unknownKey,
	unknownRecipe,
	vinegarWeak,
	waterOver,
	wrongType,
	yieldInJars,
}

// FindRule gives the rule of that ID, or nil.
func FindRule(id string) *Rule {
	i, ok := slices.BinarySearchFunc(Rules, id, func(r *Rule, id string) int { return strings.Compare(r.ID, id) })
	if !ok {
		return nil
	}
	return Rules[i]
}
