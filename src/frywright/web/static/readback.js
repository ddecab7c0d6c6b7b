// A half-typed read-back survives a closed browser: kept on this device until it is compared.
const form = document.getElementById("readback");
if (form) {
  const key = `readback ${form.dataset.key}`;
  const kept = JSON.parse(localStorage.getItem(key) || "{}");
  for (const [name, value] of Object.entries(kept)) {
    if (form.elements[name] && !form.elements[name].value) form.elements[name].value = value;
    if (name === "started_at") form.elements[name].value = value;
  }
  form.addEventListener("input", () => localStorage.setItem(key, JSON.stringify(Object.fromEntries(new FormData(form)))));
  // One at a time: a single large field, Enter goes on; easy to dictate into or to tap with gloves.
  const labels = [...form.querySelectorAll("label")], button = form.querySelector("[data-one]");
  const only = (at) => labels.forEach((label, i) => { label.hidden = at >= 0 && i !== at; });
  button.hidden = false;
  button.addEventListener("click", () => {
    let at = 0;
    only(at);
    button.hidden = true;
    labels[at].querySelector("input").focus();
    form.addEventListener("keydown", (event) => {
      if (event.key !== "Enter" || at < 0) return;
      event.preventDefault();
      if (!labels[at].querySelector("input").value) return;
      at = at + 1 < labels.length ? at + 1 : -1;
      only(at);
      (at >= 0 ? labels[at].querySelector("input") : form.querySelector("button.main")).focus();
    });
  });
  form.addEventListener("submit", () => localStorage.removeItem(key));
}
