// Selling at the stall: pick, take the money, give the change. The same script serves the page that the shop has filled
// and the empty one that a phone keeps; without it the page works by its links.
"use strict";
(() => {
const form = document.querySelector("form[data-stall]");
if (!form) return;

const byId = id => document.getElementById(id);
const money = minorUnits(Number(form.dataset.digits), form.dataset.code);
const sheet = byId("stall-sale"), goods = byId("stall-goods"), list = byId("stall-list"), words = byId("stall-words");
const served = list.dataset.served === "true";
const field = name => form.elements[name];
const gone = new Map();                 // codes that this phone has sold, with the word that says how far they are
let asked = null;

// ---- the list

const cards = () => [...list.querySelectorAll("[data-ware]")];

function card(row, rows) {
  const item = byId("stall-ware").content.firstElementChild.cloneNode(true);
  const link = item.querySelector("a");
  link.href = row.offer ? "/stall?offer=" + row.offer : "/stall?piece=" + row.pieces[0];
  Object.assign(link.dataset, { offer: row.offer || "", codes: row.codes, pieces: row.pieces.join(" "), title: row.title, price: row.price ?? "" });
  pictures.fill(item.querySelector("[data-shot]"), row.title, row.pieces[0], rows);
  item.querySelector(".tag").textContent = row.codes;
  item.querySelector(".goods-name").textContent = row.title;
  item.querySelector(".goods-price").textContent = row.price == null ? list.dataset.noPrice : money.words(row.price);
  return item;
}

function filter() {
  const wanted = words.value.trim().toLowerCase();
  let shown = 0;
  for (const link of cards()) {
    const fits = (link.dataset.codes + " " + link.dataset.title).toLowerCase().includes(wanted);
    link.parentElement.hidden = !fits;
    if (fits) shown++;
  }
  const free = byId("stall-free");
  const code = words.value.trim().toUpperCase();
  free.hidden = shown > 0 || !/^\S*\d\S*$/.test(code);
  free.textContent = free.dataset.words.replace("{0}", code);
  byId("stall-empty").hidden = shown > 0 || !cards().length;
}

function mark() {
  for (const link of cards()) {
    const how = link.dataset.codes.split(" ").map(code => gone.get(code)).find(Boolean);
    const word = link.querySelector(".word");
    word.hidden = !how;
    word.textContent = how || "";
  }
}

// ---- the sale

function choose(ware, back) {
  asked = ware.price === "" || ware.price == null ? null : Number(ware.price);
  field("offer").value = ware.offer || "";
  field("codes").value = ware.codes;
  field("price").value = asked === null ? "" : money.plain(asked);
  field("got").value = "";
  show(ware);
  if (back) history.pushState({ stall: true }, "");
  byId(asked === null && ware.codes ? "price" : "stall-what").focus({ preventScroll: true });
  scrollTo(0, 0);
}

function show(ware) {
  byId("stall-code").textContent = ware.codes;
  byId("stall-code").hidden = !ware.codes;
  byId("stall-name").textContent = ware.title || "";
  byId("stall-codes").hidden = Boolean(ware.codes);
  sheet.hidden = false;
  goods.hidden = true;
  byId("stall-said").hidden = true;
  reckon();
}

function leave() {
  sheet.hidden = true;
  goods.hidden = false;
  goods.classList.remove("aside");
  byId("stall-twice").hidden = true;
  for (const name of ["offer", "codes", "price", "got", "tax"]) field(name).value = "";
  words.value = "";
  filter();
}

// ---- what is due, and the change

function due() {
  const price = money.read(field("price").value);
  const tax = (form.dataset.passing || "").split(" ").includes(field("channel").value) ? 0 : money.read(field("tax").value || "0");
  return price === null || tax === null ? null : price + tax;
}

// The exact sum, and what a buyer is likely to hand over: the next full notes above it.
function likely(sum) {
  const full = (form.dataset.notes || "").split(" ").filter(Boolean).map(Number).map(note => Math.ceil(sum / note) * note);
  return [...new Set(full)].filter(each => each > sum).sort((one, other) => one - other).slice(0, 4);
}

function change() {
  const sum = due(), got = money.read(field("got").value);
  return sum === null || got === null ? null : got - sum;
}

function reckon() {
  const button = byId("stall-asked");
  button.hidden = asked === null || money.read(field("price").value) === asked;
  if (asked !== null) button.textContent = form.dataset.asked.replace("{0}", money.words(asked));
  const sum = due(), notes = byId("stall-notes");
  notes.hidden = !sum;
  if (sum) notes.replaceChildren(...[sum, ...likely(sum)].map((each, at) => quick(each, at === 0 ? notes.dataset.exact : money.words(each))));
  const back = change(), said = byId("stall-change");
  said.hidden = back === null;
  if (back !== null) said.textContent = back < 0 ? form.dataset.less.replace("{0}", money.words(sum)) : form.dataset.change.replace("{0}", money.words(back));
}

function quick(amount, text) {
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = text;
  button.dataset.got = amount;
  return button;
}

// ---- remembered on this phone: where and for what she sold last

const KEPT = "patinary-stall";

function remember() {
  try { localStorage.setItem(KEPT, JSON.stringify({ channel: field("channel").value, place: field("place").value })); } catch (full) { /* a comfort only */ }
}

function recall(rows) {
  let kept = {};
  try { kept = JSON.parse(localStorage.getItem(KEPT)) || {}; } catch (unreadable) { /* a comfort only */ }
  for (const [name, listName] of [["channel", "channels"], ["place", "cashplaces"]]) {
    const choices = [...field(name).options].map(option => option.value);
    const usual = rows && (rows[listName] || []).find(row => row.usual);
    if (choices.includes(kept[name])) field(name).value = kept[name];
    else if (!field(name).value && usual && choices.includes(usual.value)) field(name).value = usual.value;
  }
}

// The day is that of the tap, not that on which the page was opened or kept.
const today = () => new Date(Date.now() - new Date().getTimezoneOffset() * 60000).toISOString().slice(0, 10);
let ownDay = false;
field("date").addEventListener("input", () => { ownDay = true; });

// ---- events

list.addEventListener("click", event => {
  const link = event.target.closest("[data-ware]");
  if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
  event.preventDefault();
  choose(link.dataset, true);
});
byId("stall-free").addEventListener("click", () => choose({ codes: words.value.trim().toUpperCase(), title: "", price: "" }, true));
byId("stall-find").addEventListener("submit", event => { event.preventDefault(); filter(); });
words.addEventListener("input", filter);
byId("stall-other").addEventListener("click", event => {
  event.preventDefault();
  if (history.state && history.state.stall) history.back();
  else leave();
});
addEventListener("popstate", () => { if (!sheet.hidden) leave(); });
form.addEventListener("input", reckon);
byId("stall-asked").addEventListener("click", () => { field("price").value = money.plain(asked); reckon(); });
byId("stall-notes").addEventListener("click", event => {
  const button = event.target.closest("[data-got]");
  if (!button) return;
  field("got").value = money.plain(Number(button.dataset.got));
  reckon();
});

form.addEventListener("submit", event => {
  const missing = !field("codes").value.trim() ? ["codes", form.dataset.needsCode]
    : !field("price").value.trim() ? ["price", form.dataset.needsPrice]
    : change() !== null && change() < 0 ? ["got", form.dataset.less.replace("{0}", money.words(due()))] : null;
  if (missing) {
    event.preventDefault();
    event.stopImmediatePropagation();
    say(missing[1]);
    field(missing[0]).focus();
    return;
  }
  if (!ownDay) field("date").value = today();
  remember();
  const back = change();
  last = back === null ? form.dataset.done.replace("{0}", title()) : form.dataset.doneChange.replace("{0}", title()).replace("{1}", money.words(back));
}, true);                               // asked before all others, who would take the form as sent
let last = "";
const title = () => byId("stall-name").textContent || field("codes").value;

function say(text) {
  byId("stall-said").hidden = false;
  byId("stall-said").textContent = text;
}

form.addEventListener("outbox:saved", event => {
  codesOf(event.detail.fields).forEach(code => gone.set(code, list.dataset.waiting));
  if (history.state && history.state.stall) history.replaceState(null, "");
  ownDay = false;
  leave();
  recall();
  mark();
  say(last);
  scrollTo(0, 0);
});

const codesOf = fields => (fields.find(([name]) => name === "codes") || ["", ""])[1].toUpperCase().split(/[\s,;]+/).filter(Boolean);

document.addEventListener("outbox:changed", event => {
  const entries = event.detail.entries.filter(entry => entry.kind === "stall");
  for (const [code, how] of gone) if (how === list.dataset.waiting) gone.set(code, list.dataset.sold);
  let sum = 0;
  for (const entry of entries) {
    codesOf(entry.fields).forEach(code => gone.set(code, list.dataset.waiting));
    sum += money.read((entry.fields.find(([name]) => name === "price") || ["", ""])[1]) || 0;
  }
  const line = byId("stall-waiting");
  line.hidden = !entries.length;
  line.textContent = line.dataset.words.replace("{0}", money.words(sum));
  mark();
});

// What was refused is mended here; which sale the piece went with is known to the shop alone.
form.addEventListener("outbox:mend", event => {
  const [code] = codesOf(event.detail.fields);
  asked = null;
  ownDay = true;
  show({ codes: "", title: "" });
  byId("stall-twice").hidden = !code || !event.detail.problems.some(problem => problem.reason === "selling.stall.sold-already");
  byId("stall-twice-look").href = "/stall/sold/" + encodeURIComponent(code || "");
  const told = event.detail.fields.filter(([name]) => ["price", "channel", "date", "place", "tax"].includes(name));
  byId("stall-twice-settle").href = "/sales/new?" + new URLSearchParams([["piece", code || ""], ...told]);
  queueMicrotask(reckon);
});

document.addEventListener("lists:ready", event => {
  const rows = event.detail;
  if (!served && rows.offers) {
    list.replaceChildren(...rows.offers.map(row => card(row, rows.pictures)));
    byId("stall-shell").hidden = true;
    if (rows.channels) form.dataset.passing = rows.channels.filter(row => row.passes).map(row => row.value).join(" ");
    filter();
    mark();
  }
  recall(rows);
  fromAddress();
});

// A scanned label leads here with the id of its piece.
let asking = new URLSearchParams(location.search);
function fromAddress() {
  const piece = asking.get("piece"), offer = asking.get("offer");
  const link = cards().find(each => offer && each.dataset.offer === offer || piece && each.dataset.pieces.split(" ").includes(piece));
  if (served || !link) return;
  asking = new URLSearchParams();
  choose(link.dataset, false);
}

field("channel").dataset.list = "channels";
field("place").dataset.list = "cashplaces";
if (!sheet.hidden) {
  const link = cards().find(each => each.dataset.codes === field("codes").value);
  asked = link && link.dataset.price !== "" ? Number(link.dataset.price) : null;
  goods.hidden = true;
  byId("stall-codes").hidden = Boolean(field("codes").value) && !form.querySelector("#codes[aria-invalid]");
  reckon();
}
recall();
filter();
})();
