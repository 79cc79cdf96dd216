// Times, sizes and reactions in words.

const REACTIONS = {
  "👍": "thumbs up", "👎": "thumbs down", "👌": "OK", "✍": "noted", "👀": "seen", "💯": "a hundred", "🔥": "fire",
  "🤔": "thinking", "❤": "heart", "🎉": "cheers", "👏": "applause", "🙏": "thanks", "🏆": "cup", "⚡": "lightning",
};

export const reactionWords = (emoji) => REACTIONS[emoji] || emoji;

export const zoneOf = (person) => (person && person.zone) || "UTC";

const formats = new Map();
function format(zone, options) {
  const key = zone + JSON.stringify(options);
  if (!formats.has(key)) formats.set(key, new Intl.DateTimeFormat("en-GB", { timeZone: zone, hourCycle: "h23", ...options }));
  return formats.get(key);
}

export const clockTime = (when, zone) => format(zone, { hour: "2-digit", minute: "2-digit" }).format(when);

export const dayAndTime = (when, zone) => format(zone, {
  weekday: "short", day: "numeric", month: "short", year: "numeric", hour: "2-digit", minute: "2-digit",
}).format(when);

export const dayOf = (when, zone) => format(zone, { weekday: "long", day: "numeric", month: "long", year: "numeric" }).format(when);

export function sizeWords(bytes) {
  if (bytes < 1000) return `${bytes} bytes`;
  return bytes < 1e6 ? `${(bytes / 1000).toFixed(0)} kB` : `${(bytes / 1e6).toFixed(1)} MB`;
}

// A time inside a message, by its format: r relative; w weekday, d or D date, t or T time of day; none: as written.
export function timeWords(unix, layout, zone, now) {
  const when = new Date(unix * 1000);
  if (layout === "r") return relative((when - now) / 1000);
  if (!layout) return null;
  const options = {};
  if (layout.includes("w")) options.weekday = "long";
  if (/d/i.test(layout)) Object.assign(options, { day: "numeric", month: layout.includes("D") ? "long" : "short", year: "numeric" });
  if (/t/i.test(layout)) Object.assign(options, { hour: "2-digit", minute: "2-digit" }, layout.includes("T") ? { second: "2-digit" } : {});
  return format(zone, options).format(when);
}

function relative(seconds) {
  const words = new Intl.RelativeTimeFormat("en", { numeric: "auto" });
  const size = Math.abs(seconds);
  for (const [unit, length] of [["day", 86400], ["hour", 3600], ["minute", 60]]) {
    if (size >= length) return words.format(Math.round(seconds / length), unit);
  }
  return words.format(Math.round(seconds), "second");
}

export const firstWords = (message, length = 40) => {
  const text = (message.text || (message.file ? fileWords(message.file) : "")).replace(/\s+/g, " ").trim();
  return text.length > length ? `${text.slice(0, length).trim()}…` : text;
};

export function fileWords(file) {
  switch (file.kind) {
    case "photo": return "Picture";
    case "voice": return `Voice note, ${file.seconds} s`;
    case "video": return `Video, ${file.seconds} s`;
    case "sticker": return `Sticker ${file.emoji}`;
    default: return file.name || "File";
  }
}
