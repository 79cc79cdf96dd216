// The page's few questions, each in the one dialog.

import { act, ask } from "./ask.js";
import { make } from "./make.js";

const dialog = document.getElementById("dialog");

function question(title, body, { ok = "OK", cancel = true } = {}) {
  document.getElementById("dialog-title").textContent = title;
  document.getElementById("dialog-body").replaceChildren(...body);
  document.getElementById("dialog-ok").textContent = ok;
  document.getElementById("dialog-no").hidden = !cancel;
  dialog.returnValue = "";
  dialog.showModal();
  return new Promise((resolve) => dialog.addEventListener("close", () => resolve(dialog.returnValue === "ok"), { once: true }));
}

export const tell = (title, text) => question(title, [make("p", { class: "shown" }, text)], { cancel: false });

const ZONES = ["UTC", "Europe/London", "Europe/Berlin", "Europe/Kyiv", "America/New_York", "America/Los_Angeles",
  "America/Sao_Paulo", "Asia/Kolkata", "Asia/Tokyo", "Australia/Sydney"];

function nameFields() {
  const name = make("input", { type: "text", maxlength: "40", autocomplete: "off" });
  const here = Intl.DateTimeFormat().resolvedOptions().timeZone || "UTC";
  const zones = [...new Set([here, ...ZONES])];
  const zone = make("select", {}, ...zones.map((one) => make("option", { value: one }, one)));
  return { name, zone, fields: [make("label", {}, "First name ", name), make("label", {}, "Where they live (time zone) ", zone)] };
}

export async function newPerson() {
  const { name, zone, fields } = nameFields();
  if (!await question("New person", fields, { ok: "Add" }) || !name.value.trim()) return null;
  return ask("/people", { first_name: name.value.trim(), zone: zone.value });
}

// A link that starts the bot: who opens it? Answers the person, or null.
export async function openLink(link, people) {
  const { name, zone, fields } = nameFields();
  const who = make("select", {}, make("option", { value: "new" }, "Someone new"),
    ...people.map((person) => make("option", { value: person.id }, person.name)));
  const fresh = make("div", {}, ...fields);
  who.addEventListener("change", () => { fresh.hidden = who.value !== "new"; });
  const body = [make("p", { class: "shown" }, link.address), make("label", {}, "Use this link as ", who), fresh];
  if (!await question("Open the link", body, { ok: "Use the link" })) return null;
  let person = people.find((one) => String(one.id) === who.value);
  if (!person) {
    if (!name.value.trim()) return null;
    person = await ask("/people", { first_name: name.value.trim(), zone: zone.value });
  }
  await act(person.id, "start", { payload: link.payload });
  return person;
}

// A share button: what would be shared, and a way to use it here.
export async function share(address, text, canOpen) {
  const body = [make("p", {}, "This would be shared with someone of one's choice:"), make("p", { class: "shown" }, `${text ? `${text}\n` : ""}${address}`)];
  return question("Share", body, { ok: canOpen ? "Use the link here" : "OK", cancel: canOpen });
}
