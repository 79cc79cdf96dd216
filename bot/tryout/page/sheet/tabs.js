// On a narrow screen the two sheets are tabs; on a wide one both are there.

const narrow = window.matchMedia("(max-width: 56rem)");

export class Tabs {
  constructor(sheets) {
    this.sheets = sheets;
    this.bar = document.getElementById("tabs");
    this.tabs = sheets.map((sheet) => document.getElementById(`tab-${sheet.side}`));
    this.chosen = 0;
    this.fresh = [0, 0];
    this.tabs.forEach((tab, place) => {
      tab.addEventListener("click", () => this.choose(place));
      tab.addEventListener("keydown", (event) => this.move(event));
    });
    narrow.addEventListener("change", () => this.show());
    this.show();
  }

  move(event) {
    const step = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    if (!step) return;
    event.preventDefault();
    this.choose((this.chosen + step + this.tabs.length) % this.tabs.length);
    this.tabs[this.chosen].focus();
  }

  choose(place) {
    this.chosen = place;
    this.fresh[place] = 0;
    this.show();
    this.sheets[place].toEnd();
  }

  unread(sheet) {
    const place = this.sheets.indexOf(sheet);
    if (narrow.matches && place !== this.chosen) { this.fresh[place] += 1; this.show(); }
  }

  show() {
    this.bar.hidden = !narrow.matches;
    this.sheets.forEach((sheet, place) => {
      const here = place === this.chosen;
      sheet.root.hidden = narrow.matches && !here;
      this.tabs[place].setAttribute("aria-selected", String(here));
      this.tabs[place].tabIndex = here ? 0 : -1;
      const title = sheet.root.querySelector("h2").textContent;
      this.tabs[place].textContent = this.fresh[place] ? `${title} (${this.fresh[place]} new)` : title;
      if (narrow.matches) { sheet.root.setAttribute("role", "tabpanel"); sheet.root.setAttribute("aria-labelledby", this.tabs[place].id); }
      else { sheet.root.removeAttribute("role"); sheet.root.setAttribute("aria-labelledby", `${sheet.side}-title`); }
    });
  }
}
