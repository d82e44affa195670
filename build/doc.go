// Package build turns a checked site into the files that are published: pages,
// feeds, structured data and assets.
//
// It takes values and gives back values. Each product is a function from a
// [validate.Checked] to a list of [File], in order of path, and the same
// content gives the same bytes on every system. Only the one function that puts
// finished files on disk touches the disk.
package build
