// What a link or a button's address means to the page.

// A link that starts this bot, or null.
export function startLink(address, username) {
  let url;
  try { url = new URL(address); } catch { return null; }
  if (!["t.me", "telegram.me"].includes(url.hostname)) return null;
  if (url.pathname.slice(1).toLowerCase() !== (username || "").toLowerCase()) return null;
  return { address, payload: url.searchParams.get("start") || "" };
}

// A link that shares another one, or null.
export function shareLink(address) {
  let url;
  try { url = new URL(address); } catch { return null; }
  if (url.hostname !== "t.me" || url.pathname !== "/share/url") return null;
  return { address: url.searchParams.get("url") || "", text: url.searchParams.get("text") || "" };
}
