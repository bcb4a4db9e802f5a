// Runs in every page before its own script: keeps what the browser reports about paint, shift and answer to a finger.
window.vitals = { paint: 0, shift: 0, answer: 0, answers: 0 };
new PerformanceObserver((list) => {
  for (const entry of list.getEntries()) window.vitals.paint = entry.startTime;
}).observe({ type: 'largest-contentful-paint', buffered: true });
// The worst window of shifts: gaps of at most 1 s, at most 5 s long, as the measure is defined.
let began = 0, last = 0, sum = 0;
new PerformanceObserver((list) => {
  for (const entry of list.getEntries()) {
    if (entry.hadRecentInput) continue;
    if (entry.startTime - last > 1000 || entry.startTime - began > 5000) {
      began = entry.startTime;
      sum = 0;
    }
    last = entry.startTime;
    sum += entry.value;
    window.vitals.shift = Math.max(window.vitals.shift, sum);
  }
}).observe({ type: 'layout-shift', buffered: true });
const seen = new Set();
new PerformanceObserver((list) => {
  for (const entry of list.getEntries()) {
    if (!entry.interactionId) continue;
    seen.add(entry.interactionId);
    window.vitals.answers = seen.size;
    window.vitals.answer = Math.max(window.vitals.answer, entry.duration);
  }
}).observe({ type: 'event', durationThreshold: 16, buffered: true });
