// A half-typed form survives a closed browser: kept on this device until it is sent. data-keep names what it is about.
for (const form of document.querySelectorAll("form[data-keep]")) {
  const key = `${form.getAttribute("action")} ${form.dataset.keep}`;
  const kept = JSON.parse(localStorage.getItem(key) || "{}");
  for (const [name, value] of Object.entries(kept)) {
    const box = form.elements[name];
    if (box && box.type !== "hidden" && !box.value) box.value = value;
  }
  form.addEventListener("input", () => localStorage.setItem(key, JSON.stringify(Object.fromEntries(new FormData(form)))));
  form.addEventListener("submit", () => localStorage.removeItem(key));
}
