// Lists what is kept on this phone and not yet sent. Everything here comes from the phone, nothing from the shop.
"use strict";
(() => {
const outbox = window.outbox, room = document.getElementById("waiting");
if (!outbox || !room) return;

const words = room.dataset;
const byId = id => document.getElementById(id);
const moment = text => new Intl.DateTimeFormat(document.documentElement.lang, { dateStyle: "medium", timeStyle: "short" }).format(new Date(text));

function age(text) {
  const minutes = Math.max(0, Math.round((Date.now() - Date.parse(text)) / 60000));
  const say = new Intl.RelativeTimeFormat(document.documentElement.lang, { numeric: "auto" });
  if (minutes < 90) return say.format(-minutes, "minute");
  return minutes < 48 * 60 ? say.format(-Math.round(minutes / 60), "hour") : say.format(-Math.round(minutes / 1440), "day");
}

function card(entry, keys) {
  const item = byId("waiting-entry").content.firstElementChild.cloneNode(true);
  const kind = "kind" + entry.kind.charAt(0).toUpperCase() + entry.kind.slice(1);
  item.dataset.key = entry.key;
  item.querySelector("h3").textContent = words[kind] || words.kindOther;
  const facts = [words.made.replace("{0}", moment(entry.made))];
  if (entry.tries) facts.push(words.tried.replace("{0}", entry.tries));
  if (entry.parent && keys.has(entry.parent)) facts.push(words.with);
  if (entry.state === "heed") facts.push(words.heed);
  item.querySelector("p").textContent = facts.join(" · ");
  if (entry.state === "heed") reasons(item, entry);
  acts(item, entry);
  return item;
}

function reasons(item, entry) {
  const list = item.querySelector(".reasons");
  list.hidden = false;
  for (const problem of entry.problems) {
    const line = document.createElement("li");
    line.textContent = problem.words;
    list.append(line);
  }
  const mend = item.querySelector("a.button");
  mend.hidden = entry.kind === "photo";
  mend.href = entry.page + "?mend=" + entry.key;
}

function acts(item, entry) {
  const sure = item.querySelector(".sure"), ask = item.querySelector("[data-act=discard]");
  const turn = open => { sure.hidden = !open; ask.hidden = open; };
  ask.addEventListener("click", () => { turn(true); sure.querySelector("[data-act=no]").focus(); });
  sure.querySelector("[data-act=no]").addEventListener("click", () => { turn(false); ask.focus(); });
  sure.querySelector("[data-act=yes]").addEventListener("click", () => outbox.discard(entry.key));
}

let shown = "";

async function show(entries, state) {
  const keys = new Set(entries.map(entry => entry.key));
  byId("waiting-none").hidden = entries.length > 0;
  byId("waiting-some").hidden = byId("waiting-list").hidden = byId("waiting-acts").hidden = !entries.length;
  byId("waiting-number").textContent = entries.length;
  byId("waiting-oldest").textContent = entries.length ? age(entries[0].made) : "–";
  const last = await outbox.fact("sent"), kept = await outbox.fact("kept");
  byId("waiting-last").textContent = last ? moment(last) : words.never;
  byId("waiting-keeps").textContent = kept ? words.keeps : words.clears;
  byId("waiting-state").textContent = entries.length ? words[{ "signed-out": "signedOut" }[state] || state] || "" : "";
  byId("waiting-sign-in").hidden = state !== "signed-out";
  // What was refused is mended, not sent again; its photos wait for it.
  const refused = new Set(entries.filter(entry => entry.state === "heed").map(entry => entry.key));
  byId("waiting-send").hidden = state === "signed-out" || entries.every(entry => refused.has(entry.key) || refused.has(entry.parent));
  // A list that has not changed is left alone: a question may be open in it.
  const now = JSON.stringify(entries.map(entry => [entry.key, entry.state, entry.tries]));
  if (now !== shown) room.querySelector(".cards").replaceChildren(...entries.map(entry => card(entry, keys)));
  shown = now;
  // Shown at once and whole: nothing in it moves under a finger.
  room.hidden = false;
}

async function asText(entry) {
  const copy = { kind: entry.kind, made: entry.made, to: entry.to, key: entry.key, fields: entry.fields };
  if (!entry.file) return copy;
  return { ...copy, photo: await new Promise((done, failed) => {
    const reader = new FileReader();
    reader.onload = () => done(reader.result);
    reader.onerror = () => failed(reader.error);
    reader.readAsDataURL(entry.file);
  }) };
}

byId("waiting-export").addEventListener("click", async () => {
  const entries = await Promise.all((await outbox.all()).map(asText));
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([JSON.stringify(entries, null, 2)], { type: "application/json" }));
  link.download = words.file + "-" + new Date().toISOString().slice(0, 10) + ".json";
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
});

byId("waiting-send").addEventListener("click", async event => {
  byId("waiting-state").textContent = words.sending;
  event.target.setAttribute("aria-busy", "true");
  await outbox.send();
  event.target.removeAttribute("aria-busy");
  show(await outbox.all(), outbox.state());
});

document.addEventListener("outbox:changed", event => show(event.detail.entries, event.detail.state));
outbox.all().then(entries => show(entries, outbox.state()));
})();
