// One plant of the folder: opened, edited, saved; never over what another program has written meanwhile.
import {call} from "./call.js";
import {$, button, make, say, trying} from "./shown.js";
import {editor} from "./editor.js";
import {changed, follow} from "./live.js";

let open = {name: "", text: "", version: "", layout: "plain"};

export const page = editor($("editor"), {
  changed: text => { unsaved(); changed(text); },
  offers: (text, at) => call("POST", "offers", {text, at}).catch(() => []),
  meaning: (text, at) => call("POST", "meaning", {text, at}).then(found => found.said, () => "")
});

export const name = () => open.name;
export const isSaved = () => !open.name || page.text() === open.text;

const unsaved = () => {
  $("save").disabled = isSaved();
  document.title = (isSaved() ? "" : "* ") + (open.name ? open.name + " - " : "") + "hurdline";
};

export const show = async wanted => {
  const got = await call("POST", "read", {name: wanted});
  open = {name: wanted, ...got};
  $("changed").hidden = true;
  follow({name: wanted, text: page.text, page, values: text => document.dispatchEvent(new CustomEvent("values", {detail: text}))});
  page.open(got.text);
  $("plants").value = wanted;
  unsaved();
  say(`${wanted} is open.`);
};

export const save = async () => {
  const text = page.text();
  try {
    open = {name: open.name, ...await call("PUT", "plant", {name: open.name, text, version: open.version, layout: open.layout})};
    say(`${open.name} is saved.`);
  } catch (fault) {
    if (fault.status !== 409) throw fault;
    await bothVersions(text);
  }
  unsaved();
};

// The file was changed by another program: both are shown, and which is kept is the user's choice.
const bothVersions = async mine => {
  const theirs = await call("POST", "read", {name: open.name});
  const text = (label, said) => make("div", make("h3", label), make("pre", {tabIndex: 0, role: "region", "aria-label": label}, said));
  const done = () => { $("changed").hidden = true; unsaved(); };
  $("changed").replaceChildren(
    make("h2", "The file was changed by another program"),
    make("p", "Nothing is saved yet. What differs:"),
    make("div.two", text("On the disk now", different(theirs.text, mine)), text("Here", different(mine, theirs.text))),
    make("p.row",
      button("Keep mine: save it over the file", trying(async () => { open = {...open, version: theirs.version}; done(); await save(); })),
      button("Take the file", trying(async () => { done(); await show(open.name); })),
      button("Save mine as a new file", trying(async () => { done(); await saveAs(); }))));
  $("changed").hidden = false;
  $("changed").querySelector("button").focus();
  say("The file was changed by another program; nothing is saved.");
};

// Lines of one text that the other does not have, with their numbers.
export const different = (one, other) => {
  const left = new Map();
  other.split("\n").forEach(line => left.set(line, (left.get(line) ?? 0) + 1));
  return one.split("\n").map((line, i) => {
    const count = left.get(line) ?? 0;
    left.set(line, count - 1);
    return count > 0 ? null : `${i + 1}: ${line}`;
  }).filter(line => line !== null).join("\n") || "(nothing that the other lacks)";
};

const newName = question => (prompt(question, open.name.replace(/\.ya?ml$/, "") + "-2") ?? "").trim();

export const saveAs = async () => {
  const wanted = newName("Name of the new file, without .yaml");
  if (!wanted) return;
  const made = await call("POST", "create", {name: wanted, text: page.text()});
  document.dispatchEvent(new CustomEvent("files", {detail: made.name}));
};

// For another reader: other units.
export const again = () => changed(page.text());

export const leave = () => isSaved() || confirm("The changes are not saved. Leave them?");
addEventListener("beforeunload", event => { if (!isSaved()) event.preventDefault(); });
