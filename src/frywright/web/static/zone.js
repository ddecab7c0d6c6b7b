// Offers the browser's own time zone where none is typed yet.
const box = document.querySelector("[data-zone]");
if (box && !box.value) box.value = Intl.DateTimeFormat().resolvedOptions().timeZone ?? "";
