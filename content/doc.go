// Package content reads a site: its settings, recipes, episodes and pages,
// from Markdown with YAML front matter into exact typed values that know
// where they were written.
//
// It judges nothing but the writing itself: a key nobody knows, a value of
// the wrong type, a word that cannot be read. Such a Fault does not stop the
// reading; Read gives back every fault of every file, and as much of the site
// as could be read. Whether a recipe may be published is for package validate.
package content
