// Neighbouring code blocks in Rust, Python and JavaScript become tabs; the choice holds for the whole book.
(() => {
  const names = { rust: "Rust", python: "Python", js: "JavaScript" };
  const languageOf = (pre) => {
    const code = pre?.querySelector(":scope code");
    return Object.keys(names).find((name) => code?.classList.contains(`language-${name}`));
  };
  const stored = () => { try { return localStorage.getItem("language"); } catch { return null; } };
  const store = (name) => { try { localStorage.setItem("language", name); } catch { /* private window */ } };
  const groups = [];

  const show = (name) => {
    for (const tabs of groups) {
      const chosen = tabs.some((tab) => tab.name === name) ? name : tabs[0].name;
      for (const tab of tabs) {
        const on = tab.name === chosen;
        tab.button.setAttribute("aria-selected", on);
        tab.button.tabIndex = on ? 0 : -1;
        tab.panel.hidden = !on;
      }
    }
  };

  const group = (blocks, number) => {
    const box = document.createElement("div");
    const list = document.createElement("div");
    box.className = "tabs";
    list.setAttribute("role", "tablist");
    list.setAttribute("aria-label", "Language of the example");
    blocks[0].before(box);
    box.append(list);
    const tabs = blocks.map((panel) => {
      const name = languageOf(panel);
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = names[name];
      button.id = `tab-${number}-${name}`;
      button.setAttribute("role", "tab");
      panel.id ||= `example-${number}-${name}`;
      panel.setAttribute("role", "tabpanel");
      panel.setAttribute("aria-labelledby", button.id);
      button.setAttribute("aria-controls", panel.id);
      list.append(button);
      box.append(panel);
      return { name, button, panel };
    });
    tabs.forEach(({ name, button }, at) => {
      const choose = (to) => { store(to.name); show(to.name); to.button.focus({ preventScroll: true }); };
      button.addEventListener("click", () => choose(tabs[at]));
      button.addEventListener("keydown", (event) => {
        const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
        if (step) choose(tabs[(at + step + tabs.length) % tabs.length]);
      });
    });
    groups.push(tabs);
  };

  let run = [];
  const close = () => { if (run.length > 1) group(run, groups.length); run = []; };
  for (const element of [...document.querySelectorAll("main > *")]) {
    const language = element.tagName === "PRE" ? languageOf(element) : undefined;
    if (!language || run.some((block) => languageOf(block) === language)) close();
    if (language) run.push(element);
  }
  close();
  show(stored() ?? "rust");
})();
