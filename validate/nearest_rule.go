package validate

// NearestRule gives the ID of the rule that is most like a misspelt one; empty
// if none is near.
func NearestRule(id string) string {
	var ids []string
	for _, r := range Rules {
		ids = append(ids, r.ID)
	}
	if near := nearest(id, ids, 1); len(near) > 0 {
		return near[0]
	}
	return ""
}
