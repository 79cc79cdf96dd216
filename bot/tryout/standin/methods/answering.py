"""The bot's small answers: to a tap, by a reaction, that it is typing; who it is; where a file lies."""

from dataclasses import replace

from bot.tryout.standin.ask import Ask
from bot.tryout.standin.house import Bot, House
from bot.tryout.standin.methods.asked import message_asked, open_chat
from bot.tryout.standin.reactions import REACTIONS
from bot.tryout.standin.refusals import Refusal, bad_request
from bot.tryout.standin.values import JsonValue

ACTIONS = frozenset(
    {"typing", "upload_photo", "record_video", "upload_video", "record_voice", "upload_voice", "upload_document",
     "choose_sticker", "find_location", "record_video_note", "upload_video_note"}
)  # fmt: skip


def get_me(_house: House, bot: Bot, _ask: Ask) -> JsonValue:
    """Who the bot is."""
    able = {"can_join_groups": True, "can_read_all_group_messages": False, "supports_inline_queries": False}
    return {**bot.user.api(), **able, "can_connect_to_business": False, "has_main_web_app": False}


def answer_callback_query(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """Ends a tap's wait, with or without words; once, and not too late."""
    query = bot.queries.get(ask.text("callback_query_id"))
    old = query is None or query.text is not None or house.seconds() - query.at_s > house.limits.callback_life_s
    if query is None or old:
        raise bad_request("query is too old and response timeout expired or query ID is invalid")
    text = ask.text("text")
    if len(text) > house.limits.callback_answer_chars:
        raise bad_request("MESSAGE_TOO_LONG")
    query.text, query.alert = text, ask.flag("show_alert")
    house.news.tell(bot.id, query.chat_id, "answer", query.message_id, text, alert=query.alert)
    return True


def set_message_reaction(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """At most one reaction, from the platform's list; none takes it back."""
    chat = open_chat(house, bot, ask)
    message = message_asked(chat, ask, "message to react")
    given = ask.json("reaction") or []
    if not isinstance(given, list):
        raise bad_request("can't parse reaction JSON object")
    if len(given) > 1:
        raise bad_request("REACTIONS_TOO_MANY")
    emoji = tuple(str(one.get("emoji")) for one in given if isinstance(one, dict) and one.get("type") == "emoji")
    if len(emoji) != len(given) or any(one not in REACTIONS for one in emoji):
        raise bad_request("REACTION_INVALID")
    house.keep(bot, chat, replace(message, reactions=emoji))
    return True


def send_chat_action(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """That the bot is typing or sending something."""
    chat = open_chat(house, bot, ask)
    action = ask.text("action")
    if action not in ACTIONS:
        raise bad_request("wrong parameter action in request")
    house.news.tell(bot.id, chat.id, "action", text=action)
    return True


def get_file(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """Where a file can be fetched; up to 20 megabytes."""
    if not ask.text("file_id"):
        raise bad_request("file_id not specified")
    try:
        media = bot.shelf.take(ask.text("file_id"))
    except Refusal as error:
        raise bad_request("invalid file_id") from error
    if len(media.data) > house.limits.download_bytes:
        raise bad_request("file is too big")
    return {**media.api(), "file_path": media.path}
