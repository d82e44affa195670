// A reader asks for batches, or says what jars or produce there are; every
// amount of the page follows, and other measures can be chosen.
(() => {
  const { rat, amount, making, kept, byId, make } = stillroom;
  const panel = byId("scaler");
  if (!panel) return;
  const batches = byId("batches"), jars = byId("jars"), jar = byId("jar"), have = byId("have"), haveUnit = byId("have-unit");
  const now = byId("now"), work = byId("work"), makes = byId("makes");
  const ways = [...panel.querySelectorAll("[name=way]")];
  const madeAtFirst = makes && [...makes.childNodes];

  // Every amount, with the words that it had at first.
  const amounts = [...document.querySelectorAll("[data-amount]")].map((element) => {
    const holder = element.closest(".amount");
    return {
      element,
      amount: amount.read(element.dataset.amount),
      text: element.textContent,
      inStep: Boolean(element.closest(".method")),
      holder,
      also: holder?.querySelector("small"),
      alsoText: holder?.querySelector("small")?.textContent,
    };
  });
  const fixed = [...document.querySelectorAll(".ledger .fixed")];

  const write = (a, factor, system, text) => (amount.keeps(a, factor, system) ? text : amount.typeset(amount.write(a, factor, system)));

  // inLine writes an amount of the list: what to buy in all, and beside it what
  // goes into each pot.
  const inLine = ({ element, amount: a, text, holder, also, alsoText }, plan, system) => {
    element.textContent = write(a, plan.total, system, text);
    if (!holder) return;
    if (also) {
      const about = alsoText.startsWith("(about ") ? "about " : "";
      const other = rat.cmp(plan.total, rat.one) ? `(${about}${amount.typeset(amount.also(a, plan.total))})` : alsoText;
      also.textContent = system === "written" && other !== "()" ? other : "";
    }
    holder.querySelector(".pot")?.remove();
    if (!plan.full) return;
    const last = plan.rest[0] ? `, ${write(a, plan.last, system, text)} in the last` : "";
    holder.append(make("small", { className: "pot" }, `${write(a, plan.pot, system, text)} a batch${last}`));
  };
  const inStep = ({ element, amount: a, text }, plan, system) => {
    const last = plan.rest[0] ? ` (${write(a, plan.last, system, text)} for the last batch)` : "";
    element.textContent = write(a, plan.pot, system, text) + last;
  };

  const way = () => ways.find((w) => w.checked) ?? ways[0];
  const makings = new Map(ways.map((w) => [w, making.read(JSON.parse(w.dataset.making))]));
  const system = () => panel.querySelector("[name=system]:checked").value;
  const jarName = ({ one }) => one.replace(/ jar$/, "");
  const minutes = () => stillroom.altitude?.minutes(byId(way().value), jar.value) ?? 0;

  let asked = rat.one; // batches
  const plan = () => making.plan(makings.get(way()), asked, jar.selectedIndex, minutes());

  // A number as it stands in a field: 1 1/2, or 1.29 where nobody says the fraction.
  const inField = (n) => (n[1] <= 8n ? rat.fraction(n) : String(Math.round((Number(n[0]) / Number(n[1])) * 100) / 100));
  const produce = have && amount.read(have.dataset.have);
  // sameKind finds the way in which the recipe tells its produce by weight, or by volume.
  const counterpart = (unit) => produce.ways.find((w) => (amount.units[w.unit]?.kind ?? w.unit) === (amount.units[unit]?.kind ?? unit));
  const perRecipe = (unit) => {
    const same = counterpart(unit);
    if (same) return amount.units[unit] ? amount.convert(same.high, same.unit, unit) : same.high;
    const [other] = produce.ways, { grams } = produce;
    if (amount.units[unit].kind === "weight") return amount.convert(rat.mul(amount.convert(other.high, other.unit, "cup"), grams), "g", unit);
    return amount.convert(rat.div(amount.convert(other.high, other.unit, "g"), grams), "cup", unit);
  };

  const fill = (source, p) => {
    if (source !== batches) batches.value = inField(p.batches);
    if (source !== jars && p.jar) jars.value = inField(rat.mul(p.jar.high, p.batches));
    if (have && source !== have) have.value = inField(rat.mul(perRecipe(haveUnit.value), p.total));
    byId("fewer").setAttribute("aria-disabled", rat.cmp(p.batches, p.making.smallest) <= 0);
    byId("more").setAttribute("aria-disabled", rat.cmp(p.batches, p.making.largest) >= 0);
  };

  const showMakes = (p) => {
    if (!makes) return;
    const whole = !rat.cmp(p.batches, rat.one) && way() === ways[0] && jar.selectedIndex <= 0;
    const [number, ...unit] = amount.typeset(making.makes(p)).split("\u00a0");
    makes.replaceChildren(...(whole ? madeAtFirst : [make("b", {}, number), unit.length ? " " + unit.join(" ") : ""]));
  };

  let later = 0;
  const say = (p) => {
    const [first, ...rest] = making.says(p).map(amount.typeset);
    work.textContent = rest.join(" ");
    clearTimeout(later);
    later = setTimeout(() => (now.textContent = first), 250); // not at every key
  };

  const apply = (source) => {
    const p = plan(), s = system();
    for (const a of amounts) (a.inStep ? inStep : inLine)(a, p, s);
    for (const line of fixed) line.classList.toggle("unscaled", Boolean(rat.cmp(p.total, rat.one)));
    for (const other of document.querySelectorAll(".way .batch")) other.hidden = Boolean(rat.cmp(p.making.factor, rat.one));
    showMakes(p);
    fill(source, p);
    return p;
  };
  const keep = () => {
    kept.set("scale", { batches: asked.join("/"), way: ways.indexOf(way()), jar: jar.selectedIndex });
    kept.setEverywhere("measures", system());
  };
  const changed = (source) => {
    say(apply(source));
    keep();
  };

  const ask = (field, toBatches) => {
    const n = amount.number(field.value);
    field.setAttribute("aria-invalid", n === null);
    if (n === null) {
      clearTimeout(later);
      if (field.value.trim()) now.textContent = "Write a number, as in 2, 1.5 or 1 1/2.";
      return;
    }
    asked = toBatches(n);
    changed(field);
  };
  const fromJars = (n) => rat.div(n, makings.get(way()).jars[jar.selectedIndex].high);
  // fromProduce lets what is nearly a quarter of a batch be one: nobody cooks a
  // last batch of a spoonful because a pound is not quite 454 g.
  const fromProduce = (n) => {
    const exact = rat.div(rat.div(n, perRecipe(haveUnit.value)), makings.get(way()).factor);
    const quarters = Math.round((Number(exact[0]) / Number(exact[1])) * 4), near = rat.div(rat.whole(quarters), rat.whole(4));
    const off = quarters ? Number(exact[0] * near[1]) / Number(exact[1] * near[0]) : 0;
    return Math.abs(off - 1) < 0.03 ? near : exact;
  };

  const step = (up) => {
    const p = plan(), n = p.batches, floor = rat.whole(n[0] / n[1]);
    const half = rat.parse("1/2"), under = rat.cmp(n, rat.one) < (up ? 0 : 1);
    if (under) asked = up ? rat.mul(n, rat.whole(2)) : rat.mul(n, half);
    else asked = rat.whole(up ? floor[0] + 1n : rat.cmp(n, floor) ? floor[0] : floor[0] - 1n);
    if (under && up && rat.cmp(asked, rat.one) > 0) asked = rat.one;
    const { smallest, largest } = p.making;
    asked = rat.cmp(asked, smallest) < 0 ? smallest : rat.cmp(asked, largest) > 0 ? largest : asked;
    changed(null);
  };

  const sizes = () => {
    const { jars: all } = makings.get(way());
    jar.replaceChildren(...all.map((j) => make("option", {}, jarName(j))));
    byId("jars-field").hidden = all.length === 0;
  };

  batches.addEventListener("input", () => ask(batches, (n) => n));
  jars.addEventListener("input", () => ask(jars, fromJars));
  jar.addEventListener("change", () => changed(null));
  have?.addEventListener("input", () => ask(have, fromProduce));
  haveUnit?.addEventListener("change", () => fill(null, plan()));
  byId("fewer").addEventListener("click", () => step(false));
  byId("more").addEventListener("click", () => step(true));
  for (const w of ways) w.addEventListener("change", () => (sizes(), changed(null)));
  for (const s of panel.querySelectorAll("[name=system]")) s.addEventListener("change", () => changed(null));
  document.addEventListener("altitude", () => {
    if (work.textContent) work.textContent = making.says(plan()).map(amount.typeset).slice(1).join(" ");
  });
  document.addEventListener("afresh", () => {
    asked = rat.one;
    if (ways[0].type === "radio") ways[0].checked = true;
    sizes();
    say(apply(null));
    kept.clear("scale");
  });

  const before = kept.get("scale"), measures = kept.everywhere("measures");
  if (before && ways[before.way]?.type === "radio") ways[before.way].checked = true;
  const chosen = panel.querySelector(`[name=system][value="${CSS.escape(measures ?? "")}"]`);
  if (chosen) chosen.checked = true;
  sizes();
  if (before) {
    asked = rat.parse(before.batches);
    if (jar.options[before.jar]) jar.selectedIndex = before.jar;
  }
  panel.hidden = false;
  const p = apply(null);
  if (before) say(p);
})();
