// What is said of the text while it is typed: problems, rated capacity with the flow drawing, a quick answer.
import {call} from "./call.js";
import {$, button, later, make, reader, table} from "./shown.js";

const CHECK_AFTER_MS = 60, QUICK_AFTER_MS = 400, SHOWN = 30, MARKED = 200;
let plant = {name: "", text: () => "", page: null, values: () => {}};

// plant: the name of the file, how to get at its text and its editor, and who wants its values.
export const follow = given => { plant = given; };

const problems = found => {
  const wrong = found.filter(one => !one.warning).length, more = found.length - wrong;
  $("state").textContent = wrong ? `${wrong} ${wrong === 1 ? "problem" : "problems"}` : more ? `No problems; ${more} ${more === 1 ? "warning" : "warnings"}` : "No problems";
  $("state").className = wrong ? "wrong" : "right";
  $("problems").replaceChildren(...found.slice(0, SHOWN).map(one => make("li" + (one.warning ? ".warning" : ".wrong"),
    one.from < 0 ? one.text : button((one.line ? `line ${one.line}: ` : "") + one.text, () => plant.page.goTo(one.from), {className: "plain"}),
    one.fix ? button(`Write "${one.fix}"`, () => plant.page.edit({from: one.from, to: one.to, with: one.fix})) : null)));
  if (found.length > SHOWN) $("problems").append(make("li", `and ${found.length - SHOWN} more`));
};

const bar = machine => {
  const fill = make("span.fill");
  fill.style.width = machine.loadPercent + "%";
  return make("span.bar" + (machine.limits ? ".limits" : ""), {"aria-hidden": "true"}, fill);
};

// Of a drawing that is wider than its place the middle is seen first.
const centered = event => { const box = event.target.parentElement; box.scrollLeft = (box.scrollWidth - box.clientWidth) / 2; };

const drawings = flows => flows.map(one => make("figure", make("figcaption", one.title),
  make("div.drawing", {tabIndex: 0, role: "region", "aria-label": one.title}, make("img", {src: one.source, alt: one.alternative, onload: centered}))));

const rated = (sentences, lines, flows) => $("rated").replaceChildren(
  ...sentences.map(one => make("p", one)),
  make("div", {id: "flows"}, drawings(flows)),
  ...lines.map(line => make("details", make("summary", line.title),
    make("dl", make("dt", "Rated"), make("dd", line.rated), make("dt", "Expected"), make("dd", line.expected), line.next ? [make("dt", "Next"), make("dd", line.next)] : null),
    make("div.figures", {tabIndex: 0, role: "region", "aria-label": "Headroom of " + line.title}, make("table",
      make("thead", make("tr", make("th", {scope: "col"}, "machine"), make("th", {scope: "col"}, "load"), make("th.n", {scope: "col"}, "headroom"))),
      make("tbody", line.machines.map(one => make("tr", make("th", {scope: "row"}, one.title + (one.limits ? ", bottleneck" : "")), make("td", one.headroom ? bar(one) : ""), make("td.n", one.headroom)))))))));

const quick = later(QUICK_AFTER_MS, async text => {
  const found = await call("POST", "quick", {name: plant.name, text, ...reader()}).catch(() => ({older: true}));
  if (found.older || text !== plant.text()) return;
  $("quick").replaceChildren(
    make("p.note", `Rough: ${found.replications} replications, seed 1. Intervals are of the mean at 95 %. Ask a study for more.`),
    ...found.sentences.map(one => make("p", one)),
    table("Main figures of the quick answer", found.head, found.rows));
  $("quick-flows").replaceChildren(...drawings(found.flows));
  $("quick-flows-part").hidden = !found.flows.length;
  $("quick-part").classList.remove("old");
  document.body.dataset.quick = (+document.body.dataset.quick || 0) + 1;
});

const unchecked = fault => {
  $("state").textContent = "Not checked: " + (fault.status ? fault.message : "hurdline does not answer.");
  $("state").className = "wrong";
};

const check = later(CHECK_AFTER_MS, async text => {
  const found = await call("POST", "check", {name: plant.name, text, ...reader()}).catch(fault => { unchecked(fault); return {older: true}; });
  if (found.older || text !== plant.text()) return;
  plant.page.mark(found.problems.slice(0, MARKED));
  problems(found.problems);
  if (found.lines.length) { rated(found.sentences, found.lines, found.flows); $("rated-part").classList.remove("old"); quick(text); }
  plant.values(text);
  document.body.dataset.checked = (+document.body.dataset.checked || 0) + 1;
});

// Of older text nothing is taken back before newer is there, but it is shown as old.
export const changed = text => {
  $("rated-part").classList.add("old");
  $("quick-part").classList.add("old");
  if (!plant.name) return;
  call("POST", "drop", reader()).catch(() => {});
  check(text);
};
