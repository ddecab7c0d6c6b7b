// The live board, on the desk and for the line: clock, timers, refresh, and taps that are never lost.
// Without this script the forms still work.
import { AT } from "./at.js";
import { call, heard, shake, sing, stayAwake, unlock, warn } from "./alarm.js";

const root = document.querySelector("#board");
const { practice, date, language, part } = root.dataset;
const clock = document.querySelector("#clock");
const link = document.querySelector("#link");
const undo = document.querySelector("#undo");
const questions = document.querySelector("#questions");
const QUEUE = `frywright${AT}.taps.${date}.${practice}`;
const ASKED = `frywright${AT}.asked.${date}.${practice}`;
const SIM = `frywright${AT}.clock.${date}.${practice}`;
const TIME = `frywright${AT}.time.${date}`;
const TITLE = document.title;
const EVERY_MS = practice ? 400 : 4000, ANSWER_MS = 10_000, UNDO_MS = 10_000, TWICE_MS = 700;
const EARLY_SHARE = 0.9, SOON_S = 15, LAST_S = 60, VENT_CALL_S = 60; // after its time a load under pressure calls too

// ---- time: a real day follows the server's clock, carried on by the tablet's steady clock; a practice day its own.
// The last time the server gave is kept beside the wall clock, for a page that is loaded again without the server.
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

// A tablet that slept stops its steady clock; what the wall clock went on meanwhile is added.
let seen = { wall: Date.now(), steady: performance.now() };
function mendSleep() {
  const now = { wall: Date.now(), steady: performance.now() };
  const slept = (now.wall - seen.wall - (now.steady - seen.steady)) / 1000;
  if (slept > 2) anchor.second += slept;
  seen = now;
}

const two = (n) => String(Math.floor(n)).padStart(2, "0");
const hhmm = (s) => `${two((s / 3600) % 24)}:${two((s / 60) % 60)}`;
const clockOf = (left) => (left >= 0 ? `${two(left / 60)}:${two(left % 60)}` : `+${two(-left / 60)}:${two(-left % 60)}`);
const made = (name, values) => Object.assign(document.createElement(name), values);
const fresh = () => (crypto.randomUUID ? crypto.randomUUID().replaceAll("-", "") : `${Date.now()}${Math.random()}`);

// ---- taps: each has a key of its own, waits here until the server has it, and is sent once more if in doubt
const waiting = () => JSON.parse(localStorage.getItem(QUEUE) || "[]");
const keep = (taps) => localStorage.setItem(QUEUE, JSON.stringify(taps));
const standing = () => {
  const taken = new Set(waiting().filter((tap) => tap.what === "undo").map((tap) => tap.undoes));
  return waiting().filter((tap) => tap.what !== "undo" && !taken.has(tap.key));
};
let sending = null;
const LOCKED = new Set([401, 403]); // the server is there, but takes nothing from this screen until somebody signs in: taps wait
class LockedOut extends Error {}
let pressing = false;

function tell(form, at) {
  const values = Object.fromEntries(new FormData(form));
  form.querySelector("[name=key]").value = fresh();
  const button = form.querySelector("button");
  button.disabled = true;
  for (const behind of [form.closest("details[id]"), form.closest(".sheet")]) behind?.removeAttribute("open");
  if (!root.contains(form)) { // not drawn anew, so made ready for the next tap
    const box = form.querySelector("input[name=pieces]:not([type=hidden])");
    if (box) box.value = "";
    setTimeout(() => { button.disabled = false; }, 800);
  }
  return post({ ...values, at_s: Math.round(at ?? nowS()) }, form.dataset.said);
}

function post(tap, said = "") {
  keep([...waiting(), tap]);
  if (tap.what !== "undo") canUndo(tap, said);
  return send().then(() => !waiting().some((other) => other.key === tap.key));
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
      method: "POST", headers: { "Content-Type": "application/json" }, signal: AbortSignal.timeout(ANSWER_MS),
      body: JSON.stringify(practice ? { ...tap, now_s: tap.at_s } : tap),
    });
    if (answer.status >= 500) throw new Error(answer.status);
    if (LOCKED.has(answer.status)) throw new LockedOut(answer.status);
    keep(waiting().filter((other) => other.key !== tap.key));
    const told = await answer.json().catch(() => ({ message: answer.status }));
    if (answer.ok) show("");
    if (!answer.ok || !told.new) cannotUndo(tap.key); // refused, asked about, or another tablet's tap
    if (told.choices) ask(tap, told);
    else if (!answer.ok) show(`${link.dataset.refused} ${told.message}`);
  }
}

// ---- ten seconds to take a tap back: the mistake and its taking back both stay on record
let undoable = [];

function canUndo(tap, said) {
  undoable = [...undoable.slice(-2), { tap, said, until: performance.now() + UNDO_MS }];
  drawUndo();
}

function cannotUndo(key) {
  undoable = undoable.filter((one) => one.tap.key !== key);
  drawUndo();
}

function takeBack({ tap }) {
  cannotUndo(tap.key);
  const { practice: day, date: on } = tap;
  post({ key: fresh(), what: "undo", undoes: tap.key, practice: day, date: on, at_s: Math.round(nowS()) }).then(refresh).catch(lost);
}

function drawUndo() {
  undoable = undoable.filter((one) => one.until > performance.now());
  const shown = [...undo.querySelectorAll("button")];
  if (shown.length === undoable.length && shown.every((button, n) => button.dataset.key === undoable[n].tap.key)) {
    shown.forEach((button, n) => { button.querySelector("i").textContent = Math.ceil((undoable[n].until - performance.now()) / 1000); });
    return;
  }
  undo.replaceChildren(...undoable.map((one) => {
    const row = made("p", { textContent: one.said });
    const button = made("button", { type: "button", textContent: `↶ ${link.dataset.undo} ` });
    button.dataset.key = one.tap.key;
    button.append(made("i", { ariaHidden: "true" }));
    button.addEventListener("click", () => takeBack(one));
    row.append(button);
    return row;
  }));
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

const tileOf = (fryer) => root.querySelector(`[data-tile="${CSS.escape(fryer ?? "")}"]`);

function drawAsked() {
  questions.replaceChildren(...asked().map(({ tap, message, choices }) => {
    const box = made("div", { className: "problem stop asked" });
    box.setAttribute("role", "alert");
    const name = tileOf(tap.fryer)?.dataset.name ?? tap.fryer;
    box.append(made("p", { textContent: `${name}: ${message}` }));
    for (const choice of choices) {
      const button = made("button", { type: "button", textContent: choice.text });
      button.dataset.answer = choice.answer;
      button.addEventListener("click", () => {
        keepAsked(asked().filter((other) => other.tap.key !== tap.key));
        if (choice.answer === "back in the oil") refresh();
        else post({ ...tap, at_s: choice.at_s ?? tap.at_s, reason: choice.answer }, `${name}: ${choice.text}`).then(refresh).catch(lost);
      });
      box.append(button);
    }
    return box;
  }));
}

let lostAt = null;

function lost(error) {
  lostAt ??= hhmm(nowS());
  const locked = error instanceof LockedOut;
  show((locked ? link.dataset.locked : link.dataset.lost).replace("{at}", lostAt).replace("{n}", waiting().length));
  if (locked && !link.querySelector("a")) link.append(" ", made("a", { href: location.href, textContent: link.dataset.open }));
}

function show(text) {
  link.hidden = !text;
  if (text && link.firstChild?.data !== text) link.textContent = text;
}

// ---- the page: the server draws it, this puts it in place. What is open stays open, what is half typed stays typed.
function put(html) {
  const boxes = (details) => [...details.querySelectorAll("input:not([type=hidden]), select")];
  const open = [...root.querySelectorAll("details[open][id]")].map((one) => [one.id, boxes(one).map((box) => box.value)]);
  const focus = document.activeElement?.closest?.("form.tap, details[id]");
  const [where, which] = focus?.id ? [`#${CSS.escape(focus.id)} > summary`, 0]
    : ["form.tap button", focus ? [...root.querySelectorAll("form.tap")].indexOf(focus) : -1];
  root.innerHTML = html;
  for (const [id, values] of open) {
    const details = document.getElementById(id);
    if (!details) continue;
    details.open = true;
    boxes(details).forEach((box, n) => { if (values[n] !== undefined) box.value = values[n]; });
  }
  if (which >= 0) root.querySelectorAll(where)[which]?.focus({ preventScroll: true });
}

let drawing = false;
let drawn = false; // by what the server said last, since this page was opened
async function look() {
  const query = new URLSearchParams({ lang: language });
  if (practice) for (const [k, v] of Object.entries({ practice, date, now_s: nowS().toFixed(0) })) query.set(k, v);
  const answer = await fetch(`${part}?${query}`, { signal: AbortSignal.timeout(ANSWER_MS) });
  if (LOCKED.has(answer.status)) throw new LockedOut(answer.status);
  if (!answer.ok) throw new Error(answer.status);
  return { html: await answer.text(), old: answer.headers.has("x-kept-copy") };
}

async function refresh() {
  if (drawing) return;
  drawing = true;
  try {
    await send();
    const { html, old } = await look();
    if (old) throw new Error("kept");
    // Never under a finger: a button replaced between press and release would swallow the tap.
    const typing = root.contains(document.activeElement) && ["INPUT", "SELECT"].includes(document.activeElement.tagName);
    if (!pressing && !typing) put(html);
    drawn = true;
    if (!waiting().length && !link.textContent.startsWith(link.dataset.refused)) show("");
    const stamp = root.querySelector("#stamp");
    if (!practice && stamp) setTime(Number(stamp.dataset.now));
    lostAt = null;
  } catch (error) {
    lost(error);
    if (!drawn) await look().then(({ html }) => put(html)).catch(() => {}); // the last answer kept is newer than the page
    drawn = true;
  } finally {
    drawing = false;
    tick();
  }
}

// ---- clocks. What was tapped here and the server does not have yet counts all the same: a drop down, a lift no more.
function clockFor(tile) {
  const mine = standing().filter((tap) => tap.fryer === tile.dataset.tile && ["drop", "lift"].includes(tap.what)).at(-1);
  const { drop, lift, vent } = tile.dataset;
  if (!mine) return lift === undefined ? {} : { drop: Number(drop), lift: Number(lift), vent: vent === undefined ? null : Number(vent) };
  if (mine.what === "lift") return { said: `${link.dataset.lifted} ${hhmm(mine.at_s)}` };
  const times = JSON.parse(root.querySelector("#times").textContent);
  const time = times.filter((t) => t.fryer === mine.fryer && t.product === mine.product)
    .sort((a, b) => a.pieces - b.pieces).find((t, n, all) => t.pieces >= Number(mine.pieces) || n === all.length - 1);
  const said = `${link.dataset.dropped}: ${mine.pieces} ${time?.name ?? mine.product}`;
  if (!time) return { said: `${said}, ${hhmm(mine.at_s)}` };
  return { said, drop: mine.at_s, lift: mine.at_s + time.lift_s, vent: time.vent_s === null ? null : mine.at_s + time.vent_s };
}

function drawTile(tile, now) {
  const at = clockFor(tile), counts = at.lift !== undefined;
  const venting = counts && at.vent !== null && now >= at.vent; // no countdown while pressure is let go
  const left = (at.vent ?? at.lift) - now;
  const due = counts && (venting ? now >= at.lift + VENT_CALL_S : left <= 0);
  const states = {
    due, venting, last: counts && !venting && !due && left <= LAST_S, local: Boolean(at.said), runs: counts,
    nearly: counts && now >= at.drop + EARLY_SHARE * (at.lift - at.drop),
  };
  for (const [name, on] of Object.entries(states)) tile.classList.toggle(name, on);
  const unsent = tile.querySelector(".unsent"), timer = tile.querySelector(".timer"), life = tile.querySelector(".life");
  unsent.hidden = !at.said;
  unsent.textContent = at.said ?? "";
  timer.hidden = life.hidden = !counts || venting;
  const caution = tile.querySelector(".vent");
  if (caution) caution.hidden = !venting;
  if (!counts) return null;
  const [minutes, seconds] = clockOf(left).split(":");
  timer.querySelector("b").textContent = minutes;
  timer.querySelector(".colon").textContent = ":";
  timer.querySelector("i").textContent = seconds;
  life.value = Math.min(1, Math.max(0, left / ((at.vent ?? at.lift) - at.drop)));
  const number = Number(tile.dataset.number), slow = !sim || sim.speed <= 1;
  if (slow && !due && left > 0 && left <= SOON_S) warn(number, `${tile.dataset.tile} ${Math.round(at.lift)}`);
  return due ? number : null;
}

function tick() {
  mendSleep();
  const now = nowS();
  clock.textContent = hhmm(now);
  drawUndo();
  const due = [...root.querySelectorAll("[data-tile]")].map((tile) => drawTile(tile, now)).filter((number) => number !== null);
  for (const bar of root.querySelectorAll("[data-ends]")) {
    const left = Number(bar.dataset.ends) - now;
    bar.querySelector("progress").value = Math.min(1, Math.max(0, left / Number(bar.dataset.hold)));
    bar.querySelector(".minutes").textContent = Math.max(0, Math.floor(left / 60));
  }
  document.title = due.length ? `▲ ${link.dataset.due} (${due.length})` : TITLE;
  const calling = document.querySelector("#calling");
  if (calling) calling.textContent = due.map((number) => `▲${number}`).join(" ");
  const silent = document.querySelector("#silent");
  if (silent) silent.hidden = heard();
  call(sim && sim.speed > 1 ? [] : due);
}

const pressed = new Map(); // when each tile was tapped last: a wet glove taps twice
root.parentElement.addEventListener("submit", (event) => {
  const form = event.target.closest("form.tap");
  if (!form) return;
  event.preventDefault();
  const place = form.closest("[data-tile]")?.dataset.tile ?? form;
  if (performance.now() - (pressed.get(place) ?? -TWICE_MS) < TWICE_MS) return;
  pressed.set(place, performance.now());
  tell(form, nowS()).then(refresh).catch(lost);
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

// ---- links that carry the practice day's time, the test of the tones, the whole screen
document.addEventListener("click", (event) => {
  const to = event.target.closest("a[data-now]");
  if (to && practice) {
    keepSim(sim.speed);
    const url = new URL(to.href);
    url.searchParams.set("now_s", nowS().toFixed(0));
    to.href = url.href;
  }
  if (event.target.closest("#test-tones")) {
    let wait = 0;
    for (const tile of root.querySelectorAll("[data-tile]")) wait += sing(Number(tile.dataset.number), 0, wait) + 0.4;
    shake([300, 100, 300]);
  }
  if (event.target.closest("#whole-screen")) {
    if (document.fullscreenElement) document.exitFullscreen();
    else document.documentElement.requestFullscreen?.().catch(() => {});
  }
});

async function awake() {
  const kept = await stayAwake();
  const sleeps = document.querySelector("#sleeps");
  if (sleeps) sleeps.hidden = kept;
}

// A page may be there before its worker: then what it is made of is asked for once more, so that it opens again without the server.
async function keepPage(workers) {
  await workers.register(`${AT}/day/worker.js`, { scope: `${AT}/day/` });
  const { active } = await workers.ready;
  if (!workers.controller) {
    const taken = new Promise((done) => workers.addEventListener("controllerchange", done, { once: true }));
    active.postMessage("take this page");
    await taken;
  }
  const here = new URL(location.href);
  here.searchParams.delete("now_s");
  if (await caches.match(here.href)) return;
  const parts = performance.getEntriesByType("resource").map((one) => one.name).filter((name) => /\/(static|fonts)\//.test(name));
  await Promise.all([location.href, ...parts].map((name) => fetch(name).catch(() => {})));
}

for (const [name, on] of [["pointerdown", true], ["pointerup", false], ["pointercancel", false]]) {
  window.addEventListener(name, () => { if (on) pressing = true; else setTimeout(() => { pressing = false; }, 60); }, true);
}
window.addEventListener("pointerdown", unlock);
window.addEventListener("keydown", unlock);
tick();
drawAsked();
setInterval(tick, 250);
(async function loop() {
  await follow();
  await refresh();
  setTimeout(loop, EVERY_MS);
})();
awake();
document.addEventListener("visibilitychange", () => { if (!document.hidden) { awake(); refresh(); } });
window.addEventListener("online", refresh);
if ("serviceWorker" in navigator) keepPage(navigator.serviceWorker).catch(() => {});
