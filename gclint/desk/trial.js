// Test cuts: planned, graded in a narrow window at the machine, learned from.
import { ask, choose, complain, h, placed, say, send, way } from "./tools.js";

export async function planView(view, here) {
  const cards = await ask("/api/cards");
  if (!here()) return;
  const inputs = {};
  const of = (key, label, given = {}) => {
    inputs[key] = given.choices ? h("select", { "data-key": key }, given.choices.map(([value, words]) => h("option", { value }, words)))
      : h("input", { type: "text", "data-key": key, value: given.value ?? "", placeholder: given.such ?? "", autocomplete: "off" });
    return h("label", { class: "field" }, h("span", { class: "asked" }, label), inputs[key]);
  };
  const out = h("div");
  const button = h("button", { class: "main" }, "Show what would be cut");
  const asked = () => ({
    folder: inputs.folder.value, material: inputs.material.value, like: "", tools: inputs.tools.value.includes(":") ? [inputs.tools.value.trim()] : inputs.tools.value.split(/[\s,]+/).filter(Boolean),
    blank: inputs.blank.value, cuts: Number(inputs.cuts.value) || 24, depth: inputs.depth.value.trim(),
  });
  button.addEventListener("click", async () => {
    button.disabled = true;
    out.replaceChildren(h("p", { class: "aside" }, "Each cut is being judged. This takes about a minute."));
    try {
      const given = asked();
      const made = await send("/api/plan", { ...given, confirm: null });
      if (!here()) return;
      table(made, given);
      say("");
    } catch (fault) { out.replaceChildren(h("p", { class: "wrong", role: "alert" }, fault.told ? placed(fault.told) : "The desk does not answer.")); }
    button.disabled = false;
  });
  function table(made, given) {
    const ticks = new Map();
    const rows = made.cuts.map((cut) => h("tr", {}, h("th", { scope: "row" }, String(cut.number)), h("td", {}, cut.words, cut.repeat ? `, like cut ${cut.repeat}` : ""),
      h("td", {}, cut.risky ? h("label", {}, tick(cut), ` may be made all the same: ${cut.risky}`) : "")));
    function tick(cut) { const made = h("input", { type: "checkbox" }); ticks.set(cut.number, made); return made; }
    const write = h("button", { class: "main", onclick: async () => {
      write.disabled = true;
      try {
        await send("/api/plan", { ...given, confirm: [...ticks].filter(([, each]) => each.checked).map(([number]) => number) });
        location.hash = way("grade", given.folder.trim());
      } catch (fault) { write.disabled = false; complain(fault); }
    } }, "Write program and sheet");
    out.replaceChildren(h("h2", {}, `${made.cuts.length} cuts`), made.notes.map((note) => h("p", { class: "aside" }, note)),
      h("p", {}, "A risky cut is left out of the program unless you tick it. Who ticks it stands beside the machine while it is made."),
      h("table", { class: "programs" }, h("thead", {}, h("tr", {}, ["Cut", "How", "Risky"].map((each) => h("th", {}, each)))), h("tbody", {}, rows)), write);
  }
  view.replaceChildren(h("section", { class: "sheet desk-sheet" }, h("a", { href: "#/", class: "up" }, "All programs"), h("h1", {}, "Plan test cuts"),
    h("p", {}, "Short grooves in a piece of the material, each at another feed or speed. You look at each and say what you see."),
    of("folder", "Folder for them, a new one", { value: "test-cuts" }),
    of("material", "Material", { choices: cards.materials.map((each) => [each.name, each.title]) }),
    of("tools", "Bit, by its number in the drawer (with no shop.toml: such as \"1: flat 6mm 2fl\")", { such: "1" }),
    of("blank", "The piece, and its lowest X and Y", { such: "200 x 100 x 18 mm at 0 0" }),
    h("div", { class: "row" }, of("cuts", "How many cuts", { value: "24" }), of("depth", "How deep (left open: gclint chooses)", { such: "1.2 mm" })),
    button, out));
}

export async function gradeView(view, name, here) {
  let told = await ask("/api/trial", { folder: name });
  if (!here()) return;
  const saved = [];
  let at = Math.max(0, told.cuts.findIndex((cut) => !cut.done)), scale = 0;
  const whole = h("section", { class: "sheet desk-sheet grade" });
  view.replaceChildren(whole);
  const undo = async () => {
    const last = saved.pop();
    if (!last) return;
    await save(last.number, last.fault, last.before, false);
    at = told.cuts.findIndex((cut) => cut.number === last.number); scale = told.scales.findIndex((each) => each.name === last.fault);
    draw();
  };
  async function save(number, fault, word, keep = true) {
    const cut = told.cuts.find((each) => each.number === number);
    const before = cut.said[fault];
    try {
      await send("/api/grade", { folder: name, cut: number, said: { [fault]: word }, seen: { [fault]: before } });
      if (keep) saved.push({ number, fault, before });
      cut.said[fault] = word;
      say(`Cut ${number}: ${fault} ${word || "taken back"}. Saved.`);
      return true;
    } catch (fault) { complain(fault); told = await ask("/api/trial", { folder: name }); draw(); return false; }
  }
  function draw() {
    const cut = told.cuts[at];
    if (!cut) { whole.replaceChildren(h("p", {}, "This plan has no cut that is made.")); return; }
    const asked = told.scales[scale];
    const done = told.cuts.filter((each) => told.scales.every((one) => each.said[one.name])).length;
    const go = (cuts, scales) => { at = Math.min(told.cuts.length - 1, Math.max(0, at + cuts)); scale = scales; draw(); };
    whole.replaceChildren(
      h("a", { href: "#/", class: "up" }, "All programs"), h("p", { class: "aside" }, `${done} of ${told.cuts.length} cuts graded`),
      h("h1", {}, `Cut ${cut.number}`), h("p", {}, `${cut.words}; it starts ${cut.place} of the lower left corner.`),
      h("h2", { id: "asks" }, asked.asks), h("p", { class: "aside" }, `${scale + 1} of ${told.scales.length}: ${asked.title}`),
      h("div", { class: "steps", role: "group", "aria-labelledby": "asks" }, asked.step.map((step) => h("button", {
        class: "step", "aria-pressed": String(cut.said[asked.name] === step.word), "data-word": step.word, onclick: async () => {
          if (!(await save(cut.number, asked.name, step.word)) || !here()) return;
          if (scale + 1 < told.scales.length) scale += 1; else { at = Math.min(told.cuts.length - 1, at + 1); scale = 0; }
          draw();
          whole.querySelector(".step").focus();
        },
      }, h("pre", { "aria-hidden": "true" }, step.drawing), h("b", {}, step.word), h("span", {}, step.means)))),
      h("div", { class: "buttons" }, h("button", { disabled: !saved.length, onclick: undo }, "Undo"),
        h("button", { onclick: () => (scale ? go(0, scale - 1) : go(-1, at ? told.scales.length - 1 : 0)) }, "Back"),
        h("button", { onclick: () => (scale + 1 < told.scales.length ? go(0, scale + 1) : go(1, 0)) }, "Skip"),
        h("a", { class: "as-button", href: way("learn", name) }, "What the cuts teach"),
        h("a", { class: "as-button", target: "_blank", rel: "noopener", href: `/sheet/grading?${new URLSearchParams({ folder: name })}` }, "Sheet on paper")));
  }
  draw();
}

export async function learnView(view, name, here) {
  const words = h("p", { class: "verdict" }, "What was seen is being weighed.");
  const buttons = h("div", { class: "buttons" });
  const frame = h("div", { class: "frames tall" });
  view.replaceChildren(h("div", { class: "program" }, h("div", { class: "program-head" }, h("a", { href: "#/", class: "up" }, "All programs"),
    h("h1", {}, "What the test cuts teach"), words, buttons), frame));
  const made = await send("/api/learn", { folder: name, write: false, yes: false });
  if (!here()) return;
  const put = (number) => frame.replaceChildren(h("iframe", { class: "sheet-frame loaded", title: "What the test cuts teach", src: `/sheet/kept?${new URLSearchParams({ number })}` }));
  put(made.number);
  words.textContent = made.writable.length ? `A window is known for tool ${made.writable.join(", ")} in ${made.material}.` : made.told.join(" ") || "No window is known yet.";
  if (!made.writable.length) { buttons.append(h("a", { class: "as-button", href: way("grade", name) }, "Grade more cuts")); return; }
  buttons.append(h("button", { class: "main", onclick: async (event) => {
    const button = event.target;
    button.disabled = true;
    try {
      let done;
      try { done = await send("/api/learn", { folder: name, write: true, yes: false }); } catch (fault) {
        if (fault.told?.kind !== "Above") throw fault;
        const answer = await choose("Above this folder", [`${made.shop} lies above the folder that is open here. Other jobs may use it.`], [["no", "Leave it as it is"], ["yes", "Write it there"]]);
        if (answer !== "yes") { button.disabled = false; return; }
        done = await send("/api/learn", { folder: name, write: true, yes: true });
      }
      words.textContent = done.told.join(" ");
    } catch (fault) { button.disabled = false; complain(fault); }
  } }, "Judge by it from now on"));
}
