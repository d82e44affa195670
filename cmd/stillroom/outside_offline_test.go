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
	{
		name:     "offline limits",
		source:   "W3C Service Workers, WHATWG Storage, RFC 9110; a reader in Chromium whose device is full",
		programs: []string{"chromium-headless-shell", "openssl"},
		command:  func(s site) []string { return script("offline-limits.mjs", s.dir) },
		damages: []damage{
			{"a copy of what is gone", replace("offline.js", `.status===404`, `.status===405`), "forgetting a recipe that answers 404"},
			{"a copy of any age", replace("offline.js", `oldest=180`, `oldest=9999`), "a copy saved [0-9]+ is shown"},
			{"a copy that outlives its page", replace("offline.js", `catch{return e.delete(t)}`, `catch{return}`), "forgetting a copy that could not be renewed"},
		},
	},
}
