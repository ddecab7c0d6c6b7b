// Live curves of a cook: temperatures, pressure, crust and loss, with a readout under the finger.
const NS = "http://www.w3.org/2000/svg";
const DASHES = ["", "7 4", "2 3", "10 3 2 3", "5 5", "12 3"];
const LEFT = 44, RIGHT = 10;
// Where everything stands from the top: all four panels, or the temperatures alone.
const WHOLE = {
  panels: [{ top: 26, height: 300 }, { top: 424, height: 70 }, { top: 532, height: 70 }, { top: 640, height: 70 }],
  strip: { top: 336, height: 48 },
  bottom: 710,
};
const SHORT = { panels: [{ top: 26, height: 150 }], strip: { top: 186, height: 48 }, bottom: 234 };

function make(name, attributes = {}, text = "") {
  const node = document.createElementNS(NS, name);
  for (const [key, value] of Object.entries(attributes)) node.setAttribute(key, value);
  if (text) node.textContent = text;
  return node;
}

function ticks(low, high, wanted) {
  const raw = (high - low) / wanted, power = 10 ** Math.floor(Math.log10(raw || 1));
  const step = [1, 2, 5, 10].map((m) => m * power).find((s) => s >= raw) || raw;
  const out = [];
  for (let v = Math.ceil(low / step) * step; v <= high + 1e-9; v += step) out.push(+v.toFixed(6));
  return out;
}

function at(times, values, t) {
  let low = 0, high = times.length - 1;
  while (high - low > 1) { const mid = (low + high) >> 1; if (times[mid] <= t) low = mid; else high = mid; }
  const share = (t - times[low]) / (times[high] - times[low] || 1);
  return values[low] + Math.min(Math.max(share, 0), 1) * (values[high] - values[low]);
}

export class Curves {
  constructor(figure, short = false) {
    this.figure = figure;
    this.at = short ? SHORT : WHOLE;
    this.words = JSON.parse(figure.dataset.words);
    this.showSurface = false;
    this.showUsual = false;
    this.svg = make("svg", { role: "img" });
    this.legend = Object.assign(document.createElement("ul"), { className: "legend" });
    this.readout = Object.assign(document.createElement("p"), { className: "readout" });
    const switches = Object.assign(document.createElement("div"), { className: "switches" });
    for (const [field, word] of [["showUsual", this.words.showUsual], ["showSurface", this.words.showSurface]]) {
      const button = Object.assign(document.createElement("button"), { type: "button", textContent: word });
      button.setAttribute("aria-pressed", "false");
      button.addEventListener("click", () => {
        this[field] = !this[field];
        button.setAttribute("aria-pressed", String(this[field]));
        this.draw(this.view);
      });
      switches.append(button);
    }
    figure.append(this.svg, this.readout, this.legend, switches);
    new ResizeObserver(() => this.view && this.width !== this.figure.clientWidth && this.draw(this.view)).observe(figure);
    this.svg.addEventListener("pointermove", (event) => this.point(event));
    this.svg.addEventListener("pointerdown", (event) => this.point(event));
  }

  x(t) { return LEFT + (t / this.span) * (this.width - LEFT - RIGHT); }

  path(times, values, scale) {
    let d = "";
    for (let i = 0; i < times.length; i++) d += `${i ? "L" : "M"}${this.x(times[i]).toFixed(1)} ${scale(values[i]).toFixed(1)}`;
    return d;
  }

  scale(panel, low, high) {
    const { top, height } = this.at.panels[panel];
    return (v) => top + height - ((v - low) / (high - low || 1)) * height;
  }

  axes(panel, low, high, title, count) {
    const scale = this.scale(panel, low, high), { top, height } = this.at.panels[panel];
    for (const v of ticks(low, high, count)) {
      this.svg.append(make("path", { class: "axis", d: `M${LEFT} ${scale(v)}H${this.width - RIGHT}` }));
      this.svg.append(make("text", { x: LEFT - 8, y: scale(v) + 4, "text-anchor": "end" }, String(v)));
    }
    this.svg.append(make("text", { x: LEFT, y: top - 8 }, title));
    this.svg.append(make("path", { class: "axis", d: `M${LEFT} ${top}V${top + height}` }));
    return scale;
  }

  draw(view) {
    this.view = view;
    this.width = Math.max(320, this.figure.clientWidth);
    this.svg.setAttribute("viewBox", `0 0 ${this.width} ${this.at.bottom + 42}`);
    const c = view.curves, times = c.time_s;
    this.span = times[times.length - 1];
    this.svg.replaceChildren(make("title", {}, view.headline.sentence));
    const pieces = c.pieces.filter((p) => p.heavy || this.showUsual);
    const cuts = [...new Set(c.pieces.map((p) => p.cut))];
    const lines = [c.oil, ...pieces.map((p) => p.core), view.strip.map((s) => s.set ?? c.oil[0])];
    const high = Math.max(...lines.flat()), low = Math.min(...lines.flat());
    const temp = this.axes(0, Math.floor(low / 10) * 10, Math.ceil(high / 10) * 10, c.degree, 6);
    if (view.limit) {
      const y = temp(view.limit.value);
      this.svg.append(make("path", { class: "limit", d: `M${LEFT} ${y}H${this.width - RIGHT}` }));
      this.svg.append(make("text", { x: LEFT + 6, y: y - 5 }, `${this.words.limit} ${view.limit.text}`));
    }
    this.setPoints(view, temp);
    if (view.saved) this.ghost(view.saved, temp);
    this.svg.append(make("path", { class: "oil", d: this.path(times, c.oil, temp) }));
    const rows = [[this.words.oil, "oil", "", `${c.oil.at(-1).toFixed(0)} ${c.degree}`]];
    for (const p of pieces) {
      const dash = DASHES[cuts.indexOf(p.cut) % DASHES.length], kind = p.heavy ? "heavy" : "usual";
      this.svg.append(make("path", { class: `core ${kind}`, d: this.path(times, p.core, temp), "stroke-dasharray": dash }));
      if (this.showSurface) {
        const capped = p.surface.map((v) => Math.min(v, Math.ceil(high / 10) * 10));
        this.svg.append(make("path", { class: `core surface ${kind}`, d: this.path(times, capped, temp), "stroke-dasharray": dash }));
      }
      rows.push([p.name, `core ${kind}`, dash, ""]);
    }
    if (this.at === WHOLE) this.below(view, pieces, cuts);
    this.strip(view);
    this.moments(view);
    this.legend.replaceChildren(...rows.map(([name, kind, dash]) => {
      const item = document.createElement("li"), sample = make("svg", { viewBox: "0 0 42 10", "aria-hidden": "true" });
      sample.append(make("path", { class: kind, d: "M0 5H42", "stroke-dasharray": dash }));
      item.append(sample, name);
      return item;
    }));
    this.cursor = make("path", { class: "cursor", d: "" });
    this.svg.append(this.cursor);
    this.say(view.marks.at(-1).time_s);
  }

  // The panels below the temperatures.
  below(view, pieces, cuts) {
    const c = view.curves, times = c.time_s;
    const top = Math.max(1, ...c.gauge) * 1.08;
    const gauge = this.axes(1, 0, top, `${this.words.gauge} (${c.pressure_unit})`, 3);
    this.svg.append(make("path", { class: "gauge", d: `${this.path(times, c.gauge, gauge)}L${this.x(this.span)} ${gauge(0)}L${LEFT} ${gauge(0)}Z` }));
    for (const [panel, field, title] of [[2, "crust", `${this.words.crust} (${c.crust_unit})`], [3, "loss_pct", `${this.words.loss} (%)`]]) {
      const scale = this.axes(panel, 0, Math.max(0.5, ...pieces.flatMap((p) => p[field])), title, 3);
      for (const p of pieces) {
        const dash = DASHES[cuts.indexOf(p.cut) % DASHES.length];
        this.svg.append(make("path", { class: `core ${p.heavy ? "heavy" : "usual"}`, d: this.path(times, p[field], scale), "stroke-dasharray": dash }));
      }
    }
  }

  // What the thermostat is set to, stage by stage.
  setPoints(view, scale) {
    const held = view.strip.filter((s) => s.set !== undefined);
    const d = held.map((s, i) => `${i ? "L" : "M"}${this.x(s.start_s)} ${scale(s.set)}H${this.x(s.end_s)}`).join("");
    this.svg.append(make("path", { class: "set-point", d }));
  }

  // The version saved, behind what is typed; what lasts longer than the picture is cut off.
  ghost(saved, scale) {
    const times = saved.time_s.filter((t) => t <= this.span);
    for (const values of [saved.oil, ...saved.cores]) this.svg.append(make("path", { class: "ghost", d: this.path(times, values, scale) }));
  }

  // The stages under the curves: set point, lid, and what the clock has left when each begins.
  strip(view) {
    for (const s of view.strip) {
      const x = this.x(s.start_s), width = this.x(s.end_s) - x, middle = x + width / 2;
      const block = make("g", { class: `stage-block ${s.lid}` });
      block.append(make("title", {}, [s.number, s.words, s.left].filter(Boolean).join(" · ")));
      block.append(make("rect", { x, y: this.at.strip.top, width: Math.max(width, 1), height: this.at.strip.height }));
      const roomy = s.number && width > 8 * Math.max(s.words.length, s.left.length);
      const rows = roomy ? [`${s.number} · ${s.words}`, s.left] : [s.number, ""];
      rows.forEach((text, i) => block.append(make("text", { x: middle, y: this.at.strip.top + 20 + 18 * i, "text-anchor": "middle" }, text)));
      this.svg.append(block);
    }
  }

  moments(view) {
    const { bottom } = this.at;
    for (const v of ticks(0, this.span / 60, this.width < 600 ? 5 : 8)) {
      this.svg.append(make("text", { x: this.x(v * 60), y: bottom + 18, "text-anchor": "middle" }, String(v)));
    }
    this.svg.append(make("text", { x: (LEFT + this.width) / 2, y: bottom + 36, "text-anchor": "middle" }, this.words.minutes));
    for (const m of view.marks) {
      const x = this.x(m.time_s);
      this.svg.append(make("path", { class: "moment", d: `M${x} ${this.at.panels[0].top}V${bottom}` }));
      const side = m === view.marks.at(-1) && this.width - x > 30 ? 13 : -4; // the lift stands right of its line where there is room
      this.svg.append(make("text", { "text-anchor": "end", transform: `translate(${x + side} ${this.at.panels[0].top + 2}) rotate(-90)` }, m.text));
    }
  }

  point(event) {
    const box = this.svg.getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * this.width;
    this.say(Math.min(Math.max(((x - LEFT) / (this.width - LEFT - RIGHT)) * this.span, 0), this.span));
  }

  say(t) {
    const c = this.view.curves, times = c.time_s;
    this.cursor.setAttribute("d", `M${this.x(t)} ${this.at.panels[0].top}V${this.at.bottom}`);
    const clock = `${Math.floor(t / 60)}:${String(Math.round(t % 60)).padStart(2, "0")}`;
    const stage = this.view.strip.find((s) => s.number && t < s.end_s);
    const under = stage ? ` · ${this.words.stage} ${stage.number}: ${stage.words}` : "";
    const shown = c.pieces.filter((p) => p.heavy || this.showUsual);
    const parts = shown.map((p) => `${p.name} ${at(times, p.core, t).toFixed(0)} ${c.degree}, ${at(times, p.crust, t).toFixed(c.crust_unit === "in" ? 2 : 1)} ${c.crust_unit}, −${at(times, p.loss_pct, t).toFixed(1)} %`);
    this.readout.textContent = `${clock}${under} · ${this.words.oil} ${at(times, c.oil, t).toFixed(0)} ${c.degree} · ${at(times, c.gauge, t).toFixed(1)} ${c.pressure_unit} · ${parts.join(" · ")}`;
  }
}
