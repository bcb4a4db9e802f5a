// Copies a field with one tap. Without this file the text is selected by hand, or taken as a file.
"use strict";
for (const box of document.querySelectorAll("[data-copied]")) {
  const field = box.querySelector("input[type=text], textarea");
  const line = document.createElement("p");
  const button = document.createElement("button");
  const said = document.createElement("span");
  line.className = "buttons";
  button.type = "button";
  button.textContent = box.dataset.copy;
  said.setAttribute("role", "status");
  button.addEventListener("click", async () => {
    try {
      await navigator.clipboard.writeText(field.value);
      said.textContent = box.dataset.done;
    } catch (refused) {
      // On a plain address the browser gives no clipboard: what is selected can be copied by hand.
      field.focus();
      field.select();
      said.textContent = box.dataset.failed;
    }
  });
  line.append(button, said);
  box.append(line);
}
