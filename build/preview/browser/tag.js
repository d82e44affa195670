// The tag at the corner of every page, and the panel that it opens: all that
// was found in the site.
import { apart, heading, idOf, make, names, said } from "./slips.js";

const key = "stillroom-found";
const count = (n, word) => `${n} ${word}${n === 1 ? "" : "s"}`;

export class Tag {
  constructor(own, last) {
    this.own = own;
    this.last = last;
    this.counts = make("span", { class: "counts" });
    this.button = make("button", { type: "button", class: "tag", "aria-expanded": "false", "aria-haspopup": "dialog" }, make("span", { class: "name" }, "Preview"), this.counts);
    this.status = make("p", { role: "status", class: "unseen" });
    this.list = make("div", { class: "list" });
    this.close = make("button", { type: "button", class: "close" }, "Close");
    this.panel = make("dialog", { class: "panel", "aria-labelledby": "title" },
      make("header", {}, make("h2", { id: "title" }, "What was found"), this.close), this.list);
    this.button.addEventListener("click", () => (this.panel.open ? this.shut() : this.open()));
    this.close.addEventListener("click", () => this.shut());
    this.panel.addEventListener("keydown", (event) => event.key === "Escape" && this.shut());
    this.host = apart("stillroom-tag", make("aside", { "aria-label": "Preview" }, this.button, this.status, this.panel));
    document.body.append(this.host);
    this.kept = JSON.parse(sessionStorage.getItem(key));
    if (this.kept) this.open(false);
    addEventListener("pagehide", () => this.keep());
  }

  // show shows the figures of the site, and the panel anew if it is open.
  show({ counts, troubles = [] }) {
    const { errors, warnings, advice } = counts;
    const parts = [["error", errors, count(errors, "error")], ["warning", warnings, count(warnings, "warning")], ["advice", advice, `${advice} advice`]];
    const told = parts.filter(([, n]) => n > 0);
    this.counts.replaceChildren(...told.map(([severity, , text]) => make("span", { class: "count " + severity }, text)));
    if (troubles.length > 0) this.counts.prepend(make("span", { class: "count trouble" }, count(troubles.length, "notice")));
    if (this.counts.children.length === 0) this.counts.append(make("span", { class: "count nothing" }, "nothing found"));
    this.announce(told.map(([, , text]) => text).join(", ") || "nothing found");
    if (this.panel.open) this.fill();
  }

  announce(text) {
    if (this.said !== undefined && this.said !== text) this.status.textContent = text;
    this.said = text;
  }

  // lost and found say whether the preview still answers.
  lost() {
    this.losing ??= setTimeout(() => {
      this.button.classList.add("lost");
      this.button.firstChild.textContent = "Preview has stopped";
      this.status.textContent = "The preview has stopped.";
    }, 2000);
  }

  found() {
    clearTimeout(this.losing);
    this.losing = undefined;
    if (!this.button.classList.contains("lost")) return;
    this.button.classList.remove("lost");
    this.button.firstChild.textContent = "Preview";
    this.status.textContent = "The preview is back.";
  }

  async open(focus = true) {
    this.button.setAttribute("aria-expanded", "true");
    if (focus) this.panel.show();
    else this.panel.open = true;
    await this.fill();
  }

  shut() {
    this.panel.close();
    this.button.setAttribute("aria-expanded", "false");
    this.keep();
    this.button.focus();
  }

  async fill() {
    const text = await (await fetch(this.own + "findings")).text();
    if (text === this.filled) return; // what the reader is about to click on stays
    this.filled = text;
    const { files, troubles, left } = JSON.parse(text);
    const { scroll, open, focus } = this.kept ?? this.reading();
    this.kept = null;
    this.list.replaceChildren(
      ...(troubles ?? []).map((t) => make("p", { class: "slip notice" }, t.file && make("span", { class: "place" }, t.file), " ", t.text)),
      ...files.map((f) => this.file(f)));
    if (left > 0) this.list.append(make("p", {}, `${left} more are not listed. Begin with these.`));
    if (files.length === 0) this.list.append(make("p", {}, "Nothing was found. That says that the site agrees with the processes that it cites, and no more."));
    const isFree = [document.body, this.host].includes(document.activeElement);
    for (const d of this.list.querySelectorAll("details")) {
      if (open.includes(d.dataset.of)) d.open = true;
      if (focus === d.dataset.of && isFree) d.firstChild.focus({ preventScroll: true });
    }
    this.list.scrollTop = scroll;
  }

  // reading tells where the author is in the panel: the entries are named.
  reading() {
    const nameOf = (e) => e?.closest("details")?.dataset.of;
    return {
      scroll: this.list.scrollTop,
      open: [...this.list.querySelectorAll("details[open]")].map(nameOf),
      focus: nameOf(this.list.querySelector(":focus")),
    };
  }

  // keep has the page that is loaded next, this one or another, show the panel
  // as it is.
  keep() {
    if (!this.panel.open) return sessionStorage.removeItem(key);
    sessionStorage.setItem(key, JSON.stringify(this.kept ?? this.reading()));
  }

  file({ file, name, address, marks }) {
    const here = address && address === location.pathname;
    const called = names(marks);
    const title = address ? make("a", { href: address, ...(here ? { "aria-current": "page" } : {}) }, name) : name;
    return make("section", { class: "file" + (here ? " here" : "") }, make("h3", {}, title), make("p", { class: "place" }, file),
      make("ul", {}, ...marks.map((m, i) => this.entry(m, address, called[i]))));
  }

  // entry leads to the slip on the page. What its author has accepted has none.
  entry(mark, address, name) {
    const details = make("details", { class: "entry " + (mark.accepted ? "accepted" : mark.severity), "data-of": name }, make("summary", {}, ...heading(mark)));
    if (mark.accepted) details.append(make("p", {}, "Accepted: " + mark.accepted));
    details.append(...said(mark));
    if (address && !mark.accepted) {
      const link = make("a", { class: "go", href: `${address}#${idOf(mark)}` }, "Show it on the page");
      link.addEventListener("click", (event) => this.go(event, idOf(mark)));
      details.append(make("p", {}, link));
    }
    return make("li", {}, details);
  }

  go(event, id) {
    const slip = document.getElementById(id);
    if (!slip) return;
    event.preventDefault();
    history.replaceState(null, "", "#" + id);
    if (matchMedia("(max-width: 48rem)").matches) this.shut();
    goTo(slip);
  }
}

// goTo brings a slip into sight, open.
export function goTo(slip) {
  const details = slip.shadowRoot.querySelector("details");
  if (details) details.open = true;
  slip.scrollIntoView({ block: "center" });
  details?.querySelector("summary").focus({ preventScroll: true });
}
