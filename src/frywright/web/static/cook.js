// Room Cook: asks again on every edit and swaps the answer; without scripts the form still works.
import { AT } from "./at.js";
import { Curves } from "./curves.js";
import { mark, tag, twoFacts } from "./facts.js";

const form = document.getElementById("ask");
const answer = document.getElementById("answer");
const problem = document.getElementById("problem");
const figure = document.getElementById("curves");
const picture = document.getElementById("picture");
const save = document.getElementById("save");
const TIMED = ["duration", "elapsed", "left"];
let curves = null, asked = 0;

if (figure) {
  curves = new Curves(figure);
  const first = JSON.parse(document.getElementById("first-view").textContent);
  curves.draw(first);
  save.classList.toggle("main", Boolean(first.saved));
  form.querySelector(".show").classList.add("unseen"); // every edit shows itself; the button stays for the Enter key
}

function query() {
  const values = new URLSearchParams();
  for (const [key, value] of new FormData(form)) {
    if (key === "by" || key === "reason") continue; // who answers is told when it is kept, not in an address
    if (value !== "" || /^s\d+_(set|value)$/.test(key)) values.append(key, value); // an emptied set point is told, not dropped
  }
  return values;
}

function row(cells, swatches = []) {
  const line = document.createElement("tr");
  cells.forEach((text, i) => {
    const cell = Object.assign(document.createElement(i ? "td" : "th"), { textContent: text });
    if (!i) cell.scope = "row";
    line.append(cell);
  });
  for (const fill of [...swatches].reverse()) {
    const patch = document.querySelector("#pieces .swatch").cloneNode(true);
    patch.firstElementChild.setAttribute("fill", fill);
    line.children[5].prepend(patch);
  }
  return line;
}

function show(view) {
  const head = document.getElementById("headline");
  head.className = `headline ${view.facts.state}${view.facts.short ? " short" : ""}`;
  head.replaceChildren(...twoFacts(view.facts), tag("p", "sentence", view.headline.sentence));
  document.getElementById("lock").hidden = !view.locked;
  const lid = picture.querySelector(".lid");
  if (lid && view.lid) {
    lid.querySelector("b span").textContent = view.lid.word;
    lid.lastElementChild.textContent = view.lid.sentence;
  }
  if (lid) lid.hidden = !view.lid;
  document.getElementById("clock-text").textContent = view.clock.sentence;
  const vent = document.getElementById("vent-text");
  vent.hidden = !view.vent.sentence;
  vent.lastElementChild.textContent = view.vent.sentence;
  document.querySelector("#pieces tbody").replaceChildren(...view.cuts.map((c) => row([c.name, ...c.cells], c.swatches)));
  document.querySelector("#summary tbody").replaceChildren(...view.summary.map((s) => row([s.name, s.value])));
  document.getElementById("load-text").textContent = `${view.load.count} × ${view.load.unit} (${view.load.mass}), ${view.altitude}`;
  document.getElementById("verdicts").replaceChildren(...view.verdicts.map((v) => {
    const item = document.createElement("li");
    item.append(mark(v), ` ${v.sentence}`);
    return item;
  }));
  document.getElementById("saved-text").hidden = !view.saved;
  document.getElementById("saved-text").textContent = view.saved?.sentence ?? "";
  save.classList.toggle("main", Boolean(view.saved));
  document.getElementById("notes").replaceChildren(...view.notes.map((n) => Object.assign(document.createElement("li"), { textContent: n.text })));
  curves.draw(view);
}

// While what is typed has no answer, the last one must not be read as its own: no verdict, grey curves, a mark at every wrong box.
function refuse(message, boxes) {
  clearMark();
  problem.hidden = false;
  problem.querySelector(".said").textContent = message;
  setStale(true);
  for (const [box, said] of Object.entries(boxes ?? {})) {
    const field = form.elements[box];
    if (!field) continue;
    const id = `wrong-${box}`;
    field.setAttribute("aria-invalid", "true");
    field.setAttribute("aria-describedby", id);
    field.closest("label").append(Object.assign(document.createElement("span"), { className: "wrong", id, textContent: said }));
  }
}

function clearMark() {
  for (const told of form.querySelectorAll(".wrong")) told.remove();
  for (const field of form.querySelectorAll("[aria-invalid]")) {
    field.removeAttribute("aria-invalid");
    field.removeAttribute("aria-describedby");
  }
}

function setStale(stale) {
  const head = document.getElementById("headline");
  if (head) head.hidden = stale;
  for (const part of [picture, answer]) {
    part.classList.toggle("stale", stale);
    part.inert = stale;
  }
  picture.querySelector(".stale-note").hidden = !stale;
}

async function ask() {
  const turn = ++asked, values = query();
  history.replaceState(null, "", `/cook?${values}`);
  const started = performance.now();
  document.getElementById("headline")?.setAttribute("aria-busy", "true");
  let reply;
  try {
    reply = await (await fetch(`${AT}/cook/view.json?${values}`)).json();
  } catch {
    reply = { ok: false, message: form.dataset.away };
  }
  if (turn !== asked) return;
  document.getElementById("headline")?.removeAttribute("aria-busy");
  if (!reply.ok) return refuse(reply.message, reply.boxes);
  clearMark();
  problem.hidden = true;
  if (!curves) return location.replace(`${AT}/cook?${values}`); // the page came without an answer: get it whole
  setStale(false);
  show(reply);
  document.body.dataset.lastEditMs = String(Math.round(performance.now() - started));
  document.body.dataset.turn = String(turn);
}

function renumber() {
  const rows = [...form.querySelectorAll(".stage")];
  const max = Number(document.getElementById("stages").dataset.max);
  rows.forEach((stage, i) => {
    stage.querySelector(".count").textContent = String(i + 1);
    for (const field of stage.querySelectorAll("[name]")) field.name = field.name.replace(/^s\d+_/, `s${i}_`);
    stage.querySelector(".remove").hidden = rows.length < 2;
    stage.querySelector(".most").hidden = TIMED.includes(stage.querySelector("[name$=_end]").value);
  });
  form.querySelector(".add").hidden = rows.length >= max;
}

form.addEventListener("input", (event) => {
  if (event.target.name === "program") {
    location.assign(`${AT}/cook?program=${encodeURIComponent(event.target.value)}`);
    return;
  }
  if (event.target.name === "product" || event.target.name === "fryer") {
    const pair = new URLSearchParams({ program: form.program.value, product: form.product.value, fryer: form.fryer.value });
    location.assign(`${AT}/cook?${pair}`); // lid, stage count and stages depend on the pair
    return;
  }
  renumber();
  ask();
});
form.addEventListener("click", (event) => {
  if (event.target.matches(".remove")) {
    event.target.closest(".stage").remove();
  } else if (event.target.matches(".add")) {
    const last = [...form.querySelectorAll(".stage")].at(-1);
    last.after(last.cloneNode(true));
  } else {
    return;
  }
  renumber();
  ask();
});
form.addEventListener("submit", (event) => {
  if (!event.submitter || event.submitter.formMethod === "post") return;
  if (!curves) return; // no answer on the page yet: let the form load one
  event.preventDefault();
  ask();
});
renumber();
