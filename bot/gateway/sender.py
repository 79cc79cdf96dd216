"""Calls carried to the platform by its client library, one outcome each."""

from collections.abc import Callable
from typing import assert_never

from telegram import (
    BotCommand,
    BotCommandScopeChat,
    InlineKeyboardButton,
    InlineKeyboardMarkup,
    InputMediaPhoto,
    ReplyParameters,
)
from telegram.constants import ParseMode
from telegram.error import TelegramError

from bot.gateway.library import RawBot
from bot.gateway.outcomes import read_bringing_error, read_error
from bot.runtime.ports import (
    AnswerTap,
    Bringing,
    Call,
    CopyOver,
    EditPicture,
    EditWords,
    Got,
    Keyboard,
    LeaveChat,
    Outcome,
    Sender,
    SendFile,
    SendPicture,
    SendWords,
    Sent,
    SetReaction,
    ShowMenu,
    StripButtons,
)

UPLOAD_S = 120.0
"""For a file to go up, and the platform to answer."""

LONGEST_NAME = 60
"""Characters of a file's name, without its ending."""

LONGEST_TOAST = 200
"""Characters (Bot API, answerCallbackQuery)."""

MenuOf = Callable[[str], tuple[tuple[str, str], ...]]
"""`bot.wording.menu.menu`: a role's commands with their descriptions."""


class LibrarySender(Sender):
    """The runtime's `Sender` over the client library. The bot must be initialized."""

    def __init__(self, bot: RawBot, *, menu: MenuOf) -> None:
        self._bot, self._menu = bot, menu

    async def send(self, call: Call) -> Outcome:
        """Carries a call, once. Raises `ChatFault` where the token is refused."""
        try:
            return Sent(await self._carry(call))
        except TelegramError as error:
            return read_error(error)

    async def bring(self, file: str, *, most: int) -> Bringing:
        """The content of a file. Raises `ChatFault` where the token is refused."""
        try:
            return Got(await self._bot.bring(file, most=most))
        except TelegramError as error:
            return read_bringing_error(error)

    async def _carry(self, call: Call) -> int | None:
        match call:
            case SendWords():
                return _number(await self._bot.call("sendMessage", {**_text(call), **_new(call)}))
            case EditWords():
                await self._bot.call("editMessageText", {**_text(call), "message_id": call.message})
            case SendPicture():
                return await self._send_picture(call)
            case SendFile():
                return await self._send_file(call)
            case EditPicture():
                await self._bot.edit_message_media(
                    InputMediaPhoto(call.png, caption=call.words, parse_mode=_mode(call)),
                    chat_id=call.chat,
                    message_id=call.message,
                    reply_markup=_markup(call.keyboard),
                )
            case CopyOver():
                return await self._copy(call)
            case _:
                await self._carry_small(call)
        return None

    async def _carry_small(self, call: StripButtons | SetReaction | ShowMenu | LeaveChat | AnswerTap) -> None:
        match call:
            case StripButtons():
                fields = {"chat_id": call.chat, "message_id": call.message}
                await self._bot.call("editMessageReplyMarkup", fields)
            case SetReaction():
                await self._bot.set_message_reaction(call.chat, call.message, call.emoji)
            case ShowMenu():
                commands = [BotCommand(name, words) for name, words in self._menu(call.role)]
                await self._bot.set_my_commands(commands, scope=BotCommandScopeChat(call.chat))
            case LeaveChat():
                await self._bot.leave_chat(call.chat)
            case AnswerTap():
                await self._bot.answer_callback_query(call.query, call.words[:LONGEST_TOAST] or None)
            case _:
                assert_never(call)

    async def _send_picture(self, call: SendPicture) -> int:
        message = await self._bot.send_photo(
            call.chat,
            call.png,
            caption=call.words,
            parse_mode=_mode(call),
            reply_markup=_markup(call.keyboard),
            disable_notification=call.silent or None,
            reply_parameters=_reply(call.reply_to),
        )
        return message.message_id

    async def _send_file(self, call: SendFile) -> int:
        message = await self._bot.send_document(
            call.chat,
            call.content,
            filename=plain_name(call.name),
            caption=call.words or None,
            parse_mode=_mode(call),
            reply_markup=_markup(call.keyboard),
            disable_notification=call.silent or None,
            reply_parameters=_reply(call.reply_to),
            write_timeout=UPLOAD_S,
            read_timeout=UPLOAD_S,
        )
        return message.message_id

    async def _copy(self, call: CopyOver) -> int:
        copied = await self._bot.copy_message(
            call.chat,
            call.source_chat,
            call.source_message,
            reply_parameters=_reply(call.reply_to),
            disable_notification=call.silent or None,
        )
        return copied.message_id


def _text(call: SendWords | EditWords) -> dict[str, object]:
    """The fields of a text message, new or edited. Its links are not shown as previews."""
    return {
        "chat_id": call.chat,
        "text": call.words,
        "parse_mode": _mode(call),
        "reply_markup": {"inline_keyboard": call.keyboard} if call.keyboard else None,
        "link_preview_options": {"is_disabled": True},
    }


def _new(call: SendWords) -> dict[str, object]:
    """The fields of a new message only."""
    return {
        "disable_notification": call.silent or None,
        "reply_parameters": None if call.reply_to is None else _reply(call.reply_to),
    }


def _number(message: object) -> int:
    """The number of a message just sent. `TelegramError` where the platform's answer holds none."""
    number = message.get("message_id") if isinstance(message, dict) else None
    if not isinstance(number, int):
        raise TelegramError("the platform's answer holds no message")
    return number


def plain_name(name: str) -> str:
    """A file's name that every device takes: without folders, signs that mean something to them, or line ends.

    >>> plain_name("../Ada's week 2/3.xlsx")
    "Ada's week 2_3.xlsx"
    """
    kept = "".join("_" if c in '/\\:*?"<>|' or not c.isprintable() else c for c in name).strip(". _")
    stem, dot, ending = kept.rpartition(".")
    return f"{stem[:LONGEST_NAME]}{dot}{ending[:10]}" if dot else (ending[:LONGEST_NAME] or "file")


def _mode(call: SendWords | EditWords | SendPicture | EditPicture | SendFile) -> str | None:
    return ParseMode.HTML if call.is_html else None


def _reply(message: int | None) -> ReplyParameters | None:
    """An answer to that message; where it is gone, the words go out all the same."""
    return None if message is None else ReplyParameters(message, allow_sending_without_reply=True)


def _markup(keyboard: Keyboard) -> InlineKeyboardMarkup | None:
    if not keyboard:
        return None
    return InlineKeyboardMarkup([[InlineKeyboardButton.de_json(dict(b)) for b in row] for row in keyboard])
