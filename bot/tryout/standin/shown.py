"""People, chats, messages and notices as plain JSON, as a person would see them."""

from bot.tryout.standin.files import Media
from bot.tryout.standin.house import Bot, House
from bot.tryout.standin.keyboards import Button
from bot.tryout.standin.markup import show_html
from bot.tryout.standin.model import Chat, Message, Person
from bot.tryout.standin.news import Notice
from bot.tryout.standin.record import Call
from bot.tryout.standin.values import JsonObject, JsonValue


def show_message(bot: Bot, message: Message) -> JsonObject:
    """One message: words (plain, HTML, entities), file, buttons, reactions, what it answers, whether it was edited."""
    rows = message.inline.rows if message.inline else ()
    own = not message.by_bot and "forward_origin" not in message.more
    return {
        "id": message.id,
        "by": "bot" if message.by_bot else "person",
        "from": message.sender.first_name,
        "at": message.date.isoformat(),
        "edited": message.edited.isoformat() if message.edited else None,
        "text": message.words.text,
        "html": show_html(message.words),
        "entities": [entity.api() for entity in message.words.entities],
        "buttons": [[_button(button) for button in row] for row in rows],
        "file": _file(bot, message.media) if message.media else None,
        "reactions": list(message.reactions),
        "reply_to": message.reply_to or None,
        "silent": message.silent,
        "forwarded": "forward_origin" in message.more,
        "pinned_notice": "pinned_message" in message.more,
        "can_edit": own and (message.media is None or message.media.kind in {"photo", "document", "video"}),
    }


def _button(button: Button) -> JsonObject:
    return {"label": button.label, "action": button.action, "detail": button.detail, "style": button.style}


def _file(bot: Bot, media: Media) -> JsonObject:
    size: JsonObject = {"width": media.size.width, "height": media.size.height} if media.size else {}
    return {
        "kind": media.kind,
        "name": media.name,
        "mime": media.mime,
        "bytes": len(media.data),
        "seconds": media.seconds,
        "emoji": media.emoji,
        "url": f"/people/files/{bot.id}/{media.path}",
        **size,
    }


def show_person(bot: Bot, person: Person) -> JsonObject:
    """A person, and how things stand with the bot."""
    chat = bot.chats.get(person.id)
    return {
        "id": person.id,
        "name": " ".join(filter(None, (person.first_name, person.last_name))),
        "language": person.language,
        "zone": person.zone,
        "started": bool(chat and chat.started),
        "blocked": bool(chat and chat.shut),
    }


def show_chat(house: House, bot: Bot, chat: Chat) -> JsonObject:
    """A whole chat: its messages, the reply keyboard, the commands on offer."""
    language = chat.person.language if chat.person else ""
    keyboard: JsonValue = None
    if chat.keyboard is not None:
        rows = [list(row) for row in chat.keyboard.rows]
        keyboard = {"rows": rows, "placeholder": chat.keyboard.placeholder, "once": chat.keyboard.once}
    return {
        "last": house.news.last,
        "bot": {"id": bot.id, "name": bot.user.first_name, "username": bot.user.username},
        "person": show_person(bot, chat.person) if chat.person else None,
        "messages": [show_message(bot, message) for message in chat.messages.values()],
        "keyboard": keyboard,
        "pinned": chat.pinned or None,
        "description": bot.menu.descriptions.get(language) or bot.menu.descriptions.get("") or "",
        "commands": [{"command": one.command, "words": one.words} for one in bot.menu.shown_in(chat.id, language)],
    }


def show_notice(bot: Bot, notice: Notice) -> JsonObject:
    """A notice, with the message it is about as it stands now."""
    chat = bot.chats.get(notice.chat_id)
    message = chat.messages.get(notice.message_id) if chat and notice.kind == "message" else None
    return {
        "number": notice.number,
        "chat": notice.chat_id,
        "kind": notice.kind,
        "message_id": notice.message_id,
        "text": notice.text,
        "alert": notice.alert,
        "message": show_message(bot, message) if message else None,
    }


def show_call(call: Call) -> JsonObject:
    """A bot's call, for the audit."""
    return {
        "number": call.number,
        "bot": call.bot_id,
        "method": call.method,
        "chat": call.chat_id,
        "at": call.at.isoformat(),
        "params": call.params,
        "result": call.result,
        "refusal": call.refusal.answer() if call.refusal else None,
        "fault": call.fault,
        "took_effect": call.took_effect,
    }
