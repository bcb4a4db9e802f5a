// Sends the chosen pictures of a form one by one and tells how far it is. Without this file the form sends them together.
"use strict";

const fill = (words, ...gaps) => gaps.reduce((text, gap, at) => text.replaceAll(`{${at}}`, gap), words);

async function send(form, file) {
  const key = crypto.randomUUID();
  const data = new FormData(form);
  data.delete("file");
  data.set("id", key);
  data.set("file", file);
  const headers = { "Idempotency-Key": `"${key}"`, "Accept": "application/json" };
  const answer = await fetch(form.action, { method: "POST", body: data, headers, redirect: "error" });
  if (!(answer.headers.get("Content-Type") || "").startsWith("application/json")) throw new Error("no receipt");
  const told = await answer.json();
  if (answer.ok && told.key === key) return [];
  if (!told.problems) throw new Error("no receipt");
  return told.problems.map(problem => problem.words);
}

for (const form of document.querySelectorAll("form[data-photos]")) {
  const status = document.createElement("p");
  status.setAttribute("role", "status");
  const problems = document.createElement("ul");
  problems.className = "error";
  form.append(status, problems);
  const tell = words => problems.appendChild(document.createElement("li")).append(words);

  const sendAll = async files => {
    let kept = 0;
    problems.replaceChildren();
    for (let at = 0; at < files.length; at++) {
      status.textContent = fill(form.dataset.progress, at + 1, files.length);
      try {
        const wrong = await send(form, files[at]);
        wrong.forEach(tell);
        if (!wrong.length) kept++;
      } catch {
        tell(fill(form.dataset.failed, files[at].name));
      }
    }
    status.textContent = fill(form.dataset.done, kept, files.length);
    return kept === files.length;
  };

  // Before the handler that marks a form as sent: here the page stays.
  form.addEventListener("submit", async event => {
    const inputs = [...form.querySelectorAll("input[type=file]")];
    const files = inputs.flatMap(input => [...input.files]);
    if (!files.length || !globalThis.crypto?.randomUUID) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (form.dataset.busy) return;
    form.dataset.busy = "yes";
    const well = await sendAll(files);
    inputs.forEach(input => { input.value = ""; });
    delete form.dataset.busy;
    if (well) { location.reload(); return; }
    if (!form.querySelector("[data-again]")) {
      const again = document.createElement("a");
      again.className = "button";
      again.dataset.again = "";
      again.href = location.href.split("#")[0];
      again.textContent = form.dataset.show;
      form.append(again);
    }
  }, { capture: true });

  const field = form.querySelector("input[type=file][multiple]");
  if (form.classList.contains("drop")) {
    for (const kind of ["dragenter", "dragover"]) {
      form.addEventListener(kind, event => { event.preventDefault(); form.classList.add("over"); });
    }
    for (const kind of ["dragleave", "drop"]) form.addEventListener(kind, () => form.classList.remove("over"));
    form.addEventListener("drop", event => {
      event.preventDefault();
      field.files = event.dataTransfer.files;
      form.requestSubmit();
    });
  }
}
