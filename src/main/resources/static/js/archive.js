// Sends a shop archive and tells how far it is. Without this file the form sends it, and the browser says what it can.
"use strict";

const form = document.querySelector("form[data-archive]");
const bar = document.createElement("progress");
bar.max = 100;
bar.hidden = true;
const said = document.createElement("p");
said.setAttribute("role", "status");
form.append(bar, said);
bar.setAttribute("aria-label", form.querySelector("label").textContent);

// For the eye all the time, for the ear in steps.
function tell(percent) {
  bar.value = percent;
  if (percent % 10 === 0) said.textContent = form.dataset.sending.replace("{0}", percent);
}

function stop(words) {
  bar.hidden = true;
  said.textContent = words;
  delete form.dataset.busy;
}

// The same page as it answered, with its notice or with what is wrong; any other is gone to.
function show(request) {
  if (!request.responseURL || new URL(request.responseURL).pathname !== new URL(form.action).pathname) {
    location.assign(request.responseURL || form.action);
    return;
  }
  const page = new DOMParser().parseFromString(request.responseText, "text/html");
  for (const part of document.querySelectorAll(".notice, main > .summary")) part.remove();
  stop("");
  const notice = page.querySelector(".notice");
  const summary = page.querySelector("main .summary");
  const told = notice || summary;
  if (!told) { location.assign(form.action); return; }
  const main = document.getElementById("main");
  if (notice) { main.before(notice); form.reset(); } else main.querySelector("h1").after(summary);
  told.setAttribute("tabindex", "-1");
  told.focus();
}

function send() {
  const request = new XMLHttpRequest();
  request.upload.addEventListener("progress", event => {
    if (event.lengthComputable) tell(Math.floor(event.loaded / event.total * 100));
  });
  request.upload.addEventListener("load", () => { bar.removeAttribute("value"); said.textContent = form.dataset.looking; });
  request.addEventListener("load", () => show(request));
  request.addEventListener("error", () => stop(form.dataset.failed));
  request.open("POST", form.action);
  request.send(new FormData(form));
  bar.hidden = false;
  tell(0);
}

// Before the handler that marks a form as sent: here the page stays.
form.addEventListener("submit", async event => {
  const file = form.querySelector("input[type=file]").files[0];
  if (!file) return;
  event.preventDefault();
  event.stopImmediatePropagation();
  if (form.dataset.busy) return;
  if (file.size > Number(form.dataset.most)) { stop(form.dataset.large); return; }
  form.dataset.busy = "yes";
  try {
    // Where she has to show once more that it is her, that comes before the sending.
    const asked = await fetch(form.action, { method: "HEAD", redirect: "manual" });
    if (asked.type === "opaqueredirect") location.assign(form.action); else send();
  } catch {
    stop(form.dataset.failed);
  }
}, { capture: true });
