// At the stove: large type, things to tick off, clocks that ring. All of it
// comes back after a reload.
(() => {
  const { kept, byId, make, spoken } = stillroom;
  const root = document.documentElement, cook = byId("cook");
  if (!cook) return;

  // Large type, and the screen kept awake where the browser can.
  let lock = null;
  const awake = make("span", { className: "awake" });
  awake.setAttribute("role", "status");
  const stayAwake = async () => {
    const wanted = root.classList.contains("cooking") || timers.length > 0;
    if (!wanted) await lock?.release().catch(() => {});
    else if ((!lock || lock.released) && document.visibilityState === "visible") {
      lock = await navigator.wakeLock?.request("screen").catch(() => null);
    }
    awake.textContent = wanted && lock && !lock.released ? "The screen stays on." : "";
  };
  const setCooking = (on) => {
    root.classList.toggle("cooking", on);
    cook.setAttribute("aria-pressed", on);
    stayAwake();
  };
  cook.addEventListener("click", () => {
    const on = !root.classList.contains("cooking");
    setCooking(on);
    kept.set("cooking", on);
  });
  document.addEventListener("visibilitychange", stayAwake);

  // Ticks.
  const lines = [...document.querySelectorAll(".ledger li")], steps = [...document.querySelectorAll(".method li[id]")];
  const tick = (item, name, i) => {
    const box = make("input", { type: "checkbox", className: "tick" });
    box.setAttribute("aria-label", name);
    box.checked = Boolean(kept.get("ticks")?.includes(i));
    const show = () => item.classList.toggle("done", box.checked);
    box.addEventListener("change", () => {
      show();
      kept.set("ticks", boxes.flatMap((b, n) => (b.checked ? [n] : [])));
    });
    item.prepend(box);
    show();
    return box;
  };
  const boxes = [
    ...lines.map((line, i) => tick(line, "Ready: " + line.textContent.trim(), i)),
    ...steps.map((step, i) => tick(step, `Step ${step.id.replace("step-", "")} done`, lines.length + i)),
  ];
  byId("afresh").addEventListener("click", () => {
    for (const box of boxes) box.checked = false;
    for (const item of [...lines, ...steps]) item.classList.remove("done");
    kept.clear("ticks");
    document.dispatchEvent(new Event("afresh"));
  });

  // Timers: {name, seconds, end, left, process, rung}. One that is paused has
  // left in place of end, in milliseconds both.
  let timers = (kept.get("timers") ?? []).map((t) => ({ ...t, rung: 0 }));
  const section = byId("timers"), list = section.querySelector("ul"), alarm = byId("alarm"), title = document.title;
  const leftOf = (t) => (t.end ? t.end - Date.now() : t.left);
  const clock = (ms) => {
    const s = Math.max(Math.ceil(ms / 1000), 0), pad = (n) => String(n).padStart(2, "0");
    return (s >= 3600 ? Math.floor(s / 3600) + ":" + pad(Math.floor((s % 3600) / 60)) : Math.floor(s / 60)) + ":" + pad(s % 60);
  };

  const control = (label, name, act) => {
    const button = make("button", { type: "button" }, label, spoken(" " + name));
    button.addEventListener("click", act);
    return button;
  };
  const keepTimers = () => {
    kept.set("timers", timers.map(({ name, seconds, end, left, process }) => ({ name, seconds, end, left, process })));
    stayAwake();
  };
  const redo = (t, change) => () => {
    Object.assign(t, change(t), { rung: 0 });
    label(t);
    beat();
    keepTimers();
  };
  // A processing time is never stopped and taken up again: where the boil or
  // the pressure is lost the whole time is counted anew.
  const label = (t) => {
    if (t.pause) t.pause.firstChild.data = t.end ? "Pause" : "Go on";
  };
  const hang = (t) => {
    t.face = make("span", { className: "face" });
    t.face.setAttribute("role", "timer");
    t.face.setAttribute("aria-live", "off");
    t.face.setAttribute("aria-label", t.name);
    const again = () => ({ end: Date.now() + t.seconds * 1000, left: undefined });
    const pause = () => (t.end ? { left: leftOf(t), end: undefined } : { end: Date.now() + t.left, left: undefined });
    const longer = () => (t.end ? { end: Math.max(t.end, Date.now()) + 60_000 } : { left: t.left + 60_000 });
    if (!t.process) t.pause = control("Pause", t.name, redo(t, pause));
    const stop = control("Stop", t.name, () => {
      timers = timers.filter((other) => other !== t);
      t.item.remove();
      if (!timers.some((other) => other.rung)) alarm.textContent = "";
      keepTimers();
      beat();
      section.hidden = timers.length === 0;
      (list.querySelector("button") ?? t.opener ?? cook).focus();
    });
    const controls = [t.pause ?? control("Start again", t.name, redo(t, again)), control("+1 min", t.name, redo(t, longer)), stop];
    t.item = make("li", {}, make("b", {}, t.name), t.face, make("span", { className: "controls" }, ...controls));
    list.append(t.item);
    label(t);
    section.hidden = false;
  };

  // The alarm is three seconds of sound, made here; it comes again until the
  // reader stops it, ten times at most.
  const rings = 10, between = 20_000;
  let sound = null;
  const wake = () => {
    sound ??= globalThis.AudioContext && new AudioContext();
    if (sound?.state === "suspended") sound.resume().catch(() => {});
  };
  const ring = () => {
    wake();
    if (!sound) return;
    const gain = sound.createGain(), tone = sound.createOscillator(), now = sound.currentTime;
    gain.gain.value = 0;
    for (let i = 0; i < 6; i++) {
      gain.gain.setValueAtTime(0.3, now + i / 2);
      gain.gain.setValueAtTime(0, now + i / 2 + 0.3);
    }
    tone.frequency.value = 880;
    tone.connect(gain).connect(sound.destination);
    tone.start(now);
    tone.stop(now + 2.9);
  };

  const beat = () => {
    for (const t of timers) {
      const left = leftOf(t), up = left <= 0;
      t.face.textContent = up ? "Time is up" : clock(left);
      t.item.classList.toggle("rings", up);
      if (up && t.rung < rings && -left >= t.rung * between) {
        t.rung = Math.floor(-left / between) + 1;
        alarm.textContent = `Time is up: ${t.name}.`;
        ring();
      }
    }
    const running = timers.map(leftOf).filter((left) => left > 0);
    document.title = timers.length ? `${running.length ? clock(Math.min(...running)) : "Time is up"} · ${title}` : title;
  };
  const begin = (name, seconds, opener, process = false) => {
    wake();
    const t = { name, seconds, end: Date.now() + seconds * 1000, process, rung: 0, opener };
    timers.push(t);
    hang(t);
    beat();
    keepTimers();
  };

  // Beside each step, a button for each of its times.
  const seconds = (iso) => {
    const [, h = 0, m = 0, s = 0] = /^PT(?:(\d+)H)?(?:(\d+)M)?(?:(\d+)S)?$/.exec(iso) ?? [];
    return h * 3600 + m * 60 + Number(s);
  };
  for (const step of steps) {
    const times = [...step.querySelectorAll("time[datetime]")].filter((time) => seconds(time.dateTime));
    if (!times.length) continue;
    const name = "Step " + step.id.replace("step-", "");
    step.append(
      make("span", { className: "clocks" }, ...times.map((time) => {
        const button = make("button", { type: "button" }, "Timer: " + time.textContent, spoken(" " + name));
        button.addEventListener("click", () => begin(`${name}, ${time.textContent}`, seconds(time.dateTime), button));
        return button;
      })),
    );
  }

  // The processing clock, which the reader starts at the boil or at pressure.
  for (const run of document.querySelectorAll(".run")) {
    const way = run.closest(".way"), jar = run.querySelector("select"), button = run.querySelector("button"), said = run.querySelector("p");
    const words = button.textContent;
    const beside = [...document.querySelectorAll(`[data-process="${way.id}"]`)].map((step) => {
      const copy = make("button", { type: "button" });
      step.append(make("span", { className: "clocks" }, copy));
      return copy;
    });
    const show = () => {
      const known = stillroom.altitude?.known(), minutes = known ? stillroom.altitude.minutes(way, jar.value) : 0;
      const pressures = minutes ? stillroom.altitude.pressures(way, jar.value) : "";
      for (const b of [button, ...beside]) {
        b.textContent = minutes ? `${words}: start ${minutes} min, ${jar.value}` : words;
        b.setAttribute("aria-disabled", Boolean(known && !minutes));
      }
      said.textContent = !known ? "Set your altitude first." : minutes ? `At ${stillroom.altitude.told()}${pressures && ", " + pressures}.` : "No time is published for this jar at your altitude.";
    };
    for (const b of [button, ...beside]) {
      b.addEventListener("click", () => {
        const minutes = stillroom.altitude?.minutes(way, jar.value);
        if (minutes) begin(`Processing, ${jar.value}, ${minutes} min`, minutes * 60, b, true);
        else if (!stillroom.altitude?.known()) byId("altitude")?.focus();
      });
    }
    const filled = byId("jar"); // what the reader fills is what is processed
    const follow = () => {
      if ([...jar.options].some((o) => o.value === filled?.value)) jar.value = filled.value;
      show();
    };
    filled?.addEventListener("change", follow);
    jar.addEventListener("change", show);
    document.addEventListener("altitude", show);
    run.hidden = false;
    follow();
  }

  byId("stove").append(awake);
  byId("stove").hidden = false;
  timers.forEach(hang);
  setCooking(Boolean(kept.get("cooking")));
  beat();
  setInterval(beat, 500);
})();
