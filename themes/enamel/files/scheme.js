// A reader's choice of colours, light or dark, is kept in the browser alone. It
// answers wherever a style asks what the system prefers. This runs before
// anything is painted, so that no page flashes in the other colours.
(() => {
  const key = "stillroom:scheme", asks = /prefers-color-scheme: ?(\w+)/;
  const load = () => {
    try {
      return JSON.parse(localStorage.getItem(key));
    } catch {
      return null; // storage is closed to us, or holds what is not ours
    }
  };
  const asked = []; // who asks, what was asked at first, and which scheme it is for
  const note = (text, put) => asks.test(text) && asked.push({ put, text, scheme: asks.exec(text)[1] });
  for (const { cssRules } of document.styleSheets) {
    for (const { media } of cssRules) if (media) note(media.mediaText, (text) => (media.mediaText = text));
  }
  for (const meta of document.querySelectorAll("meta[media]")) note(meta.media, (text) => (meta.media = text));

  // On paper nothing is dark.
  const apply = (chosen) => {
    for (const { put, text, scheme } of asked) put(chosen ? (scheme === chosen ? "screen" : "not all") : text);
    for (const radio of document.querySelectorAll("[name=scheme]")) radio.checked = radio.value === (chosen ?? "");
  };
  apply(load());

  addEventListener("DOMContentLoaded", () => {
    const box = document.getElementById("scheme");
    if (!box) return;
    box.addEventListener("change", ({ target }) => {
      const chosen = target.value || null;
      try {
        if (chosen) localStorage.setItem(key, JSON.stringify(chosen));
        else localStorage.removeItem(key);
      } catch {}
      apply(chosen);
    });
    apply(load());
    box.hidden = false;
  });
  addEventListener("storage", (e) => e.key === key && apply(load())); // chosen in another window
})();
