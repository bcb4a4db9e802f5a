// Buying, phone in hand: one open thing at a time, a running sum, and the till's total checked before anything is kept.
// The same form works without this file. Amounts are whole minor units, counted exactly as ReceiptLine and ReceiptSums do.
"use strict";
(() => {
const form = document.querySelector("form[data-buy]");
if (!form) return;
const words = form.dataset, DRAFT = "patinary-buy";
const fill = (text, ...parts) => text.replace(/\{(\d)\}/g, (all, at) => parts[at]);
const one = (name, inside = form) => inside.querySelector(name);
const all = (name, inside = form) => [...inside.querySelectorAll(name)];
const show = (element, yes) => { element.hidden = !yes; };
const box = one("[data-things]"), things = () => all("[data-thing]", box);
const money = { code: words.code || "", digits: Number(words.digits || 2), signs: (words.signs || "").split("|").filter(Boolean) };
let rows = { advice: [] };

// ---- amounts

const wrong = kind => ({ problem: kind });

function unsigned(text) {
  for (const sign of money.signs) {
    const small = text.toLowerCase(), each = sign.toLowerCase();
    if (small.startsWith(each)) return text.slice(sign.length).trim();
    if (small.endsWith(each)) return text.slice(0, -sign.length).trim();
  }
  return text;
}

function decimal(text) {
  if (/^[0-9]+$/.test(text)) return [text, ""];
  const mark = /^([0-9]*)([.,])([0-9]+)$/.exec(text);
  if (mark) {
    const thousands = mark[3].length === 3 && mark[1] && mark[1].length <= 3 && !mark[1].startsWith("0");
    return thousands && !(money.digits >= 3 && mark[2] === ".") ? wrong("ambiguous") : [mark[1], mark[3]];
  }
  const grouped = /^([1-9][0-9]{0,2}(?:([ '\u2019.,])[0-9]{3})(?:\2[0-9]{3})*)(?:(?!\2)[.,]([0-9]+))?$/.exec(text);
  return grouped ? [grouped[1].replace(/[^0-9]/g, ""), grouped[3] || ""] : wrong("unreadable");
}

// Reads an amount as the shop does: without guessing.
function amount(typed) {
  let text = typed.replace(/[\s\u00a0\u202f\u2009]+/g, " ").trim().replace(/\u2212/g, "-");
  if (!text) return wrong("missing");
  let below = text.startsWith("-");
  text = unsigned(below ? text.slice(1).trim() : text);
  if (!below && text.startsWith("-")) { below = true; text = text.slice(1).trim(); }
  const read = decimal(text);
  if (read.problem) return read;
  if (read[1].length > money.digits) return wrong("decimals");
  const minor = BigInt((read[0] || "0") + read[1].padEnd(money.digits, "0"));
  if (minor > 9223372036854775807n) return wrong("large");
  return below && minor > 0n ? wrong("negative") : { minor };
}

// A percentage in ten-thousandths.
function percent(typed) {
  const text = typed.replace(/%/g, "").trim().replace(",", ".");
  if (!text) return { part: 0n };
  const read = /^([0-9]*)(?:\.([0-9]*))?$/.exec(text);
  const after = read ? (read[2] || "").replace(/0+$/, "") : "";
  if (!read || !(read[1] + (read[2] || "")) || after.length > 4) return wrong("percent");
  const part = BigInt((read[1] || "0") + after.padEnd(4, "0"));
  return part > 1000000n ? wrong("percent") : { part };
}

// Rounded half up, once.
const share = (base, part) => (base * part + 500000n) / 1000000n;

function plain(minor) {
  const text = (minor < 0n ? -minor : minor).toString().padStart(money.digits + 1, "0");
  const whole = text.slice(0, text.length - money.digits), cents = text.slice(text.length - money.digits);
  return (minor < 0n ? "-" : "") + whole + (money.digits ? "." + cents : "");
}

function said(minor) {
  const style = money.code ? { style: "currency", currency: money.code } : {};
  const shape = new Intl.NumberFormat(document.documentElement.lang, { ...style, minimumFractionDigits: money.digits, maximumFractionDigits: money.digits });
  return (minor < 0n ? "\u2212" : "") + shape.format(plain(minor < 0n ? -minor : minor));
}

// ---- one thing

const field = (thing, name) => one(`[name$="].${name}"]`, thing);
const chosen = (thing, name) => { const radio = one(`[name$="].${name}"]:checked`, thing); return radio ? radio.value : ""; };
const value = (thing, name) => field(thing, name).value.trim();

function work(thing) {
  const price = amount(value(thing, "price"));
  const off = percent(value(thing, "otherPercent") || chosen(thing, "percent"));
  const typed = value(thing, "count") || "1";
  const count = /^[0-9]{1,4}$/.test(typed) && Number(typed) >= 1 && Number(typed) <= 200 ? BigInt(typed) : 0n;
  const result = { price, off, count, empty: !value(thing, "price") && !value(thing, "what"), use: chosen(thing, "use") };
  if (price.problem || off.problem || !count) return result;
  const gross = price.minor * (field(thing, "together").checked ? 1n : count);
  result.net = gross - share(gross, off.part);
  return result;
}

function title(thing, at) {
  const kind = field(thing, "kind"), name = value(thing, "what") || (kind.value ? kind.selectedOptions[0].text : "");
  const count = value(thing, "count");
  return fill(words.thingWords, at + 1) + (name ? " · " + name : "") + (Number(count) > 1 ? " × " + count : "");
}

function advise(thing) {
  const line = one("[data-advice]", thing), kind = field(thing, "kind").value, style = field(thing, "style").value;
  const fits = (rows.advice || []).filter(row => row.kind && row.kind === kind);
  const row = fits.find(each => each.style && each.style === style) || fits.find(each => !each.style);
  line.textContent = row ? adviceOf(row) : "";
  show(line, line.textContent && chosen(thing, "use") === "PIECES");
}

// The figure with what it rests on; where that is little, or there is no figure, the words that say so.
function adviceOf(row) {
  const figure = /^[0-9]+$/.test(String(row.most ?? ""));
  const most = figure ? fill(Number(row.sold) === 1 ? words.mostOne : words.most, said(BigInt(row.most)), row.sold) : "";
  return [most, row.few || !figure ? row.words : ""].filter(Boolean).join(" ");
}

// ---- the whole

function tax(sums) {
  const typed = form.elements.tax.value.trim();
  const read = percent(typed || sourceTax());
  if (read.problem) return read;
  return { part: read.part, minor: share(base(sums), read.part) };
}

// A donation is not taxed; nor, where the tax is the source's own and she has a certificate there, is what is to sell.
const taxed = use => use === "HOME" || use === "PIECES" && !untaxed();
const base = sums => sums.filter(each => taxed(each.use)).reduce((sum, each) => sum + each.net, 0n);
const untaxed = () => !form.elements.tax.value.trim() && certificate();

function certificate() {
  const row = (rows.sources || []).find(each => each.value === form.elements.source.value);
  const option = form.elements.source.selectedOptions[0];
  return !form.elements.newSource.value.trim() && Boolean(row ? row.certificate : option && option.dataset.certificate === "true");
}

function sourceTax() {
  const row = (rows.sources || []).find(each => each.value === form.elements.source.value);
  const option = form.elements.source.selectedOptions[0];
  return form.elements.newSource.value.trim() ? "" : (row ? row.tax : option && option.dataset.tax) || "";
}

function reckon() {
  const worked = things().map(work), full = worked.filter(each => !each.empty);
  const readable = full.filter(each => each.net !== undefined);
  const lines = readable.reduce((sum, each) => sum + each.net, 0n), added = tax(readable);
  const till = amount(form.elements.tillTotal.value);
  const whole = readable.length === full.length && full.length > 0 && !added.problem;
  const total = lines + (added.minor || 0n);
  return { worked, full, lines, added, till, whole, total, difference: whole && !till.problem ? till.minor - total : 0n };
}

const lookAgain = () => {
  const now = reckon(), cards = things();
  cards.forEach((thing, at) => {
    one("[data-name]", thing).textContent = title(thing, at);
    one("[data-net]", thing).textContent = now.worked[at].net === undefined ? "" : said(now.worked[at].net);
    thing.dataset.minor = now.worked[at].net === undefined ? now.worked[at].price.problem || "problem" : now.worked[at].net;
    advise(thing);
    const stock = now.worked[at].use === "PIECES", photo = one("[data-photo]", thing);
    show(photo, stock);
    one("input", photo).disabled = !stock;
    all("[data-kind]", thing).forEach(chip => chip.setAttribute("aria-pressed", chip.dataset.kind === field(thing, "kind").value));
  });
  form.dataset.reckoned = now.whole ? now.total : "";
  one("[data-running]").textContent = now.full.length === 1 ? fill(words.sum, said(now.lines)) : fill(words.sums, now.full.length, said(now.lines));
  show(one("[data-running]"), now.full.length);
  atTheTill(now);
};

function atTheTill(now) {
  show(one("[data-sums]"), now.whole);
  one("[data-lines]").textContent = said(now.lines);
  one("[data-tax]").textContent = said(now.added.minor || 0n);
  all("[data-tax-part]").forEach(part => show(part, now.added.minor > 0n));
  one("[data-total]").textContent = said(now.total);
  one("[data-exact]").textContent = fill(words.exactWords, said(now.total));
  show(one("[data-exact]"), now.whole && !form.elements.tillTotal.value.trim());
  show(one("[data-new-source]"), !form.elements.source.value);
  show(one("[data-certificate-words]"), certificate() && sourceTax());
  show(one("[data-date]"), form.elements.day.value === "OTHER");
  const by = now.difference, less = by < 0n;
  if (form.elements.settled.value !== plain(by)) {
    all("[name=settle]").forEach(radio => { radio.checked = false; });
    form.elements.settled.value = by ? plain(by) : "";
  }
  show(one("[data-difference]"), by);
  one("[data-difference-words]").textContent = by ? fill(less ? words.less : words.more, said(now.total), said(now.till.minor), said(less ? -by : by)) : "";
  const small = (less ? -by : by) <= BigInt(words.mostRounding);
  const fits = { TAX: !less, DISCOUNT: less, ROUNDING: small, TOTAL: true, OPEN: true };
  all("[data-settle]").forEach(way => show(way, fits[way.dataset.settle]));
  show(one("[data-forgot]"), by > 0n);
}

// ---- cards

const renewed = text => text.replace(/things(\[?)\d+/g, "things$1#");

function call(thing, at) {
  for (const element of [thing, ...all("*", thing)]) {
    for (const name of ["id", "name", "for", "aria-describedby", "data-of"]) {
      if (element.hasAttribute(name)) element.setAttribute(name, renewed(element.getAttribute(name)).replaceAll("#", at));
    }
  }
  return thing;
}

// Radio buttons of one name let go of each other, so no two things may bear one number, not even on the way.
const APART = 1000;

function number() {
  things().forEach((thing, at) => call(thing, APART + at));
  things().forEach((thing, at) => {
    call(thing, at);
    one("[data-group]", thing).setAttribute("aria-label", fill(words.thingWords, at + 1));
    const remove = one("[data-remove]", thing);
    remove.textContent = fill(remove.dataset.words, at + 1);
    remove.value = "remove:" + at;
  });
}

const id = () => ([1e7] + "-" + 1e3 + "-" + 4e3 + "-" + 8e3 + "-" + 1e11)
  .replace(/[018]/g, digit => (digit ^ crypto.getRandomValues(new Uint8Array(1))[0] & 15 >> digit / 4).toString(16));

function cleared(card) {
  all(".error, .outbox-problem", card).forEach(each => each.remove());
  [card, ...all("*", card)].forEach(each => { each.classList.remove("wrong"); each.removeAttribute("aria-invalid"); each.removeAttribute("aria-describedby"); });
  for (const input of all("input, select", card)) {
    if (input.type === "radio") input.checked = input.value === "" || input.value === "PIECES";
    else if (input.type === "checkbox") input.checked = false;
    else input.value = input.name.endsWith("count") ? "1" : "";
  }
  const picture = one("[data-photo] img", card);
  picture.removeAttribute("src");
  show(picture, false);
  one("[data-fold]", card).open = false;
  return card;
}

const blank = cleared(call(one("[data-thing]", box).cloneNode(true), 2 * APART));

function fresh() {
  const card = blank.cloneNode(true);
  box.append(card);
  number();
  cleared(card);
  field(card, "piece").value = id();
  offer(card);
  return card;
}

// All but the price is taken over: it differs nearly always, and an old one left standing would not be noticed. Several of
// one price are one thing with a number.
function add(like) {
  if (things().length >= Number(words.mostThings)) return null;
  const last = things()[things().length - 1], card = fresh();
  if (like && last) {
    for (const name of ["kind", "style", "otherPercent"]) field(card, name).value = field(last, name).value;
    for (const name of ["percent", "use"]) {
      const radio = all(`[name$="].${name}"]`, card).find(each => each.value === chosen(last, name));
      if (radio) radio.checked = true;
      else all(`[name$="].${name}"]`, card).forEach(each => { each.checked = false; });
    }
  }
  things().forEach(each => { each.open = each === card || Boolean(one(".error", each)); });
  lookAgain();
  keep();
  card.scrollIntoView({ block: "nearest" });
  field(card, "price").focus();
  return card;
}

function remove(card) {
  const at = things().indexOf(card), next = card.nextElementSibling, said = one("[data-said]");
  card.remove();
  call(card, 3 * APART);
  if (!things().length) fresh();
  number();
  const back = document.createElement("button");
  back.type = "button";
  back.textContent = words.undo;
  back.addEventListener("click", () => {
    box.insertBefore(card, next && next.parentNode === box ? next : null);
    number();
    show(said, false);
    lookAgain();
    keep();
    one("summary", card).focus();
  });
  said.replaceChildren(fill(words.removed, at + 1) + " ", back);
  show(said, true);
  back.focus();
  lookAgain();
  keep();
}

// ---- lists kept on the phone

function options(select, list) {
  const now = select.value, none = [...select.options].find(option => option.value === "");
  select.replaceChildren(...(none ? [none] : []), ...list.map(row => new Option(row.text, row.value)));
  if (list.some(row => row.value === now)) select.value = now;
}

function offer(card) {
  if (rows.kinds) options(field(card, "kind"), rows.kinds);
  if (rows.styles) options(field(card, "style"), rows.styles);
  if (rows.percents) percents(card);
  const kind = field(card, "kind"), real = [...kind.options].filter(option => option.value), chips = one("[data-kinds]", card);
  const most = Number(chips.dataset.kinds);
  chips.replaceChildren(...real.slice(0, most).map(option => {
    const chip = document.createElement("button");
    chip.type = "button";
    chip.className = "chip";
    chip.textContent = option.text;
    chip.dataset.kind = option.value;
    return chip;
  }));
  show(chips, real.length);
  show(kind.closest(".field"), real.length > most);
  all("[data-step]", card).forEach(button => show(button, true));
}

function percents(card) {
  const group = one("[data-percents]", card), now = chosen(card, "percent"), first = all(".chip", group)[0];
  all(".chip", group).slice(1).forEach(chip => chip.remove());
  for (const row of rows.percents) {
    const chip = first.cloneNode(true), radio = one("input", chip);
    radio.checked = false;
    radio.value = row.value;
    one("span", chip).textContent = row.text;
    group.append(chip);
  }
  const same = all("input", group).find(radio => radio.value === now);
  if (same) same.checked = true;
  show(group, rows.percents.length);
}

// ---- a purchase half entered outlives a closed page

const today = back => { const day = new Date(); day.setDate(day.getDate() - back); return new Date(day - day.getTimezoneOffset() * 60000).toISOString().slice(0, 10); };
const answers = () => [...new FormData(form)].filter(([name, text]) => typeof text === "string" && !["_csrf", "id", "action"].includes(name));

function keep() {
  if (form.dataset.mends) return;
  try { localStorage.setItem(DRAFT, JSON.stringify({ fields: answers(), on: today(0) })); } catch (full) { /* it stays on the page */ }
}

function forget() {
  try { localStorage.removeItem(DRAFT); } catch (closed) { /* nothing was kept */ }
  photos(store => store.clear());
}

function draft() {
  try { return JSON.parse(localStorage.getItem(DRAFT)); } catch (unreadable) { return null; }
}

function photos(work) {
  return new Promise(done => {
    if (!window.indexedDB) return done();
    const opening = indexedDB.open("patinary-buy", 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore("photos");
    opening.onerror = () => done();
    opening.onsuccess = () => {
      const request = work(opening.result.transaction("photos", "readwrite").objectStore("photos"));
      request.onsuccess = () => { opening.result.close(); done(request.result); };
      request.onerror = () => { opening.result.close(); done(); };
    };
  }).catch(() => {});
}

function restore(fields) {
  const count = 1 + Math.max(0, ...fields.map(([name]) => Number((/^things\[(\d+)]/.exec(name) || [0, 0])[1])));
  box.replaceChildren();
  for (let at = 0; at < count; at++) fresh();
  put(fields);
  things().forEach((thing, at) => {
    thing.open = at === count - 1;
    one("[data-fold]", thing).open = Boolean(value(thing, "otherPercent"));
    photos(store => store.get(value(thing, "piece"))).then(file => { if (file) attach(thing, file); });
  });
  lookAgain();
  const settled = fields.find(([name]) => name === "settle"), way = settled && one("#settle-" + settled[1]);
  if (way && !way.closest("[hidden]")) way.checked = true;
}

function put(fields) {
  for (const element of [...form.elements]) {
    const found = fields.find(([name]) => name === element.name);
    if (!element.name || ["_csrf", "id", "action", "settled"].includes(element.name)) continue;
    if (element.type === "radio" || element.type === "checkbox") element.checked = Boolean(found) && found[1] === element.value;
    else if (element.type !== "file" && found) {
      if (element.tagName === "SELECT" && ![...element.options].some(option => option.value === found[1])) continue;
      element.value = found[1];
    }
  }
  const day = form.elements.date.value;
  if (!day) return;
  form.elements.day.value = day === today(0) ? "TODAY" : day === today(1) ? "YESTERDAY" : "OTHER";
}

function attach(thing, file) {
  const input = one("[data-photo] input", thing), carrier = new DataTransfer();
  carrier.items.add(file);
  input.files = carrier.files;
  picture(thing, file);
}

function picture(thing, file) {
  const image = one("[data-photo] img", thing);
  show(image, file);
  if (file) image.src = URL.createObjectURL(file);
}

// ---- what she does

form.addEventListener("click", event => {
  const target = event.target.closest("button");
  if (!target) return;
  const thing = target.closest("[data-thing]");
  const acts = {
    like: () => add(true), add: () => add(false), remove: () => remove(thing),
    kind: () => { const kind = field(thing, "kind"); kind.value = kind.value === target.dataset.kind ? "" : target.dataset.kind; },
    step: () => { field(thing, "count").value = Math.max(1, Math.min(200, (Number(value(thing, "count")) || 1) + Number(target.dataset.step))); },
    exact: () => { form.elements.tillTotal.value = plain(reckon().total); },
    forgot: forgotten,
  };
  const act = target.dataset.kind ? "kind" : target.dataset.step ? "step" : "exact" in target.dataset ? "exact"
    : "forgot" in target.dataset ? "forgot" : "remove" in target.dataset ? "remove" : ["like", "add"].includes(target.value) ? target.value : "";
  if (!act) return;
  event.preventDefault();
  acts[act]();
  lookAgain();
  keep();
});

// The price on the tag that, with tax, makes the difference; where none does, the rest is asked again.
function forgotten() {
  const now = reckon(), by = now.difference;
  const part = taxed("PIECES") ? now.added.part : 0n, before = share(base(now.full), part);
  const price = by * 1000000n / (1000000n + part);
  const exact = [price, price + 1n, price - 1n].find(each => each >= 0n && each + share(base(now.full) + each, part) - before === by);
  const card = add(false);
  if (card) field(card, "price").value = plain(exact === undefined ? price : exact);
}

form.addEventListener("input", event => {
  const thing = event.target.closest("[data-thing]"), name = event.target.name || "";
  if (thing && name.endsWith("].otherPercent") && event.target.value.trim()) all('[name$="].percent"]', thing).forEach(radio => { radio.checked = false; });
  if (thing && name.endsWith("].percent")) field(thing, "otherPercent").value = "";
  if (name === "settle") {
    all(".outbox-problem", one("[data-difference]")).forEach(each => each.remove());
    all("[name=settle]").forEach(radio => { radio.removeAttribute("aria-invalid"); radio.removeAttribute("aria-describedby"); });
  }
  if (name === "day" && event.target.value !== "OTHER") form.elements.date.value = "";
  if (thing && event.target.type === "file") {
    const file = event.target.files[0], piece = value(thing, "piece");
    picture(thing, file);
    photos(store => file ? store.put(file, piece) : store.delete(piece));
  }
  lookAgain();
  keep();
});

// Enter ends the typing in a field; the purchase is saved by its button.
form.addEventListener("keydown", event => {
  if (event.key !== "Enter" || event.target.tagName !== "INPUT" || event.target.type === "radio" || event.target.type === "checkbox") return;
  event.preventDefault();
  event.target.blur();
});

// ---- saving

function beside(input, text) {
  const error = document.createElement("p");
  error.className = "error outbox-problem";
  error.id = input.id + "-wrong";
  error.textContent = text;
  input.setAttribute("aria-invalid", "true");
  input.setAttribute("aria-describedby", error.id);
  (input.closest(".tick") || input).before(error);
  for (let up = input; up && up !== form; up = up.parentElement) if (up.tagName === "DETAILS") up.open = true;
  return input;
}

function problems(now) {
  const found = [];
  now.worked.forEach((each, at) => {
    const thing = things()[at];
    if (each.empty) return;
    const words4 = { missing: words.missing, unreadable: words.unreadable, ambiguous: words.ambiguous, decimals: fill(words.decimals, money.digits), negative: words.negative, large: words.large };
    if (each.price.problem) found.push([field(thing, "price"), words4[each.price.problem]]);
    if (each.off.problem) found.push([field(thing, "otherPercent"), words.percent]);
    if (!each.count) found.push([field(thing, "count"), words.count]);
  });
  if (!now.full.length) found.push([field(things()[0], "price"), words.noThing]);
  if (now.added.problem) found.push([form.elements.tax, words.percent]);
  if (now.till.problem) found.push([form.elements.tillTotal, now.till.problem === "missing" ? words.noTotal : words.unreadable]);
  if (now.difference && !form.elements.settle.value) found.push([all("[name=settle]").find(radio => !radio.closest("[hidden]")), words.unsettled]);
  return found;
}

function untold() {
  all(".outbox-problem").forEach(each => each.remove());
  all("[aria-invalid]").forEach(each => { each.removeAttribute("aria-invalid"); each.removeAttribute("aria-describedby"); });
}

form.addEventListener("submit", event => {
  if (event.submitter && ["like", "add"].includes(event.submitter.value)) return;
  untold();
  things().filter(thing => work(thing).empty && things().length > 1).forEach(thing => thing.remove());
  number();
  lookAgain();
  const found = problems(reckon());
  if (found.length) {
    event.preventDefault();
    event.stopImmediatePropagation();
    found.map(([input, text]) => beside(input, text))[0].focus();
    return;
  }
  // "Today" is said on the day of buying and may be read on another; so is the tax of a source.
  const day = form.elements.day.value;
  if (day !== "OTHER") form.elements.date.value = today(day === "TODAY" ? 0 : 1);
  if (!form.elements.tax.value.trim() && !certificate()) form.elements.tax.value = sourceTax() || "0";
}, true);

// Not kept by the outbox, so sent the ordinary way: what comes back is the answer, and the draft is done with.
addEventListener("submit", event => {
  if (event.target === form && !event.defaultPrevented) forget();
});

form.addEventListener("outbox:saved", event => {
  const kept = new Map(event.detail.fields);
  forget();
  untold();
  box.replaceChildren();
  fresh();
  for (const name of ["source", "paidWith"]) {
    if (kept.get(name) && [...form.elements[name].options].some(option => option.value === kept.get(name))) form.elements[name].value = kept.get(name);
  }
  lookAgain();
  scrollTo(0, 0);
});

form.addEventListener("outbox:mend", event => {
  event.preventDefault();
  show(one("[data-said]"), false);
  restore(event.detail.fields);
});

document.addEventListener("lists:ready", event => {
  rows = { ...rows, ...event.detail };
  // What the shop has put into the page itself is newer than what was kept here.
  if (rows.money && !words.code) Object.assign(money, rows.money);
  blankOffer();
  things().forEach(offer);
  first("source", "sources");
  first("paidWith", "paid");
  if (waiting) { const fields = waiting; waiting = null; restore(fields); }
  lookAgain();
});

function blankOffer() {
  if (rows.kinds) options(field(blank, "kind"), rows.kinds);
  if (rows.styles) options(field(blank, "style"), rows.styles);
}

let decided = false;

// What was used last is chosen, until she chooses otherwise.
function first(name, list) {
  if (!decided && rows[list] && rows[list].length && !form.elements[name].value) form.elements[name].value = rows[list][0].value;
}

form.addEventListener("change", event => { if (["source", "paidWith"].includes(event.target.name)) decided = true; });

// ---- begin

things().forEach(offer);
// A page kept on the phone has the same first id every time it is opened.
if (words.fresh) field(things()[0], "piece").value = id();
let waiting = null;
const kept = words.fresh && !new URLSearchParams(location.search).has("mend") ? draft() : null;
if (kept && kept.fields.some(([name, text]) => /^things\[\d+]\.(price|what)$/.test(name) && text || name === "tillTotal" && text)) {
  // What was "today" when it was typed is that day still.
  const dated = kept.fields.map(([name, text]) => [name, name === "date" && !text ? back(kept) : text]);
  restore(dated);
  decided = true;
  waiting = dated;
  keptBefore();
}
lookAgain();

function back(old) {
  const day = (old.fields.find(([name]) => name === "day") || [])[1];
  if (day === "OTHER" || old.on === today(0)) return day === "YESTERDAY" ? today(1) : "";
  const then = new Date(old.on + "T12:00");
  if (day === "YESTERDAY") then.setDate(then.getDate() - 1);
  return then.toISOString().slice(0, 10);
}

function keptBefore() {
  const line = one("[data-said]"), away = document.createElement("button");
  away.type = "button";
  away.textContent = words.discard;
  away.addEventListener("click", () => {
    forget();
    form.reset();
    box.replaceChildren();
    fresh();
    show(line, false);
    lookAgain();
  });
  line.replaceChildren(words.kept + " ", away);
  show(line, true);
}
})();
