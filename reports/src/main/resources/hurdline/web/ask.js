// Questions of a plant as it is on the disk, and the studies that answer them: each a process of its own, one at a time.
import {call} from "./call.js";
import {$, button, make, reader, say, trying} from "./shown.js";
import * as plant from "./plant.js";
import {settled} from "./form.js";

const POLL_MS = 500, USUAL = 40;
let asking = {questions: [], options: {}, plans: {}}, widest = new Map(), told = new Set(), timer = 0;

const ticks = (field, names) => make("fieldset", make("legend", field.label),
  names.length ? names.map(([one, title]) => make("label.tick", make("input", {type: "checkbox", name: field.name, value: one}), " ", title)) : make("span.note", "This plant has none."));

const entry = field => {
  if (field.kind === "options" || field.kind === "plans") return ticks(field, Object.entries(asking[field.kind]));
  if (field.kind === "tick") return make("p", make("label.tick", make("input", {type: "checkbox", name: field.name, id: "ask-" + field.name}), " ", field.label));
  return make("p", make("label", {htmlFor: "ask-" + field.name}, field.label), " ", make("input", {id: "ask-" + field.name, name: field.name, value: field.value, autocomplete: "off"}), " ", make("span.note", field.hint));
};

const question = () => asking.questions.find(one => one.id === $("question").value);

const fields = () => {
  $("says").textContent = question().description;
  $("fields").replaceChildren(...question().fields.map(entry));
  $("replications").parentElement.hidden = question().fewest === 0;
  $("replications").min = question().fewest;
  if (+$("replications").value < question().fewest) $("replications").value = question().fewest < USUAL ? USUAL : 199;
  estimate();
};

// About how long, by the last quick answer on this machine.
const estimate = () => {
  const years = +$("replications").value, marked = $("fields").querySelectorAll("fieldset input:checked").length;
  const many = question()?.id === "RUN" || question()?.id === "GRID" ? 1 : 1 + (marked || Math.max(Object.keys(asking.options).length, Object.keys(asking.plans).length, 1));
  const seconds = years * many * asking.secondsPerReplication;
  $("estimate").textContent = years > 0 && question()?.fewest > 0 ? `About ${seconds < 90 ? Math.ceil(seconds) + " s" : seconds < 5400 ? Math.ceil(seconds / 60) + " min" : Math.ceil(seconds / 3600) + " h"} to simulate; service lives, grids and drawings come on top.` : "";
};

const values = () => {
  const all = {name: plant.name(), question: $("question").value, replications: String(+$("replications").value), seed: String(+$("seed").value), ...reader()};
  for (const field of question().fields) {
    const boxes = [...$("fields").querySelectorAll(`[name="${field.name}"]`)];
    if (field.kind === "options" || field.kind === "plans") all[field.name] = boxes.filter(one => one.checked).map(one => one.value);
    else all[field.name] = field.kind === "tick" ? String(boxes[0].checked) : boxes[0].value;
  }
  return all;
};

// Shows the questions of the plant that is open; what is given is filled in.
export const show = async (given = {}) => {
  if (!plant.name()) return;
  asking = await call("POST", "questions", {name: plant.name()});
  const was = given.question || $("question").value || "RUN";
  $("of").textContent = plant.name();
  $("question").replaceChildren(...asking.questions.map(one => make("option", {value: one.id}, one.label)));
  $("question").value = was;
  fields();
  if (given.replications) $("replications").value = given.replications;
  if (given.seed !== undefined) $("seed").value = given.seed;
  for (const [name, value] of Object.entries(given.call?.fields ?? {}))
    for (const box of $("fields").querySelectorAll(`[name="${name}"]`)) {
      if (box.type === "checkbox") box.checked = Array.isArray(value) ? value.includes(box.value) : value === "true";
      else box.value = value;
    }
  estimate();
  follow();
};

const begin = async () => {
  await settled();
  if (!plant.isSaved()) {
    if (!confirm("Questions are asked of the file on the disk, and your changes are not saved. Save them and ask?")) return;
    await plant.save();
    if (!plant.isSaved()) return;
  }
  await call("POST", "studies", values());
  say("The study is on its way.");
  follow();
};

const band = (id, progress) => {
  if (!progress.low) return null;
  const low = +progress.low, high = +progress.high;
  if (!widest.has(id)) widest.set(id, {low, high});
  const first = widest.get(id), from = Math.min(first.low, low), width = Math.max(first.high, high) - from || 1;
  const inner = make("span.fill");
  inner.style.marginLeft = 100 * (low - from) / width + "%";
  inner.style.width = Math.max(1, 100 * (high - low) / width) + "%";
  return make("p", `${progress.figure}: ${progress.text} `, make("span.band", {"aria-hidden": "true"}, inner));
};

const words = {waiting: "waits", running: "is under way", done: "done", stopped: "stopped", failed: "failed"};

const row = one => {
  const active = one.state === "waiting" || one.state === "running", progress = one.progress;
  return make("li.study", make("p", make("strong", one.question), ` ${one.plant}: ${words[one.state]}${one.state === "stopped" && one.answer ? "; what was done is kept" : ""}`),
    one.state === "running" && progress.of ? make("p", make("progress", {max: +progress.of, value: +progress.done, "aria-label": "Replications done"}), ` ${progress.done} of ${progress.of} replications`) : null,
    band(one.id, progress),
    one.said.filter(line => !active || one.state === "running").slice(0, 12).map(line => make("p.note", line)),
    active ? button("Stop", trying(async () => { await call("DELETE", "studies", {id: one.id}); say("Stopping."); follow(); })) : null,
    (one.state === "done" || one.state === "stopped") && one.answer ? button("Show the answer", () => document.dispatchEvent(new CustomEvent("answer", {detail: one.answer}))) : null);
};

const tell = study => {
  const over = !["waiting", "running"].includes(study.state), tenth = Math.floor(10 * (study.progress.done ?? 0) / (study.progress.of || 1));
  const key = study.id + (over ? study.state : "-" + tenth);
  if (told.has(key)) return;
  told.add(key);
  if (over) { document.dispatchEvent(new CustomEvent("answers")); say(`${study.question} ${words[study.state]}.`); }
  else if (tenth > 0) say(`${study.progress.done} of ${study.progress.of} replications are done.`);
};

// A page that was closed or reloaded finds its studies again: they are the server's.
export const follow = async () => {
  clearTimeout(timer);
  const {studies} = await call("GET", "studies");
  const held = document.activeElement?.closest?.("#studies li"), place = held ? [...$("studies").children].indexOf(held) : -1;
  $("studies").replaceChildren(...[...studies].reverse().map(row));
  if (place >= 0) $("studies").children[place]?.querySelector("button")?.focus();
  studies.forEach(tell);
  document.body.dataset.studies = studies.map(one => one.state).join();
  if (studies.some(one => ["waiting", "running"].includes(one.state))) timer = setTimeout(() => follow().catch(() => {}), POLL_MS);
};

$("question").onchange = fields;
$("replications").oninput = estimate;
$("fields").onchange = estimate;
$("ask-form").onsubmit = event => { event.preventDefault(); trying(begin)(); };
