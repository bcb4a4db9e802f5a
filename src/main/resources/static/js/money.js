// Amounts in whole minor units, for the figures that a page shows before the server reckons them.
"use strict";

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
