package main

import "runtime/debug"

// What a release is named and the day of it, YYYY-MM-DD: .ci/release sets both.
var version, released string

// versionName is that of the release, or else of the commit that the program was
// built from; "unreleased" where even that is not known.
func versionName() string {
	if version != "" {
		return version
	}
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" && info.Main.Version != "(devel)" {
		return info.Main.Version
	}
	return "unreleased"
}
