// One message as an entry of the log.

import { make } from "./make.js";
import { clockTime, fileWords, firstWords, reactionWords, sizeWords, timeWords } from "./words.js";

// `sheet` gives: zone(), now(), find(id), and what can be done: press, reply, edit, link, goTo.
export function entry(message, sheet) {
  const own = message.by === "person";
  const item = make("li", { class: `entry ${own ? "from-person" : "from-bot"}`, id: sheet.entryId(message.id), tabindex: "-1" });
  item.append(gutter(message, sheet), make("div", { class: "said" }, ...content(message, sheet)));
  if (message.pinned_notice) item.classList.add("notice");
  return item;
}

function gutter(message, sheet) {
  const when = new Date(message.at);
  return make("div", { class: "gutter" },
    make("span", { class: "name" }, message.from),
    make("time", { datetime: message.at }, clockTime(when, sheet.zone())));
}

function content(message, sheet) {
  if (message.pinned_notice) return [make("p", { class: "words" }, "Pinned a message.")];
  const parts = [];
  if (message.reply_to) parts.push(answered(message, sheet));
  if (message.file) parts.push(file(message));
  if (message.text) parts.push(words(message, sheet));
  if (message.buttons.length) parts.push(buttons(message, sheet));
  parts.push(make("div", { class: "foot" }, make("p", { class: "notes" }, notes(message, sheet)), acts(message, sheet)));
  return parts;
}

function answered(message, sheet) {
  const source = sheet.find(message.reply_to);
  if (!source) return make("p", { class: "notes" }, "In answer to a message that has gone");
  return make("button", { type: "button", class: "answers", onclick: () => sheet.goTo(source.id) },
    `In answer to ${source.from}: ${firstWords(source)}`);
}

function file(message) {
  const { kind, url, name, bytes, width, height } = message.file;
  if (kind === "photo") {
    const picture = make("img", { src: url, alt: `Picture from ${message.from}`, width, height });
    return make("a", { href: url, target: "_blank", rel: "noopener" }, picture);
  }
  if (kind === "sticker") return make("p", {}, fileWords(message.file));
  return make("p", {}, make("a", { href: url, download: name || true }, fileWords(message.file)), ` (${sizeWords(bytes)})`);
}

// The server's HTML is escaped there, and the page's policy lets no script in it run.
function words(message, sheet) {
  const block = make("div", { class: "words" });
  block.innerHTML = message.html;
  for (const part of block.querySelectorAll("blockquote, pre")) closeUp(part.nextSibling);
  for (const quote of block.querySelectorAll("blockquote.folded")) fold(quote);
  for (const time of block.querySelectorAll("time")) {
    time.dataset.written = time.textContent;
    showTime(time, sheet);
  }
  for (const link of block.querySelectorAll("a")) {
    link.addEventListener("click", (event) => { if (sheet.link(link.href)) event.preventDefault(); });
  }
  return block;
}

// A block ends its line by itself: the line break after it would be one too many.
function closeUp(next) {
  if (next && next.nodeType === Node.TEXT_NODE) next.textContent = next.textContent.replace(/^\n/, "");
}

function fold(quote) {
  const first = quote.textContent.split("\n")[0];
  const lines = quote.textContent.split("\n").length;
  const more = lines > 1 ? ` (${lines} lines)` : "";
  const folded = make("details", {}, make("summary", {}, first + more));
  const rest = make("div");
  rest.append(...quote.childNodes);
  folded.append(rest);
  quote.replaceWith(folded);
}

export function showTime(time, sheet) {
  const shown = timeWords(Number(time.dataset.unix), time.dataset.format, sheet.zone(), sheet.now());
  const words = shown === null ? time.dataset.written : shown;
  if (time.textContent === words && time.dateTime) return;
  time.textContent = words;
  time.dateTime = new Date(time.dataset.unix * 1000).toISOString();
}

function notes(message, sheet) {
  const said = [];
  if (message.forwarded) said.push("forwarded");
  if (message.edited) said.push(`edited ${clockTime(new Date(message.edited), sheet.zone())}`);
  if (message.silent) said.push("arrived without a sound");
  for (const emoji of message.reactions) said.push(`${sheet.botName()} reacted: ${reactionWords(emoji)}`);
  return said.join(" · ");
}

function buttons(message, sheet) {
  const rows = message.buttons.map((row, down) => make("div", {}, ...row.map((one, across) => make("button", {
    type: "button",
    "data-place": `${down},${across}`,
    "data-style": one.style || null,
    onclick: (event) => sheet.press(message, one, [down, across], event.currentTarget),
  }, one.label, purpose(one, message)))));
  return make("div", { class: "press", role: "group", "aria-label": `Buttons of message ${message.id}` }, ...rows);
}

// Read out, a button's name must be unique: two cards may both say "Done".
function purpose(button, message) {
  const kinds = { url: ", opens a link", copy_text: ", copies a text" };
  return make("span", { class: "unseen" }, `${kinds[button.action] || ""} (message ${message.id})`);
}

function acts(message, sheet) {
  const about = make("span", { class: "unseen" }, `message ${message.id}: ${firstWords(message)}`);
  const row = make("div", { class: "own-acts" },
    make("button", { type: "button", onclick: () => sheet.reply(message) }, "Reply", make("span", { class: "unseen" }, " to "), about));
  if (message.can_edit) {
    row.append(make("button", { type: "button", onclick: () => sheet.edit(message) }, "Edit", make("span", { class: "unseen" }, " "), about.cloneNode(true)));
  }
  return row;
}

// What a screen reader hears of a new or changed message.
export function spoken(message, changed) {
  const labels = message.buttons.flat().map((one) => one.label);
  const file = message.file ? `${fileWords(message.file)}. ` : "";
  const pressable = labels.length ? ` Buttons: ${labels.join(", ")}.` : "";
  return `${message.from}${changed ? ", changed" : ""}: ${file}${message.text}${pressable}`;
}
