// The bench page: taps, the clock, what is waited for. Without this file the page works by its buttons; with it also
// without reception. Clock, waits and what is half tapped are kept on this phone and survive closing the page.
"use strict";
(() => {
const form = document.querySelector("form[data-bench-now]");
if (!form) return;
const words = form.dataset, filled = words.filled === "yes";
const one = (selector, within = form) => within.querySelector(selector);
const every = (selector, within = form) => [...within.querySelectorAll(selector)];
const template = name => one(`template[data-template=${name}]`).innerHTML;
const fill = (text, ...gaps) => gaps.reduce((all, gap, at) => all.replace(`{${at}}`, gap), text);
const PLAUSIBLE = 6 * 3600, DRAFT_AGE = 3 * 24 * 3600e3, PIECES = 18, SUPPLIES = 8, TOOLS = 8;
const said = document.querySelector("[data-now-said]");
const undo = document.querySelector("[data-undo]");
let lists = {}, mending = false;

// ---- whose it is. Clock and taps are kept under the person who signed in last on this phone, so also without reception and
// after a sign-in that is over. After she signed out herself, the page belongs to nobody; what is tapped then goes, like
// the entries that wait, to whoever signs in next.

const NOBODY = "", PERSON = "patinary-person";
const read = name => { try { return localStorage.getItem(name); } catch (none) { return null; } };
const write = (name, text) => { try { localStorage.setItem(name, text); } catch (full) { /* only this page knows then */ } };
const parked = {
  of(person, name) { try { return JSON.parse(read(`bench-${name}-${person}`)); } catch (damaged) { return null; } },
  get(name) { return parked.of(who, name); },
  set(name, value) { write(`bench-${name}-${who}`, JSON.stringify(value)); },
};
let who = words.person || read(PERSON) || NOBODY;
if (words.person) become(words.person);

function become(person) {
  const left = { clock: parked.of(NOBODY, "clock"), draft: parked.of(NOBODY, "draft"), waits: parked.of(NOBODY, "waits") };
  who = person;
  write(PERSON, person);
  if (left.clock && left.clock.changed > (parked.get("clock") || { changed: 0 }).changed) parked.set("clock", left.clock);
  if (left.draft && !parked.get("draft")) parked.set("draft", left.draft);
  if (left.waits && left.waits.length) parked.set("waits", [...(parked.get("waits") || []), ...left.waits]);
  for (const name of Object.keys(left)) write(`bench-${name}-${NOBODY}`, "null");
}
// The shop says who is signed in now. Another person's page is drawn anew; nothing is lost, it is all kept.
function isStill(person) {
  if (!person || person === who) return true;
  const nobody = who === NOBODY;
  become(person);
  if (nobody) { clock = parked.get("clock") || clock; waits = parked.get("waits") || waits; }
  else location.reload();
  return nobody;
}

function made(html) {
  const box = document.createElement("div");
  box.innerHTML = html;
  return box.firstElementChild;
}
function uuid() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = bytes[6] & 15 | 64;
  bytes[8] = bytes[8] & 63 | 128;
  const hex = [...bytes].map(byte => byte.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}
const reveal = within => every("[data-script]", within).forEach(part => { part.hidden = false; });

// ---- after the tap. What follows from one is worked out when it is on the screen, and only where something changed;
// whatever needs it earlier (sending, leaving the page) has it done at once.

const owed = new Set();
function soon(...works) {
  if (!owed.size) requestAnimationFrame(() => setTimeout(settle));
  works.forEach(work => owed.add(work));
}
function settle() {
  const works = [...owed];
  owed.clear();
  works.forEach(work => work());
}
const hide = (part, away) => { if (part.hidden !== away) part.hidden = away; };

// ---- pieces

const chip = id => one(`[data-piece][data-id="${CSS.escape(id)}"]`);
const isOn = piece => one("[name=pieces]", piece).checked;
const chosen = () => every("[data-piece]").filter(isOn);
const about = piece => ({ value: piece.dataset.id, code: one("[data-code]", piece).textContent, title: one("[data-title]", piece).textContent,
  style: piece.dataset.style, area: piece.dataset.area || "", finish: piece.dataset.finish || "", cautions: (piece.dataset.cautions || "").split(" "), state: piece.dataset.state || "" });

function addPiece(row) {
  const known = chip(row.value);
  if (known) return known;
  const piece = made(template("piece").replaceAll("NN", row.value));
  Object.assign(piece.dataset, { id: row.value, style: row.style || "", area: row.area || "", finish: row.finish || "", cautions: row.cautions.join(" "), state: row.state });
  one(".tag", piece).textContent = row.code;
  one("[data-code]", piece).textContent = row.code;
  one("[data-title]", piece).textContent = row.title;
  pictures.fill(one("[data-shot]", piece), row.title, row.value, lists.pictures);
  one("[data-state]", piece).textContent = one("[data-states]").dataset[(row.state || "").toLowerCase()] || "";
  one("[data-pieces]").append(piece);
  one("[data-no-pieces]").hidden = true;
  return piece;
}
function search() {
  const typed = form.elements.pieceWords.value.trim().toLowerCase();
  const fits = text => text.toLowerCase().includes(typed);
  if (typed) (lists["bench-pieces"] || []).filter(row => fits(row.text)).slice(0, PIECES).forEach(addPiece);
  for (const piece of every("[data-piece]")) {
    const row = about(piece);
    piece.hidden = Boolean(typed) && !isOn(piece) && !fits(row.code + " " + row.title);
  }
}

// ---- supplies

const other = one("[data-other-supply]");
const openRow = other.closest("[data-use]");
const use = id => every("[data-use]").find(row => row !== openRow && row.dataset.supply === id);
const place = row => Number(/uses\[(\d+)\]/.exec(one("[name^='uses[']", row).name)[1]);
const field = (row, name) => one(`[name$="].${name}"]`, row);
const picked = row => row !== openRow && field(row, "picked").checked;
let next = 1 + Math.max(...every("[data-use]").map(place));

function supply(id) {
  const option = [...other.options].find(each => each.value === id && id !== "");
  return option && { value: id, name: option.dataset.name, line: option.dataset.line, cautions: (option.dataset.cautions || "").split(" "),
    measures: (option.dataset.measures || "").split("|").filter(Boolean), use: option.dataset.useSize || "" };
}
function addUse(row) {
  const known = use(row.value);
  if (known) return known;
  const made1 = made(template("use").replaceAll("NN", next++));
  made1.dataset.supply = row.value;
  made1.dataset.cautions = row.cautions.join(" ");
  field(made1, "supply").value = row.value;
  one("[data-name]", made1).textContent = row.name;
  one("[data-line]", made1).textContent = row.line;
  openRow.before(made1);
  return made1;
}
// What is asked of a supply in use is made when it is first used: most of those offered never are.
function asked(row, measures = (supply(row.dataset.supply) || { measures: [] }).measures) {
  if (one(".now-how", row)) return row;
  const at = place(row), name = one("[data-name]", row).textContent, how = made(template("how").replaceAll("NN", at));
  every("[data-name]", how).forEach(part => { part.textContent = name; });
  every("[data-step]", how).forEach(button => button.setAttribute("aria-label", button.getAttribute("aria-label") + name));
  for (const word of measures) {
    const measure = made(template("measure").replaceAll("NN", at));
    one("input", measure).value = word;
    one("[data-word]", measure).textContent = one("[data-measure-words]").getAttribute("data-word-" + word) || word;
    one("[data-measures]", how).append(measure);
  }
  one("[data-times]", how).hidden = !measures.length;
  one("details", how).open = !measures.length;
  reveal(how);
  every("noscript", row).forEach(part => part.remove());
  row.append(how);
  return row;
}
// A tool that wears is ticked and no more: once, on all the pieces.
const toolBox = id => every("[name=tools]").find(box => box.value === id);
function addTool(row) {
  const known = toolBox(row.value);
  if (known) return known;
  const label = made(template("tool").replaceAll("NN", row.value));
  label.dataset.cautions = row.cautions.join(" ");
  one("[data-name]", label).textContent = row.name;
  one("[data-line]", label).textContent = row.line;
  one("[data-tool-taps]").append(label);
  one("[data-tools]").hidden = false;
  return toolBox(row.value);
}
const tickTool = id => { const row = supply(id), box = toolBox(id) || row && addTool(row); if (box) box.checked = true; };
const worked = text => every("[data-tool]").filter(label => one("input", label).checked).map(text);
function take(row, typed, exact) {
  if (picked(row)) return;
  field(asked(row), "picked").checked = true;
  field(row, "how").checked = exact;
  measured(row, typed);
}
// "3 dabs" is three taps on "dab"; anything else stays as it was typed.
function measured(row, typed) {
  const measure = every("[name$='.measure']", row).find(each => [each.value, each.value + "s"].some(word => typed.endsWith(" " + word)));
  const times = measure && typed.slice(0, typed.lastIndexOf(" " + measure.value)).trim();
  if (measure && /^[0-9.]+$/.test(times)) {
    measure.checked = true;
    field(row, "times").value = times;
  } else {
    field(row, "quantity").value = typed;
    one("details", row).open = true;
  }
}
function step(button) {
  const row = button.closest("[data-use]"), times = field(row, "times"), now = Number(times.value.replace(",", ".")) || 0;
  const measures = every("[name$='.measure']", row);
  if (!measures.some(each => each.checked)) measures[0].checked = true;
  field(row, "quantity").value = "";
  times.value = button.dataset.step === "1" ? (now < 1 ? 1 : now + 1) : now > 1 ? now - 1 : 0.5;
}

// ---- the finish that is followed

const finish = () => (lists["bench-finishes"] || []).find(row => row.value === form.elements.finish.value);
// As the shop does it: what goes by a surface that is not known is left to be typed; what is filled in stays by eye.
function fillIn() {
  const row = finish(), pieces = chosen().map(about);
  if (!row) return;
  for (const id of new Set(row.uses.map(each => each.supply))) {
    const uses = row.uses.filter(each => each.supply === id), size = Number((supply(id) || {}).use);
    const count = size && uses.length && !uses.some(each => each.per)
      ? Math.round(uses.reduce((sum, each) => sum + Number(each.quantity), 0) * Math.max(1, pieces.length) / size * 100) / 100 : 0;
    if (count === 1) { if (!(use(id) && (field(use(id), "quantity") || {}).value)) tickTool(id); continue; }
    const box = use(id) || supply(id) && addUse(supply(id));
    const byArea = uses.some(each => each.per), known = pieces.length > 0 && pieces.every(piece => piece.area);
    if (!box || field(asked(box), "quantity").value || one("[name$='.measure']:checked", box)) continue;
    const takes = piece => uses.reduce((sum, each) => sum + each.quantity * (each.per ? piece.area / each.per : 1), 0);
    const sum = byArea && !known ? 0 : pieces.length ? pieces.reduce((all, piece) => all + takes(piece), 0) : takes({});
    const base = ((lists["bench-supplies"] || []).find(each => each.value === id) || {}).unit || "";
    field(box, "picked").checked = true;
    field(box, "how").checked = false;
    field(box, "share").value = !pieces.length ? "NONE" : byArea && known ? "AREA" : "EQUAL";
    field(box, "quantity").value = count ? count + " uses" : sum >= 0.005 ? (Math.round(sum * 100) / 100 + " " + base).trim() : "";
    one("details", box).open = true;
  }
}
// One finish that all the tapped pieces wait for is the one that is meant.
function plan() {
  const planned = new Set(chosen().map(about).map(piece => piece.finish));
  if (!form.elements.finish.value && planned.size === 1) form.elements.finish.value = [...planned][0];
}
let shownSteps = null;
function steps(pieces) {
  const row = finish(), note = one("[data-planned]");
  if (!row && form.elements.finish.value) return;
  const without = row && row.uses.some(each => each.per) ? pieces.filter(piece => !piece.area) : [];
  note.hidden = !row;
  note.textContent = row ? fill(words.planned, row.minutes * Math.max(1, pieces.length))
    + (without.length ? " " + fill(words.noArea, without.map(piece => piece.code).join(", ")) : "") : "";
  if (shownSteps === (row || {}).value) return;
  shownSteps = (row || {}).value;
  one("[data-steps]").replaceChildren(...(row ? row.steps : []).map(each => {
    const line = made(template("step").replaceAll("NN", each.line)), wait = one("button", line);
    one("[data-what]", line).textContent = each.what;
    one("[data-wait-words]", line).textContent = each.words;
    Object.assign(wait.dataset, { after: each.after, words: each.words });
    wait.hidden = !each.after;
    return line;
  }));
}

// ---- what follows from the taps

function follow() {
  const pieces = chosen().map(about), styles = new Set(pieces.map(piece => piece.style));
  for (const button of every("[data-styles] > button")) hide(button, !styles.has(button.dataset.style));
  // What is shared out is asked of the supplies that are used alone; the others send nothing.
  for (const row of every("[data-use]")) if (picked(row) || row !== openRow && (field(row, "quantity") || {}).value) parts(asked(row), pieces);
  const box = form.elements["mishaps[0].piece"], before = box.value;
  if ([...box.options].slice(1).map(option => option.value).join() !== pieces.map(piece => piece.value).join()) {
    box.replaceChildren(box.options[0], ...pieces.map(piece => new Option(piece.code + " " + piece.title, piece.value)));
    box.value = pieces.some(piece => piece.value === before) ? before : "";
  }
  steps(pieces);
  cautions(pieces);
  failedBefore(pieces);
}
// What failed before with a supply that is tapped, on the surface of a piece that is tapped; quiet until both are.
function failedBefore(pieces) {
  const supplies = every("[data-use]").filter(picked).map(row => row === openRow ? other.value : row.dataset.supply);
  const among = (words, values) => values.some(value => value && words.split(" ").includes(value));
  let any = false;
  for (const line of every("[data-failed]")) {
    line.hidden = !(among(line.dataset.pieces, pieces.map(piece => piece.value)) && among(line.dataset.supplies, supplies));
    any = any || !line.hidden;
  }
  one("[data-failed-shown]").hidden = !any;
}
function order() {
  const first = every("[data-styles] > button").filter(button => !button.hidden)
    .flatMap(button => button.dataset.order.split(" ")).filter(id => !(supply(id) || {}).use).slice(0, SUPPLIES);
  const rows = first.map(id => use(id) || supply(id) && addUse(supply(id))).filter(Boolean);
  const box = one("[data-uses]");
  if (rows.some((row, at) => box.children[at] !== row)) box.prepend(...rows);
}
function parts(row, pieces) {
  const box = one("[data-parts]", row);
  const kept = new Map(every("[data-part]", box).map(part => [part.dataset.part, part]));
  // What is there already stays: the finger may be on its way into one of the fields.
  if ([...kept.keys()].join() === pieces.map(piece => piece.value).join()) return;
  box.replaceChildren(...pieces.map((piece, at) => {
    const part = made(template("part").replaceAll("NN", place(row)).replaceAll("PP", at).replaceAll("PIECE", piece.value));
    every("[data-code]", part).forEach(each => { each.textContent = piece.code; });
    const before = kept.get(piece.value);
    if (before) for (const name of ["only", "weight"]) {
      field(part, name).value = field(before, name).value;
      if (name === "only") field(part, name).checked = field(before, name).checked;
    }
    return part;
  }));
}
function cautions(pieces) {
  const text = form.elements.done.value.toLowerCase();
  const called = new Set(pieces.flatMap(piece => piece.cautions));
  const call = part => (part.dataset.cautions || "").split(" ").forEach(id => called.add(id));
  every("[data-use]").filter(picked).forEach(call);
  worked(call);
  (finish() || { cautions: [] }).cautions.forEach(id => called.add(id));
  every("[data-phrases] button").filter(phrase => text.includes(phrase.textContent.toLowerCase())).forEach(call);
  let any = false, notes = 0;
  for (const line of every("[data-caution]")) {
    // What the shop found in the words themselves stays.
    hide(line, !called.has(line.dataset.caution) && !line.dataset.said);
    any = any || !line.hidden;
    if (!line.hidden && line.closest("[data-notes]")) notes++;
  }
  const more = one("[data-notes]");
  hide(more, !notes);
  const heading = one("summary", more), text1 = fill(words.more, notes);
  if (heading.textContent !== text1) heading.textContent = text1;
  hide(one("[data-cautions-shown]"), !any);
}

// ---- the clock

const off = changed => ({ started: null, since: null, worked: 0, changed, pieces: [] });
const whole = text => text === undefined || text === "" ? null : Number(text);
const kept = one("[data-clock]").dataset;
let clock = parked.get("clock") || off(0), turn = 0, asking = false;
if (filled && Number(kept.clockChanged) > clock.changed) {
  clock = { started: whole(kept.clockStarted), since: whole(kept.clockSince), worked: Number(kept.clockWorked), changed: Number(kept.clockChanged),
    pieces: chosen().map(piece => piece.dataset.id) };
}
const seconds = () => clock.worked + (clock.since === null ? 0 : Math.max(0, Math.floor((Date.now() - clock.since) / 1000)));
const minutes = () => seconds() > 0 ? Math.max(1, Math.round(seconds() / 60)) : 0;
const time = moment => new Date(moment).toLocaleTimeString(document.documentElement.lang, { hour: "2-digit", minute: "2-digit" });

function tick(state) {
  clock = { ...state, changed: Math.max(Date.now(), clock.changed + 1), pieces: chosen().map(piece => piece.dataset.id) };
  parked.set("clock", clock);
  draw();
  meet();
}
const acts = {
  "clock-go": () => { if (clock.since === null) tick({ ...clock, started: clock.started || Date.now(), since: Date.now() }); },
  "clock-pause": () => { if (clock.since !== null) tick({ ...clock, worked: seconds(), since: null }); },
  "clock-stop": () => {
    if (clock.started === null) return;
    if (seconds() > PLAUSIBLE) ask();
    else add(minutes());
    tick(off(0));
  },
  "wait": addWait,
  "finish": fillIn,
};
function add(more) {
  const box = form.elements.minutes;
  box.value = Math.max(0, (Number(box.value) || 0) + more);
  parkDraft();
}
function ask() {
  asking = true;
  const question = one("[data-asked]");
  question.textContent = fill(words.ran, Math.round(minutes() / 60));
  question.hidden = false;
  form.elements.minutes.focus();
}
function draw() {
  const state = clock.started === null ? "off" : clock.since === null ? "paused" : "running";
  for (const button of every("[data-when]")) button.hidden = !button.dataset.when.split(" ").includes(state);
  const shown = state === "off" ? "" : (state === "running" ? fill(words.since, time(clock.started)) + " " : "")
    + fill(words.worked, Math.floor(seconds() / 60)) + (state === "paused" ? ", " + words.paused : "");
  const box = one("[data-clock-words]");
  if (box.textContent !== shown) box.textContent = shown;
  drawWaits();
}

// ---- what is waited for

let waits = parked.get("waits") || [];
for (const line of every("[data-waits] > li")) {
  if (!waits.some(wait => wait.id === line.dataset.id)) {
    waits.push({ id: line.dataset.id, words: line.dataset.words, due: Number(line.dataset.dueAt), done: false });
  }
}
function addWait() {
  const box = form.elements.waitMinutes, count = Number(box.value), error = one("[data-wait-error]");
  error.hidden = count >= 1 && count <= 10080;
  if (!error.hidden) { error.textContent = words.waitMissing; box.focus(); return; }
  waits.push({ id: uuid(), words: form.elements.waitWords.value.slice(0, 120), due: Date.now() + Math.round(count) * 60000, done: false });
  box.value = form.elements.waitWords.value = "";
  waited();
}
function waited() {
  parked.set("waits", waits);
  turn++;
  drawWaits();
  meet();
}
function drawWaits() {
  const open = waits.filter(wait => !wait.done).sort((a, b) => a.due - b.due), box = one("[data-waits]");
  const shown = open.map(wait => wait.id).join();
  if (box.dataset.shown !== shown) {
    box.dataset.shown = shown;
    box.replaceChildren(...open.map(wait => {
      const line = made(template("wait"));
      line.dataset.id = wait.id;
      one("strong", line).textContent = wait.words;
      one("button", line).addEventListener("click", () => { wait.done = true; waited(); });
      return line;
    }));
  }
  open.forEach((wait, at) => {
    const left = Math.ceil((wait.due - Date.now()) / 60000), part = one("[data-left]", box.children[at]);
    const text = left > 0 ? fill(words.due, time(wait.due), left) : fill(words.over, time(wait.due));
    if (part.textContent !== text) {
      part.textContent = text;
      if (left <= 0) said.textContent = wait.words + " " + words.soon;
    }
  });
}

// ---- meeting what the shop has kept; without reception the phone goes on by itself

async function token() {
  if (filled && form.elements._csrf) return { header: "X-CSRF-TOKEN", token: form.elements._csrf.value };
  const answer = await fetch("/phone/token", { headers: { Accept: "application/json" }, redirect: "error" });
  const got = await answer.json();
  return got.signedIn ? got : null;
}
let meeting = false, again = false;
async function meet() {
  turn++;
  if (meeting) { again = true; return; }
  meeting = true;
  const mine = turn;
  try {
    const pass = await token();
    if (!pass || !isStill(pass.person)) return;
    const answer = await fetch("/bench/clock", { method: "POST", redirect: "error", body: JSON.stringify({ timer: clock.changed ? clock : null, waits }),
      headers: { "Content-Type": "application/json", Accept: "application/json", [pass.header]: pass.token } });
    if (!answer.ok) return;
    const theirs = await answer.json();
    if (mine !== turn) return;
    if (theirs.timer.changed > clock.changed) clock = theirs.timer;
    waits = theirs.waits;
    parked.set("clock", clock);
    parked.set("waits", waits);
    draw();
  } catch (unreachable) {
    // It is tried again when the page is seen or the phone is back.
  } finally {
    meeting = false;
    if (again) { again = false; meet(); }
  }
}

// ---- what is half tapped is kept, too

const LOOSE = ["finish", "minutes", "done", "note", "date", "mishaps[0].what", "mishaps[0].surface", "mishaps[0].supply", "mishaps[0].piece"];
function parkDraft() {
  if (mending) return;
  const values = Object.fromEntries(LOOSE.map(name => [name, form.elements[name].value]));
  const ready = every("[name=ready]:checked").map(box => box.value);
  const tools = worked(label => ({ value: one("input", label).value, name: one("[data-name]", label).textContent,
    line: one("[data-line]", label).textContent, cautions: (label.dataset.cautions || "").split(" ") }));
  const uses = every("[data-use]").filter(picked).map(row => asked(row)).map(row => ({
    value: row.dataset.supply, name: one("[data-name]", row).textContent, line: one("[data-line]", row).textContent, cautions: (row.dataset.cautions || "").split(" "),
    measures: every("[name$='.measure']", row).map(each => each.value), measure: (one("[name$='.measure']:checked", row) || {}).value || "",
    times: field(row, "times").value, quantity: field(row, "quantity").value, exact: field(row, "how").checked, share: field(row, "share").value,
    only: every("[name$='.only']:checked", row).map(box => box.value),
    weights: Object.fromEntries(every("[data-part]", row).map(part => [part.dataset.part, field(part, "weight").value])) }));
  const day = form.elements.day.value, pieces = chosen().map(about);
  const any = uses.length || tools.length || pieces.length || LOOSE.some(name => values[name]);
  parked.set("draft", any ? { at: Date.now(), values, day, pieces, ready, tools, uses } : null);
}
function restore(draft) {
  if (draft.day) form.elements.day.value = draft.day;
  for (const row of draft.pieces) one("[name=pieces]", addPiece(row)).checked = true;
  for (const box of every("[name=ready]")) if (draft.ready.includes(box.value)) box.checked = true;
  for (const old of draft.tools || []) addTool(old).checked = true;
  for (const old of draft.uses) {
    const row = asked(addUse(old), old.measures);
    field(row, "picked").checked = true;
    every("[name$='.measure']", row).forEach(each => { each.checked = each.value === old.measure; });
    for (const name of ["times", "quantity", "share"]) field(row, name).value = old[name];
    field(row, "how").checked = old.exact;
  }
  follow();
  for (const old of draft.uses) shares(use(old.value), old);
  loose(draft);
  follow();
}
function loose(draft) {
  for (const name of LOOSE) if (draft.values[name]) form.elements[name].value = draft.values[name];
  const mishap = form.elements["mishaps[0].what"].closest("details");
  mishap.open = mishap.open || LOOSE.some(name => name.startsWith("mishaps") && draft.values[name]);
}
function shares(row, old) {
  for (const part of every("[data-part]", row)) {
    field(part, "only").checked = old.only.includes(part.dataset.part);
    field(part, "weight").value = old.weights[part.dataset.part] || "";
  }
  if (old.quantity || old.exact || old.share !== "EQUAL" || old.only.length) one("details", row).open = true;
}
function restoreKept() {
  const draft = parked.get("draft");
  if (!draft || draft.at < Date.now() - DRAFT_AGE) return false;
  restore(draft);
  return true;
}
// A refused entry comes back as the names and values it was sent with.
function fromFields(fields) {
  const all = name => fields.filter(([key]) => key === name).map(([, value]) => value), get = name => all(name)[0] || "";
  const rows = fields.filter(([key, value]) => /^uses\[\d+\]\.supply$/.test(key) && value).map(([key, value]) => [/\d+/.exec(key)[0], value]);
  const weights = at => Object.fromEntries(fields.map(([key, value]) => [new RegExp(`^uses\\[${at}\\]\\.parts\\[(\\d+)\\]\\.piece$`).exec(key), value])
    .filter(([found]) => found).map(([found, id]) => [id, get(`uses[${at}].parts[${found[1]}].weight`)]));
  const piece = id => (lists["bench-pieces"] || []).find(row => row.value === id) || chip(id) && about(chip(id)) || { value: id, code: "", title: id, cautions: [] };
  return { values: Object.fromEntries(LOOSE.map(name => [name, get(name)])), day: get("day"), ready: all("ready"), pieces: all("pieces").map(piece),
    tools: all("tools").map(id => supply(id) || { value: id, name: id, line: "", cautions: [] }),
    uses: rows.filter(([at]) => get(`taps[${at}].picked`)).map(([at, id]) => ({ ...(supply(id) || { value: id, name: id, line: "", cautions: [], measures: [] }),
      measure: get(`taps[${at}].measure`), times: get(`taps[${at}].times`) || "1", quantity: get(`uses[${at}].quantity`),
      exact: get(`uses[${at}].how`) === "EXACT", share: get(`uses[${at}].share`) || "EQUAL",
      only: all(`uses[${at}].only`), weights: weights(at) })) };
}
function afresh() {
  every("[name=pieces], [name=ready], [name=tools], [name$='.picked'][type=checkbox], [name$='.measure'], [name$='.how']").forEach(box => { box.checked = false; });
  every("[name$='.times']").forEach(box => { box.value = "1"; });
  every("[name$='.quantity'], [name$='].supply'][data-other-supply], [name=pieceWords]").forEach(box => { box.value = ""; });
  every("[name$='.share']").forEach(box => { box.value = "EQUAL"; });
  for (const name of LOOSE) form.elements[name].value = "";
  form.elements.day.value = "TODAY";
  every(".summary, .error:not([data-asked], [data-wait-error])").forEach(part => part.remove());
  every("[data-caution]").forEach(line => { delete line.dataset.said; });
  every("[name$='.only']").forEach(box => { box.checked = false; });
  every("[name$='.weight']").forEach(box => { box.value = ""; });
  one("[data-asked]").hidden = true;
  asking = false;
  search();
  follow();
}

// ---- taps

form.addEventListener("click", event => {
  const button = event.target.closest("button");
  if (!button) return;
  if (button.name === "act") {
    event.preventDefault();
    if (acts[button.value]) acts[button.value]();
    else if (button.dataset.after) {
      waits.push({ id: uuid(), words: button.dataset.words, due: Date.now() + button.dataset.after * 60000, done: false });
      waited();
    }
    else if (button.dataset.style) for (const last of every("[data-supply]", button)) {
      if (last.dataset.once === "true") { tickTool(last.dataset.supply); continue; }
      const row = use(last.dataset.supply) || supply(last.dataset.supply) && addUse(supply(last.dataset.supply));
      if (row) take(row, last.dataset.typed, last.dataset.exact === "true");
    }
  } else if (button.dataset.step) step(button);
  else if (button.dataset.minutes) add(Number(button.dataset.minutes));
  else if (button.closest("[data-phrases]")) phrase(button.textContent);
  else if (button.closest("[data-fills]")) document.getElementById(button.closest("[data-fills]").dataset.fills).value = button.textContent;
  else return;
  soon(follow, parkDraft);
});
function phrase(text) {
  const box = form.elements.done, before = box.value.trim();
  box.value = before ? before + (/[,;.]$/.test(before) ? " " : ", ") + text.charAt(0).toLowerCase() + text.slice(1) : text;
}
form.addEventListener("input", event => {
  const name = event.target.name || "", row = event.target.closest("[data-use]");
  if (name === "pieceWords") { search(); return; }
  if (name === "minutes") { asking = false; one("[data-asked]").hidden = true; }
  if (name.endsWith(".quantity") && row !== openRow) every("[name$='.measure']", row).forEach(each => { each.checked = false; });
  if (name.endsWith(".measure")) field(row, "quantity").value = "";
});
form.addEventListener("change", event => {
  if (event.target === other && supply(other.value)) {
    const row = addUse(supply(other.value));
    field(row, "picked").checked = true;
    other.value = "";
    field(row, "picked").focus();
  }
  const name = event.target.name || "";
  if (/^(pieces|tools|finish|done|.*\.(picked|supply))$/.test(name)) soon(follow);
  if (name === "pieces") plan();
  if (name === "pieces") soon(order, tickOn);
  soon(parkDraft);
});
function tickOn() {
  if (clock.started !== null) tick(clock);
}
form.addEventListener("keydown", event => { if (event.key === "Enter" && event.target.name === "pieceWords") event.preventDefault(); });

form.addEventListener("submit", event => {
  settle();
  const wrongButton = event.submitter && event.submitter.name === "act";
  const box = form.elements.minutes, empty = box.value.trim() === "";
  if (empty && !mending && clock.started !== null && seconds() > PLAUSIBLE) ask();
  if (wrongButton || asking && empty) {
    event.preventDefault();
    delete form.dataset.sent;
    if (event.submitter) event.submitter.removeAttribute("aria-busy");
    if (asking) box.focus();
  }
});
// An entry may be sent days later: "today" is said as the day it was on this phone.
form.addEventListener("formdata", event => {
  const day = form.elements.day.value, data = event.formData;
  // The clock's minutes go along without being written into the field: if nothing is kept, the clock goes on.
  if (!String(data.get("minutes")).trim() && clock.started !== null && !mending && !form.dataset.plain) data.set("minutes", minutes());
  if (data.get("date") || day === "OTHER") return;
  const date = new Date();
  if (day === "YESTERDAY") date.setDate(date.getDate() - 1);
  data.set("day", "OTHER");
  data.set("date", [date.getFullYear(), date.getMonth() + 1, date.getDate()].map(part => String(part).padStart(2, "0")).join("-"));
});
form.addEventListener("outbox:saved", () => {
  owed.clear();
  afresh();
  if (mending) {
    mending = false;
    restoreKept();
  } else {
    parked.set("draft", null);
    if (clock.started !== null) tick(off(0));
  }
  undo.hidden = true;
  scrollTo(0, 0);
});
// While an old entry is mended, the clock and what is half tapped belong to another one and stay as they are.
form.addEventListener("outbox:mend", event => {
  event.preventDefault();
  settle();
  mending = true;
  afresh();
  restore(fromFields(event.detail.fields));
});
document.addEventListener("outbox:sent", event => {
  const kept = /^(\/bench\/[0-9a-f-]{36})\?version=(\d+)$/.exec(event.detail.href || "");
  if (!kept) return;
  undo.elements.id.value = event.detail.key;
  undo.elements.version.value = kept[2];
  every("a", undo).forEach(way => { way.href = kept[1] + "/edit"; });
  undo.hidden = false;
});
undo.addEventListener("submit", async event => {
  if (filled && undo.elements._csrf) return;
  event.preventDefault();
  delete undo.dataset.sent;
  const pass = await token().catch(() => null);
  if (!pass) return;
  const hidden = document.createElement("input");
  Object.assign(hidden, { type: "hidden", name: "_csrf", value: pass.token });
  undo.append(hidden);
  undo.submit();
});

// ---- the phone's own lists, where the page came without any

function button(text, cautionIds) {
  const made1 = document.createElement("button");
  Object.assign(made1, { type: "button", className: "tap", textContent: text });
  made1.dataset.cautions = cautionIds.join(" ");
  return made1;
}
function styleButton(row) {
  const made1 = button(fill(words.last, row.text), []);
  Object.assign(made1, { className: "tall", name: "act", value: "as-last-" + row.value, hidden: true });
  Object.assign(made1.dataset, { style: row.value, order: row.order.join(" ") });
  for (const last of row.last) {
    const part = document.createElement("span");
    part.hidden = true;
    Object.assign(part.dataset, { supply: last.supply, typed: last.typed, exact: last.exact, once: last.tool });
    made1.append(part);
  }
  return made1;
}
function caution(row) {
  const line = made(template("caution"));
  line.dataset.caution = row.value;
  line.hidden = true;
  one(row.rest ? "[data-whole]" : "details", line).remove();
  one("strong", line).textContent = one("[data-severities]").dataset[row.severity.toLowerCase()];
  one("[data-brief]", line).textContent = row.brief;
  if (row.rest) {
    one("[data-rest]", line).textContent = row.rest;
    one("details", line).open = row.severity === "STOP";
  }
  return line;
}
function fromLists() {
  other.replaceChildren(other.options[0], ...(lists["bench-supplies"] || []).map(row => {
    const option = new Option(row.text, row.value);
    Object.assign(option.dataset, { name: row.name, line: row.line, measures: row.measures.join("|"), useSize: row.use || "", cautions: row.cautions.join(" ") });
    return option;
  }));
  (lists["bench-supplies"] || []).filter(row => !row.use).slice(0, SUPPLIES).forEach(addUse);
  (lists["bench-supplies"] || []).filter(row => row.use).slice(0, TOOLS).forEach(addTool);
  (lists["bench-pieces"] || []).slice(0, PIECES).forEach(addPiece);
  one("[data-styles]").replaceChildren(...(lists["bench-styles"] || []).map(styleButton));
  one("[data-phrases]").replaceChildren(...(lists.phrases || []).map(row => button(row.text, row.cautions)));
  const boxes = { "mishaps0.surface": "bench-surfaces", "mishaps0.what": "bench-mishaps" };
  for (const [box, list] of Object.entries(boxes)) {
    one(`[data-fills="${box}"]`).replaceChildren(...(lists[list] || []).map(row => button(row.text, [])));
  }
  one("[data-failed-list]").replaceChildren(...(lists["bench-failed"] || []).map(row => {
    const line = made(template("failed"));
    Object.assign(line.dataset, { pieces: row.pieces.join(" "), supplies: row.supplies.join(" ") });
    line.textContent = line.dataset.words.replace("{0}", row.text).replace("{1}", row.failed).replace("{2}", row.tried);
    return line;
  }));
  const warned = lists["bench-cautions"] || [], isNote = row => row.severity === "NOTE";
  one("[data-serious]").replaceChildren(...warned.filter(row => !isNote(row)).map(caution));
  one("[data-notes] ul").replaceChildren(...warned.filter(isNote).map(caution));
  const asked = new URLSearchParams(location.search).getAll("piece").concat(clock.started === null ? [] : clock.pieces || []);
  for (const id of asked) if (chip(id)) one("[name=pieces]", chip(id)).checked = true;
}
document.addEventListener("lists:ready", event => {
  const first = !Object.keys(lists).length;
  lists = event.detail;
  if (!filled && first) fromLists();
  every("[data-piece]").forEach(piece => pictures.late(one("[data-shot]", piece), piece.dataset.id, lists.pictures));
  // What is chosen from a list could not be put back before the list was there.
  if (!filled && first && !mending && parked.get("draft")) loose(parked.get("draft"));
  follow();
  if (first) order();
});

// ---- the beginning

reveal(form);
one("[data-find]").hidden = true;
every("[data-caution]:not([hidden])").forEach(line => { if (document.getElementById("summary")) line.dataset.said = "yes"; });
if (!undo.hidden) parked.set("draft", null);
else if (!document.getElementById("summary") && !new URLSearchParams(location.search).has("mend") && restoreKept()) said.textContent = words.restored;
// With script another supply becomes a line of its own as soon as it is chosen.
if (!every(".wrong, .error", openRow).length && !field(openRow, "quantity").value) one("details", openRow).hidden = true;
follow();
draw();
meet();
setInterval(draw, 5000);
addEventListener("online", meet);
addEventListener("pagehide", settle);
document.addEventListener("visibilitychange", () => {
  if (document.hidden) settle();
  else { draw(); meet(); }
});
})();
