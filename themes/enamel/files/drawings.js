// The reader's altitude in the pictures: its mark on each chart, and how long
// the processing takes in the day.
(() => {
  const { altitude, byId } = stillroom;
  if (!altitude) return;
  const all = (e, selector) => [...e.querySelectorAll(selector)];

  const marks = all(document, ".d-chart").map((chart) => {
    const mark = chart.querySelector(".d-here"), words = mark.lastChild;
    const put = (x, shown, text, anchor) => {
      mark.setAttribute("x", x);
      mark.setAttribute("display", shown);
      words.textContent = text;
      words.setAttribute("text-anchor", anchor);
    };
    const before = [mark.getAttribute("x"), mark.getAttribute("display") ?? "inline", words.textContent, words.getAttribute("text-anchor")];
    return (feet) => {
      all(chart, ".here").forEach((e) => e.classList.remove("here"));
      if (feet === null) return put(...before);
      const x = 4 + 92 * Math.min(feet / chart.dataset.top, 1);
      put(`${x}%`, "inline", `you, ${altitude.told()}`, x < 30 ? "start" : x > 70 ? "end" : "middle");
      for (const line of all(chart, ".d-figures"))
        [...line.children].find((e) => !e.dataset.to || feet <= e.dataset.to)?.classList.add("here");
    };
  });

  const day = byId("day");
  const box = day?.querySelector(".d-can"), later = day?.querySelector("g"), takes = later?.previousElementSibling;
  const first = day && [box.getAttribute("height"), later.getAttribute("transform"), takes.textContent];
  const clock = (m) => [m >= 60 && `${Math.floor(m / 60)} h`, m % 60 && `${m % 60} min`].filter(Boolean).join(" ");
  const spend = () => {
    const { way, jar, least, scale } = day.dataset;
    const minutes = altitude.minutes(byId(way), jar);
    const [high, shift, text] = minutes
      ? [minutes * scale, `translate(0 ${(minutes - least) * scale})`, `${clock(minutes)} at ${altitude.told()}`] : first;
    box.setAttribute("height", high);
    later.setAttribute("transform", shift);
    takes.textContent = text;
  };

  const show = () => {
    marks.forEach((mark) => mark(altitude.feet()));
    if (day) spend();
  };
  document.addEventListener("altitude", show);
  show();
})();
