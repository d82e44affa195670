// The recording, its chapters and its transcript keep together: a chapter or a
// line plays from its mark, and what is said now is marked. Without this script
// the marks are links into the recording, and the transcript is all there.
(() => {
  const audio = document.getElementById("audio");
  const said = document.getElementById("said");
  const element = (id) => document.getElementById(id) ?? document.createElement("i"); // a page without recording has fewer
  const still = matchMedia("(prefers-reduced-motion: reduce)");

  const inView = (line) => {
    const { top, bottom } = line.getBoundingClientRect();
    return bottom > 0 && top < innerHeight;
  };
  const show = (line) => line.scrollIntoView({ block: "center", behavior: still.matches ? "auto" : "smooth" });

  // A run of marks in the order of time, of which one is the present one.
  const run = (marks) => {
    const times = marks.map((mark) => Number(mark.dataset.from));
    let now = null;
    return (time) => {
      let low = 0;
      for (let high = times.length; low < high; ) {
        const middle = (low + high) >> 1;
        if (times[middle] > time) high = middle;
        else low = middle + 1;
      }
      const next = marks[low - 1] ?? null;
      const last = now;
      if (next === last) return [last, last];
      last?.removeAttribute("aria-current");
      next?.setAttribute("aria-current", "true");
      return [last, (now = next)];
    };
  };
  const lines = said ? [...said.querySelectorAll(".line")] : [];

  if (audio) {
    const atLine = run(lines);
    const atChapter = run([...document.querySelectorAll(".at[data-from]")]);
    let line = null;

    // The page moves with what is said only while the reader looks at it: who
    // has scrolled away is left alone, and offered the way back.
    const follow = () => {
      const time = audio.currentTime + 0.05; // a seek may end just before its mark
      atChapter(time);
      const [last, next] = atLine(time);
      line = next;
      if (next && last && next !== last && inView(last) && !audio.paused && !said.contains(document.activeElement)) {
        const { top, bottom } = next.getBoundingClientRect();
        if (top < innerHeight * 0.2 || bottom > innerHeight * 0.8) show(next);
      }
      offer();
    };
    const offer = () => (element("here").hidden = !line || audio.paused || inView(line));
    audio.addEventListener("timeupdate", follow);
    audio.addEventListener("seeked", follow);
    addEventListener("scroll", offer, { passive: true });
    element("here").addEventListener("click", () => line && show(line));

    const play = (seconds) => {
      audio.currentTime = seconds;
      audio.play().catch(() => {}); // the player itself says what is wrong
    };
    document.addEventListener("click", (event) => {
      const mark = event.target.closest("[data-from]");
      if (!mark || event.ctrlKey || event.metaKey || event.shiftKey || event.button) return;
      if (mark.classList.contains("line") && String(getSelection())) return; // words are being copied
      event.preventDefault();
      play(Number(mark.dataset.from));
    });
    element("hear").addEventListener("click", () => {
      const found = said.querySelector("mark.on")?.closest(".line");
      if (found) play(Number(found.dataset.from));
    });

    const button = element("play");
    button.addEventListener("click", () => (audio.paused ? play(audio.currentTime) : audio.pause()));
    for (const change of ["play", "pause", "ended"]) {
      audio.addEventListener(change, () => {
        button.textContent = audio.paused ? "Play" : "Pause";
        offer();
      });
    }

    // An address may end in #t=75: https://www.w3.org/TR/media-frags/
    const begin = () => {
      const at = /^#t=([0-9.]+)$/.exec(location.hash);
      if (at) audio.currentTime = Number(at[1]);
    };
    addEventListener("hashchange", begin);
    begin();
  }
  if (!said) return;

  // Letters are compared one by one, without capitals, accents or curls.
  const plain = (text) =>
    Array.from({ length: text.length }, (_, i) => text[i].normalize("NFD")[0].toLowerCase()[0]).join("").replace(/[‘’]/g, "'").replace(/\s/g, " ");

  const field = element("words");
  const status = element("hits");
  let places = []; // each the marks of one place, which may go over several lines
  let at = -1;

  const clear = () => {
    for (const mark of said.querySelectorAll("mark")) {
      const parent = mark.parentNode;
      mark.replaceWith(...mark.childNodes);
      parent.normalize();
    }
    places = [];
    at = -1;
  };

  // find marks every place of the words in a paragraph, from its end so that
  // the places before stay where they are.
  const find = (words, paragraph) => {
    const pieces = [...paragraph.querySelectorAll(".line")].map((line) => line.firstChild);
    const starts = [];
    let text = "";
    for (const piece of pieces) {
      starts.push(text.length);
      text += plain(piece.data) + " ";
    }
    const found = [];
    for (let from = text.indexOf(words); from >= 0; from = text.indexOf(words, from + words.length)) found.push(from);
    return found.reverse().map((from) => {
      const marks = [];
      for (let i = pieces.length - 1; i >= 0; i--) {
        const [begin, end] = [Math.max(from - starts[i], 0), Math.min(from + words.length - starts[i], pieces[i].length)];
        if (begin >= end) continue;
        const mark = document.createElement("mark");
        const part = pieces[i].splitText(begin);
        part.splitText(end - begin);
        part.replaceWith(mark);
        mark.append(part);
        marks.unshift(mark);
      }
      return marks;
    }).reverse();
  };

  const go = (to) => {
    for (const mark of places[at] ?? []) mark.classList.remove("on");
    at = places.length ? (to + places.length) % places.length : -1;
    for (const mark of places[at] ?? []) mark.classList.add("on");
    if (at >= 0) show(places[at][0]);
    tell();
  };
  const tell = () => {
    const words = plain(field.value).trim();
    status.textContent = words.length < 2 ? "" : !places.length ? "Not said" : at < 0 ? places.length + " found" : `${at + 1} of ${places.length}`;
    element("hear").disabled = at < 0;
  };
  const search = () => {
    clear();
    const words = plain(field.value).trim();
    if (words.length > 1) for (const paragraph of said.children) places.push(...find(words, paragraph));
    tell();
  };

  field.addEventListener("input", search);
  field.addEventListener("keydown", (event) => {
    if (event.key === "Enter") {
      event.preventDefault();
      go(event.shiftKey ? Math.max(at, 0) - 1 : at + 1);
    } else if (event.key === "Escape") {
      field.value = "";
      search();
    }
  });
  element("prior").addEventListener("click", () => go(Math.max(at, 0) - 1));
  element("after").addEventListener("click", () => go(at + 1));
  element("tools").hidden = false;
  search(); // the browser may have kept what was typed before
})();
