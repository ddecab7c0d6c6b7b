// The two facts of a program, as facts.html writes them: what is predicted, and what is proven.
export function tag(name, className, textContent) {
  return Object.assign(document.createElement(name), { className, textContent });
}

function marked(className, sign, word) {
  const span = tag("span", className, ""), shape = tag("span", "", sign);
  shape.setAttribute("aria-hidden", "true");
  span.append(shape, ` ${word}`);
  return span;
}

export function mark(fact) {
  const sign = fact.short ? "▼" : fact.state === "over" ? "▲" : "◇";
  return marked(`mark ${fact.state}${fact.short ? " short" : ""}`, sign, fact.word);
}

export function twoFacts(facts) {
  const predicted = tag("p", "fact predicted", ""), proof = tag("p", `fact proof ${facts.proven ? "proven" : "unproven"}`, "");
  predicted.append(mark(facts), " ");
  if (facts.amount) predicted.append(tag("strong", "amount", facts.amount), " ");
  predicted.append(tag("span", "said", facts.predicted));
  proof.append(marked("mark", facts.proven ? "●" : "○", facts.proven_word), " ", tag("span", "said", facts.evidence));
  return [predicted, proof];
}
