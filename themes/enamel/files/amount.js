// Amounts for a larger or a smaller batch, as package build/amount writes them;
// a test compares the two, text for text. Numbers are exact fractions [n, d].
(() => {
  const gcd = (a, b) => (b ? gcd(b, a % b) : a);
  const rat = (n, d = 1n) => {
    const g = gcd(n, d) || 1n;
    return [n / g, d / g];
  };
  const mul = (a, b) => rat(a[0] * b[0], a[1] * b[1]);
  const div = (a, b) => rat(a[0] * b[1], a[1] * b[0]);
  const sub = (a, b) => rat(a[0] * b[1] - b[0] * a[1], a[1] * b[1]);
  const cmp = (a, b) => {
    const x = a[0] * b[1] - b[0] * a[1];
    return x < 0n ? -1 : x > 0n ? 1 : 0;
  };
  const whole = (n) => rat(BigInt(n));
  const floor = (a) => Number(a[0] / a[1]);
  const ceil = (a) => floor(a) + (a[1] > 1n ? 1 : 0);
  const isInt = (a) => a[1] === 1n;
  const one = whole(1);
  const none = whole(0);

  // parse reads 9/2 or 236.5882365.
  const parse = (s) => {
    const [top, below = "1"] = s.split("/");
    const [units, places = ""] = top.split(".");
    return rat(BigInt(units + places), 10n ** BigInt(places.length) * BigInt(below));
  };

  // Each unit of weight in grams, of volume in millilitres. What is not here is counted.
  const table = (kind, system, units) => Object.fromEntries(Object.entries(units).map(([u, size]) => [u, { kind, system, size: parse(size) }]));
  const units = {
    ...table("volume", "us", {
      tsp: "4.92892159375", tbsp: "14.78676478125", "fl oz": "29.5735295625", cup: "236.5882365", pint: "473.176473",
      quart: "946.352946", gallon: "3785.411784", peck: "8809.76754172", bushel: "35239.07016688",
    }),
    ...table("volume", "metric", { ml: "1", cl: "10", dl: "100", l: "1000" }),
    ...table("weight", "us", { oz: "28.349523125", lb: "453.59237" }),
    ...table("weight", "metric", { mg: "1/1000", g: "1", kg: "1000" }),
  };
  const unitOf = (way) => units[way.unit] ?? {};
  const is = (way, kind, system) => (!kind || unitOf(way).kind === kind) && (!system || unitOf(way).system === system);
  const convert = (n, from, to) => div(mul(n, units[from].size), units[to].size);

  // read reads what stands in a page's data: ways, the weight of a cup, marks.
  const read = (data) => {
    const [ways, grams, marks] = data.split("|");
    return {
      ways: ways.split(";").map(readWay),
      grams: grams ? parse(grams) : null,
      side: marks.includes("+") ? 1 : marks.includes("-") ? -1 : 0,
      pours: marks.includes("q"),
      spoons: marks.includes("s"),
    };
  };
  const readWay = (text) => {
    const space = (text + " ").indexOf(" ");
    const [low, high = low] = text.slice(0, space).split("..").map(parse);
    const [unit, many = unit] = text.slice(space + 1).split("/");
    return { low, high, unit, many };
  };

  // A measure is a rounded amount in words.
  const words = ({ number, unit, plus }) => [number, unit, plus].filter(Boolean).join(" ");
  const sameUnit = (a = "", b = "") => a === b || a + "s" === b || a + "es" === b;
  const span = (low, high) => {
    if (words(low) === words(high)) return words(low);
    if (low.plus || high.plus || !sameUnit(low.unit, high.unit)) return words(low) + " to " + words(high);
    const between = /[ /]/.test(low.number + high.number) ? " to " : "-";
    return words({ number: low.number + between + high.number, unit: high.unit });
  };

  const up = (x, low, high, side) => {
    if (side < 0 || cmp(x, whole(low)) === 0) return false;
    return side > 0 || cmp(x, rat(BigInt(low + high), 2n)) >= 0;
  };
  // rounded brings x to steps of [below, size].
  const rounded = (x, steps, side) => {
    const [, size] = steps.find(([below]) => cmp(x, whole(below)) < 0) ?? steps.at(-1);
    let n = floor(div(x, whole(size)));
    if (up(x, n * size, (n + 1) * size, side)) n++;
    return Math.max(n, 1) * size;
  };
  const mixed = (n, parts) => {
    const [top, below] = rat(BigInt(n % parts), BigInt(parts));
    const units = Math.floor(n / parts);
    if (!top) return String(units);
    return (units ? units + " " : "") + top + "/" + below;
  };
  const decimal = (n, parts) => String(Number((n / parts).toFixed(3)));

  // Volumes in US measures are counted in eighths of a teaspoon.
  const tsp = 8, tbsp = 24, cup = 384;
  const inSpoons = (at) => {
    const big = Math.floor(at / tbsp), small = at % tbsp;
    if (!big) return mixed(small, tsp) + " tsp";
    if (!small || small === tbsp / 2) return mixed((2 * at) / tbsp, 2) + " tbsp";
    return big + " tbsp + " + mixed(small, tsp) + " tsp";
  };
  const parts = ["1/8", "1/4", "1/3", "3/8", "1/2", "5/8", "2/3", "3/4", "7/8"].map((part) => ({ at: floor(mul(parse(part), whole(cup))), part, plus: "" }));
  const nothing = { at: 0, part: "", plus: "" };
  const spoons = [nothing];
  for (const [from, below, size] of [[1, 2 * tsp, 1], [2 * tsp, 2 * tbsp, 2], [2 * tbsp, cup / 4, 4]]) {
    for (let at = from; at < below; at += size) spoons.push({ at, part: "", plus: inSpoons(at) });
  }
  const withSpoons = (parts, ...spoonfuls) => [parts, ...spoonfuls.map((s) => parts.map((p) => ({ at: p.at + s, part: p.part, plus: inSpoons(s) })))].flat();
  const ladder = (...given) => {
    const all = new Map();
    for (const r of given.flat()) if (r.at < cup && !all.has(r.at)) all.set(r.at, r);
    return [...all.values()].sort((a, b) => a.at - b.at);
  };
  const below1 = ladder(spoons, withSpoons(parts.slice(1), tbsp, 2 * tbsp, tsp, 2 * tsp));
  const below4 = ladder([nothing, { at: tbsp, part: "", plus: "1 tbsp" }], withSpoons(parts, tbsp));
  const below16 = ladder([nothing], parts);
  const below32 = ladder([nothing, parts[1], parts[4], parts[7]]);
  const beyond = ladder([nothing, parts[4]]);
  const ladderFor = (n, inQuarts) => (n < 1 ? below1 : n < 4 ? below4 : n < 16 ? below16 : inQuarts ? [nothing] : n < 32 ? below32 : beyond);

  const climb = (x, rungs, side) => {
    const i = rungs.findLastIndex((r) => cmp(x, whole(r.at)) >= 0);
    const next = rungs[i + 1] ?? { ...nothing, at: cup };
    return up(x, rungs[i].at, next.at, side) ? next : rungs[i];
  };
  const cups = (n, unit, a) => {
    const x = mul(convert(n, unit, "tsp"), whole(tsp));
    let full = floor(div(x, whole(cup)));
    const large = a.pours || ["pint", "quart", "gallon"].includes(unit);
    const rest = sub(x, whole(full * cup));
    let r = ladderFor(Math.min(full, 1)).find((r) => cmp(rest, whole(r.at)) === 0) ?? climb(rest, ladderFor(full, large), a.side);
    if (r.at === cup) [full, r] = [full + 1, nothing];
    if (!full && !r.at) return { unit: "a pinch" };
    if (!full && !r.part) return { number: r.plus };
    if (full >= 4 && !r.at && large) return quarts(full, unit);
    return {
      number: [full || "", r.part].filter(Boolean).join(" "),
      unit: !full || (full === 1 && !r.part) ? "cup" : "cups",
      plus: r.plus && "+ " + r.plus,
    };
  };
  const quarts = (n, unit) => {
    if (unit === "gallon" && n >= 16 && n % 4 === 0) return { number: mixed(n, 16), unit: n === 16 ? "gallon" : "gallons" };
    return { number: mixed(n, 4), unit: n === 4 ? "quart" : "quarts" };
  };

  const ounceSteps = [[16, 1], [32, 2], [128, 4], [1280, 8], [5120, 32], [12800, 64], [Infinity, 128]];
  const gramSteps = [[20, 1], [200, 2], [1000, 10], [2000, 20], [20000, 100], [Infinity, 200]];
  const millilitreSteps = [[10, 1], [40, 2], [200, 4], [1000, 20], [4000, 40], [40000, 200], [Infinity, 400]];
  const ounces = (n, side) => {
    const x = isInt(n) ? Number(n[0]) * 8 : rounded(mul(n, whole(8)), finite(ounceSteps), side);
    if (x < 128) return { number: mixed(x, 8), unit: "oz" };
    if (x % 32 === 0) return { number: mixed(x, 128), unit: "lb" };
    return { number: String(Math.floor(x / 128)), unit: "lb", plus: mixed(x % 128, 8) + " oz" };
  };
  const finite = (steps) => steps.map(([below, size]) => [below === Infinity ? Number.MAX_SAFE_INTEGER : below, size]);
  const metric = (n, exact, steps, parts, side, unit, thousand) => {
    const x = mul(n, whole(parts));
    const at = exact && isInt(n) ? floor(x) : rounded(x, finite(steps), side);
    return at < 1000 * parts ? { number: decimal(at, parts), unit } : { number: decimal(at, 1000 * parts), unit: thousand };
  };
  const grams = (n, exact, side) => metric(n, exact, gramSteps, 2, side, "g", "kg");
  const millilitres = (n, exact, side) => metric(n, exact, millilitreSteps, 4, side, "ml", "l");

  const counted = (n, way, side) => {
    const x = mul(n, whole(12));
    const at = cmp(x, whole(120)) >= 0 ? rounded(x, [[0, 12]], side) : part(x, side);
    return { number: mixed(at, 12), unit: at > 12 ? way.many : way.unit };
  };
  const part = (x, side) => {
    const full = floor(div(x, whole(12))) * 12;
    const marks = [0, 3, 4, 6, 8, 9, 12];
    const i = marks.findIndex((m) => cmp(x, whole(full + m)) < 0);
    const low = full + marks[i - 1], high = full + marks[i];
    return Math.max(up(x, low, high, side) ? high : low, 3);
  };

  const isMetric = (system) => system === "metric" || system === "weight";
  const weighs = (a, way, system) => {
    const spoon = way.unit === "tsp" || way.unit === "tbsp";
    return a.grams && (system === "weight" || (system === "metric" && is(way, "", "us") && !spoon && !a.pours));
  };
  const shown = (a, n, way, factor, system) => {
    n = mul(n, factor);
    const own = is(way, "", "metric");
    const inMetric = own ? system !== "us" : isMetric(system);
    switch (unitOf(way).kind) {
      case "volume":
        if (weighs(a, way, system)) return grams(mul(convert(n, way.unit, "cup"), a.grams), false, a.side);
        if (inMetric) return millilitres(convert(n, way.unit, "ml"), own, a.side);
        if (way.unit === "peck" || way.unit === "bushel") return counted(n, { unit: way.unit, many: way.unit + "s" }, a.side);
        return cups(n, way.unit, a);
      case "weight":
        if (own && !inMetric && a.spoons && a.grams) return cups(div(convert(n, way.unit, "g"), a.grams), "cup", a);
        if (inMetric) return grams(convert(n, way.unit, "g"), own, a.side);
        return ounces(convert(n, way.unit, "oz"), a.side);
    }
    return counted(n, way, a.side);
  };
  const writeWay = (a, way, factor, system) => {
    const low = shown(a, way.low, way, factor, system);
    return cmp(way.low, way.high) ? span(low, shown(a, way.high, way, factor, system)) : words(low);
  };

  const wanted = {
    us: [["", "us"]],
    metric: [["", "metric"], ["weight"]],
    weight: [["weight", "metric"], ["weight"]],
  };
  const choose = (a, system) => {
    for (const want of wanted[system] ?? []) {
      const way = a.ways.find((w) => is(w, ...want));
      if (way) return way;
    }
    return a.ways[0];
  };
  // keeps reports whether the words of the recipe are left as they are.
  const keeps = (a, factor, system) => {
    const way = choose(a, system);
    const needs = { us: is(way, "", "metric"), metric: is(way, "", "us"), weight: is(way, "", "us") || is(way, "volume") };
    return way === a.ways[0] && !cmp(factor, one) && !needs[system];
  };
  const write = (a, factor, system) => writeWay(a, choose(a, system), factor, system);
  const also = (a, factor) => {
    const [first, ...rest] = a.ways;
    if (rest.length) return rest.map((way) => writeWay(a, way, factor, "written")).join(", ");
    if (first.unit === "tsp" || first.unit === "tbsp" || !unitOf(first).kind) return "";
    return writeWay(a, first, factor, is(first, "", "metric") ? "us" : "metric");
  };

  // A plan is a number of batches of a making, worked out.
  const plan = (making, asked, jar, minutes) => {
    const { smallest, largest, apart, factor } = making;
    const batches = cmp(asked, smallest) < 0 ? smallest : cmp(asked, largest) > 0 ? largest : asked;
    const p = { making, batches, jar: making.jars[jar], full: 0, rest: none, outside: batches !== asked };
    p.minutes = minutes || p.jar?.minutes || 0;
    if (apart && cmp(batches, one) > 0) {
      p.full = floor(batches);
      p.rest = sub(batches, whole(p.full));
    }
    p.total = mul(batches, factor);
    p.pot = p.full ? factor : p.total;
    p.last = mul(p.rest, factor);
    return p;
  };
  const fraction = (n) => mixed(Number(n[0]), Number(n[1]));
  const odd = (n) => n[1] > 8n;
  const batchesOf = (n) => {
    if (cmp(n, one) > 0) return fraction(n) + " batches";
    return odd(n) ? "a smaller batch" : fraction(n) + " batch";
  };
  const nearest = (n, parts) => mixed(rounded(mul(n, whole(parts)), [[0, 1]], 0), parts);
  const times = (n) => (odd(n) ? "about " + nearest(n, 4) : fraction(n)) + " times the recipe";
  const makes = ({ making, batches, total, jar }) => {
    const about = (yes) => (yes ? "about " : "");
    if (making.yield) {
      const a = read(making.yield);
      return about(making.about) + (cmp(total, one) ? write(a, total, "written") : making.yields);
    }
    if (!jar) return "";
    const low = mul(jar.low, batches), high = mul(jar.high, batches);
    const rough = [low, high].some((n) => !isInt(mul(n, whole(2))));
    const unit = ["1", "1/2"].includes(nearest(high, 2)) ? jar.one : jar.many;
    return about(making.about || rough) + span({ number: nearest(low, 2), unit }, { number: nearest(high, 2), unit });
  };
  const size = ({ making, batches, full, rest, total }) => {
    if (!full && cmp(batches, one) > 0) return times(total);
    let s = batchesOf(batches);
    if (rest[0]) s = full + " full batch" + (full > 1 ? "es" : "") + " and a smaller one";
    if (cmp(making.factor, one)) s += " of " + times(making.factor);
    if (full) s += ", each cooked " + (making.canned ? "and canned " : "") + "on its own";
    return s;
  };
  const pots = ({ batches, full, rest }) => (!full ? [batches] : rest[0] ? [one, rest] : [one]);
  const partJar = (p) => p.jar && !cmp(p.jar.low, p.jar.high) && pots(p).some((b) => !isInt(mul(p.jar.high, b)));
  const countLoads = (p) => {
    let loads = 0, waiting = 0;
    if (p.jar?.load) {
      pots(p).forEach((b, i) => {
        const each = ceil(div(mul(p.jar.high, b), whole(p.jar.load)));
        const n = i || !p.full ? 1 : p.full;
        loads += n * each;
        waiting += n * (each - 1);
      });
    }
    return { loads, waiting };
  };
  const hours = (m) => [m >= 60 && Math.floor(m / 60) + " h", (m % 60 || m < 60) && (m % 60) + " min"].filter(Boolean).join(" ");
  const time = (p) => {
    if (!p.making.minutes || (!p.full && cmp(p.batches, one) > 0)) return "";
    const n = Math.max(p.full, 1) + (p.rest[0] ? 1 : 0);
    return hours(n * p.making.minutes + countLoads(p).waiting * p.minutes);
  };
  const says = (p) => {
    const made = makes(p), { loads } = countLoads(p), spent = time(p);
    return [
      "Amounts now for " + (made && made + ": ") + size(p) + ".",
      p.outside && `This recipe is offered for ${fraction(p.making.smallest)} to ${batchesOf(p.making.largest)}.`,
      p.making.canned && partJar(p) && "What does not fill a jar goes in the refrigerator.",
      loads && `${loads} canner load${loads > 1 ? "s" : ""} of up to ${p.jar.load} ${p.jar.many}.`,
      spent && `About ${spent} in the kitchen.`,
    ].filter(Boolean);
  };

  // readMaking reads the JSON of a page.
  const readMaking = (m) => ({
    ...m,
    factor: parse(m.factor),
    smallest: parse(m.smallest),
    largest: parse(m.largest),
    jars: (m.jars ?? []).map((j) => ({ ...j, low: parse(j.low), high: parse(j.high) })),
  });

  // number reads what a reader types: 3, 1 1/2, ½, 2.5. It gives null for what is none.
  const signs = { "½": "1/2", "¼": "1/4", "¾": "3/4", "⅓": "1/3", "⅔": "2/3", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8" };
  const number = (text) => {
    const plain = text.replace(/[½¼¾⅓⅔⅛⅜⅝⅞]/g, (s) => " " + signs[s]).trim();
    const m = /^(?:(\d{1,6}(?:\.\d{1,4})?)|(?:(\d{1,6})\s+)?(\d{1,3})\s*[/⁄]\s*(\d{1,3}))$/.exec(plain);
    if (!m || m[4] === "0" || Number(m[4]) === 0) return null;
    const n = m[1] ? parse(m[1]) : rat(BigInt(m[2] ?? 0) * BigInt(m[4]) + BigInt(m[3]), BigInt(m[4]));
    return n[0] ? n : null;
  };

  // typeset gives an amount as a printer would set it, as typeset.go does.
  const set = { "1/2": "½", "1/4": "¼", "3/4": "¾" };
  const typeset = (s) =>
    s
      .replace(/(\d )?\b(1\/2|1\/4|3\/4)\b/g, (_, units, f) => (units ?? "").trim() + set[f])
      .replace(/([0-9½¼¾]) ?- ?([0-9½¼¾])/g, "$1–$2")
      .replace(/([0-9½¼¾]) ([\p{L}°%])/gu, "$1\u00a0$2")
      .replaceAll("\u00a0to ", " to ");

  Object.assign((globalThis.stillroom ??= {}), {
    rat: { parse, mul, div, cmp, whole, one, fraction },
    amount: { read, keeps, write, also, typeset, number, convert, units },
    making: { read: readMaking, plan, says, makes },
  });
})();
