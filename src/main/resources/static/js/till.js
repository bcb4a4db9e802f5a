// Adds up the heaps while they are counted and says what is short or over; the server reckons it again.
"use strict";

const said = document.querySelector("[data-till-says]");
if (said) {
  const form = said.closest("form");
  const books = form.querySelector("[data-till]");
  const total = form.querySelector("[name=counted]");
  const heaps = [...form.querySelectorAll(".heap-grid input[inputmode]")];
  const digits = books ? Number(books.dataset.digits) : 2;

  const money = minorUnits(digits);
  const counted = () => {
    let sum = null;
    for (const heap of heaps) {
      if (!/^\d+$/.test(heap.value.trim())) continue;
      sum = (sum || 0) + Number(heap.value) * Number(heap.closest(".heap").querySelector("[type=hidden]").value);
    }
    return sum === null ? money.read(total.value) : sum;
  };
  const say = () => {
    const there = counted();
    said.hidden = there === null;
    if (there === null) return;
    const words = [said.dataset.sum.replace("{0}", money.plain(there))];
    if (books) {
      const over = there - Number(books.dataset.expected);
      words.push(over === 0 ? said.dataset.agrees
        : (over > 0 ? said.dataset.over : said.dataset.short).replace("{0}", money.plain(Math.abs(over))));
    }
    said.textContent = words.join(" ");
  };
  form.addEventListener("input", say);
  say();

  // Another box or another day has other expectations: the page is asked anew, as long as nothing was counted.
  const place = form.querySelector("[name=placeId]");
  const day = form.querySelector("[name=date]");
  const again = () => {
    if (counted() === null && place.value && day.value && form.action.endsWith("/new")) {
      location.replace(`${form.action}?placeId=${encodeURIComponent(place.value)}&date=${encodeURIComponent(day.value)}`);
    }
  };
  place.addEventListener("change", again);
  day.addEventListener("change", again);
}
