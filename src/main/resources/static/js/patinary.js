// Small comforts. Every page works without this file.
"use strict";

// A "Show" button beside a password.
for (const box of document.querySelectorAll("[data-reveal]")) {
  const field = box.querySelector("input");
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = box.dataset.show;
  button.setAttribute("aria-controls", field.id);
  button.addEventListener("click", () => {
    const hidden = field.type === "password";
    field.type = hidden ? "text" : "password";
    button.textContent = hidden ? box.dataset.hide : box.dataset.show;
  });
  field.form.addEventListener("submit", () => { field.type = "password"; });
  box.append(button);
}

// After a refused form: the summary is read first.
const summary = document.getElementById("summary");
if (summary) summary.focus();

// A second tap on a slow connection does not send twice; the server would notice it as well.
for (const form of document.querySelectorAll("form[method=post]:not([data-outbox])")) {
  form.addEventListener("submit", event => {
    if (form.dataset.sent) { event.preventDefault(); return; }
    form.dataset.sent = "yes";
    if (event.submitter) event.submitter.setAttribute("aria-busy", "true");
  });
}
addEventListener("pageshow", () => {
  for (const form of document.querySelectorAll("form[data-sent]")) {
    delete form.dataset.sent;
    for (const button of form.querySelectorAll("[aria-busy]")) button.removeAttribute("aria-busy");
  }
});

// Whoever signs out leaves nothing half entered in sight for the next person; it comes back with her sign-in.
const leave = document.querySelector("form.leave");
if (leave) leave.addEventListener("submit", () => { try { localStorage.removeItem("patinary-person"); } catch (none) { /* nothing is kept */ } });

// The list behind "More" closes when another place is touched or Escape is pressed.
const more = document.querySelector("details.more");
if (more) {
  document.addEventListener("click", event => { if (!more.contains(event.target)) more.open = false; });
  document.addEventListener("keydown", event => { if (event.key === "Escape") more.open = false; });
}

// Pictures beside things to choose come after the page: once all else is there, and only those that come in sight. A tile
// whose picture cannot be had keeps its letters. The browser keeps what it has seen, until she signs out.
const pictures = (() => {
  const there = new Promise(done => document.readyState === "complete" ? done() : addEventListener("load", done, { once: true }));
  const sight = new IntersectionObserver(seen => seen.filter(one => one.isIntersecting).forEach(one => draw(one.target)), { rootMargin: "150px" });
  function draw(tile) {
    sight.unobserve(tile);
    const image = new Image(56, 56);
    image.alt = "";
    image.addEventListener("load", () => tile.append(image));
    image.src = "/photos/" + tile.dataset.picture + "/small";
  }
  return {
    watch(within) { there.then(() => within.querySelectorAll("[data-picture]").forEach(tile => sight.observe(tile))); },
    // For a tile that the page makes itself, from the phone's list of pictures.
    fill(tile, title, piece, rows) {
      tile.firstElementChild.textContent = title.trim().split(/\s+/).slice(0, 2).map(word => [...word][0]).join("").toUpperCase();
      this.late(tile, piece, rows);
    },
    late(tile, piece, rows) {
      const known = !tile.dataset.picture && (rows || []).find(row => row.value === piece);
      if (!known) return;
      tile.dataset.picture = known.photo;
      there.then(() => sight.observe(tile));
    },
  };
})();
pictures.watch(document);

// Amounts in whole minor units, for the figures that a page shows before the server reckons them.
function minorUnits(digits, code) {
  const shape = /^(\d+)(?:[.,](\d+))?$/;
  return {
    // What cannot be read for certain is null, and left to the server.
    read(text) {
      const parts = shape.exec(text.replace(/\s/g, ""));
      if (!parts || (parts[2] || "").length > digits) return null;
      return Number(parts[1]) * 10 ** digits + Number((parts[2] || "").padEnd(digits, "0") || 0);
    },
    plain(amount) {
      if (!digits) return String(amount);
      const text = String(amount).padStart(digits + 1, "0");
      return text.slice(0, -digits) + "." + text.slice(-digits);
    },
    words(amount) {
      return new Intl.NumberFormat(document.documentElement.lang, { style: "currency", currency: code, minimumFractionDigits: digits })
        .format(amount / 10 ** digits);
    },
  };
}
