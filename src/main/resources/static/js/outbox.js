// Keeps what a form says on this phone and sends it when it can, each entry once. A form takes part with data-outbox; see
// DEVELOPERS.md, "A form that works without reception". Without this file the same form is sent the ordinary way.
"use strict";
(() => {
const strip = document.getElementById("outbox");
if (!strip || !window.indexedDB) return;

const SCHEMA = 1;                      // of the entries; has nothing to do with the version of the pages
const PATIENCE = 5000, PHOTO_PATIENCE = 60000, LOCK_PATIENCE = 20000, LEASE = 20000;
const PAUSES = [2, 5, 15, 45, 120, 300, 600];
const OLD = 2 * 24 * 3600e3, LISTS_AGE = 600e3, TAP = 600, EDGE = 1600;
const TRIES = 10;
const words = strip.dataset;
const said = strip.querySelector("[role=status]"), link = strip.querySelector("a");
const channel = window.BroadcastChannel ? new BroadcastChannel("patinary-outbox") : null;
const pageRead = document.readyState === "complete" ? Promise.resolve()
  : new Promise(done => document.addEventListener("DOMContentLoaded", done));
let base = null, token = null, state = "", lists = {};

// ---- the store

async function store() {
  if (base) return base;
  return base = await new Promise((done, failed) => {
    const opening = indexedDB.open("patinary", SCHEMA);
    opening.onupgradeneeded = () => {
      opening.result.createObjectStore("entries", { keyPath: "seq", autoIncrement: true }).createIndex("key", "key", { unique: true });
      opening.result.createObjectStore("facts");
    };
    opening.onerror = () => failed(opening.error);
    opening.onsuccess = () => {
      opening.result.onversionchange = opening.result.onclose = () => { opening.result.close(); base = null; };
      done(opening.result);
    };
  });
}

// Done means: on the disk, as far as a browser can promise it.
async function change(work) {
  const opened = await store();
  await new Promise((done, failed) => {
    const transaction = opened.transaction(["entries", "facts"], "readwrite", { durability: "strict" });
    transaction.oncomplete = done;
    transaction.onabort = () => failed(transaction.error || new Error("not stored"));
    try {
      work(transaction.objectStore("entries"), transaction.objectStore("facts"));
    } catch (failure) {
      failed(failure);
      transaction.abort();               // all of it or nothing
    }
  });
}

async function ask(name, question) {
  const opened = await store();
  return new Promise((done, failed) => {
    const request = question(opened.transaction(name).objectStore(name));
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });
}

const all = () => ask("entries", entries => entries.getAll());
const find = key => ask("entries", entries => entries.index("key").get(key));
const fact = name => ask("facts", facts => facts.get(name));
const note = (name, value) => change((entries, facts) => facts.put(value, name));

async function discard(key) {
  const gone = (await all()).filter(entry => entry.key === key || entry.parent === key);
  await change(entries => gone.forEach(entry => entries.delete(entry.seq)));
  await changed();
}

// ---- saving

function uuid() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = bytes[6] & 15 | 64;
  bytes[8] = bytes[8] & 63 | 128;
  const hex = [...bytes].map(byte => byte.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}

// The page's own listeners have been asked before: one that prevents the event has its reasons.
document.addEventListener("submit", event => {
  const form = event.target;
  if (event.defaultPrevented || !form.dataset.outbox || form.dataset.plain) return;
  event.preventDefault();
  if (form.dataset.saving) return;
  form.dataset.saving = "yes";
  const button = event.submitter;
  if (button) button.setAttribute("aria-busy", "true");
  save(form, button).catch(failure => notSaved(form, button, failure)).finally(() => setTimeout(() => {
    delete form.dataset.saving;
    if (button) button.removeAttribute("aria-busy");
  }, TAP));
});

function answers(form, button) {
  const data = new FormData(form);
  if (button && button.name) data.append(button.name, button.value);
  return [...data].filter(([name]) => name !== "_csrf");
}

async function save(form, button) {
  const typed = answers(form, button);
  const mended = form.dataset.mends ? await find(form.dataset.mends) : null;
  const key = mended ? mended.key : uuid();
  const fields = typed.filter(([name, value]) => typeof value === "string" && name !== "id");
  fields.unshift(["id", key]);
  const entry = { ...basics(form, key, form.dataset.outbox), to: form.getAttribute("action"), fields };
  if (mended) entry.seq = mended.seq;
  const photos = [];
  for (const [name, file] of typed) {
    if (file instanceof File && file.size > 0 && name.endsWith("photo")) photos.push(await photo(form, entry, name, file));
  }
  await change(entries => { entries.put(entry); photos.forEach(each => entries.add(each)); });
  if (navigator.storage && navigator.storage.persist) {
    navigator.storage.persist().then(kept => note("kept", kept)).catch(() => {});
  }
  afresh(form, entry);
  say(words.saved);
  await changed();
  send(false);
}

function basics(form, key, kind) {
  return { key, kind, page: location.pathname, form: form.dataset.form || "1", made: new Date().toISOString(),
    state: "waiting", tries: 0, next: 0, problems: [] };
}

async function photo(form, entry, name, file) {
  const input = [...form.elements].find(element => element.name === name);
  const of = entry.fields.find(([field]) => field === input.dataset.of);
  const key = uuid();
  return { ...basics(form, key, "photo"), to: "/photos", parent: entry.key, file: await scaled(file),
    fields: [["id", key], ["of", of ? of[1] : entry.key], ["subject", input.dataset.subject || "DOCUMENT"], ["stage", input.dataset.stage || ""]] };
}

// Turned upright and made small on the phone, which also leaves out where it was taken. What cannot be read is kept as it is.
async function scaled(file) {
  try {
    const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
    const ratio = Math.min(1, EDGE / Math.max(picture.width, picture.height));
    const canvas = document.createElement("canvas");
    canvas.width = Math.max(1, Math.round(picture.width * ratio));
    canvas.height = Math.max(1, Math.round(picture.height * ratio));
    const brush = canvas.getContext("2d");
    brush.fillStyle = "#fff";
    brush.fillRect(0, 0, canvas.width, canvas.height);
    brush.drawImage(picture, 0, 0, canvas.width, canvas.height);
    picture.close();
    return await new Promise(done => canvas.toBlob(small => done(small || file), "image/jpeg", 0.85));
  } catch (unreadable) {
    return file;
  }
}

function afresh(form, entry) {
  form.querySelectorAll(".outbox-problem").forEach(each => each.remove());
  form.querySelectorAll(".wrong").forEach(each => each.classList.remove("wrong"));
  form.querySelectorAll("[aria-invalid]").forEach(each => each.removeAttribute("aria-invalid"));
  if (form.dataset.mends) {
    delete form.dataset.mends;
    history.replaceState(null, "", location.pathname);
  }
  form.reset();
  if (form.elements.id) form.elements.id.value = uuid();
  form.dispatchEvent(new CustomEvent("outbox:saved", { bubbles: true, detail: { key: entry.key, fields: entry.fields } }));
}

function notSaved(form, button, failure) {
  if (failure && failure.name === "QuotaExceededError") {
    say(words.full, null, "bad");
    return;
  }
  form.dataset.plain = "yes";          // nothing can be kept here: the ordinary way is left
  form.requestSubmit(button && button.form === form ? button : undefined);
}

// ---- mending what was refused

async function mend(form) {
  const key = new URLSearchParams(location.search).get("mend");
  const entry = key ? await find(key) : null;
  if (!entry || entry.kind !== form.dataset.outbox) return;
  form.dataset.mends = key;
  const detail = { fields: entry.fields, problems: entry.problems };
  if (form.dispatchEvent(new CustomEvent("outbox:mend", { bubbles: true, cancelable: true, detail }))) fill(form, entry.fields);
  tell(form, entry.problems);
}

function fill(form, fields) {
  const left = new Map();
  for (const [name, value] of fields) left.set(name, [...(left.get(name) || []), value]);
  for (const element of form.elements) {
    const values = left.get(element.name);
    if (element.type === "checkbox" || element.type === "radio") element.checked = Boolean(values && values.includes(element.value));
    else if (element.type !== "file" && values && values.length) element.value = values.shift();
  }
}

function tell(form, problems) {
  const summary = part("div", "summary outbox-problem");
  summary.setAttribute("role", "alert");
  summary.tabIndex = -1;
  const list = part("ul");
  for (const problem of problems) {
    const field = problem.field && [...form.elements].find(element => element.name === problem.field && element.type !== "hidden");
    const line = part("li");
    if (field && field.id) {
      const way = part("a", "", problem.words);
      way.href = "#" + field.id;
      line.append(way);
      beside(field, problem.words);
    } else {
      line.textContent = problem.words;
    }
    list.append(line);
  }
  summary.append(part("h2", "", words.heed), list);
  form.prepend(summary);
  summary.focus();
}

function beside(field, text) {
  const error = part("p", "error outbox-problem", text);
  error.id = field.id + "-refused";
  field.setAttribute("aria-invalid", "true");
  field.setAttribute("aria-describedby", error.id);
  field.before(error);
  const box = field.closest(".field");
  if (box) box.classList.add("wrong");
}

function part(name, look, text) {
  const element = document.createElement(name);
  if (look) element.className = look;
  if (text) element.textContent = text;
  return element;
}

// ---- sending

let sending = null, wanted = "";

function send(forced) {
  if (sending) {
    wanted = forced ? "now" : wanted || "soon";
    return sending;
  }
  sending = alone(() => sendAll(forced)).catch(() => {}).then(() => {
    sending = null;
    const again = wanted;
    wanted = "";
    return again ? send(again === "now") : later();
  });
  return sending;
}

// One tab sends at a time. A tab that a phone put to sleep may hold the turn for ever, so it is taken over after a while;
// should both send the same entry, the shop still records it once.
async function alone(work) {
  if (!navigator.locks) return leased(work);
  const waiting = new AbortController();
  const timer = setTimeout(() => waiting.abort(), LOCK_PATIENCE);
  const begin = () => { clearTimeout(timer); return work(); };
  try {
    return await navigator.locks.request("patinary-outbox", { signal: waiting.signal }, begin);
  } catch (failure) {
    if (!waiting.signal.aborted) throw failure;
    return navigator.locks.request("patinary-outbox", { steal: true }, begin);
  }
}

// Where a browser has no locks, as over plain HTTP, the turn is a note with an end; who does not get it asks again later.
async function leased(work) {
  const mine = uuid();
  const take = (fits, end) => change((entries, facts) => {
    const now = facts.get("turn");
    now.onsuccess = () => { if (fits(now.result)) facts.put({ by: mine, end: end }, "turn"); };
  });
  await take(turn => !turn || turn.end < Date.now() || turn.end > Date.now() + LEASE, Date.now() + LEASE);
  if ((await fact("turn")).by !== mine) return;
  await work().finally(() => take(turn => turn.by === mine, 0));
}

async function sendAll(forced) {
  let unanswered = 0;
  for (const { seq } of await all()) {
    const entry = await ask("entries", entries => entries.get(seq));
    if (!entry || entry.state !== "waiting" || !forced && pausing(entry)) continue;
    if (entry.parent && await find(entry.parent)) continue;
    if (!token && !await renew()) return;
    let verdict = await deliver(entry);
    if (verdict === "token" && await renew()) verdict = await deliver(entry);
    if (verdict === "signed-out" || verdict === "closed" || !token) return;
    unanswered = verdict === "unreachable" ? unanswered + 1 : 0;
    if (unanswered === 2) return;
  }
}

// A clock that was set back must not make a pause endless.
function pausing(entry) {
  const wait = entry.next - Date.now();
  return wait > 0 && wait <= PAUSES[PAUSES.length - 1] * 1000;
}

async function renew() {
  token = null;
  const { answer, body } = await call("/phone/token", { cache: "no-store" }, PATIENCE);
  if (!answer || !answer.ok || !body || typeof body.signedIn !== "boolean") return become("unreachable");
  if (!body.signedIn) return become("signed-out");
  token = body;
  become("");
  return true;
}

function become(now) {
  state = now;
  show();
  return false;
}

async function call(address, options, patience) {
  const stop = new AbortController();
  const timer = setTimeout(() => stop.abort(), patience);
  try {
    const answer = await fetch(address, { ...options, signal: stop.signal, redirect: "manual", credentials: "same-origin" });
    const json = (answer.headers.get("Content-Type") || "").startsWith("application/json");
    return { answer, body: json ? await answer.json() : null };
  } catch (unreachable) {
    return { answer: null, body: null };
  } finally {
    clearTimeout(timer);
  }
}

async function deliver(entry) {
  const headers = { Accept: "application/json", "Idempotency-Key": '"' + entry.key + '"', "X-Captured-At": entry.made,
    "X-Form-Version": entry.form, [token.header]: token.token };
  const { answer, body } = await call(entry.to, { method: "POST", headers, body: content(entry) }, entry.file ? PHOTO_PATIENCE : PATIENCE);
  const verdict = judge(entry, answer, body);
  if (verdict === "sent") await sent(entry, body);
  else if (verdict === "heed") await heed(entry, body);
  else if (verdict === "unreachable" || verdict === "later") await pause(entry, verdict);
  else if (verdict !== "token") { token = null; become(verdict); }
  return verdict;
}

function content(entry) {
  if (!entry.file) return new URLSearchParams(entry.fields);
  const form = new FormData();
  entry.fields.forEach(([name, value]) => form.append(name, value));
  form.append("file", entry.file, "photo.jpg");
  return form;
}

// Only an answer that names the entry's own key is a receipt. A page, even with status 200, is none: it may come from a
// sign-in or from whoever lends the reception.
function judge(entry, answer, body) {
  if (!answer) return "unreachable";
  if (answer.type === "opaqueredirect" || answer.status === 401) return "signed-out";
  if (answer.ok) return body && body.key === entry.key ? "sent" : "unreachable";
  if (answer.status === 403) return body && body.reason === "token" ? "token" : body && body.reason === "closed" ? "closed" : "unreachable";
  if (answer.status >= 500 || [408, 425, 429].includes(answer.status) || body && body.retry) return "later";
  return body || answer.status === 413 || entry.tries >= TRIES ? "heed" : "later";
}

async function sent(entry, receipt) {
  await change((entries, facts) => { entries.delete(entry.seq); facts.put(new Date().toISOString(), "sent"); });
  say(words.sent.replace("{0}", receipt.words), receipt.href);
  document.dispatchEvent(new CustomEvent("outbox:sent", { detail: receipt }));
  await changed();
}

async function heed(entry, body) {
  const problems = body && body.problems && body.problems.length ? body.problems : [{ field: "", words: words.unclear }];
  await renewed(entry, { state: "heed", problems });
}

function pause(entry, why) {
  const longest = why === "unreachable" ? 4 : PAUSES.length - 1;
  const seconds = PAUSES[Math.min(entry.tries, longest)] * (0.8 + 0.4 * Math.random());
  if (why === "unreachable") become("unreachable");
  return renewed(entry, { tries: entry.tries + 1, next: Date.now() + seconds * 1000 });
}

// It may have been discarded, or delivered by another tab, while it was under way.
async function renewed(entry, news) {
  await change(entries => {
    const now = entries.get(entry.seq);
    now.onsuccess = () => { if (now.result) entries.put({ ...now.result, ...news }); };
  });
  await changed();
}

let alarm = 0;

async function later() {
  clearTimeout(alarm);
  const waits = (await all()).filter(entry => entry.state === "waiting").map(entry => Math.max(entry.next - Date.now(), PAUSES[0] * 1000));
  if (waits.length) alarm = setTimeout(() => send(false), Math.min(...waits, PAUSES[PAUSES.length - 1] * 1000));
}

// ---- the lists that forms choose from

// A page of hers need not ask first whether she is signed in: it would not be there otherwise. A shop that is slow is asked again.
async function freshLists(times = 4) {
  const kept = await fact("lists") || {};
  if (kept.lists) give(kept.lists, false);
  if (!document.querySelector("[data-outbox]") && kept.at > Date.now() - LISTS_AGE) return;
  if (!document.body.classList.contains("inside") && !token && !await renew()) return;
  const headers = { Accept: "application/json" };
  if (kept.tag) headers["If-None-Match"] = kept.tag;
  const { answer, body } = await call("/phone/lists", { headers, cache: "no-store" }, PATIENCE);
  if (!answer && times > 1) setTimeout(() => freshLists(times - 1).catch(() => {}), PATIENCE);
  if (answer && answer.status === 304) await note("lists", { ...kept, at: Date.now() });
  if (!answer || !answer.ok || !body) return;
  await note("lists", { tag: answer.headers.get("ETag"), lists: body, at: Date.now() });
  give(body, true);
}

function give(rows, fresh) {
  lists = rows;
  for (const select of document.querySelectorAll("select[data-list]")) choices(select, rows[select.dataset.list] || [], fresh);
  document.dispatchEvent(new CustomEvent("lists:ready", { detail: rows }));
}

// What the shop has put into the page itself is newer than what was kept here.
function choices(select, rows, fresh) {
  const real = [...select.options].filter(option => option.value !== "");
  if (!fresh && real.length && !select.dataset.filled) return;
  const chosen = select.value;
  real.forEach(option => option.remove());
  rows.forEach(row => select.add(new Option(row.text, row.value)));
  select.dataset.filled = "yes";
  if ([...select.options].some(option => option.value === chosen)) select.value = chosen;
}

// ---- what is shown

function say(text, href, look) {
  said.textContent = text + " ";
  said.className = "outbox-said" + (look ? " " + look : "");
  if (href && document.body.classList.contains("inside")) {
    const way = part("a", "touch", words.look);
    way.href = href;
    said.append(way);
  }
  strip.hidden = false;
}

async function show() {
  const entries = await all();
  const heeded = entries.filter(entry => entry.state === "heed").length;
  const old = entries.some(entry => Date.now() - Date.parse(entry.made) > OLD);
  const asks = state === "signed-out" && entries.length > heeded;
  const count = (one, many, number) => number === 1 ? one : many.replace("{0}", number);
  const lines = [];
  if (asks) lines.push(count(words.signInOne, words.signInMany, entries.length - heeded));
  else if (entries.length > heeded) lines.push(count(words.one, words.many, entries.length - heeded));
  if (heeded) lines.push(count(words.heedOne, words.heedMany, heeded));
  if (old) lines.push(words.old);
  link.textContent = lines.join(" · ");
  link.href = asks && !heeded ? "/phone/sign-in?back=" + encodeURIComponent(location.pathname) : "/waiting";
  link.hidden = !entries.length;
  link.classList.toggle("warn", old || heeded > 0);
  if (entries.length) strip.hidden = false;
  else if (!said.textContent) strip.hidden = true;
  document.dispatchEvent(new CustomEvent("outbox:changed", { detail: { entries, state } }));
}

async function changed() {
  if (channel) channel.postMessage("changed");
  await show();
}

if (channel) channel.onmessage = () => show();
addEventListener("online", () => send(true));
document.addEventListener("visibilitychange", () => { if (!document.hidden) { show(); send(false); } });
window.outbox = { all, fact, discard, send: () => send(true), lists: () => lists, state: () => state };

(async () => {
  if (navigator.serviceWorker) navigator.serviceWorker.register("/sw.js").catch(() => {});
  await pageRead;
  await show();
  if ((await all()).length) await renew();
  await freshLists();
  for (const form of document.querySelectorAll("form[data-outbox]")) await mend(form);
  await send(false);
})().catch(() => {});
})();
