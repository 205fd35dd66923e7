// Making elements of a page. What comes from a plant is always text, never markup.

export const $ = id => document.getElementById(id);

// make("p.note", "text") or make("button", {type: "button", onclick}, "text", child ...)
export const make = (what, ...parts) => {
  const [tag, ...classes] = what.split(".");
  const node = document.createElement(tag);
  if (classes.length) node.className = classes.join(" ");
  for (const part of parts.flat()) {
    if (part === null || part === undefined || part === false) continue;
    if (typeof part === "object" && !(part instanceof Node)) Object.entries(part).forEach(([name, value]) => name in node ? (node[name] = value) : node.setAttribute(name, value));
    else node.append(part);
  }
  return node;
};

export const button = (text, onclick, more = {}) => make("button", {type: "button", onclick, ...more}, text);

// A table of text; the first column names the row, figures stand right.
export const table = (caption, head, rows) =>
  make("div.figures", {tabIndex: 0, role: "region", "aria-label": caption},
    make("table",
      make("thead", make("tr", head.map((cell, i) => cell ? make(i ? "th.n" : "th", {scope: "col"}, cell) : make("td")))),
      make("tbody", rows.map(row => make("tr", row.map((cell, i) => i ? make("td.n", cell) : make("th", {scope: "row"}, cell)))))));

// A time after the last call of several in a row.
export const later = (ms, work) => {
  let timer;
  return (...values) => { clearTimeout(timer); timer = setTimeout(() => work(...values), ms); };
};

export const say = text => { $("status").textContent = text; };

// Tells this page from another of the same folder, a duplicate of its tab too.
const page = String(Math.random());

// Who reads: units are kept for this window, the order of dates and marks of numbers are the browser's.
export const reader = () => ({page, units: sessionStorage.getItem("units") ?? "us", locale: navigator.language});

// What a reload of this window finds again; a browser that keeps nothing, or not so much, does without.
export const keep = (name, value) => {
  try { if (value === null) sessionStorage.removeItem(name); else sessionStorage.setItem(name, JSON.stringify(value)); } catch { sessionStorage.removeItem(name); }
};
export const kept = name => { try { return JSON.parse(sessionStorage.getItem(name)); } catch { return null; } };

// Runs what a person has asked for; a refusal is said where all is said.
export const trying = work => async (...values) => {
  try { return await work(...values); } catch (fault) { say(fault.status ? fault.message : "hurdline does not answer. Is it still open in its terminal?"); }
};
