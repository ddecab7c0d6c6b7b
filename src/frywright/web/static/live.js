// The live probe: fetches what the server knows every second; when it cannot, it says so at once and greys what is old.
const root = document.querySelector("#live");
const link = document.querySelector("#link");
const say = document.querySelector("#say");
const EVERY_MS = 1000;
const LOST_MS = 4000;
let heard = Date.now();

function lost(gone) {
  root.classList.toggle("stale", gone);
  link.hidden = !gone;
  if (gone && link.textContent !== link.dataset.lost) link.textContent = link.dataset.lost;
}

async function turn() {
  try {
    const answer = await fetch(root.dataset.part, { signal: AbortSignal.timeout(LOST_MS) });
    if (!answer.ok || answer.redirected) throw new Error(answer.status);
    const text = await answer.text();
    const reading = root.contains(document.activeElement) && document.activeElement.tagName === "A";
    if (!reading) root.innerHTML = text; // a link somebody stands on is not taken from under them
    heard = Date.now();
    lost(false);
    const loud = root.querySelector("[data-say]")?.dataset.say ?? "";
    if (say.textContent !== loud) say.textContent = loud;
  } catch {
    if (Date.now() - heard > LOST_MS) lost(true);
  }
  setTimeout(turn, EVERY_MS);
}

setTimeout(turn, EVERY_MS);
