// Figures that a script writes later take the decimal mark of the page, as the server has done with the rest.
const { decimal } = document.documentElement.dataset;
const FIGURE = /(^|[^\w.,:/§#-])(-?\d+)\.(\d+)(?!\w|[.,:/-]\w)/g;
const KEPT = "script, style, textarea, code, pre";

function write(node) {
  if (node.nodeType !== Node.TEXT_NODE) return node.childNodes.forEach(write);
  const text = node.data.replace(FIGURE, `$1$2${decimal}$3`);
  if (text !== node.data && !node.parentElement?.closest(KEPT)) node.data = text;
}

new MutationObserver((records) => {
  for (const { type, target, addedNodes } of records) {
    if (type === "characterData") write(target);
    else addedNodes.forEach(write);
  }
}).observe(document, { subtree: true, childList: true, characterData: true });
