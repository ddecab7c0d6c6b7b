// A half-typed read-back survives a closed browser: kept on this device until it is compared.
import { AT } from "./at.js";

const form = document.getElementById("readback");
if (form) {
  const key = `readback${AT} ${form.dataset.key}`;
  const kept = JSON.parse(localStorage.getItem(key) || "{}");
  for (const [name, value] of Object.entries(kept)) {
    if (form.elements[name] && !form.elements[name].value) form.elements[name].value = value;
    if (name === "started_at") form.elements[name].value = value;
  }
  form.addEventListener("input", () => localStorage.setItem(key, JSON.stringify(Object.fromEntries(new FormData(form)))));
  // One at a time: a single large box, Enter goes on; easy to dictate into or to tap with gloves. An empty box is an answer: nothing held.
  const labels = [...form.querySelectorAll("label")], button = form.querySelector("[data-one]");
  const box = (label) => label.querySelector("input, select");
  const only = (at) => labels.forEach((label, i) => { label.hidden = at >= 0 && i !== at; });
  button.hidden = false;
  button.addEventListener("click", () => {
    let at = 0;
    only(at);
    button.hidden = true;
    form.classList.add("single");
    box(labels[at]).focus();
    form.addEventListener("keydown", (event) => {
      if (event.key !== "Enter" || at < 0) return;
      event.preventDefault();
      if (!box(labels[at]).reportValidity()) return;
      at = at + 1 < labels.length ? at + 1 : -1;
      only(at);
      if (at < 0) form.classList.remove("single");
      (at >= 0 ? box(labels[at]) : form.querySelector("button.main")).focus();
    });
  });
  form.addEventListener("submit", () => localStorage.removeItem(key));
}
