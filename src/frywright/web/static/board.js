// The live board: clock, timers, refresh, and taps that are never lost. Without this script the forms still work.
import { AT } from "./at.js";

const root = document.querySelector("#board");
const { practice, date, language } = root.dataset;
const clock = document.querySelector("#clock");
const link = document.querySelector("#link");
const QUEUE = `frywright${AT}.taps.${date}.${practice}`;
const ASKED = `frywright${AT}.asked.${date}.${practice}`;
const questions = document.querySelector("#questions");
const TITLE = document.title;
const SIM = `frywright${AT}.clock.${date}.${practice}`;
const EVERY_MS = practice ? 400 : 4000;

// ---- time: a real day follows the server's clock, carried on by the tablet's steady clock; a practice day its own.
// The last time the server gave is kept beside the wall clock, for a page that is loaded again without the server.
const TIME = `frywright${AT}.time.${date}`;
const last = JSON.parse(localStorage.getItem(TIME) || "null");
let anchor = { second: Math.max(Number(root.dataset.now), last ? last.second + (Date.now() - last.wall) / 1000 : 0), at: performance.now() };

function setTime(second) {
  anchor = { second, at: performance.now() };
  localStorage.setItem(TIME, JSON.stringify({ second, wall: Date.now() }));
}

let sim = practice ? JSON.parse(localStorage.getItem(SIM) || "null") : null;
if (practice && !sim) sim = { second: Number(root.dataset.start), at: Date.now(), speed: 1 };

function nowS() {
  if (sim) return sim.second + ((Date.now() - sim.at) / 1000) * sim.speed;
  return anchor.second + (performance.now() - anchor.at) / 1000;
}

function keepSim(speed) {
  sim = { second: nowS(), at: Date.now(), speed };
  localStorage.setItem(SIM, JSON.stringify(sim));
}

const two = (n) => String(Math.floor(n)).padStart(2, "0");
const hhmm = (s) => `${two((s / 3600) % 24)}:${two((s / 60) % 60)}`;

// ---- taps: each has a key of its own, waits here until the server has it, and is sent once more if in doubt
const waiting = () => JSON.parse(localStorage.getItem(QUEUE) || "[]");
const keep = (taps) => localStorage.setItem(QUEUE, JSON.stringify(taps));
let sending = null;
let pressing = false;

function tell(form, at) {
  const values = Object.fromEntries(new FormData(form));
  values.at_s = Math.round(at ?? nowS());
  keep([...waiting(), values]);
  const fresh = form.querySelector("[name=key]");
  fresh.value = crypto.randomUUID ? crypto.randomUUID().replaceAll("-", "") : `${Date.now()}${Math.random()}`;
  const button = form.querySelector("button");
  button.disabled = true;
  if (!root.contains(form)) { // not drawn anew, so made ready for the next tap
    form.querySelector("[name=pieces]").value = "";
    setTimeout(() => { button.disabled = false; }, 800);
  }
  return send().then(() => !waiting().some((tap) => tap.key === values.key));
}

// One delivery at a time; whoever asks meanwhile waits for the same one, which takes in what was told after it began.
function send() {
  sending ??= deliver().finally(() => { sending = null; });
  return sending;
}

async function deliver() {
  while (waiting().length) {
    const tap = waiting()[0];
    const answer = await fetch(`${AT}/day/tap`, {
      method: "POST", headers: { "Content-Type": "application/json" },
      body: JSON.stringify(practice ? { ...tap, now_s: tap.at_s } : tap),
    });
    if (answer.status >= 500) throw new Error(answer.status);
    keep(waiting().filter((other) => other.key !== tap.key));
    if (answer.ok) show("");
    else {
      const told = await answer.json().catch(() => ({ message: answer.status }));
      if (told.choices) ask(tap, told);
      else show(`${link.dataset.refused} ${told.message}`);
    }
  }
}

// ---- a lift that came early or late: asked here, kept over a reload, sent once somebody has answered
const asked = () => JSON.parse(localStorage.getItem(ASKED) || "[]");

function keepAsked(list) {
  localStorage.setItem(ASKED, JSON.stringify(list));
  drawAsked();
}

function ask(tap, { message, choices }) {
  keepAsked([...asked().filter((other) => other.tap.fryer !== tap.fryer), { tap, message, choices }]);
}

function drawAsked() {
  questions.replaceChildren(...asked().map(({ tap, message, choices }) => {
    const box = Object.assign(document.createElement("div"), { className: "problem stop asked" });
    box.setAttribute("role", "alert");
    const name = root.querySelector(`[data-fryer="${CSS.escape(tap.fryer)}"]`)?.textContent ?? tap.fryer;
    box.append(Object.assign(document.createElement("p"), { textContent: `${name}: ${message}` }));
    for (const choice of choices) {
      const button = Object.assign(document.createElement("button"), { type: "button", textContent: choice.text });
      button.dataset.answer = choice.answer;
      button.addEventListener("click", () => {
        keepAsked(asked().filter((other) => other.tap.key !== tap.key));
        if (choice.answer !== "back in the oil") keep([...waiting(), { ...tap, at_s: choice.at_s ?? tap.at_s, reason: choice.answer }]);
        refresh();
      });
      box.append(button);
    }
    return box;
  }));
}

let lostAt = null;

function lost() {
  lostAt ??= hhmm(nowS());
  show(link.dataset.lost.replace("{at}", lostAt).replace("{n}", waiting().length));
}

function show(text) {
  link.hidden = !text;
  if (text && link.textContent !== text) link.textContent = text;
}

// ---- the page: the server draws it, this puts it in place
let drawing = false;
async function refresh() {
  if (drawing) return;
  drawing = true;
  try {
    await send();
    const query = new URLSearchParams({ lang: language });
    if (practice) for (const [k, v] of Object.entries({ practice, date, now_s: nowS().toFixed(0) })) query.set(k, v);
    const answer = await fetch(`${AT}/day/board/part?${query}`);
    if (!answer.ok || answer.headers.has("x-kept-copy")) throw new Error(answer.status);
    const html = await answer.text();
    // Never under a finger: a button replaced between press and release would swallow the tap.
    if (!pressing && (!root.contains(document.activeElement) || document.activeElement.tagName === "BUTTON")) {
      const focus = document.activeElement?.closest?.("form.tap");
      const which = focus ? [...root.querySelectorAll("form.tap")].indexOf(focus) : -1;
      root.innerHTML = html;
      if (which >= 0) root.querySelectorAll("form.tap")[which]?.querySelector("button")?.focus();
    }
    if (!waiting().length && !link.textContent.startsWith(link.dataset.refused)) show("");
    const stamp = root.querySelector("#stamp");
    if (!practice && stamp) setTime(Number(stamp.dataset.now));
    lostAt = null;
  } catch {
    lost();
  } finally {
    drawing = false;
    tick();
  }
}

const clockOf = (left) => (left >= 0 ? `${two(left / 60)}:${two(left % 60)}` : `+${two(-left / 60)}:${two(-left % 60)}`);

// What was tapped here and the server does not have yet: a drop counts down all the same, a lift stops its clock.
function drawWaiting(now) {
  for (const old of root.querySelectorAll(".unsent")) old.remove();
  for (const tap of waiting()) {
    const tile = root.querySelector(`[data-fryer="${CSS.escape(tap.fryer ?? "")}"]`)?.closest(".tile");
    if (!tile || !["drop", "lift"].includes(tap.what)) continue;
    const line = Object.assign(document.createElement("p"), { className: "unsent" });
    const times = JSON.parse(root.querySelector("#times").textContent);
    const time = times.find((t) => t.fryer === tap.fryer && t.product === tap.product && t.pieces >= Number(tap.pieces));
    if (tap.what === "lift") line.textContent = `${link.dataset.lifted} ${hhmm(tap.at_s)}`;
    else line.textContent = time ? `${link.dataset.dropped} ${clockOf(tap.at_s + time.lift_s - now)}` : `${link.dataset.dropped} ${hhmm(tap.at_s)}`;
    tile.querySelector("h2").after(line);
  }
}

function tick() {
  const now = nowS();
  clock.textContent = hhmm(now);
  drawWaiting(now);
  for (const timer of root.querySelectorAll("[data-lift]")) {
    const vent = timer.dataset.vent ? Number(timer.dataset.vent) : null;
    const caution = timer.parentElement.querySelector(".vent");
    const venting = vent !== null && now >= vent;
    if (caution) caution.hidden = !venting;
    timer.hidden = venting; // no countdown while pressure is let go
    const left = (vent ?? Number(timer.dataset.lift)) - now;
    timer.querySelector(".left").textContent = clockOf(left);
    timer.parentElement.classList.toggle("due", !venting && left <= 0);
  }
  alarm();
}

// ---- a lift that is due is heard: a tone that rises with every call, and the phone shakes; the first tap lets it sound
let sound = null, called = 0, calls = 0;
window.addEventListener("pointerdown", () => { sound ??= new AudioContext(); }, { once: true });

function alarm() {
  const due = root.querySelectorAll(".tile.due").length;
  document.title = due ? `▲ ${link.dataset.due} (${due})` : TITLE;
  if (!due) { calls = 0; return; }
  if (performance.now() - called < 10_000 || (sim && sim.speed > 1)) return;
  called = performance.now();
  calls += 1;
  navigator.vibrate?.([300, 100, 300]);
  if (!sound) return;
  const tone = sound.createOscillator(), loud = sound.createGain();
  tone.frequency.value = Math.min(520 + 90 * calls, 1400); // Hz, within what small loudspeakers carry (own choice)
  loud.gain.value = Math.min(0.2 + 0.1 * calls, 0.9);
  tone.connect(loud).connect(sound.destination);
  tone.start();
  tone.stop(sound.currentTime + 0.6);
}

// The screen stays on while the board is looked at.
async function stayAwake() {
  try { if (!document.hidden) await navigator.wakeLock?.request("screen"); } catch { /* the tablet decides */ }
}

root.parentElement.addEventListener("submit", (event) => {
  const form = event.target.closest("form.tap");
  if (!form) return;
  event.preventDefault();
  const what = form.querySelector("[name=what]").value;
  const lost = { down: "fryer", out: "product" }[what];
  const which = lost ? form.querySelector(`[name=${lost}]`).value : "";
  const at = nowS();
  tell(form, at).then((delivered) => {
    refresh();
    if (which && delivered) {
      if (practice) keepSim(sim.speed);
      const query = new URLSearchParams({ [lost]: which, ...(practice ? { practice, date, now_s: at.toFixed(0) } : {}) });
      window.location.assign(`${AT}/day/board/down?${query}`);
    }
  }).catch(lost);
});

// ---- practice: speed, and following the advice by itself
const speed = document.querySelector("#speed");
const auto = document.querySelector("#auto");
if (practice) {
  speed.value = String(sim.speed);
  keepSim(sim.speed);
  speed.addEventListener("change", () => keepSim(Number(speed.value)));
  auto.setAttribute("aria-pressed", String(sessionStorage.getItem("frywright.auto") === "1"));
  auto.addEventListener("click", () => {
    const on = auto.getAttribute("aria-pressed") !== "true";
    auto.setAttribute("aria-pressed", String(on));
    sessionStorage.setItem("frywright.auto", on ? "1" : "0");
  });
}

async function follow() {
  if (!practice || auto.getAttribute("aria-pressed") !== "true") return;
  const due = [...root.querySelectorAll("form.tap button[data-due]")].filter((b) => !b.disabled && Number(b.dataset.due) <= nowS());
  for (const button of due) await tell(button.closest("form"), Math.max(Number(button.dataset.due), 0) || nowS()).catch(() => {});
}

for (const anchorLink of document.querySelectorAll("a[data-now]")) {
  anchorLink.addEventListener("click", () => {
    if (!practice) return;
    const url = new URL(anchorLink.href);
    url.searchParams.set("now_s", nowS().toFixed(0));
    anchorLink.href = url.href;
  });
}

tick();
drawAsked();
setInterval(tick, 250);
for (const [name, on] of [["pointerdown", true], ["pointerup", false], ["pointercancel", false]]) {
  window.addEventListener(name, () => { if (on) pressing = true; else setTimeout(() => { pressing = false; }, 60); }, true);
}
(async function loop() {
  await follow();
  await refresh();
  setTimeout(loop, EVERY_MS);
})();
stayAwake();
document.addEventListener("visibilitychange", () => { if (!document.hidden) { stayAwake(); refresh(); } });
window.addEventListener("online", refresh);
if ("serviceWorker" in navigator) navigator.serviceWorker.register(`${AT}/day/worker.js`, { scope: `${AT}/day/` }).catch(() => {});
