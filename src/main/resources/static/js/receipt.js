// Comforts of the receipt's form; it works without them.
"use strict";

const receipt = document.querySelector("form[data-receipt]");
if (receipt) {
  // Only the fields of the kind that is chosen.
  const fields = line => {
    const kind = line.querySelector("select[name$='.kind']").value;
    for (const part of line.querySelectorAll("[data-for]")) {
      part.hidden = !part.dataset.for.split(" ").includes(kind);
    }
  };
  for (const line of receipt.querySelectorAll("[data-line]")) {
    fields(line);
    line.addEventListener("change", () => fields(line));
  }

  // A typed day goes before the quick answers, and the other way round.
  const date = receipt.querySelector("#date");
  const days = receipt.querySelectorAll("input[name=day]");
  date.addEventListener("input", () => { if (date.value) for (const day of days) day.checked = day.value === "OTHER"; });
  for (const day of days) {
    day.addEventListener("change", () => { if (day.value !== "OTHER") date.value = ""; });
  }

  // What the lines come to, each less its own discount; the server says the real total.
  const running = receipt.querySelector("[data-running]");
  const number = text => Number((text || "").replace(/[^0-9.,-]/g, "").replace(",", "."));
  const sum = () => {
    let total = 0;
    for (const line of receipt.querySelectorAll("[data-line]")) {
      const value = name => line.querySelector(`[name$='.${name}']`).value;
      const gross = number(value("price")) * number(value("quantity"));
      const discount = value("discount");
      total += gross - (discount.includes("%") ? gross * number(discount) / 100 : number(discount));
    }
    running.hidden = !(total > 0);
    running.textContent = `${running.dataset.text} ${total.toLocaleString(document.documentElement.lang, { minimumFractionDigits: 2, maximumFractionDigits: 2 })}`;
  };
  receipt.addEventListener("input", sum);
  sum();
}
