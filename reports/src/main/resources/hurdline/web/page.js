// The page as a whole: the folder's plants, and which part is shown.
import {call, enter} from "./call.js";
import {$, button, make, say, trying} from "./shown.js";
import * as plant from "./plant.js";
import "./form.js";
import * as ask from "./ask.js";
import * as answers from "./answers.js";

const fill = async wanted => {
  const files = await call("GET", "files");
  $("folder").textContent = files.folder;
  $("plants").replaceChildren(...files.plants.map(one => make("option", {value: one}, one)));
  $("templates").replaceChildren(...files.templates.map(one => make("li",
    button(one.label, trying(() => create(one))), " ", one.description)));
  $("first").hidden = files.plants.length > 0;
  $("work").hidden = files.plants.length === 0;
  const next = wanted || files.first || files.plants[0];
  if (next && files.plants.includes(next)) await plant.show(next);
  else say("This folder has no plant yet.");
};

const create = async template => {
  const wanted = (prompt("Name of the new file, without .yaml", template.label) ?? "").trim();
  if (!wanted) return;
  const made = await call("POST", "create", {name: wanted, template: template.name});
  await fill(made.name);
};

const parts = {plant: async () => {}, ask: ask.show, answers: answers.list};

const part = async (wanted, ...given) => {
  for (const one of Object.keys(parts)) {
    $(one).hidden = one !== wanted;
    $("to-" + one).setAttribute("aria-pressed", String(one === wanted));
  }
  await parts[wanted](...given);
};

for (const one of Object.keys(parts)) $("to-" + one).onclick = trying(() => part(one));
document.addEventListener("answer", trying(async event => { await part("answers"); await answers.report(event.detail); }));
document.addEventListener("again", trying(async event => {
  if (event.detail.plant !== plant.name() && plant.leave()) await plant.show(event.detail.plant);
  await part("ask", event.detail);
}));
document.addEventListener("reader", trying(async () => { if (!$("answers").hidden) await answers.list(); if (plant.name()) plant.again(); }));

$("plants").onchange = trying(async () => plant.leave() ? plant.show($("plants").value) : void ($("plants").value = plant.name()));
$("save").onclick = trying(plant.save);
$("save-as").onclick = trying(plant.saveAs);
$("new").onclick = () => { $("first").hidden = false; $("first").querySelector("button").focus(); };
$("units").value = sessionStorage.getItem("units") ?? "us";
$("units").onchange = () => { sessionStorage.setItem("units", $("units").value); document.dispatchEvent(new CustomEvent("reader")); };
document.addEventListener("files", trying(event => fill(event.detail)));
document.addEventListener("keydown", event => {
  if ((event.ctrlKey || event.metaKey) && event.key === "s") { event.preventDefault(); trying(plant.save)(); }
});

// Tells the server that a page is still open; it ends half an hour after the last.
setInterval(() => call("GET", "here").catch(() => {}), 60000);

try {
  await enter();
  await fill();
  await ask.follow();
} catch (fault) {
  say(fault.status === 401 ? "This page was opened without its key, or its key is that of an earlier start. Open it with hurdline open." : fault.message || "hurdline does not answer.");
}
window.hurdlinePage = plant.page;
