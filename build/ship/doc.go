// Package ship puts a finished site where readers get it: on a server by SFTP,
// or into a store that speaks S3.
//
// It sends what has changed and nothing else. What a page points at is there
// before the page, and goes after it, so that a reader meets a working site at
// every moment, and a run that breaks off leaves one: the next run goes on from
// there. Beside the site lies a list of what Stillroom has put there; nothing
// else is ever replaced or removed.
package ship
