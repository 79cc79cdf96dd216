// Where a person writes: a message, an answer to one, an edit of one, a file with words.

import { act } from "./ask.js";
import { make } from "./make.js";
import { firstWords, sizeWords } from "./words.js";

export class Composer {
  constructor(root, sheet) {
    this.sheet = sheet;
    this.form = root.querySelector(".write");
    this.words = root.querySelector("textarea");
    this.strip = root.querySelector(".strip");
    this.file = root.querySelector('input[type="file"]');
    this.mode = null;
    this.form.addEventListener("submit", (event) => { event.preventDefault(); this.send(); });
    this.words.addEventListener("keydown", (event) => {
      if (event.key === "Enter" && !event.shiftKey && !event.isComposing) { event.preventDefault(); this.send(); }
      if (event.key === "Escape" && this.mode) this.leave();
    });
    this.file.addEventListener("change", () => { if (this.file.files[0]) this.attach(this.file.files[0]); });
    root.querySelector(".drop").addEventListener("click", () => this.leave());
  }

  reply(message) { this.set({ kind: "reply", message }, `Answering ${message.from}: ${firstWords(message)}`); }

  edit(message) {
    this.set({ kind: "edit", message }, `Changing: ${firstWords(message)}`);
    this.words.value = message.text;
  }

  attach(file) {
    const picture = file.type.startsWith("image/");
    this.set({ kind: "file", file, as: picture ? "photo" : "document" }, `${file.name} (${sizeWords(file.size)})`);
    if (!picture) return;
    const choose = make("select", { "aria-label": "Send as" }, make("option", { value: "photo" }, "as a picture"), make("option", { value: "document" }, "as a file"));
    choose.addEventListener("change", () => { this.mode.as = choose.value; });
    this.strip.querySelector("span").append(" ", choose);
  }

  again(mode) {
    if (mode.kind === "file") this.attach(mode.file);
    else if (mode.kind === "reply") this.reply(mode.message);
    else this.set(mode, `Changing: ${firstWords(mode.message)}`);
  }

  set(mode, words) {
    this.mode = mode;
    this.strip.hidden = false;
    this.strip.querySelector("span").textContent = words;
    this.words.focus();
  }

  leave() {
    if (this.mode && this.mode.kind === "edit") this.words.value = "";
    this.reset();
    this.words.focus();
  }

  reset() {
    this.mode = null;
    this.strip.hidden = true;
    this.file.value = "";
  }

  async send() {
    const text = this.words.value;
    const mode = this.mode;
    if (!text.trim() && !(mode && mode.kind === "file")) return;
    // Emptied at once, so that what is typed meanwhile stays; given back when it could not be sent.
    this.words.value = "";
    this.reset();
    try {
      await this.deliver(text, mode);
    } catch (error) {
      if (!this.words.value) this.words.value = text;
      if (mode && !this.mode) this.again(mode);
      this.sheet.toast(error.message);
    }
  }

  deliver(text, mode) {
    const person = this.sheet.personId;
    if (!mode) return act(person, "say", { text });
    if (mode.kind === "reply") return act(person, "say", { text, reply_to: mode.message.id });
    if (mode.kind === "edit") return act(person, "edit", { message: mode.message.id, text });
    const form = new FormData();
    form.append("kind", mode.as);
    form.append("caption", text.trim());
    form.append("file", mode.file, mode.file.name);
    return act(person, "send", form);
  }
}
