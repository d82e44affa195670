package content

import (
	"maps"
	"slices"
)

// ReadTranscript reports what has no place in the text of a WebVTT or SubRip
// file. name is its path relative to the site's folder.
func ReadTranscript(name string, data []byte) []Fault {
	s := newSource(name, data)
	s.references(0)
	return s.sorted()
}

// transcripts makes the jobs of looking through the transcripts among files.
func transcripts(files map[string]File) (jobs []job) {
	for _, file := range slices.Sorted(maps.Keys(files)) {
		if SoundFormatOf(file) == "" {
			jobs = append(jobs, job{file, func(data []byte) []Fault { return ReadTranscript(file, data) }})
		}
	}
	return jobs
}
