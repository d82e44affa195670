// A reader's choice of colours, light or dark, is kept in the browser alone. It
// answers wherever a style asks what the system prefers. This runs before
// anything is painted, so that no page flashes in the other colours.
(() => {
  const key = "stillroom:scheme";
  const stored = (use) => {
    try {
      return use(localStorage);
    } catch {} // storage is closed to us
  };
  let chosen = stored((s) => s.getItem(key)); // light or dark; else the system's

  const asked = []; // who asks, what was asked at first, and for which scheme
  const note = (who, what) => {
    const text = who[what], scheme = /-scheme: ?(\w+)/.exec(text)?.[1];
    if (scheme) asked.push([who, what, text, scheme]);
  };
  for (const { cssRules } of document.styleSheets) for (const { media } of cssRules) if (media) note(media, "mediaText");
  for (const meta of document.querySelectorAll("meta[media]")) note(meta, "media");

  // On paper nothing is dark.
  const apply = () => {
    for (const [who, what, text, scheme] of asked) who[what] = !chosen ? text : scheme === chosen ? "screen" : "not all";
  };
  apply();

  addEventListener("DOMContentLoaded", () => {
    const box = document.getElementById("scheme");
    if (!box) return;
    for (const radio of box.elements) radio.checked = radio.value === (chosen ?? "");
    box.addEventListener("change", ({ target }) => {
      chosen = target.value;
      stored((s) => s.setItem(key, chosen));
      apply();
    });
    box.hidden = false;
  });
})();
