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
      return new Intl.NumberFormat("en-US", { style: "currency", currency: code, minimumFractionDigits: digits })
        .format(amount / 10 ** digits);
    },
  };
}
