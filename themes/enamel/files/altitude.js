// The reader's altitude picks a row in every table, and the times that go with
// it. The whole table stays: others read it too.
(() => {
  const { kept, byId, make } = stillroom;
  const box = byId("height");
  if (!box) return;
  const field = byId("altitude"), unit = byId("altitude-unit"), here = byId("here");
  const tables = [...document.querySelectorAll("table.scale")];
  const thousands = (n) => String(n).replace(/\B(?=(\d{3})+$)/g, ",");
  const highest = 29_000; // feet; there is no kitchen above it

  // inFeet reads the field. Metres count as whole feet, as in the published
  // tables, where 1,000 ft is 305 m.
  const inFeet = () => {
    const text = field.value.replace(/[,\s]/g, "");
    if (!/^\d{1,5}$/.test(text)) return null;
    const feet = unit.value === "m" ? Math.floor((Number(text) * 10_000) / 3048) : Number(text);
    return feet <= highest ? feet : null;
  };
  let feet = null;

  const rowAt = (table, feet) => [...table.tBodies[0].rows].find((row) => row.dataset.to === "" || feet <= Number(row.dataset.to));

  const mark = (table) => {
    const frame = table.parentElement;
    table.querySelectorAll(".mine").forEach((e) => e.remove());
    if (frame.nextElementSibling?.matches(".beyond")) frame.nextElementSibling.remove();
    for (const row of table.tBodies[0].rows) row.removeAttribute("aria-current");
    if (feet === null) return;
    const row = rowAt(table, feet);
    if (!row) return frame.after(make("p", { className: "beyond" }, `Nothing is published for ${told()} in this table. Do not guess: choose another way of keeping.`));
    row.setAttribute("aria-current", "true");
    row.cells[0].append(make("strong", { className: "mine" }, "Your altitude"));
  };

  const told = () => thousands(field.value.replace(/[,\s]/g, "")) + (unit.value === "m" ? " m" : " ft");
  const plain = (cell) => [...cell.childNodes].filter((n) => n.nodeName !== "SMALL").map((n) => n.textContent).join("").trim();

  // figures tells in a line what a table asks for at the reader's altitude.
  const figures = (table) => {
    const row = rowAt(table, feet), name = table.caption.textContent.replace(", by altitude", "");
    if (!row) return `${name}: nothing is published for ${told()}.`;
    const pressed = table.tHead.querySelector("small");
    const jars = [...row.querySelectorAll("td")].map((td) => `${td.dataset.jar} ${plain(td)}${pressed ? ` for ${td.dataset.minutes} min` : ""}`);
    return `${name}: ${jars.join(", ")}.`;
  };

  // between finds where water boils and jelly sets, on the line between the two
  // nearest altitudes of the page.
  const between = () => {
    const points = box.dataset.points.split(";").map((p) => p.split(" ").map(Number));
    const i = points.findIndex(([at]) => at >= feet);
    if (i < 0) return null;
    const [low, high] = [points[Math.max(i - 1, 0)], points[i]];
    const part = high[0] === low[0] ? 0 : (feet - low[0]) / (high[0] - low[0]);
    return [1, 2].map((n) => low[n] + part * (high[n] - low[n]));
  };
  const degrees = (f) => `${Math.round(f)} °F (${Math.round(((f - 32) * 5) / 9)} °C)`;
  const setting = () => {
    if (!box.dataset.points) return [];
    const at = between();
    if (!at) return [`Jelly sets 8 °F (4 °C) above the boiling water in your own pan.`];
    return [`Water boils at about ${degrees(at[0])} and jelly sets at about ${degrees(at[1])}. The weather moves both: test your thermometer in boiling water, and go 8 °F (4 °C) above it.`];
  };

  // emptyMinutes is how long empty jars are boiled: a minute more for every
  // further thousand feet, and for a part of one.
  const emptyMinutes = (base) => base + Math.max(Math.ceil((feet - 1000) / 1000), 0);
  const empties = () =>
    [...document.querySelectorAll("[data-empty]")].map((p) => `Boil empty jars for ${emptyMinutes(Number(p.dataset.empty))} minutes before they are filled.`);

  const show = () => {
    tables.forEach(mark);
    const lines = feet === null ? [] : [...empties(), ...tables.map(figures), ...setting()];
    here.replaceChildren(...(lines.length ? [make("p", {}, make("b", {}, `At ${told()}`)), make("ul", {}, ...lines.map((l) => make("li", {}, l)))] : []));
    document.dispatchEvent(new Event("altitude"));
  };

  const changed = () => {
    feet = field.value.trim() ? inFeet() : null;
    const wrong = field.value.trim() !== "" && feet === null;
    field.setAttribute("aria-invalid", wrong);
    kept.setEverywhere("altitude", feet === null ? null : { value: field.value, unit: unit.value });
    show();
    if (wrong) here.append(make("p", {}, "Write a whole number, as in 4,500."));
  };

  stillroom.altitude = {
    known: () => feet !== null,
    feet: () => feet, // null if it is not known
    told,
    // minutes is the processing of a jar by a way of keeping; 0 if it is not known.
    minutes(way, jar) {
      if (feet === null) return 0;
      const times = [...way.querySelectorAll("table.scale")].map((table) => rowAt(table, feet)?.querySelector(`td[data-jar="${jar}"]`)?.dataset.minutes);
      return Math.max(0, ...times.filter(Boolean).map(Number));
    },
    // pressures tells them for each gauge; empty for ways without one.
    pressures(way, jar) {
      return [...way.querySelectorAll("table.scale")]
        .filter((table) => table.tHead.querySelector("small"))
        .map((table) => {
          const cell = rowAt(table, feet)?.querySelector(`td[data-jar="${jar}"]`);
          return cell && `${plain(cell)} on a ${/dial/.test(table.caption.textContent) ? "dial" : "weighted"} gauge`;
        })
        .filter(Boolean)
        .join(", ");
    },
  };

  const before = kept.everywhere("altitude");
  if (before) [field.value, unit.value] = [before.value, before.unit];
  field.addEventListener("input", changed);
  unit.addEventListener("change", changed);
  box.hidden = false;
  if (before) changed();
})();
