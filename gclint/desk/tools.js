// What every view of the desk uses: elements, requests, and words to the person.

export const TOKEN = document.querySelector("meta[name=desk-token]").content;

export function h(tag, given = {}, ...inner) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(given)) {
    if (value === null || value === undefined || value === false) continue;
    if (name.startsWith("on")) made.addEventListener(name.slice(2), value);
    else if (name in made && typeof value !== "string" && name !== "list") made[name] = value;
    else made.setAttribute(name, value === true ? "" : value);
  }
  made.append(...inner.flat(9).filter((one) => one !== null && one !== undefined && one !== false));
  return made;
}

export class Refused extends Error {
  constructor(status, told) { super(told.problem); this.status = status; this.told = told; }
}

export async function ask(path, given = {}) {
  return answered(await fetch(`${path}?${new URLSearchParams(given)}`));
}

export async function send(path, given) {
  return answered(await fetch(path, {
    method: "POST", headers: { "x-desk-token": TOKEN, "content-type": "application/json" }, body: JSON.stringify(given),
  }));
}

export async function answered(reply) {
  let told;
  try { told = await reply.json(); } catch { told = { problem: "The desk gave no answer that can be read." }; }
  if (!reply.ok) throw new Refused(reply.status, told);
  return told;
}

const line = document.getElementById("told");
export function say(words, wrong = false) {
  line.textContent = words;
  line.classList.toggle("wrong", wrong);
}

export function complain(fault) {
  if (fault instanceof Refused) say(placed(fault.told), true);
  else if (fault instanceof TypeError) say("The desk does not answer. It may have been ended; start gclint desk again.", true);
  else { say(String(fault), true); throw fault; }
}

export function placed(problem) {
  const place = problem.path ? `${problem.path}${problem.line ? `, line ${problem.line}` : ""}: ` : "";
  return place + problem.problem;
}

export const way = (...parts) => `#/${parts.map(encodeURIComponent).join("/")}`;

// Asks a question over the page; the value of the button that was pressed, or null.
export function choose(title, words, choices) {
  return new Promise((done) => {
    const box = h("dialog", { class: "choice", "aria-labelledby": "choice-title" },
      h("form", { method: "dialog" }, h("h2", { id: "choice-title" }, title), words.map((each) => h("p", {}, each)),
        h("div", { class: "buttons" }, choices.map(([value, label], n) => h("button", { value, class: n ? "" : "main" }, label)))));
    box.addEventListener("close", () => { box.remove(); done(box.returnValue || null); });
    document.body.append(box);
    box.showModal();
  });
}
