// The search. A list of all words is fetched when the field is first used, and
// then the parts of the index that hold the words which may be meant. The field
// appears only here, since it can do nothing without the script.
(() => {
  const box = document.getElementById("filter");
  const field = document.getElementById("find");
  const found = document.getElementById("found");
  const results = document.getElementById("results");
  const lists = document.getElementById("entries");

  // Letters are compared without capitals and accents.
  const plain = (text) => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  const words = (text) => plain(text).split(/[^\p{L}\p{N}]+/u).filter(Boolean);
  const common = new Set("a an and at by for from in is it of on or the to with".split(" "));

  // A word may be half typed, or misspelt in one letter of four.
  const lenient = { prefix: true, fuzzy: (word) => (word.length > 3 ? 0.25 : false), maxFuzzy: 2 };
  const meant = 2; // words that a typed one may stand for
  const parts = 4; // parts that are fetched for one search
  const shown = 40;

  const get = async (address) => {
    const answer = await fetch(address);
    if (!answer.ok) throw new Error(answer.status);
    return answer.json();
  };
  let list; // once it is asked for
  const fetched = new Map();
  const listed = async () => {
    const { shards, words } = await get(box.dataset.words);
    const vocabulary = new MiniSearch({ fields: ["id"], storeFields: ["shard"], tokenize: (word) => [word] });
    words.forEach((row, i) => vocabulary.addAll(row.split(" ").map((id) => ({ id, shard: shards[i] }))));
    return vocabulary;
  };
  const once = (address) => fetched.get(address) ?? fetched.set(address, get(address)).get(address);

  // near finds the parts that are worth fetching, the likeliest first.
  const near = (vocabulary, typed) => {
    const likely = typed.map((word) => vocabulary.search(word, lenient).slice(0, meant));
    const wanted = new Set();
    for (let i = 0; i < meant; i++) for (const of of likely) if (of[i]) wanted.add(of[i].shard);
    return [...wanted].slice(0, parts);
  };

  // The page of a produce, a kind, a month or a way comes before its recipes.
  const gathers = new Set(["Produce", "Shelf", "Season", "Way of keeping"]);

  const look = (entries, typed) => {
    const index = new MiniSearch({ fields: ["name", "sort", "words"], idField: "address", storeFields: ["name", "sort", "fill"], tokenize: words });
    index.addAll([...entries.values()]);
    const options = { ...lenient, boost: { name: 3 }, boostDocument: (id, term, { sort }) => (gathers.has(sort) ? 2 : 1) };
    const all = index.search(typed, { ...options, combineWith: "AND" });
    return all.length ? all : index.search(typed, options);
  };

  const line = ({ id, name, sort, fill }) => {
    const item = document.createElement("li");
    const link = Object.assign(document.createElement("a"), { href: id, textContent: name });
    const what = document.createElement("small");
    const dot = Object.assign(document.createElement("span"), { className: "dot" + (fill ? " c-" + fill : "") });
    what.append(dot, sort);
    item.append(link, " ", what);
    return item;
  };

  const show = (all, text) => {
    results.replaceChildren(...all.slice(0, shown).map(line));
    lists.hidden = text !== "";
    found.textContent = text;
  };

  let turn = 0;
  async function search() {
    const mine = ++turn;
    const typed = words(field.value).filter((word) => !common.has(word));
    if (!typed.length) return show([], "");
    try {
      const vocabulary = await (list ??= listed());
      const entries = new Map();
      for (const part of await Promise.all(near(vocabulary, typed).map(once))) {
        for (const [name, address, sort, fill, words] of part) entries.set(address, { name, address, sort, fill, words });
      }
      if (mine !== turn) return;
      const all = look(entries, typed.join(" "));
      const count = all.length > shown ? "The first " + shown + " of " + all.length : all.length;
      show(all, all.length ? count + " found" : "Nothing found. Try fewer letters.");
    } catch {
      list = undefined;
      fetched.clear();
      if (mine !== turn) return;
      lists.hidden = false;
      found.textContent = "The search could not be fetched. The lists below have everything.";
    }
  }

  // The address holds what was asked, so that it can be kept and sent.
  const keep = () => history.replaceState(null, "", field.value ? "?q=" + encodeURIComponent(field.value) : location.pathname);

  field.addEventListener("input", () => {
    keep();
    search();
  });
  box.addEventListener("submit", (event) => {
    event.preventDefault();
    results.querySelector("a")?.focus();
  });
  field.value = new URLSearchParams(location.search).get("q") ?? field.value;
  box.hidden = false;
  search(); // the browser may have kept what was typed before
})();
