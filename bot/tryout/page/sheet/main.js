// The page: who sits at which sheet, the news for both, and what concerns both.

import { ask } from "./ask.js";
import { begin, look, onTick } from "./clock.js";
import { newPerson, openLink, share } from "./dialogs.js";
import { make } from "./make.js";
import { Sheet } from "./sheet.js";
import { Tabs } from "./tabs.js";

class Page {
  constructor(setting, known) {
    this.setting = setting;
    this.people = known.people;
    this.left = new Sheet("left", "Client", this);
    this.right = new Sheet("right", "Coach", this);
    this.sheets = [this.left, this.right];
    this.tabs = new Tabs(this.sheets);
  }

  unread(sheet) { this.tabs.unread(sheet); }

  listPeople() {
    const coaches = new Set(this.setting.coaches);
    for (const sheet of this.sheets) {
      const options = this.people.map((person) => make("option", { value: person.id },
        coaches.has(person.id) ? `${person.name} (coach)` : person.name));
      sheet.select.replaceChildren(...options);
      sheet.select.value = String(sheet.personId);
    }
  }

  async choose(sheet, id) {
    await sheet.show(id);
    const address = new URL(window.location);
    for (const one of this.sheets) if (one.personId) address.searchParams.set(one.side, one.personId);
    window.history.replaceState(null, "", address);
  }

  async refreshPeople() {
    this.people = (await ask("/people")).people;
    this.listPeople();
  }

  async addPerson(sheet) {
    const person = await newPerson();
    if (person) { await this.refreshPeople(); await this.choose(sheet, person.id); }
    sheet.composer.words.focus();
  }

  async useLink(link) {
    try {
      const person = await openLink(link, this.people);
      if (!person) return;
      await this.refreshPeople();
      const sheet = this.right.personId === person.id ? this.right : this.left;
      if (sheet.personId !== person.id) await this.choose(sheet, person.id);
      this.tabs.choose(this.sheets.indexOf(sheet));
    } catch (error) {
      trouble(error.message);
    }
  }

  async shareLink(shared, start) {
    if (await share(shared.address, shared.text, Boolean(start)) && start) await this.useLink(start);
  }

  async begin() {
    const wanted = new URL(window.location).searchParams;
    const coach = this.people.find((one) => one.id === Number(wanted.get("right")))
      || this.people.find((one) => this.setting.coaches.includes(one.id)) || this.people[0];
    const client = this.people.find((one) => one.id === Number(wanted.get("left")))
      || this.people.find((one) => one.id !== coach.id && !this.setting.coaches.includes(one.id)) || coach;
    this.listPeople();
    await Promise.all([this.choose(this.left, client.id), this.choose(this.right, coach.id)]);
  }

  async follow(last) {
    let after = last;
    let pause = 500;
    for (;;) {
      try {
        const news = await ask(`/people/news?after=${after}&wait_s=25`);
        trouble("");
        pause = 500;
        if (news.last < after) { after = 0; await Promise.all(this.sheets.map((sheet) => sheet.load())); }
        after = news.last;
        if (news.notices.length) await this.hear(news.notices);
      } catch {
        trouble("The connection to the stand-in was lost. Trying again…");
        await new Promise((resolve) => { setTimeout(resolve, pause); });
        pause = Math.min(2 * pause, 8000);
      }
    }
  }

  async hear(notices) {
    for (const notice of notices) {
      for (const sheet of this.sheets) if (notice.chat === sheet.personId || notice.chat === 0) sheet.hear(notice);
    }
    if (notices.some((one) => one.kind === "person")) await this.refreshPeople();
    if (this.setting.clock) await look();
  }
}

function trouble(words) {
  const line = document.getElementById("trouble");
  if (line.textContent !== words) line.textContent = words;
}

async function main() {
  const [setting, known, news] = await Promise.all([ask("/setting"), ask("/people"), ask("/people/news?after=-1")]);
  document.title = `${setting.title}: both sides of the chat`;
  document.getElementById("title").textContent = setting.title;
  if (setting.clock) await begin(trouble);
  if (!known.people.length) {
    const person = await newPerson();
    if (!person) return trouble("Nobody is here yet. Reload to add someone.");
    known.people.push(person);
  }
  const page = new Page(setting, known);
  await page.begin();
  onTick(() => page.sheets.forEach((sheet) => sheet.showLocal()));
  document.body.dataset.ready = "yes";
  return page.follow(news.last);
}

main().catch((error) => trouble(error.message));
