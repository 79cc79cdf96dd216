"""How a bot receives: by asking, or by webhook, never both. Source: "Getting updates" of the docs."""

import re
from urllib.parse import urlsplit

from bot.tryout.standin.ask import Ask
from bot.tryout.standin.house import Bot, Hook, House
from bot.tryout.standin.refusals import bad_request, conflict
from bot.tryout.standin.updates import BY_WEBHOOK
from bot.tryout.standin.values import JsonObject, JsonValue

PORTS = frozenset({80, 88, 443, 8443})
LOOPBACK = frozenset({"127.0.0.1", "localhost", "::1"})
WEBHOOK_ACTIVE = "can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first"


async def get_updates(_house: House, bot: Bot, ask: Ask) -> JsonValue:
    """Confirms what came before the offset and gives the next ones, waiting up to `timeout` seconds."""
    if bot.hook is not None:
        raise conflict(WEBHOOK_ACTIVE)
    _allow(bot, ask)
    limit = ask.whole("limit", 100)
    limit = limit if 1 <= limit <= 100 else 100
    return await bot.updates.poll(ask.whole("offset"), limit, max(0, min(ask.whole("timeout"), 50)))


def set_webhook(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """Posts updates to an address from now on; an empty one ends it."""
    url = ask.text("url")
    if not url:
        return delete_webhook(house, bot, ask)
    _check_url(url)
    secret = ask.text("secret_token")
    if ask.has("secret_token") and not re.fullmatch(r"[A-Za-z0-9_-]{1,256}", secret):
        raise bad_request("secret token contains unallowed characters")
    _allow(bot, ask)
    if ask.flag("drop_pending_updates"):
        bot.updates.drop()
    connections = ask.whole("max_connections", 40)
    bot.hook = Hook(url, secret, connections if 1 <= connections <= 100 else 40)
    bot.updates.end_poll(BY_WEBHOOK)
    house.hook_changed(bot)
    return True


def _check_url(url: str) -> None:
    """Everything off this machine must be HTTPS on one of four ports. On loopback plain HTTP and any port will do."""
    parts = urlsplit(url)
    if parts.hostname in LOOPBACK and parts.scheme in {"http", "https"}:
        return
    if parts.scheme != "https":
        raise bad_request("bad webhook: An HTTPS URL must be provided for webhook")
    if (parts.port or 443) not in PORTS:
        raise bad_request("bad webhook: Webhook can be set up only on ports 80, 88, 443 or 8443")


def delete_webhook(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """Back to asking; what waits stays unless it is dropped."""
    bot.hook = None
    if ask.flag("drop_pending_updates"):
        bot.updates.drop()
    house.hook_changed(bot)
    return True


def get_webhook_info(_house: House, bot: Bot, _ask: Ask) -> JsonValue:
    """Where updates are posted to, and how that goes."""
    hook = bot.hook or Hook("")
    info: JsonObject = {"url": hook.url, "has_custom_certificate": False, "pending_update_count": len(bot.updates)}
    if hook.last_error:
        info |= {"last_error_date": hook.last_error_at, "last_error_message": hook.last_error}
    if hook.url:
        info["max_connections"] = hook.connections
    if bot.updates.allowed:
        info["allowed_updates"] = sorted(bot.updates.allowed)
    return info


def _allow(bot: Bot, ask: Ask) -> None:
    kinds = ask.json("allowed_updates")
    if isinstance(kinds, list):
        bot.updates.allow(str(kind) for kind in kinds)
