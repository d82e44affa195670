// Recipes that were opened are kept for when there is no network: by offline.js,
// and on https alone, so that a preview never shows what was. This goes out as
// the end of scheme.js, which every page has.
if (location.protocol == "https:") addEventListener("DOMContentLoaded", () => navigator.serviceWorker?.register("/offline.js").catch(() => {}));
