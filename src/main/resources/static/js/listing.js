// Copies a field with one tap. Without this file the text is selected by hand, or taken as a file.
"use strict";
for (const box of document.querySelectorAll("[data-copied]")) {
  const field = box.querySelector("input[type=text], textarea");
  const line = box.querySelector("[data-soon]"), button = line.querySelector("button"), said = line.querySelector("[role=status]");
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
  line.hidden = false;
}
