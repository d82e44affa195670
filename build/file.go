package build

// A File is a finished file of the published site.
type File struct {
	Path string // slash-separated, without a stroke at its beginning: recipes/damson-jam/index.html
	Data []byte
}
