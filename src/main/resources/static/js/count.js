// Counting supplies one after the other: tap one, say how full it is, keep it, and the next is there. The same script serves
// the page that the shop has filled and the empty one that a phone keeps; without it the page works by its links.
"use strict";
(() => {
const form = document.querySelector("form[data-count]");
if (!form) return;

const byId = id => document.getElementById(id);
const sheet = byId("count-sheet"), list = byId("count-list"), words = byId("count-words"), said = byId("count-said");
const field = name => form.elements[name];
const links = () => [...list.querySelectorAll("[data-supply]")];
const done = new Set();

for (const each of document.querySelectorAll("#count-goods [data-script]")) each.hidden = false;

function today() {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map(part => String(part).padStart(2, "0")).join("-");
}

function link(row) {
  const item = byId("count-row").content.firstElementChild.cloneNode(true);
  const way = item.querySelector("a");
  way.href = "/count?supply=" + row.value;
  Object.assign(way.dataset, { supply: row.value, packs: row.packs.join("|"), steps: row.steps, weighs: row.weighs });
  way.querySelector("strong").textContent = row.text;
  way.querySelector(".soft").textContent = row.line;
  way.querySelector(".word").textContent = list.dataset.counted;
  return item;
}

function open(way, fresh = true) {
  const packs = (way.dataset.packs || "").split("|").filter(Boolean);
  if (fresh) form.reset();
  field("supply").value = way.dataset.supply;
  byId("count-what").textContent = way.querySelector("strong").textContent;
  field("pack").replaceChildren(...packs.map(name => new Option(name, name)));
  byId("count-pack").hidden = packs.length < 2;
  byId("count-steps").hidden = way.dataset.steps !== "true";
  byId("count-scales").hidden = way.dataset.weighs !== "true";
  byId("count-typed").open = way.dataset.steps !== "true";
  sheet.hidden = false;
  byId("count-what").focus({ preventScroll: true });
  scrollTo(0, 0);
}

function leave() {
  sheet.hidden = true;
  byId("count-title").focus({ preventScroll: true });
}

function mark(way) {
  done.add(way.dataset.supply);
  way.querySelector(".word").hidden = false;
}

list.addEventListener("click", event => {
  const way = event.target.closest("[data-supply]");
  if (!way || event.ctrlKey || event.metaKey || event.shiftKey) return;
  event.preventDefault();
  open(way);
});

byId("count-leave").addEventListener("click", event => {
  event.preventDefault();
  leave();
});

words.addEventListener("input", () => {
  const wanted = words.value.trim().toLowerCase();
  for (const way of links()) way.parentElement.hidden = !way.textContent.toLowerCase().includes(wanted);
});

// The day it was counted, also when it is sent days later. In the capturing phase, before the entry is made.
document.addEventListener("submit", event => {
  if (event.target === form && !field("date").value) field("date").value = today();
}, true);

form.addEventListener("outbox:saved", event => {
  const supply = new Map(event.detail.fields).get("supply");
  field("date").value = "";
  const all = links(), at = all.findIndex(way => way.dataset.supply === supply);
  if (at < 0) return leave();
  mark(all[at]);
  const next = all.slice(at + 1).find(way => way.querySelector(".word").hidden);
  said.textContent = next ? said.dataset.next.replace("{0}", next.querySelector("strong").textContent) : said.dataset.done;
  if (next) open(next); else leave();
});

let mended = null;
form.addEventListener("outbox:mend", event => {
  mended = new Map(event.detail.fields).get("supply");
  sheet.hidden = false;
  const way = links().find(each => each.dataset.supply === mended);
  if (way) open(way, false);
});

document.addEventListener("lists:ready", event => {
  const rows = event.detail["count-supplies"];
  if (!rows || list.dataset.served === "true") return;
  list.replaceChildren(...rows.map(link));
  for (const way of links()) if (done.has(way.dataset.supply)) mark(way);
  byId("count-shell").hidden = rows.length > 0;
  const wanted = mended || new URLSearchParams(location.search).get("supply");
  const way = wanted && (mended || sheet.hidden) ? links().find(each => each.dataset.supply === wanted) : null;
  if (way) open(way, !mended);
});
})();
