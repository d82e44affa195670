// Package unchecked holds a site that nobody has judged, for its author alone
// to look at. Only packages below build can import it: what publishes can
// neither make such a site nor take one for a [stillroom/validate.Checked].
package unchecked

import "stillroom/content"

// A Site may have errors, and holds drafts and what is scheduled.
type Site struct {
	Content *content.Site
	Day     content.Date // on which it is looked at
}
