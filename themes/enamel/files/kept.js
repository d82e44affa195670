// What a reader sets is kept in the browser alone, and is sent nowhere: for
// this page over two days, for all pages until it is changed.
(() => {
  const days = 2;
  const load = (key) => {
    try {
      return JSON.parse(localStorage.getItem(key));
    } catch {
      return null; // storage is closed to us, or holds what is not ours
    }
  };
  const save = (key, value) => {
    try {
      if (value === null) localStorage.removeItem(key);
      else localStorage.setItem(key, JSON.stringify(value));
    } catch {}
  };
  const page = "stillroom:" + location.pathname;
  let here = load(page);
  if (!here?.at || Date.now() - here.at > days * 24 * 60 * 60 * 1000) here = {};

  globalThis.stillroom = {
    kept: {
      get: (name) => here[name],
      set(name, value) {
        here = { ...here, [name]: value, at: Date.now() };
        save(page, here);
      },
      clear(...names) {
        for (const name of names) delete here[name];
        save(page, Object.keys(here).length > 1 ? here : null);
      },
      everywhere: (name) => load("stillroom:" + name),
      setEverywhere: (name, value) => save("stillroom:" + name, value),
    },
    byId: (id) => document.getElementById(id),
    // make builds an element; a string among its children is text.
    make(tag, attributes = {}, ...children) {
      const element = Object.assign(document.createElement(tag), attributes);
      element.append(...children);
      return element;
    },
    // hidden is text for those who hear the page.
    spoken: (text) => stillroom.make("span", { className: "spoken" }, text),
  };
})();
