// Keeps a screen of the set-up as it is typed, so that a closed browser loses nothing.
const form = document.querySelector("form[data-keep]");
const told = form?.querySelector("[data-kept]");
let wait = 0, sent = false;

async function keep() {
  wait = 0;
  form.elements.turn.value = Number(form.elements.turn.value) + 1;
  const body = new URLSearchParams([...new FormData(form)].filter(([, value]) => typeof value === "string"));
  body.set("how", "stay");
  try {
    const answer = await fetch(form.action, { method: "POST", body, headers: { accept: "application/json" }, keepalive: true });
    const said = await answer.json();
    if (said.ok) form.elements.revision.value = said.revision;
    told.hidden = said.ok;
    told.textContent = said.message ?? "";
  } catch { /* no connection: the next change tries again */ }
}

form?.addEventListener("input", () => { clearTimeout(wait); wait = setTimeout(keep, 400); });
form?.addEventListener("submit", () => { clearTimeout(wait); sent = true; form.elements.turn.value = Number(form.elements.turn.value) + 1; });
addEventListener("pagehide", () => { if (wait && !sent) { clearTimeout(wait); keep(); } });
addEventListener("pageshow", () => { sent = false; });
