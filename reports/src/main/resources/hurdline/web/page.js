// The page as a whole: the folder's plants, and which part is shown.
import {call, enter} from "./call.js";
import {$, button, keep, kept, make, say, trying} from "./shown.js";
import * as plant from "./plant.js";
import {settled} from "./form.js";
import * as ask from "./ask.js";
import * as answers from "./answers.js";

// The plant that is open stays in the list, though its file may be gone.
const listed = plants => {
  const names = plant.name() && !plants.includes(plant.name()) ? [...plants, plant.name()] : plants;
  const now = [...$("plants").options].map(one => one.value);
  if (now.join("\n") !== names.join("\n")) $("plants").replaceChildren(...names.map(one => make("option", {value: one}, one)));
  $("plants").value = plant.name();
};

// Files that came or went since: looked for when somebody comes back to the window.
const refresh = async () => { if (plant.name()) listed((await call("GET", "files")).plants); };

const fill = async wanted => {
  const files = await call("GET", "files");
  $("folder").textContent = files.folder;
  listed(files.plants);
  $("templates").replaceChildren(...files.templates.map(one => make("li",
    button(one.label, trying(() => create(one))), " ", one.description)));
  $("first").hidden = files.plants.length > 0;
  $("work").hidden = files.plants.length === 0;
  const next = [wanted, kept("plant"), files.first, files.plants[0]].find(one => files.plants.includes(one));
  if (next) await plant.show(next);
  else say("This folder has no plant yet.");
};

const create = async template => {
  if (!plant.leave()) return;
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
  keep("part", wanted);
  await parts[wanted](...given);
};

for (const one of Object.keys(parts)) $("to-" + one).onclick = trying(() => part(one));
document.addEventListener("answer", trying(async event => { await part("answers"); await answers.report(event.detail); }));

// Whether the plant of an answer is open now.
const isOpen = async ({plant: wanted}) => {
  if (wanted !== plant.name() && !plant.leave()) return false;
  if (wanted !== plant.name()) await plant.show(wanted);
  return true;
};
document.addEventListener("again", trying(async event => { if (await isOpen(event.detail)) await part("ask", event.detail); }));
document.addEventListener("figures", trying(async event => {
  if (!await isOpen(event.detail)) return;
  await part("plant");
  await plant.offer(event.detail);
}));
document.addEventListener("reader", trying(async () => { if (!$("answers").hidden) await answers.list(); if (plant.name()) plant.again(); }));

const save = trying(async () => { await settled(); await plant.save(); });
$("plants").onchange = trying(async () => {
  const wanted = $("plants").value;
  try { if (plant.leave()) await plant.show(wanted); } finally { await refresh(); }
});
$("save").onclick = save;
$("save-as").onclick = trying(async () => { await settled(); await plant.saveAs(); });
$("new").onclick = () => { $("first").hidden = false; $("first").querySelector("button").focus(); };
$("units").value = sessionStorage.getItem("units") ?? "us";
$("units").onchange = () => { sessionStorage.setItem("units", $("units").value); document.dispatchEvent(new CustomEvent("reader")); };
document.addEventListener("files", trying(event => fill(event.detail)));
document.addEventListener("keydown", event => {
  if ((event.ctrlKey || event.metaKey) && event.key === "s") { event.preventDefault(); save(); }
});

addEventListener("focus", () => refresh().catch(() => {}));

// Tells the server that a page is still open; it ends half an hour after the last.
setInterval(() => call("GET", "here").catch(() => {}), 60000);

try {
  await enter();
  await fill();
  plant.restore();
  await ask.follow();
  if (plant.name() && kept("part") in parts) await part(kept("part"));
} catch (fault) {
  say(fault.status === 401 ? "This page was opened without its key, or its key is that of an earlier start. Open it with hurdline open." : fault.message || "hurdline does not answer.");
}
window.hurdlinePage = plant.page;
