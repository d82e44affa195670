package main

// offlineCheckers read recipes where there is no network.
var offlineCheckers = []outsider{
	{
		name:     "offline",
		source:   "W3C Service Workers, W3C Web Application Manifest; a reader in Chromium",
		programs: []string{"chromium-headless-shell", "openssl"},
		command:  func(s site) []string { return script("offline.mjs", s.dir) },
		damages: []damage{
			{"a manifest that starts elsewhere", replace("manifest.webmanifest", `"start_url":"/"`, `"start_url":"https://elsewhere.example/"`), "the manifest: "},
			{"a copy that hides that it is one", replace("offline.js", `<section class="saved"`, `<section hidden class="saved"`), "does not say that it is one"},
			{"a copy from a cache on the way", replace("offline.js", `request,{cache:"no-cache"}`, `request,{cache:"default"}`), "does not say that it is a copy"},
		},
	},
}
