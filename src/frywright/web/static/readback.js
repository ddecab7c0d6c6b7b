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
  form.addEventListener("submit", () => localStorage.removeItem(key));
}
