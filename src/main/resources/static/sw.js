// Keeps the shells of the phone's pages, so that they open without reception. Never keeps a page of somebody signed in:
// the copies are fetched without her cookie. What she enters is not kept here but by outbox.js, apart from these copies.
// The program puts VERSION (changes with every page, style or script), PAGES and LANGUAGE (that of the pages) in front of this file.
"use strict";

const SHELL = "shell-" + VERSION + "-" + LANGUAGE;
const PATIENCE = 3000;
const PART = /(?:href|src)="(\/(?:css|js|img)\/[^"]+)"/g;

self.addEventListener("install", event => {
  event.waitUntil(keepShells().then(() => self.skipWaiting()));
});

self.addEventListener("activate", event => {
  event.waitUntil(forgetOlderShells().then(() => self.clients.claim()));
});

self.addEventListener("fetch", event => {
  const address = new URL(event.request.url);
  if (event.request.method !== "GET" || address.origin !== self.location.origin) return;
  if (event.request.mode === "navigate") event.respondWith(page(event.request, address.pathname));
  else if (/^\/(css|js|img)\//.test(address.pathname)) event.respondWith(part(event.request));
});

async function keepShells() {
  const shell = await caches.open(SHELL);
  const parts = new Set();
  for (const path of PAGES) {
    const answer = await fetch(path, { credentials: "omit", cache: "no-store", redirect: "manual" });
    if (answer.status >= 500) throw new Error(path + " answered " + answer.status);
    const text = await answer.text();
    if (!answer.ok) continue;
    for (const found of text.matchAll(PART)) parts.add(found[1]);
    await shell.put(path, new Response(text, { headers: answer.headers }));
  }
  await Promise.all([...parts].map(async path => {
    const answer = await fetch(path, { credentials: "omit" });
    if (!answer.ok) throw new Error(path + " answered " + answer.status);
    await shell.put(path, answer);
  }));
}

async function forgetOlderShells() {
  const names = await caches.keys();
  await Promise.all(names.filter(name => name.startsWith("shell-") && name !== SHELL).map(name => caches.delete(name)));
}

// What the shop answers comes first. Where it does not answer, a page of the phone opens from its copy, after a moment's
// patience; any other page leads to the list of what is waiting.
async function page(request, path) {
  const known = PAGES.includes(path);
  try {
    const answer = await (known ? Promise.race([fetch(request), outOfPatience()]) : fetch(request));
    if (!known || answer.status < 500) return answer;
  } catch (unreachable) {
    // The copy is the answer.
  }
  const shell = await caches.open(SHELL);
  const copy = await shell.match(known ? path : "/waiting", { ignoreVary: true });
  return copy || Response.error();
}

// Style, scripts and pictures carry a mark of their content in their address: a copy is never out of date.
async function part(request) {
  const shell = await caches.open(SHELL);
  return await shell.match(request, { ignoreVary: true }) || fetch(request);
}

function outOfPatience() {
  return new Promise((done, failed) => setTimeout(() => failed(new Error("too slow")), PATIENCE));
}
