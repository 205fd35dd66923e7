// The plant's figures as a form. Each change is one edit of the text, so that comments, layout and undo are the text's own.
import {call} from "./call.js";
import {$, make, say, trying} from "./shown.js";
import {isSaved, page} from "./plant.js";

const MOST = 1000;
let shown = "", pending = Promise.resolve("");

const field = one => {
  const box = make("input", {id: "f-" + one.path, value: one.text, autocomplete: "off", spellcheck: false});
  const wrong = make("p.wrong", {id: "w-" + one.path, hidden: true});
  box.setAttribute("aria-describedby", wrong.id);
  box.dataset.was = one.text;
  box.onchange = () => { pending = trying(() => set(one.path, box, wrong))(); };
  // What stands in a box is saved with the text, though nobody has left the box yet.
  box.oninput = () => { $("save").disabled = false; };
  // Ctrl-Z undoes what is typed here; once that is in the text, it undoes the text's last change.
  box.onkeydown = event => {
    if ((event.ctrlKey || event.metaKey) && event.key === "z" && box.value === box.dataset.was) { event.preventDefault(); page.undo(); }
  };
  const row = make("div.field", make("label", {htmlFor: box.id}, one.label), box, wrong);
  row.dataset.words = [one.group, one.part, one.label].join(" ").toLowerCase();
  return row;
};

const set = async (path, box, wrong) => {
  const text = page.text(), value = box.value.trim();
  wrong.hidden = true;
  if (value === box.dataset.was) return "";
  const edit = await call("POST", "set", {text, path, value});
  if (edit.refused) { wrong.textContent = edit.refused; wrong.hidden = false; say("Not changed: " + edit.refused); return edit.refused; }
  if (text !== page.text()) { say("The text has changed meanwhile; set it once more."); return ""; }
  page.edit(edit);
  box.dataset.was = value;
  return "";
};

// Waits until what was typed into a box is in the text; a box whose value cannot be is told once.
export const settled = async () => {
  const box = document.activeElement;
  if (box?.closest("#form")) { box.blur(); box.focus(); }
  const refused = await pending;
  pending = Promise.resolve("");
  $("save").disabled = isSaved();
  if (refused) throw Object.assign(new Error("A figure cannot be set, so nothing is saved: " + refused), {status: 400});
};

const groups = figures => {
  const all = new Map();
  for (const one of figures) {
    if (!all.has(one.group)) all.set(one.group, new Map());
    const parts = all.get(one.group);
    if (!parts.has(one.part)) parts.set(one.part, []);
    parts.get(one.part).push(one);
  }
  return [...all].map(([group, parts]) => make("details", make("summary", group), [...parts].map(([part, ones]) => make("div.part", part ? make("h3", part) : null, ones.map(field)))));
};

// A half-typed line makes the text unreadable for a moment: the form waits and does not vanish.
const fill = async text => {
  const found = await call("POST", "figures", {text});
  if (text !== page.text()) return;
  $("form").inert = found.figures.length === 0;
  if ($("form").inert) return;
  const beyond = found.figures.splice(MOST).length;
  $("others").textContent = `${found.others + beyond} more values, names and words among them, are in the text alone.`;
  const paths = found.figures.map(one => one.path).join();
  if (paths !== shown) {
    shown = paths;
    const open = new Set([...$("form").querySelectorAll("details[open] > summary")].map(one => one.textContent));
    $("form").replaceChildren(...groups(found.figures));
    $("form").querySelectorAll("details").forEach(one => { one.open = open.has(one.firstChild.textContent); });
    find();
  }
  for (const one of found.figures) {
    const box = $("f-" + one.path);
    box.dataset.was = one.text;
    if (document.activeElement !== box) box.value = one.text;
  }
  document.body.dataset.filled = (+document.body.dataset.filled || 0) + 1;
};

const find = () => {
  const words = $("find").value.toLowerCase().split(/\s+/).filter(Boolean);
  for (const group of $("form").children) {
    for (const part of group.querySelectorAll(".part")) {
      for (const row of part.querySelectorAll(".field")) row.hidden = !words.every(word => row.dataset.words.includes(word));
      part.hidden = !part.querySelector(".field:not([hidden])");
    }
    group.hidden = !group.querySelector(".field:not([hidden])");
    if (words.length && !group.hidden) group.open = true;
  }
};

$("find").oninput = find;
$("undo").onclick = () => page.undo();
$("redo").onclick = () => page.redo();
document.addEventListener("values", event => fill(event.detail).catch(() => {}));
