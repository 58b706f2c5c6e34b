// The desk's page: the folder, and a program with its declarations beside its sheet.
import { bit, drawPath, mm, text as asText } from "./draw.js";
import { answered, ask, choose, complain, h, placed, Refused, say, send, TOKEN, way } from "./tools.js";
import { gradeView, learnView, planView } from "./trial.js";

const view = document.getElementById("view");

// --- light or dark

const theme = document.getElementById("theme");
function show(kept) {
  if (kept) document.documentElement.dataset.theme = kept; else delete document.documentElement.dataset.theme;
}
theme.value = localStorage.getItem("gclint-theme") ?? "";
show(theme.value);
theme.addEventListener("change", () => {
  localStorage.setItem("gclint-theme", theme.value);
  show(theme.value);
  document.querySelector("iframe.sheet-frame")?.contentWindow.location.reload();
});
document.documentElement.classList.add("scripted");

// --- the folder

const WORST = ["halt", "change", "consider"];
const weight = (row) => {
  if (row.problem) return -1;
  const place = row.counts.findIndex((each) => WORST.includes(each.grade) && each.count);
  return place < 0 ? 9 : WORST.indexOf(row.counts[place].grade);
};

async function folderView(here) {
  const rows = h("tbody");
  const note = h("p", { class: "aside" });
  const chooser = h("input", { type: "file", multiple: true, class: "unseen", id: "chooser", "aria-label": "Choose programs" });
  const drop = h("div", { class: "drop" },
    h("p", {}, "Drop a program here, or ", h("label", { for: "chooser", class: "as-button" }, "choose one"), chooser, "."),
    h("p", { class: "aside" }, "A copy is kept in this folder, over nothing that is there. Nothing leaves this machine."));
  chooser.addEventListener("change", () => take([...chooser.files]));
  for (const name of ["dragenter", "dragover"]) drop.addEventListener(name, (event) => { event.preventDefault(); drop.classList.add("over"); });
  drop.addEventListener("dragleave", () => drop.classList.remove("over"));
  drop.addEventListener("drop", (event) => { event.preventDefault(); drop.classList.remove("over"); take([...event.dataTransfer.files]); });
  async function take(files) {
    let last = null;
    for (const file of files) {
      try {
        say(`Taking ${file.name}`);
        const reply = await fetch(`/api/drop?${new URLSearchParams({ name: file.name })}`, {
          method: "POST", headers: { "x-desk-token": TOKEN, "content-type": "application/octet-stream" }, body: file,
        });
        last = await answered(reply);
        say(last.renamed ? `There is another ${file.name} here already, which stays as it is; this one is kept as ${last.name}.` : `${last.name} is here.`);
      } catch (fault) { complain(fault); }
    }
    if (last && files.length === 1) location.hash = way("program", last.name);
    else if (last) route();
  }
  const trials = h("ul", { class: "plain" });
  view.replaceChildren(
    h("section", { class: "sheet desk-sheet" },
      h("h1", {}, "Programs of this folder"), drop,
      h("table", { class: "programs" },
        h("thead", {}, h("tr", {}, h("th", {}, "Program"), h("th", {}, "What was found"), h("th", {}, "Time"))), rows),
      note,
      h("h2", {}, "Test cuts"),
      h("p", {}, "Which feeds and speeds a bit of yours can run in a material is learned from test cuts in a piece of it."),
      trials, h("p", {}, h("a", { class: "as-button", href: way("plan") }, "Plan test cuts"))));
  const list = await ask("/api/folder");
  if (!here()) return;
  for (const name of list.trials) {
    trials.append(h("li", {}, h("b", {}, name === "." ? "in this folder" : name), " ",
      h("a", { href: way("grade", name) }, "grade the cuts"), " ", h("a", { href: way("learn", name) }, "see what they teach")));
  }
  const notes = [];
  if (!list.programs.length) notes.push("No program is here yet.");
  if (list.more) notes.push(`${list.more} more programs are here than are listed; open a smaller folder for those.`);
  if (list.unnamed) notes.push(`${list.unnamed} have names that are no plain text, and are left out; rename them.`);
  if (list.left.length) notes.push(`Left out: ${list.left.join("; ")}.`);
  note.textContent = notes.join(" ");
  const lines = list.programs.map((name) => {
    const line = h("tr", {}, h("th", { scope: "row" }, h("a", { href: way("program", name) }, name)),
      h("td", { class: "aside" }, "being checked"), h("td"));
    rows.append(line);
    return { name, line };
  });
  const checked = [];
  const waiting = [...lines];
  async function next() {
    for (let each = waiting.shift(); each && here(); each = waiting.shift()) {
      let row;
      try { row = await ask("/api/row", { name: each.name }); } catch (fault) {
        if (!(fault instanceof Refused)) { complain(fault); return; }
        row = { problem: placed(fault.told) };
      }
      fill(each.line, row);
      checked.push([weight(row), each]);
      const place = checked.filter(([other]) => other <= weight(row)).length - 1;
      checked.sort((a, b) => a[0] - b[0]);
      const before = checked[place + 1]?.[1].line ?? lines.find((one) => waiting.includes(one))?.line;
      if (before && before !== each.line) rows.insertBefore(each.line, before);
      rows.dataset.left = String(waiting.length);
    }
  }
  await Promise.all([next(), next()]);
  if (here()) rows.dataset.done = "";
}

function counts(row) {
  return h("ul", { class: "marks" }, row.counts.filter((each) => each.count && WORST.includes(each.grade)).map((each) =>
    h("li", { class: `g-${each.grade}` }, h("span", { class: "mark", "aria-hidden": "true" }), `${each.count} ${each.words}`)));
}

function fill(line, row) {
  const [, found, time] = line.children;
  found.className = "";
  if (row.problem) { found.replaceChildren(h("span", { class: "wrong" }, row.problem)); return; }
  found.replaceChildren(counts(row), weight(row) === 9 ? h("span", {}, "nothing by what could be judged") : "");
  time.textContent = row.time.split(",")[0];
}

// --- a program

const SHAPES = ["flat", "ball", "bull-nose", "v", "tapered-ball", "drill", "facing", "burr", "drag", "form", "t-slot", "thread-mill"];
const HELICES = ["up-cut", "down-cut", "compression", "straight"];
const HOLDS = ["vacuum", "tape", "screws", "clamps", "vise", "tabs", "skin"];
const MADE_OF = ["carbide", "hss", "carbide-tipped"];

const at = (values, key) => key.reduce((from, part) => (from === null || from === undefined ? undefined : from[part]), values);

class Program {
  constructor(name, here) {
    this.name = name; this.here = here; this.saved = []; this.fields = new Map(); this.yes = {}; this.queue = Promise.resolve();
    this.saving = 0; this.turn = 0; // what is being saved, and how often anything was: a look at the disk in between counts for nothing
  }

  async open() {
    this.verdict = h("p", { class: "verdict" }, "Being checked");
    this.undo = h("button", { disabled: true, onclick: () => this.after(() => this.back()) }, "Take back the last save");
    this.frame = h("div", { class: "frames" });
    this.form = h("div", { class: "form" });
    this.files = h("p", { class: "aside files" });
    const tab = (name, label) => h("button", { "aria-pressed": String(name === "sheet"), "data-tab": name, onclick: () => this.tab(name) }, label);
    this.tabs = h("div", { class: "tabs", role: "group", "aria-label": "What is shown" }, tab("sheet", "Sheet"), tab("declare", "Declare"));
    this.whole = h("div", { class: "program", "data-tab": "sheet" },
      h("div", { class: "program-head" },
        h("a", { href: "#/", class: "up" }, "All programs"), h("h1", {}, this.name), this.verdict,
        h("div", { class: "buttons" },
          h("a", { class: "as-button", href: way("mend", this.name) }, "Mend"),
          h("a", { class: "as-button", href: way("compare", this.name) }, "Compare"),
          h("a", { class: "as-button", target: "_blank", rel: "noopener", href: `/sheet/check?${new URLSearchParams({ name: this.name, for: "operator" })}` }, "Sheet for the machine"),
          this.undo), this.tabs),
      h("div", { class: "panes" },
        h("section", { class: "declare", "aria-label": "What gclint needs to know" }, this.form, this.files),
        h("section", { class: "shown", "aria-label": "The sheet" }, this.frame)));
    view.replaceChildren(this.whole);
    [this.cards, this.state] = await Promise.all([ask("/api/cards"), ask("/api/state", { name: this.name })]);
    if (!this.here()) return;
    await this.follow();
    this.watch();
  }

  tab(name) {
    this.whole.dataset.tab = name;
    for (const each of this.tabs.children) each.setAttribute("aria-pressed", String(each.dataset.tab === name));
  }

  // Judges anew, and puts sheet and questions in place of those that stood there.
  async follow() {
    this.whole.setAttribute("aria-busy", "true");
    try {
      this.result = await ask("/api/program", { name: this.name });
      this.wrong = null;
    } catch (fault) {
      if (!(fault instanceof Refused)) throw fault;
      this.wrong = fault.told;
    }
    if (!this.here()) return;
    this.whole.removeAttribute("aria-busy");
    this.verdict.replaceChildren(this.wrong ? h("span", { class: "wrong" }, `Not checked: ${placed(this.wrong)}`) : this.result.row.verdict.replace(/ This sheet is no promise.*$/, "").replace("; see its page", "; the sheet lists them"));
    this.sheet();
    this.questions();
    this.whole.dataset.followed = String(Number(this.whole.dataset.followed ?? 0) + 1);
  }

  sheet() {
    const before = this.frame.querySelector("iframe");
    const frame = h("iframe", { class: "sheet-frame", title: `The sheet of ${this.name}`, src: `/sheet/check?${new URLSearchParams({ name: this.name })}` });
    frame.addEventListener("load", () => {
      if (before?.isConnected) {
        const seen = before.contentWindow?.scrollY ?? 0;
        before.remove();
        frame.contentWindow.scrollTo(0, seen);
      }
      frame.classList.add("loaded");
    });
    this.frame.append(frame);
    for (const old of [...this.frame.children].slice(0, -2)) old.remove();
  }

  values(which) { return this.state[which].values; }

  // One change after the other; each goes with the fingerprint of what is shown.
  save(which, changes, field = null) {
    return this.after(() => this.saveNow(which, changes, field));
  }

  after(work) {
    this.saving += 1;
    this.queue = this.queue.then(work).catch(complain).finally(() => { this.saving -= 1; this.turn += 1; });
    return this.queue;
  }

  async saveNow(which, changes, field) {
    const file = this.state[which];
    if (!file.within && !this.yes[which]) {
      const answer = await choose("Above this folder", [`${file.name} lies above the folder that is open here. Other jobs may use it.`],
        [["no", "Leave it as it is"], ["yes", "Change it"]]);
      if (answer !== "yes") { await this.reload(); return; }
      this.yes[which] = true;
    }
    let made;
    try {
      made = await send("/api/save", { name: this.name, which, seen: file.fingerprint, changes, yes: this.yes[which] === true });
    } catch (fault) {
      if (fault.status === 422) {
        const left = { ...(fault.told.fields ?? {}) };
        for (const [key, words] of Object.entries(left)) if (this.wrongAt(which, key, words)) delete left[key];
        if (!fault.told.fields || Object.keys(left).length) field?.(fault.told.problem);
        say(placed(fault.told), true);
        return;
      }
      if (fault.status !== 409) throw fault;
      const answer = await choose("Changed on the disk", [`${file.name} has been changed since it was shown here.`,
        "What is there now stays. Your change can still be made in it."], [["no", "Show what is there now"], ["yes", "Make my change in it"]]);
      this.state = await ask("/api/state", { name: this.name });
      if (answer === "yes") { await this.saveNow(which, changes, field); return; }
      await this.follow();
      return;
    }
    this.saved.push({ which, ...made });
    this.undo.disabled = false;
    say(`Saved in ${this.state[which].name}.`);
    await this.reload();
  }

  async back() {
    const last = this.saved.at(-1);
    if (!last) return;
    try {
      await send("/api/back", { name: this.name, which: last.which, file: last.name, before: last.before, after: last.after });
      say("The last save is taken back.");
    } catch (fault) { complain(fault); }
    this.saved.pop();
    this.undo.disabled = !this.saved.length;
    await this.reload();
  }

  async reload() {
    this.state = await ask("/api/state", { name: this.name });
    await this.follow();
  }

  wrongAt(which, key, words) {
    let parts = key.split(".");
    for (; parts.length; parts = parts.slice(0, -1)) {
      const found = this.fields.get(`${which}:${parts.join(".")}`);
      if (found) { found(words); return true; }
    }
    return false;
  }

  // Looks every two seconds whether somebody else has changed a file.
  async watch() {
    while (this.here()) {
      await new Promise((done) => setTimeout(done, 2000));
      if (!this.here() || document.hidden || this.saving || this.whole.hasAttribute("aria-busy")) continue;
      const turn = this.turn;
      try {
        const now = await ask("/api/state", { name: this.name });
        const other = ["job", "shop"].filter((which) => now[which].fingerprint !== this.state[which].fingerprint || now[which].name !== this.state[which].name);
        const program = JSON.stringify(now.program) !== JSON.stringify(this.state.program);
        if (!this.here() || this.saving || turn !== this.turn || !(other.length || program) || this.whole.hasAttribute("aria-busy") || document.querySelector("dialog")) continue;
        if (this.form.contains(document.activeElement) && document.activeElement.dataset.touched) continue; // its save will ask
        this.state = now;
        say(`${[...other.map((which) => now[which].name), ...(program ? [this.name] : [])].join(" and ")} changed on the disk; shown anew.`);
        await this.follow();
      } catch (fault) {
        if (fault instanceof Refused) say(placed(fault.told), true);
        else { complain(fault); }
      }
    }
  }

  // --- the questions

  questions() {
    const held = document.activeElement?.dataset?.key;
    const open = new Set([...this.form.querySelectorAll("details")].filter((each) => each.open).map((each) => each.dataset.part));
    const first = !this.form.childElementCount;
    this.fields.clear();
    const parts = [
      this.part("place", "The blank and zero", () => this.blank()),
      this.part("material", "The material", () => this.material()),
      this.part("bits", "The bits", () => this.bits()),
      this.part("hold", "What holds it", () => this.hold()),
      this.part("spindle", "The spindle", () => this.spindle()),
      this.part("machine", "The machine", () => this.machine()),
    ];
    const broken = ["job", "shop"].filter((which) => this.state[which].wrong).map((which) => {
      const file = this.state[which];
      return h("p", { class: "wrong", role: "alert" }, `${file.name}${file.line ? `, line ${file.line}` : ""}: ${file.wrong}. `,
        h("span", {}, Object.keys(file.values).length ? "Put it right below, or in the file." : "Put it right in the file itself; it is shown here as soon as it is saved."));
    });
    this.form.replaceChildren(...broken, ...parts);
    for (const each of this.form.querySelectorAll("details")) each.open = first ? ["place", "material", "bits"].includes(each.dataset.part) : open.has(each.dataset.part);
    for (const which of ["job", "shop"]) for (const [key, words] of Object.entries(this.state[which].fields)) this.wrongAt(which, key, words);
    if (held) this.form.querySelector(`[data-key="${CSS.escape(held)}"]`)?.focus({ preventScroll: true });
    this.files.replaceChildren("Saved as ", ...["job", "shop"].flatMap((which, n) => [n ? " and " : "",
      h("b", {}, this.state[which].name), this.state[which].there ? "" : " (not there yet)"]),
      ". What stands there is used for every program beside it.");
  }

  part(name, title, make) {
    return h("details", { class: "part", "data-part": name }, h("summary", {}, h("h2", {}, title), this.lets(name)), make());
  }

  // What answering lets be judged, by what the check itself says it lacks.
  lets(part) {
    if (!this.result || this.wrong) return "";
    const wanted = {
      place: ["[stock]", "z_zero"], material: ["`material`"], bits: ["[[tool]]", "of tool", "of the tool", "--tool"],
      hold: ["[hold]"], spindle: ["[spindle]"], machine: ["[machine]"],
    }[part];
    const fits = (text) => wanted.some((word) => text.includes(word));
    const rules = new Set(this.result.asks.needs.filter(([need]) => fits(need)).flatMap(([, names]) => names));
    const more = new Set(this.result.asks.assumed.filter(([, , declare]) => declare && fits(declare)).map(([, , , lets]) => lets));
    if (!rules.size && !more.size) return h("span", { class: "done" }, "nothing more waits for this");
    const words = [...more, ...rules];
    const long = words.length > 4 ? `${words.slice(0, 3).join(", ")} and ${words.length - 3} more` : words.join(", ");
    return h("span", { class: "lets", title: words.join(", ") }, `answering lets be judged: ${long}`);
  }

  // A field of a declaration. `read` makes the value that is saved of what was typed; null takes the key out.
  field(which, key, label, given = {}) {
    const name = `${which}:${key.join(".")}`;
    const now = at(this.values(which), key);
    const kept = now === undefined ? "" : given.shown ? given.shown(now) : String(now);
    const fault = h("span", { class: "fault", id: `fault-${name}`, hidden: true });
    const wrong = (words) => {
      input.setAttribute("aria-invalid", "true"); fault.hidden = false; fault.textContent = words;
      input.closest("details")?.setAttribute("open", "");
    };
    const save = () => {
      const typed = input.value.trim();
      delete input.dataset.touched;
      if (typed === kept) return;
      let value;
      try { value = typed === "" ? null : given.read ? given.read(typed) : typed; } catch (problem) { wrong(problem.message); return; }
      this.save(which, given.changes ? given.changes(value) : [{ key, value }], wrong);
    };
    const own = { "data-key": name, "aria-describedby": `fault-${name}`, onchange: save, oninput: () => { input.dataset.touched = "1"; } };
    const input = given.choices
      ? h("select", own, h("option", { value: "" }, given.none ?? "not said"),
        given.choices.map((each) => { const [value, words] = Array.isArray(each) ? each : [each, each]; return h("option", { value, selected: value === kept }, words); }),
        kept && !given.choices.some((each) => (Array.isArray(each) ? each[0] : each) === kept) ? h("option", { value: kept, selected: true }, kept) : "")
      : h("input", { ...own, type: "text", value: kept, placeholder: given.such ?? "", autocomplete: "off", spellcheck: "false" });
    if (!given.choices) input.value = kept;
    this.fields.set(name, wrong);
    return h("label", { class: `field ${given.narrow ? "narrow" : ""}` }, h("span", { class: "asked" }, label), input, fault);
  }

  // --- blank and zero, on a drawing

  blank() {
    const job = this.values("job"), drawing = this.result?.drawing;
    const size = (at(job, ["stock", "size"]) ?? []).map(mm), corner = (at(job, ["stock", "corner"]) ?? []).map(mm);
    const thick = mm(at(job, ["stock", "measured_thickness"])) ?? size[2];
    const proposed = drawing?.proposed;
    const one = (key, n, label, such) => this.field("job", key, label, {
      narrow: true, such, shown: (list) => list, read: (typed) => typed,
      changes: (value) => this.listed(key, n, value),
    });
    // a list is saved as a whole; what is not known yet is what is proposed
    const place = (list, n) => at(job, ["stock", list])?.[n] ?? "";
    const entry = (list, n, label, such) => {
      const made = this.field("job", ["stock", list, n], label, { narrow: true, such, read: (typed) => asText(typed), changes: (value) => this.listed(list, n, value) });
      made.querySelector("input").value = place(list, n);
      return made;
    };
    const save = (newCorner, newSize) => this.save("job", [
      ...(newSize ? [{ key: ["stock", "size"], value: newSize.map(asText) }] : []),
      ...(newCorner ? [{ key: ["stock", "corner"], value: newCorner.map(asText) }] : []),
    ]);
    const figure = drawing ? drawPath(drawing, {
      size: size.length === 3 && size.every((each) => each !== null) ? size : null,
      corner: corner.length === 2 && corner.every((each) => each !== null) ? corner : null,
      thick, keep: (job.keep_out ?? []).map((box) => ({ ...box, low: box.from?.map(mm), high: box.to?.map(mm) })),
      zero: job.z_zero, save, box: (n, low, high) => this.save("job", [{ key: ["keep_out", n, "from"], value: low.map(asText) }, { key: ["keep_out", n, "to"], value: high.map(asText) }]),
    }) : h("p", { class: "aside" }, this.wrong ? "The path is drawn when the program can be read." : "This program has no path to draw.");
    const zeros = { "front-left": [0, 0], "front-right": [1, 0], "back-left": [0, 1], "back-right": [1, 1], centre: [0.5, 0.5] };
    const known = size.length === 3 && size.every((each) => each);
    return h("div", { class: "inner" }, figure,
      proposed ? h("div", { class: "proposal" },
        h("p", {}, `This program reaches X ${drawing.reach[0].join(" to ")}, Y ${drawing.reach[1].join(" to ")} and ${proposed.deep} mm below zero, at the tip. `,
          drawing.radius ? "" : "How wide the bit is was not said yet. "),
        h("p", {}, `A blank that holds it: ${proposed.size.join(" x ")} mm at X ${proposed.corner[0]}, Y ${proposed.corner[1]}. `,
          h("button", { class: "propose", onclick: () => this.save("job", [
            { key: ["stock", "size"], value: [...proposed.size, thick || Math.max(1, Math.ceil(proposed.deep))].map(asText) },
            { key: ["stock", "corner"], value: proposed.corner.map(asText) },
            ...(job.z_zero === undefined ? [{ key: ["z_zero"], value: "stock-top" }] : []),
          ]) }, "Put it there")), h("p", { class: "aside" }, "Then type what your piece really measures, and drag it to where it lies.")) : "",
      h("div", { class: "row" }, entry("size", 0, "Length, X", "120 mm"), entry("size", 1, "Width, Y", "80 mm"), entry("size", 2, "Thickness", "18 mm"),
        this.field("job", ["stock", "measured_thickness"], "Thickness, measured", { narrow: true, such: "17.4 mm", read: asText })),
      h("div", { class: "row" }, entry("corner", 0, "Lowest X", "-10 mm"), entry("corner", 1, "Lowest Y", "-10 mm"),
        known ? h("label", { class: "field narrow" }, h("span", { class: "asked" }, "Or: zero is at"), h("select", {
          onchange: (event) => { const share = zeros[event.target.value]; if (share) save([-share[0] * size[0], -share[1] * size[1]]); },
        }, h("option", { value: "" }, "choose"), Object.keys(zeros).map((name) => h("option", { value: name }, name.replace("-", " "))))) : ""),
      h("div", { class: "row" }, this.field("job", ["z_zero"], "Z zero is", {
        choices: [["stock-top", "the top of the blank"], ["table", "the table"]],
        shown: (value) => (typeof value === "object" ? `${value.above_table} above the table` : value),
      })));
  }

  listed(list, n, value) {
    const drawing = this.result?.drawing, proposed = drawing?.proposed;
    const now = [...(at(this.values("job"), ["stock", list]) ?? [])];
    if (value === null) return [{ key: ["stock", list], value: null }];
    const usual = list === "corner" ? [0, 0] : [...(proposed?.size ?? [100, 100]), Math.max(1, Math.ceil(proposed?.deep ?? 1))];
    const whole = usual.map((each, m) => (m === n ? value : now[m] ?? asText(each)));
    return [{ key: ["stock", list], value: whole }];
  }

  material() {
    const name = this.values("job").material;
    const card = this.cards.materials.find((each) => each.name === name);
    return h("div", { class: "inner" },
      this.field("job", ["material"], "It is cut from", { choices: this.cards.materials.map((each) => [each.name, each.title]) }),
      card ? h("div", { class: "card" }, h("b", {}, card.title), h("ul", {}, card.cautions.map((each) => h("li", {}, each)))) : "",
      h("p", { class: "aside" }, "Without it no chip is judged. One that is not in the list can be planned as test cuts by the card that is most like it."));
  }

  // --- the drawer

  bits() {
    const shop = this.values("shop"), job = this.values("job");
    const drawer = Array.isArray(shop.tool) ? shop.tool : [];
    const asked = this.result?.asks.tools ?? [];
    const rows = asked.map((each) => this.which(each, drawer, job));
    const more = h("details", { class: "edit", "data-part": "new-bit" }, h("summary", {}, "Put a bit into the drawer"), this.newBit(drawer, asked));
    return h("div", { class: "inner" }, rows.length ? rows : h("p", { class: "aside" }, "No cut of this program was followed yet."),
      h("h3", {}, "The drawer"), drawer.length ? h("ul", { class: "drawer" }, drawer.map((tool, n) => this.inDrawer(tool, n))) : h("p", { class: "aside" }, "It is empty. A bit that you put in is kept in shop.toml, for every job."), more);
  }

  which(asked, drawer, job) {
    const wanted = asked.tool;
    const there = drawer.find((tool) => tool.number === wanted);
    const mapped = wanted === null ? job.tool : job.tool_map?.[String(wanted)];
    const chosen = mapped ?? (there ? wanted : wanted === null && drawer.length === 1 ? drawer[0].number : null);
    const title = wanted === null ? "The program calls no tool. Which bit is in the collet?" : `The program calls tool ${wanted}${asked.name ? `: ${asked.name}` : ""}. Which bit is that?`;
    const group = `bit-${wanted}`;
    if (!drawer.length) return h("p", {}, `${title} Put it into the drawer below.`);
    return h("fieldset", { class: "which" }, h("legend", {}, title), h("div", { class: "choices" }, drawer.map((tool) => h("label", { class: "bit" },
      h("input", {
        type: "radio", name: group, checked: tool.number === chosen, "data-key": `${group}-${tool.number}`,
        onchange: () => this.save("job", wanted === null ? [{ key: ["tool"], value: tool.number }]
          : [{ key: ["tool_map", String(wanted)], value: tool.number === wanted && !job.tool_map?.[String(wanted)] ? null : tool.number }]),
      }), bit(tool), h("span", {}, `${tool.number}: ${tool.name || ""} ${tool.shape}, ${tool.diameter}`)))));
  }

  inDrawer(tool, n) {
    const of = (key, label, given = {}) => this.field("shop", ["tool", n, key], label, { narrow: true, ...given });
    return h("li", {}, h("details", { class: "edit", "data-part": `bit-${tool.number}` },
      h("summary", {}, bit(tool), h("span", {}, `${tool.number}: ${tool.name || tool.shape || ""}, ${tool.diameter ?? ""}`)),
      h("div", { class: "row" }, of("name", "Name"), of("shape", "Shape", { choices: SHAPES }), of("diameter", "Diameter", { such: "6 mm", read: asText }),
        of("flutes", "Flutes", { such: "2", read: whole }), of("helix", "Helix", { choices: HELICES }), of("flute_length", "Cutting length", { such: "22 mm", read: asText }),
        of("stickout", "Stickout", { such: "30 mm", read: asText }), of("shank", "Shank", { such: "6 mm", read: asText }),
        of("angle", "Full angle", { such: "60 deg", read: (typed) => (/^[\d.]+$/.test(typed) ? `${typed} deg` : typed) }), of("corner_radius", "Corner radius", { such: "0.5 mm", read: asText }),
        of("made_of", "Made of", { choices: MADE_OF }),
        of("centre_cutting", "Cuts at its centre", { choices: [["true", "yes"], ["false", "no"]], read: (typed) => typed === "true" }),
        of("top_speed", "Top speed, rev/min", { such: "18000", read: speed })),
      h("button", { onclick: async () => {
        const answer = await choose("Take it out", [`Tool ${tool.number} is taken out of ${this.state.shop.name}.`], [["no", "Leave it there"], ["yes", "Take it out"]]);
        if (answer === "yes") this.save("shop", [{ key: ["tool", n], value: null }]);
      } }, "Take it out of the drawer")));
  }

  newBit(drawer, asked) {
    const free = asked.map((each) => each.tool).find((number) => number !== null && !drawer.some((tool) => tool.number === number))
      ?? Math.max(0, ...drawer.map((tool) => tool.number)) + 1;
    const inputs = {};
    const fault = h("p", { class: "fault", hidden: true, role: "alert" });
    const of = (key, label, given = {}) => {
      inputs[key] = given.choices ? h("select", { "data-key": `new-${key}` }, h("option", { value: "" }, "not said"), given.choices.map((each) => h("option", { selected: each === given.value }, each)))
        : h("input", { type: "text", "data-key": `new-${key}`, value: given.value ?? "", placeholder: given.such ?? "", autocomplete: "off" });
      inputs[key].addEventListener("input", drawn);
      return h("label", { class: "field narrow" }, h("span", { class: "asked" }, label), inputs[key]);
    };
    const picture = h("span", { class: "picture" });
    function drawn() { picture.replaceChildren(bit({ shape: inputs.shape?.value || "flat", diameter: inputs.diameter?.value || "6 mm", flutes: Number(inputs.flutes?.value) || 2, helix: inputs.helix?.value })); }
    const rows = h("div", { class: "row" }, of("number", "Number", { value: String(free) }), of("name", "Name", { such: "eighth down-cut" }),
      of("shape", "Shape", { choices: SHAPES, value: "flat" }), of("diameter", "Diameter", { such: "1/8 in" }), of("flutes", "Flutes", { such: "2" }),
      of("helix", "Helix", { choices: HELICES }), of("flute_length", "Cutting length", { such: "12 mm" }), of("stickout", "Stickout", { such: "22 mm" }), of("shank", "Shank", { such: "1/8 in" }));
    drawn();
    const put = () => {
      const made = {};
      const read = { number: whole, flutes: whole, diameter: asText, flute_length: asText, stickout: asText, shank: asText };
      for (const [key, input] of Object.entries(inputs)) {
        const typed = input.value.trim();
        if (typed) made[key] = read[key] ? read[key](typed) : typed;
      }
      const wrong = (words) => { fault.hidden = false; fault.textContent = words; };
      if (!("number" in made) || !made.shape || !made.diameter) { wrong("A bit has at least a number, a shape and a diameter."); return; }
      if (drawer.some((tool) => tool.number === made.number)) { wrong(`Tool ${made.number} is in the drawer already; another bit has another number.`); return; }
      this.save("shop", [{ key: ["tool", drawer.length], value: made }], wrong);
    };
    return h("div", { class: "new-bit" }, picture, rows, fault, h("button", { class: "main", onclick: put }, "Put it in"));
  }

  // --- hold, spindle, machine

  hold() {
    const job = this.values("job");
    const boxes = Array.isArray(job.keep_out) ? job.keep_out : [];
    const blank = this.result?.drawing?.blank;
    const add = () => {
      const x = blank?.x?.[0] ?? 0, y = blank?.y?.[0] ?? 0, z = blank?.top ?? 0;
      this.save("job", [{ key: ["keep_out", boxes.length], value: {
        name: `clamp ${boxes.length + 1}`, from: [x - 10, y, z - 10].map(asText), to: [x + 10, y + 20, z + 15].map(asText),
      } }]);
    };
    const ends = (n, key) => [0, 1, 2].map((axis) => {
      const made = this.field("job", ["keep_out", n, key, axis], `${key === "from" ? "lowest" : "highest"} ${"XYZ"[axis]}`, {
        narrow: true, read: asText, changes: (value) => [{ key: ["keep_out", n, key], value: boxes[n][key].map((each, m) => (m === axis ? value ?? each : each)) }],
      });
      made.querySelector("input").value = boxes[n][key]?.[axis] ?? "";
      return made;
    });
    return h("div", { class: "inner" },
      this.field("job", ["hold", "by"], "It is held by", { choices: HOLDS, shown: (value) => (typeof value === "string" ? value : JSON.stringify(value)) }),
      this.field("job", ["hold", "spoilboard"], "So deep may be cut into the board below", { such: "0.5 mm", read: asText }),
      boxes.map((box, n) => h("fieldset", {}, h("legend", {}, box.name || `box ${n + 1}`), this.field("job", ["keep_out", n, "name"], "Name"),
        h("div", { class: "row" }, ends(n, "from"), ends(n, "to")), h("button", { onclick: () => this.save("job", [{ key: ["keep_out", n], value: null }]) }, "Take it away"))),
      h("button", { onclick: add }, "Add a clamp or a screw as a box"), h("p", { class: "aside" }, "Drag it on the drawing to where it is."));
  }

  spindle() {
    const shop = this.values("shop"), dial = Array.isArray(shop.spindle?.dial) ? shop.spindle.dial : [];
    const marks = this.result?.asks.tools.flatMap((each) => each.marks) ?? [];
    const suits = (mark) => { const found = marks.filter((each) => each.mark === mark); return !found.length ? "" : found.every((each) => each.suits) ? ", suits this program" : ", does not suit this program"; };
    const put = (row, n) => dial.map((each, m) => (m === n ? row : each)).filter(Boolean);
    const marked = (n, key, label, such, read) => {
      const made = this.field("shop", ["spindle", "dial", n, key], label, { narrow: true, such, read, changes: (value) => [{ key: ["spindle", "dial"], value: put({ ...dial[n], [key]: value }, n) }] });
      return made;
    };
    const isDial = shop.spindle?.kind === "dial" || dial.length;
    return h("div", { class: "inner" },
      this.field("shop", ["spindle", "kind"], "Its speed is", { choices: [["dial", "set by a dial"], ["commanded", "commanded by the program"]] }),
      isDial ? h("div", {},
        dial.map((row, n) => h("div", { class: "row" }, marked(n, "mark", "Mark", "A"), marked(n, "stated", "rev/min, stated", "9500", speed), marked(n, "measured", "rev/min, measured", "8100", speed),
          h("button", { class: "small", onclick: () => this.save("shop", [{ key: ["spindle", "dial"], value: put(null, n) }]) }, "Take away"))),
        h("button", { onclick: () => this.save("shop", [{ key: ["spindle", "dial"], value: [...dial, { mark: String(dial.length + 1), stated: 10000 + 4000 * dial.length }] }]) }, "Add a mark"),
        dial.length ? this.field("job", ["dial"], "It is set to", { choices: dial.map((row) => [row.mark, `${row.mark}: ${row.measured ?? row.stated} rev/min${suits(row.mark)}`]) }) : "") : "",
      this.field("shop", ["spindle", "started"], "It is started", { choices: [["by-hand", "by hand"], ["program", "by the program"]] }),
      h("div", { class: "row" }, this.field("shop", ["spindle", "power"], "Power", { narrow: true, such: "700 W" }), this.field("shop", ["spindle", "spin_up"], "To full speed in", { narrow: true, such: "4 s", read: (typed) => (/^[\d.]+$/.test(typed) ? `${typed} s` : typed) }),
        isDial ? "" : this.field("shop", ["spindle", "range"], "Slowest and fastest, rev/min", { narrow: true, such: "8000 to 24000", shown: (list) => list.join(" to "), read: (typed) => typed.split(/\s*(?:to|-|,)\s*/).map(speed) })));
  }

  machine() {
    const axes = (key, label, such, unit) => h("fieldset", {}, h("legend", {}, label), h("div", { class: "row" }, ["x", "y", "z"].map((axis) => this.field("shop", ["machine", key, axis], axis.toUpperCase(), { narrow: true, such, read: (typed) => (/^[\d.]+$/.test(typed) ? `${typed} ${unit}` : typed) }))));
    return h("div", { class: "inner" },
      this.field("shop", ["machine", "name"], "It is called"),
      this.field("shop", ["machine", "controller"], "Its controller is like", { choices: this.cards.controllers.map((each) => [each.name, each.title]) }),
      axes("travel", "Travel", "600 mm", "mm"), axes("feed_limit", "Fastest feed", "2500 mm/min", "mm/min"), axes("rapid", "Fastest rapid", "5000 mm/min", "mm/min"), axes("acceleration", "Acceleration", "200 mm/s^2", "mm/s^2"));
  }
}

const whole = (typed) => (/^\d+$/.test(typed) ? Number(typed) : typed);
const speed = (typed) => (/^\d+(\.\d+)?$/.test(typed) ? Number(typed) : typed);

// --- mend and compare

async function mendView(name, here) {
  const frame = h("div", { class: "frames tall" });
  const words = h("p", { class: "verdict" }, "Each change is being proved. This can take a while.");
  const buttons = h("div", { class: "buttons" });
  view.replaceChildren(h("div", { class: "program" }, h("div", { class: "program-head" }, h("a", { href: way("program", name), class: "up" }, name),
    h("h1", {}, "Mend"), words, buttons), frame));
  const made = await send("/api/mend", { name, write: false });
  if (!here()) return;
  const put = (number) => frame.replaceChildren(h("iframe", { class: "sheet-frame loaded", title: "Before and after", src: `/sheet/kept?${new URLSearchParams({ number })}` }));
  put(made.number);
  words.textContent = made.copy ? "A corrected copy can be written. Below: before and after, each change, and the proof. The program itself stays as it is."
    : "No copy is offered. Below is why.";
  if (!made.copy) return;
  buttons.append(h("button", { class: "main", onclick: async (event) => {
    event.target.disabled = true;
    try {
      const done = await send("/api/mend", { name, write: true });
      put(done.number);
      words.textContent = `Written as ${done.written}. A person must look at it before it runs.`;
      buttons.replaceChildren(h("a", { class: "as-button main", href: way("program", done.written) }, "Open the copy"));
    } catch (fault) { event.target.disabled = false; complain(fault); }
  } }, "Write the copy beside it"));
}

async function compareView(name, here) {
  const frame = h("div", { class: "frames tall" });
  const words = h("p", { class: "verdict" }, "");
  const select = h("select", { "data-key": "other" });
  view.replaceChildren(h("div", { class: "program" }, h("div", { class: "program-head" }, h("a", { href: way("program", name), class: "up" }, name), h("h1", {}, "Compare"),
    h("label", { class: "field" }, h("span", { class: "asked" }, `What is different in ${name} against`), select), words), frame));
  const list = await ask("/api/folder");
  if (!here()) return;
  select.append(h("option", { value: "" }, "choose another program"), ...list.programs.filter((each) => each !== name).map((each) => h("option", { value: each }, each)));
  select.addEventListener("change", async () => {
    if (!select.value) return;
    words.textContent = "Both are being followed.";
    try {
      const made = await send("/api/compare", { old: select.value, new: name });
      words.textContent = made.verdict;
      frame.replaceChildren(h("iframe", { class: "sheet-frame loaded", title: "Old and new", src: `/sheet/kept?${new URLSearchParams({ number: made.number })}` }));
    } catch (fault) { words.textContent = ""; complain(fault); }
  });
}

// --- which view

let turn = 0;
async function route() {
  const own = ++turn;
  const here = () => own === turn;
  say("");
  let parts;
  try { parts = location.hash.replace(/^#\/?/, "").split("/").map(decodeURIComponent); } catch { parts = [""]; }
  const [what, name] = parts;
  document.title = name ? `${name}: the desk` : "The desk";
  try {
    if (what === "program" && name) await new Program(name, here).open();
    else if (what === "mend" && name) await mendView(name, here);
    else if (what === "compare" && name) await compareView(name, here);
    else if (what === "plan") await planView(view, here);
    else if (what === "grade" && name) await gradeView(view, name, here);
    else if (what === "learn" && name) await learnView(view, name, here);
    else await folderView(here);
  } catch (fault) { if (here()) complain(fault); }
}
addEventListener("hashchange", () => { route(); scrollTo(0, 0); });
route();
