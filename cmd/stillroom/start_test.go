package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/google/uuid"

	"stillroom/content"
)

// Two programmes that began with the starter site are two to players.
func TestStartsAreApart(t *testing.T) {
	var ids []uuid.UUID
	for range 2 {
		dir := filepath.Join(t.TempDir(), "larder")
		if _, err := start(dir, content.Starter); err != nil {
			t.Fatal(err)
		}
		site, faults, err := content.Read(os.DirFS(dir), nil)
		if err != nil || len(faults) > 0 {
			t.Fatal(err, faults)
		}
		id, err := uuid.Parse(site.Settings.Programme.FeedID.V)
		if err != nil || id.Version() != 4 {
			t.Errorf("feed_id %q: %v", site.Settings.Programme.FeedID.V, err)
		}
		ids = append(ids, id)
	}
	if ids[0] == ids[1] {
		t.Errorf("both have the feed_id %s", ids[0])
	}
}
