// The plant's text in CodeMirror: colors, folding, problems at their place, offers and meanings from the table of keys.
import {Compartment, EditorState, Transaction} from "@codemirror/state";
import {EditorView, keymap, lineNumbers, drawSelection, highlightActiveLine, hoverTooltip} from "@codemirror/view";
import {history, defaultKeymap, historyKeymap, undo, redo} from "@codemirror/commands";
import {StreamLanguage, syntaxHighlighting, HighlightStyle, foldService, foldGutter, foldKeymap, indentUnit} from "@codemirror/language";
import {setDiagnostics, lintGutter, lintKeymap} from "@codemirror/lint";
import {autocompletion, completionKeymap} from "@codemirror/autocomplete";
import {search, searchKeymap} from "@codemirror/search";
import {tags} from "@lezer/highlight";

// Keys, amounts with their unit, dates, words, comments.
const plantText = StreamLanguage.define({
  name: "plant",
  token(stream) {
    if (stream.eatSpace()) return null;
    if (stream.peek() === "#" && (stream.pos === 0 || /\s/.test(stream.string[stream.pos - 1]))) { stream.skipToEnd(); return "comment"; }
    if (stream.match(/^"(?:[^"\\]|\\.)*"|^'(?:[^']|'')*'/)) return "string";
    if (stream.match(/^[A-Za-z0-9_-]+(?=:(\s|$))/)) return "propertyName";
    if (stream.match(/^\d{4}-\d\d-\d\d/)) return "literal";
    if (stream.match(/^[-+]?\d[\d.]*( ?[A-Za-z%][A-Za-z0-9%]*(\/[A-Za-z0-9%]+)*)?/)) return "number";
    if (stream.match(/^[{}[\],:]/)) return "punctuation";
    stream.match(/^[^\s{}[\],:#]+/) || stream.next();
    return null;
  },
  languageData: {commentTokens: {line: "#"}}
});

const colors = HighlightStyle.define([
  {tag: tags.comment, class: "text-comment"}, {tag: tags.propertyName, class: "text-key"}, {tag: tags.number, class: "text-number"},
  {tag: tags.string, class: "text-string"}, {tag: tags.literal, class: "text-date"}
]);

// What is indented under a line folds with it.
const folds = foldService.of((state, from) => {
  const line = state.doc.lineAt(from), depth = line.text.search(/\S/);
  if (depth < 0 || !/:\s*(#.*)?$/.test(line.text)) return null;
  let last = null;
  for (let n = line.number + 1; n <= state.doc.lines; n++) {
    const next = state.doc.line(n), inner = next.text.search(/\S/);
    if (inner >= 0 && inner <= depth) break;
    if (inner > depth) last = next;
  }
  return last && {from: line.to, to: last.to};
});

const dark = matchMedia("(prefers-color-scheme: dark)"), look = new Compartment();
const kinds = {due: "keyword", key: "property", name: "variable", word: "enum"};

const completion = offers => autocompletion({override: [async asked => {
  const word = asked.matchBefore(/[A-Za-z0-9_.-]*/);
  if (!asked.explicit && word.from === word.to && !/[:{,[] $/.test(asked.state.sliceDoc(Math.max(0, asked.pos - 2), asked.pos))) return null;
  const found = await offers(asked.state.doc.toString(), asked.pos);
  if (!found.length || asked.aborted) return null;
  const hasColon = /^\s*:/.test(asked.state.sliceDoc(asked.pos, asked.pos + 20));
  return {from: word.from, validFor: /^[A-Za-z0-9_.-]*$/, options: found.map(one => ({
    label: one.label, type: kinds[one.kind], detail: one.kind === "due" ? "needed" : "", info: one.meaning || undefined,
    apply: (one.kind === "due" || one.kind === "key") && !hasColon ? one.label + ": " : one.label, boost: one.kind === "due" ? 2 : one.kind === "key" ? 0 : 1
  }))};
}]});

const meanings = meaning => hoverTooltip(async (view, at) => {
  const said = await meaning(view.state.doc.toString(), at);
  return said ? {pos: at, create: () => { const dom = document.createElement("div"); dom.className = "meaning"; dom.textContent = said; return {dom}; }} : null;
});

// changed(text) is told of every change; offers and meaning ask the server.
export const editor = (parent, {changed, offers, meaning}) => {
  const extensions = [
    lineNumbers(), foldGutter(), lintGutter(), history(), drawSelection(), highlightActiveLine(), search({top: true}),
    indentUnit.of("  "), EditorState.tabSize.of(2), plantText, syntaxHighlighting(colors), folds, completion(offers), meanings(meaning),
    // Tab leaves the editor, as it leaves every other field.
    keymap.of([...completionKeymap, ...lintKeymap, ...searchKeymap, ...historyKeymap, ...foldKeymap, ...defaultKeymap]),
    EditorView.contentAttributes.of({"aria-label": "The plant's text", tabindex: "0"}), look.of(EditorView.darkTheme.of(dark.matches)),
    EditorView.updateListener.of(update => { if (update.docChanged) changed(update.state.doc.toString()); }),
    EditorView.cspNonce.of(document.querySelector("meta[name=style-nonce]").content)
  ];
  const view = new EditorView({parent, state: EditorState.create({doc: "", extensions})});
  dark.addEventListener("change", () => view.dispatch({effects: look.reconfigure(EditorView.darkTheme.of(dark.matches))}));
  const edit = ({from, to, with: insert}) => view.dispatch({changes: {from, to, insert}, annotations: Transaction.userEvent.of("input.form")});
  return {
    view,
    text: () => view.state.doc.toString(),
    // A new state: undoing must not lead back to another plant's text.
    open: text => { view.setState(EditorState.create({doc: text, extensions})); changed(text); },
    edit,
    undo: () => undo(view),
    redo: () => redo(view),
    mark: problems => view.dispatch(setDiagnostics(view.state, problems.filter(one => one.from >= 0).map(one => ({
      from: one.from, to: Math.max(one.from, one.to), severity: one.warning ? "warning" : "error", message: one.text,
      actions: one.fix ? [{name: `Write "${one.fix}"`, apply: () => edit({from: one.from, to: one.to, with: one.fix})}] : []
    })))),
    goTo: at => { view.dispatch({selection: {anchor: at}, effects: EditorView.scrollIntoView(at, {y: "center"})}); view.focus(); }
  };
};
