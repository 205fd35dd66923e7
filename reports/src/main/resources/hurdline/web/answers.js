// The answers that lie in the folder, those of the terminal too: read, noted, set side by side.
import {call} from "./call.js";
import {$, button, make, reader, say, table, trying} from "./shown.js";
import {different} from "./plant.js";

let shown = [];

// An answer that another program has taken away leaves the list.
const doing = work => trying(async () => {
  try { await work(); } catch (fault) { if (fault.status === 404) await list(); throw fault; }
});

const note = (one, more) => doing(async () => { await call("PUT", "note", {name: one.name, star: String(one.star), note: one.note, ...more()}); await list(); });

const row = one => {
  const box = make("input", {id: "note-" + one.name, value: one.note, maxLength: 1900, autocomplete: "off"});
  box.onchange = note(one, () => ({note: box.value}));
  return make("li.answer", make("h3", `${one.star ? "\u2605 " : ""}${one.plant || one.name}, ${one.when}`),
    make("p.note", one.asked), one.sentences.slice(0, 3).map(said => make("p", said)),
    make("p", make("label", {htmlFor: box.id}, "Note"), " ", box),
    one.call.other ? make("p.note", `It was asked with ${one.call.other}, for which this page has no field: ask it again in a terminal.`) : null,
    make("p.row",
      button("Report", doing(() => report(one.name)), {"aria-label": "Report of " + one.name}),
      button(one.star ? "Take the star away" : "Star", note(one, () => ({star: String(!one.star)}))),
      one.question && !one.call.other ? button("Ask again", () => again(one), {"aria-label": "Ask again, as in " + one.name}) : null,
      one.question === "FIT" ? button("Into the plant's text", () => document.dispatchEvent(new CustomEvent("figures", {detail: one})), {"aria-label": "Into the plant's text, the figures of " + one.name}) : null,
      button("Open the folder", doing(async () => { await call("POST", "folder", {name: one.name}); say(`The folder ${one.name} is opened.`); }), {"aria-label": "Open the folder " + one.name}),
      button("Delete", doing(() => remove(one))),
      make("label.tick", make("input", {type: "checkbox", name: "side", value: one.name, onchange: sides}), " side by side")));
};

// The question with what was filled in, for another seed or more replications; of the plant's file as it is now.
const again = one => {
  if (!one.asOnDisk && !confirm(`${one.plant} has been changed since, or is not in this folder: the question would be asked of what is there now. Go on?`)) return;
  document.dispatchEvent(new CustomEvent("again", {detail: one}));
};

const remove = async one => {
  if (!confirm(`Delete the answer ${one.name} with all its files?`)) return;
  await call("DELETE", "answers", {name: one.name});
  say(`${one.name} is deleted.`);
  await list();
};

export const list = async () => {
  shown = (await call("POST", "answers", reader())).answers;
  $("answers-none").hidden = shown.length > 0;
  $("answer-list").replaceChildren(...shown.map(row));
  sides();
};

export const report = async name => {
  const {address} = await call("POST", "report", {name});
  $("report-name").textContent = name;
  $("report-open").href = address;
  $("report-frame").src = address;
  $("report").hidden = false;
  $("report-head").focus();
};

const picked = () => [...document.querySelectorAll("input[name=side]:checked")].map(one => one.value);
const sides = () => { $("side-by-side").disabled = picked().length !== 2; };

const sideBySide = async () => {
  const [a, b] = picked(), both = await call("POST", "side", {a, b, ...reader()});
  const texts = both.plantA && both.plantB ? [make("h3", "What differs in the plants' text"), make("div.two",
    make("pre", {tabIndex: 0, role: "region", "aria-label": "Only in " + a}, different(both.plantA, both.plantB)),
    make("pre", {tabIndex: 0, role: "region", "aria-label": "Only in " + b}, different(both.plantB, both.plantA)))] : make("p.note", "One of them has no text of its plant.");
  $("both").replaceChildren(make("h2", {tabIndex: -1}, "Side by side"),
    make("p.note", both.said),
    ...both.rows.length ? [table("Figures of both answers", ["figure", a, b], both.rows.map(one => [one.label, one.a, one.b]))] : [], ...[texts].flat());
  $("both").hidden = false;
  $("both").querySelector("h2").focus();
};

$("side-by-side").onclick = doing(sideBySide);
$("report-close").onclick = () => { $("report").hidden = true; $("report-frame").src = "about:blank"; };
document.addEventListener("answers", () => list().catch(() => {}));
