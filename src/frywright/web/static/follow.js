// A design that follows its goals while they are dragged: one question at a time, the newest goals next.
import { AT } from "./at.js";
import { Curves } from "./curves.js";
import { tag, twoFacts } from "./facts.js";

const form = document.getElementById("goals");
const at = (id) => document.getElementById(id);
const curves = new Curves(at("curves"), matchMedia("(max-width: 67.99rem)").matches);
const sliders = [...form.querySelectorAll("[type=range]")];
let busy = false, waiting = false;

function said(slider) {
  const { sign } = slider.dataset, value = slider.valueAsNumber;
  if (sign === "min") return `${Math.floor(value)}:${String(Math.round((value % 1) * 60)).padStart(2, "0")}`;
  const digits = (slider.step.split(".")[1] ?? "").length;
  return `${value.toFixed(digits)} ${sign}`.trim();
}

function tell() {
  for (const slider of sliders) {
    slider.previousElementSibling.textContent = said(slider);
    slider.setAttribute("aria-valuetext", said(slider));
  }
}

// The lower end of a band pushes the upper one ahead of it, and the other way round.
function push(slider) {
  const partner = form.elements[slider.dataset.partner];
  if (!partner) return;
  const lower = slider.name.includes("_low_"), gap = Number(slider.step);
  const [low, high] = lower ? [slider, partner] : [partner, slider];
  if (low.valueAsNumber < high.valueAsNumber) return;
  if (lower) high.value = low.valueAsNumber + gap;
  else low.value = high.valueAsNumber - gap;
  if (low.valueAsNumber >= high.valueAsNumber) slider.value = slider.valueAsNumber + (lower ? -gap : gap);
}

function show(proposal) {
  at("time").textContent = proposal.time;
  at("margin").textContent = proposal.margin;
  at("misses").hidden = proposal.meets;
  at("prove").hidden = !proposal.meets;
  at("stages").replaceChildren(...proposal.stages.map((text) => tag("li", "", text)));
  at("reached").tBodies[0].replaceChildren(...proposal.reached.map((r) => {
    const row = tag("tr", r.missed ? "missed" : "", ""), name = tag("th", "", r.name);
    name.scope = "row";
    row.append(name, tag("td", "", `${r.missed ? "▼ " : ""}${r.value}`), tag("td", "", r.asked));
    return row;
  }));
  const { facts, headline } = proposal.cook;
  at("headline").className = `headline ${facts.state}${facts.short ? " short" : ""}`;
  at("headline").replaceChildren(...twoFacts(facts), tag("p", "sentence", headline.sentence));
  curves.draw(proposal.cook);
}

function refuse(message) {
  at("problem").hidden = !message;
  at("problem").textContent = message;
  for (const part of ["curves", "answer"]) at(part).classList.toggle("stale", Boolean(message));
  if (message) at("prove").hidden = true;
}

async function ask() {
  waiting = busy;
  if (busy) return;
  busy = true;
  const values = new URLSearchParams(new FormData(form)), started = performance.now();
  let reply;
  try {
    reply = await (await fetch(`${AT}${form.dataset.view}?${values}`)).json();
  } catch {
    reply = { ok: false, message: form.dataset.away };
  }
  busy = false;
  refuse(reply.ok ? "" : reply.message);
  if (reply.ok) show(reply);
  history.replaceState(null, "", `?${values}`);
  const { dataset } = document.body;
  dataset.lastEditMs = String(Math.round(performance.now() - started));
  dataset.turn = String(Number(dataset.turn ?? 0) + 1);
  if (waiting) ask();
}

form.addEventListener("input", (event) => {
  push(event.target);
  tell();
  ask();
});
form.querySelector(".show").hidden = true;
tell();
curves.draw(JSON.parse(at("first-view").textContent).cook);
