// Package amount writes the amounts of ingredients for a larger or a smaller
// batch, as a kitchen measures them: 1/2 cup doubled is 1 cup, a third of it is
// 2 tbsp + 2 tsp, and never 0.167 cups.
//
// All arithmetic is exact until the one rounding at the end, to what cups,
// spoons and scales can show. Acid is rounded up, and what is low in acid or
// thins it is rounded down, so that a batch of any size has at least the acid
// that the recipe was checked with.
//
// The theme's amount.js does the same in a reader's browser. A test compares
// the two, text for text.
package amount
