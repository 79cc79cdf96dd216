// The clock at the top: shows, ticks between two looks at the server, and takes steps.

import { ask } from "./ask.js";
import { clockTime, dayAndTime } from "./words.js";

const shown = { now: Date.now(), at: performance.now(), paused: false, due: null };
const listeners = [];

export const now = () => new Date(shown.now + (shown.paused ? 0 : performance.now() - shown.at));
export const onTick = (listener) => listeners.push(listener);

function take(given) {
  Object.assign(shown, {
    now: Date.parse(given.now), at: performance.now(), paused: given.paused,
    due: given.next_due ? new Date(given.next_due) : null,
  });
  show();
}

function show() {
  const time = document.getElementById("clock-now");
  const words = `${dayAndTime(now(), "UTC")} UTC`;
  if (time.textContent !== words) {
    time.textContent = words;
    time.dateTime = now().toISOString();
  }
  document.getElementById("clock-state").textContent = shown.paused ? "paused" : "running";
  const pause = document.getElementById("clock-pause");
  pause.textContent = shown.paused ? "Go on" : "Pause";
  pause.dataset.step = shown.paused ? "go" : "pause";
  const same = shown.due && shown.due.toDateString() === now().toDateString();
  const due = shown.due ? (same ? clockTime(shown.due, "UTC") : dayAndTime(shown.due, "UTC").replace(/ \d{4},/, ",")) : "none";
  document.getElementById("clock-due").textContent = ` (${due})`;
  document.querySelector('[data-step="next"]').setAttribute("aria-disabled", String(!shown.due));
  for (const listener of listeners) listener();
}

export async function look() {
  take(await ask("/clock"));
}

export function begin(trouble) {
  const clock = document.getElementById("clock");
  clock.hidden = false;
  for (const button of clock.querySelectorAll("button")) button.addEventListener("click", () => step(button, trouble));
  setInterval(show, 1000);
  setInterval(() => look().catch(() => undefined), 3000);
  return look();
}

async function step(button, trouble) {
  if (button.getAttribute("aria-busy") === "true" || button.getAttribute("aria-disabled") === "true") return;
  button.setAttribute("aria-busy", "true");
  try {
    take(await ask("/clock", { step: button.dataset.step }));
  } catch (error) {
    trouble(error.message);
  } finally {
    button.removeAttribute("aria-busy");
  }
}
