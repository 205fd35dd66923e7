// One plant of the folder: opened, edited, saved; never over what another program has written meanwhile.
import {call} from "./call.js";
import {$, button, keep, kept, later, make, say, trying} from "./shown.js";
import {editor} from "./editor.js";
import {changed, follow} from "./live.js";

const DRAFT_AFTER_MS = 300;
let open = {name: "", text: "", version: ""};

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
  draft();
};

// Unsaved text outlives a reload of this window, and Back and Forward.
const keepDraft = () => keep("draft", isSaved() ? null : {...open, text: page.text()});
const draft = later(DRAFT_AFTER_MS, keepDraft);
addEventListener("pagehide", keepDraft);

// What was unsaved before the window was loaded again comes back; Undo leads to the file's own text.
export const restore = () => {
  const before = kept("draft");
  if (before?.name !== open.name || before.text === open.text) return;
  const theirs = open.text;
  page.edit({from: 0, to: theirs.length, with: before.text});
  open = {...open, version: before.version};
  say(`${open.name} is open with what was not saved.`);
};

export const show = async wanted => {
  const got = await call("POST", "read", {name: wanted});
  open = {name: wanted, ...got};
  keep("plant", wanted);
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
    open = {name: open.name, ...await call("PUT", "plant", {name: open.name, text, version: open.version})};
    say(`${open.name} is saved.`);
  } catch (fault) {
    if (fault.status === 404) vanished();
    else if (fault.status === 409) await bothVersions(text);
    else throw fault;
  }
  unsaved();
};

// A question with some buttons, above all else until one of them is pressed.
const decide = (head, ...more) => {
  $("changed").replaceChildren(make("h2", head), ...more);
  $("changed").setAttribute("aria-label", head);
  $("changed").hidden = false;
  $("changed").querySelector("button").focus();
};
const decided = () => { $("changed").hidden = true; unsaved(); };

const differences = (labelA, a, labelB, b) => {
  const text = (label, said) => make("div", make("h3", label), make("pre", {tabIndex: 0, role: "region", "aria-label": label}, said));
  return make("div.two", text(labelA, different(a, b)), text(labelB, different(b, a)));
};

// The file was changed by another program: both are shown, and which is kept is the user's choice.
const bothVersions = async mine => {
  const theirs = await call("POST", "read", {name: open.name});
  decide("The file was changed by another program",
    make("p", "Nothing is saved yet. What differs:"),
    differences("On the disk now", theirs.text, "Here", mine),
    make("p.row",
      button("Keep mine: save it over the file", trying(async () => { open = {...open, version: theirs.version}; decided(); await save(); })),
      button("Take the file", trying(async () => { decided(); await show(open.name); })),
      button("Save mine as a new file", trying(async () => { decided(); await saveAs(); }))));
  say("The file was changed by another program; nothing is saved.");
};

// The file was taken away or renamed by another program: the text is here alone now.
const vanished = () => {
  decide(`${open.name} is no longer in this folder`,
    make("p", "It was deleted, moved or renamed by another program. Your text is here; nothing of it is lost."),
    make("p.row", button("Save mine as a new file", trying(() => saveAs(open.name.replace(/\.ya?ml$/, ""))))));
  say(`${open.name} is no longer in this folder; nothing is saved.`);
};

// Figures that records gave: which lines they would change is seen first, and the file stays as it is until it is saved.
export const offer = async answer => {
  const now = page.text(), {text} = await call("POST", "fitted", {name: answer.name, text: now});
  if (text === now) { say(`The figures of ${answer.name} are in the text already.`); return; }
  const take = async () => {
    if (page.text() !== now) { await offer(answer); say("The text has changed meanwhile; look once more."); return; }
    decided();
    page.edit({from: 0, to: now.length, with: text});
    say("The figures are in the text, which is not saved yet. Undo takes them out again.");
  };
  decide(`Figures from records, as in ${answer.name}`,
    make("p", "Nothing is changed yet. Which lines would be others:"),
    differences("In the text now", now, "With the figures from the records", text),
    make("p.row", button("Put them into the text", trying(take)), button("Leave the text as it is", () => { decided(); say("The text is as it was."); })));
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

export const saveAs = async (offered = open.name.replace(/\.ya?ml$/, "") + "-2") => {
  const wanted = (prompt("Name of the new file, without .yaml", offered) ?? "").trim();
  if (!wanted) return;
  const made = await call("POST", "create", {name: wanted, text: page.text()});
  document.dispatchEvent(new CustomEvent("files", {detail: made.name}));
};

// For another reader: other units.
export const again = () => changed(page.text());

export const leave = () => isSaved() || confirm("The changes are not saved. Leave them?");
addEventListener("beforeunload", event => { if (!isSaved()) event.preventDefault(); });
