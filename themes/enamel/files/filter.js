// The list from A to Z becomes shorter while the reader types. The field
// appears only here, since it can do nothing without the script.
const box = document.getElementById("filter");
const field = document.getElementById("find");
const found = document.getElementById("found");

// Letters are compared without capitals and accents.
const plain = (text) => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();

const sections = [...document.querySelectorAll("#entries section")].map((section) => ({
  section,
  entries: [...section.querySelectorAll("li")].map((item) => ({
    item,
    text: plain(item.textContent + " " + item.dataset.words),
  })),
}));

function filter() {
  const words = plain(field.value).split(/\s+/).filter(Boolean);
  let count = 0;
  for (const { section, entries } of sections) {
    let any = false;
    for (const { item, text } of entries) {
      item.hidden = !words.every((word) => text.includes(word));
      if (!item.hidden) {
        any = true;
        count++;
      }
    }
    section.hidden = !any;
  }
  found.textContent = words.length === 0 ? "" : count === 0 ? "Nothing found. Try fewer letters." : count + " found";
}

field.addEventListener("input", filter);
box.hidden = false;
filter(); // the browser may have kept what was typed before
