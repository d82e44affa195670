// Package preview shows a site to its author while it is written: every page
// as it would be published, drafts and what is scheduled among them, with what
// the rules find in it at the place that they speak of.
//
// A [Preview] holds what was read of the site in memory. It is told which files
// may have changed, reads those, judges what depends on them, and wakes the
// browsers that look at a page which has become another one. A page is made
// when somebody looks at it. Nothing is written to disk, and nothing that is
// made here can be published: the pages are build.Proofs of a site that nobody
// has checked.
package preview
