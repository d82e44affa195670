package content

import (
	"io/fs"
	"os"
	"testing"
	"testing/fstest"
)

func TestStarterIsAFileSystem(t *testing.T) {
	if err := fstest.TestFS(Starter, "content/site.yaml"); err != nil {
		t.Fatal(err)
	}
	if _, err := fs.Stat(Starter, "content/read.go"); err == nil {
		t.Error("the starter site holds Go files")
	}
	if _, err := fs.Stat(Starter, "site.yaml"); err == nil {
		t.Error("the starter site holds files outside content")
	}
}

// The starter site is the example on disk, read to the same values.
func TestStarterIsTheExample(t *testing.T) {
	got, faults, err := Read(Starter, nil)
	if err != nil {
		t.Fatal(err)
	}
	want, wantFaults, err := Read(os.DirFS(".."), nil)
	if err != nil {
		t.Fatal(err)
	}
	if len(faults) != len(wantFaults) || len(got.Recipes) != len(want.Recipes) || len(got.Episodes) != len(want.Episodes) ||
		len(got.Pages) != len(want.Pages) || len(got.Pictures) != len(want.Pictures) || len(got.Media) != len(want.Media) {
		t.Errorf("the starter site holds %d recipes, %d episodes, %d pages, %d pictures, %d media files; the example %d, %d, %d, %d, %d",
			len(got.Recipes), len(got.Episodes), len(got.Pages), len(got.Pictures), len(got.Media),
			len(want.Recipes), len(want.Episodes), len(want.Pages), len(want.Pictures), len(want.Media))
	}
}
