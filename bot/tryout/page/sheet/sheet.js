// One sheet: a person's chat with the bot, kept up to date by the news.

import { act, ask } from "./ask.js";
import { now } from "./clock.js";
import { Composer } from "./composer.js";
import { tell } from "./dialogs.js";
import { entry, showTime, spoken } from "./entry.js";
import { shareLink, startLink } from "./links.js";
import { make } from "./make.js";
import { dayAndTime, dayOf, zoneOf } from "./words.js";

const TAP_S = 10;

export class Sheet {
  constructor(side, title, page) {
    this.side = side;
    this.page = page;
    this.personId = 0;
    this.chat = null;
    this.messages = new Map();
    this.waiting = new Map();
    this.root = document.getElementById(side);
    this.root.append(document.getElementById("sheet-template").content.cloneNode(true));
    this.scroll = this.root.querySelector(".scroll");
    this.log = this.root.querySelector(".log");
    this.select = this.root.querySelector("select");
    this.name(title);
    this.composer = new Composer(this.root, this);
    this.listen();
  }

  name(title) {
    const heading = this.root.querySelector("h2");
    heading.textContent = title;
    heading.id = `${this.side}-title`;
    const words = this.root.querySelector("textarea");
    words.id = `${this.side}-words`;
    const label = this.root.querySelector(".write > label");
    label.htmlFor = words.id;
    label.textContent = `${title}'s message`;
    this.scroll.setAttribute("aria-label", `${title}'s log`);
    this.root.querySelector(".keys").setAttribute("aria-label", `${title}'s reply buttons`);
    for (const [selector, what] of [[".new", ""], [".send", ""], [".start", ""], [".file span", ""], [".more summary", ""]]) {
      this.root.querySelector(selector).append(make("span", { class: "unseen" }, `${what} (${title.toLowerCase()})`));
    }
    this.root.querySelector(".who .unseen").textContent = `${title} is `;
  }

  listen() {
    this.atEnd = true;
    this.scroll.addEventListener("scroll", () => { this.atEnd = this.gap() < 80; });
    new ResizeObserver(() => { if (this.atEnd) this.toEnd(); }).observe(this.scroll);
    const more = this.root.querySelector(".more");
    more.addEventListener("keydown", (event) => {
      if (event.key === "Escape" && more.open) { more.open = false; more.querySelector("summary").focus(); }
    });
    this.select.addEventListener("change", () => this.page.choose(this, Number(this.select.value)));
    this.root.querySelector(".new").addEventListener("click", () => this.page.addPerson(this));
    this.root.querySelector(".start").addEventListener("click", () => this.try(() => act(this.personId, "start")));
    for (const button of this.root.querySelectorAll("[data-act]")) {
      button.addEventListener("click", () => this.extra(button.dataset.act));
    }
  }

  // What an entry asks of its sheet.
  zone() { return zoneOf(this.chat && this.chat.person); }
  now() { return now(); }
  find(id) { return this.messages.get(id); }
  entryId(id) { return `${this.side}-${id}`; }
  botName() { return this.chat.bot.name; }
  reply(message) { this.composer.reply(message); }
  edit(message) { this.composer.edit(message); }
  goTo(id) {
    const item = document.getElementById(this.entryId(id));
    if (item) { item.scrollIntoView({ block: "center" }); item.focus(); }
  }

  link(address) {
    const start = startLink(address, this.chat.bot.username);
    if (start) { this.page.useLink(start); return true; }
    const shared = shareLink(address);
    if (shared) { this.page.shareLink(shared, startLink(shared.address, this.chat.bot.username)); return true; }
    return false;
  }

  async press(message, button, place, element) {
    switch (button.action) {
      case "callback_data": return this.tap(message, place, element);
      case "url": if (!this.link(button.detail)) window.open(button.detail, "_blank", "noopener"); return undefined;
      case "copy_text": return this.copy(button.detail);
      default: return this.toast(`«${button.label}» needs the real app.`);
    }
  }

  async tap(message, place, element) {
    if (element.getAttribute("aria-busy") === "true") return;
    element.setAttribute("aria-busy", "true");
    const key = `${message.id}:${place}`;
    this.waiting.set(key, setTimeout(() => this.release(message.id), TAP_S * 1000));
    await this.try(() => act(this.personId, "tap", { message: message.id, button: place }), () => this.release(message.id));
  }

  release(id) {
    for (const [key, timer] of [...this.waiting]) {
      if (!key.startsWith(`${id}:`)) continue;
      clearTimeout(timer);
      this.waiting.delete(key);
    }
    const item = document.getElementById(this.entryId(id));
    for (const button of item ? item.querySelectorAll("[aria-busy]") : []) {
      button.removeAttribute("aria-busy");
    }
  }

  async copy(text) {
    try { await navigator.clipboard.writeText(text); this.toast(`Copied: ${text}`); } catch { await tell("To copy", text); }
  }

  async try(doing, failed = () => undefined) {
    try { await doing(); } catch (error) { failed(); this.toast(error.message); }
  }

  toast(words) {
    const line = this.root.querySelector(".toast");
    line.textContent = words;
    clearTimeout(this.toastTimer);
    if (words) this.toastTimer = setTimeout(() => { line.textContent = ""; }, 6000);
  }

  async extra(name) {
    this.root.querySelector(".more").open = false;
    const text = this.composer.words.value.trim();
    if (name === "voice") {
      const form = new FormData();
      form.append("kind", "voice");
      form.append("file", new Blob(["OggS"], { type: "audio/ogg" }), "voice.ogg");
      return this.try(() => act(this.personId, "send", form));
    }
    if (name === "forward") {
      await this.try(() => act(this.personId, "forward", { text }));
      this.composer.words.value = "";
      return undefined;
    }
    const blocked = this.chat.person.blocked;
    return this.try(() => act(this.personId, name === "block" ? (blocked ? "unblock" : "block") : name));
  }

  async show(personId) {
    this.personId = personId;
    this.select.value = String(personId);
    this.composer.reset();
    this.composer.words.value = "";
    this.toast("");
    await this.load();
    this.toEnd();
  }

  // Everything anew: at first, and when the keyboard, the menu or the person changed.
  async load() {
    const person = this.personId;
    const chat = await ask(`/people/${person}/chat`);
    if (person !== this.personId) return;
    this.chat = chat;
    this.messages = new Map(chat.messages.map((message) => [message.id, message]));
    this.log.replaceChildren();
    this.lastDay = "";
    for (const message of chat.messages) this.append(message);
    this.showAround();
  }

  async loadAround() {
    const person = this.personId;
    const chat = await ask(`/people/${person}/chat`);
    if (person !== this.personId) return;
    this.chat = { ...chat, messages: [] };
    this.showAround();
  }

  showAround() {
    const { keyboard, commands, person, description } = this.chat;
    const empty = this.root.querySelector(".empty");
    empty.hidden = this.messages.size > 0;
    empty.textContent = `${description ? `${description}\n\n` : ""}Nothing said yet. Press Start, or write something.`;
    this.root.querySelector(".start").hidden = person.started;
    const block = this.root.querySelector('[data-act="block"]');
    block.textContent = person.blocked ? "Unblock the bot" : "Block the bot";
    this.showKeys(keyboard);
    this.root.querySelector(".commands").replaceChildren(...commands.map(({ command, words }) => make("li", {},
      make("button", { type: "button", onclick: () => this.say(`/${command}`) }, `/${command}`, make("small", {}, words)))));
    this.root.querySelector(".extra h3").hidden = !commands.length;
    this.showLocal();
  }

  showKeys(keyboard) {
    const keys = this.root.querySelector(".keys");
    keys.hidden = !keyboard;
    keys.replaceChildren(...(keyboard ? keyboard.rows : []).map((row) => make("div", {}, ...row.map((label) =>
      make("button", { type: "button", onclick: () => this.say(label) }, label)))));
    this.composer.words.placeholder = (keyboard && keyboard.placeholder) || "";
  }

  say(text) {
    this.root.querySelector(".more").open = false;
    return this.try(() => act(this.personId, "say", { text }));
  }

  showLocal() {
    if (this.busy) return;
    const person = this.chat && this.chat.person;
    const blocked = person && person.blocked ? " · has blocked the bot" : "";
    this.root.querySelector(".local").textContent = person && person.zone
      ? `Local time ${dayAndTime(now(), person.zone)} (${person.zone})${blocked}`
      : `Time zone not known: times in UTC${blocked}`;
    for (const time of this.log.querySelectorAll(".words time")) showTime(time, this);
  }

  append(message) {
    const day = dayOf(new Date(message.at), this.zone());
    if (day !== this.lastDay) this.log.append(make("li", { class: "day" }, day));
    this.lastDay = day;
    this.log.append(entry(message, this));
  }

  // A notice about this person's chat.
  hear(notice) {
    switch (notice.kind) {
      case "message": return notice.message && this.put(notice.message);
      case "removed": return this.remove(notice.message_id);
      case "answer": return this.answer(notice);
      case "action": return this.typing();
      default: return this.loadAround().catch(() => undefined);
    }
  }

  put(message) {
    const old = this.messages.get(message.id);
    if (old && JSON.stringify(old) === JSON.stringify(message)) return;
    if (message.by === "bot" && this.busy) this.rest();
    const atEnd = this.gap() < 80;
    this.messages.set(message.id, message);
    if (old) this.replace(message);
    else {
      this.append(message);
      this.log.lastElementChild.classList.add("fresh");
      if (message.by === "bot") this.page.unread(this);
      if (!this.chat.person.started) this.loadAround().catch(() => undefined);
    }
    this.root.querySelector(".empty").hidden = true;
    if (message.by === "bot") this.root.querySelector(".heard").textContent = spoken(message, Boolean(old));
    if (atEnd || message.by === "person") this.toEnd();
  }

  // The button with the focus keeps it when its message changes under it.
  replace(message) {
    const item = document.getElementById(this.entryId(message.id));
    if (!item) return;
    const focused = item.contains(document.activeElement) ? document.activeElement : null;
    const place = focused && focused.dataset.place;
    const fresh = entry(message, this);
    item.replaceWith(fresh);
    if (focused) (fresh.querySelector(`[data-place="${place}"]`) || fresh).focus({ preventScroll: true });
  }

  remove(id) {
    this.messages.delete(id);
    const item = document.getElementById(this.entryId(id));
    if (!item) return;
    if (item.contains(document.activeElement)) this.scroll.focus({ preventScroll: true });
    item.remove();
  }

  answer(notice) {
    this.release(notice.message_id);
    if (notice.text && notice.alert) tell(this.botName(), notice.text);
    else if (notice.text) this.toast(notice.text);
  }

  typing() {
    this.root.querySelector(".local").textContent = `${this.botName()} is busy with an answer…`;
    this.busy = true;
    clearTimeout(this.typingTimer);
    this.typingTimer = setTimeout(() => this.rest(), 5000);
  }

  rest() {
    clearTimeout(this.typingTimer);
    this.busy = false;
    this.showLocal();
  }

  gap() { return this.scroll.scrollHeight - this.scroll.scrollTop - this.scroll.clientHeight; }

  toEnd() { this.scroll.scrollTop = this.scroll.scrollHeight; }
}
