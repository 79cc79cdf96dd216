"""Calls carried to the platform by its client library, one outcome each."""

from collections.abc import Callable
from typing import assert_never

from telegram import (
    Bot,
    BotCommand,
    BotCommandScopeChat,
    InlineKeyboardButton,
    InlineKeyboardMarkup,
    InputMediaPhoto,
    LinkPreviewOptions,
    ReplyParameters,
)
from telegram.constants import ParseMode
from telegram.error import TelegramError

from bot.gateway.outcomes import read_error
from bot.runtime.ports import (
    AnswerTap,
    Call,
    CopyOver,
    EditPicture,
    EditWords,
    Keyboard,
    LeaveChat,
    Outcome,
    Sender,
    SendPicture,
    SendWords,
    Sent,
    SetReaction,
    ShowMenu,
    StripButtons,
)

NO_PREVIEW = LinkPreviewOptions(is_disabled=True)

LONGEST_TOAST = 200
"""Characters (Bot API, answerCallbackQuery)."""

MenuOf = Callable[[str], tuple[tuple[str, str], ...]]
"""`bot.wording.menu.menu`: a role's commands with their descriptions."""


class LibrarySender(Sender):
    """The runtime's `Sender` over the client library. The bot must be initialized."""

    def __init__(self, bot: Bot, *, menu: MenuOf) -> None:
        self._bot, self._menu = bot, menu

    async def send(self, call: Call) -> Outcome:
        """Carries a call, once. Raises `ChatFault` where the token is refused."""
        try:
            return Sent(await self._carry(call))
        except TelegramError as error:
            return read_error(error)

    async def _carry(self, call: Call) -> int | None:
        match call:
            case SendWords():
                return await self._send_words(call)
            case EditWords():
                await self._bot.edit_message_text(
                    call.words,
                    chat_id=call.chat,
                    message_id=call.message,
                    parse_mode=_mode(is_html=call.is_html),
                    reply_markup=_markup(call.keyboard),
                    link_preview_options=NO_PREVIEW,
                )
            case SendPicture():
                return await self._send_picture(call)
            case EditPicture():
                await self._bot.edit_message_media(
                    InputMediaPhoto(call.png, caption=call.words, parse_mode=_mode(is_html=call.is_html)),
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
                await self._bot.edit_message_reply_markup(call.chat, call.message, reply_markup=None)
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

    async def _send_words(self, call: SendWords) -> int:
        message = await self._bot.send_message(
            call.chat,
            call.words,
            parse_mode=_mode(is_html=call.is_html),
            reply_markup=_markup(call.keyboard),
            link_preview_options=NO_PREVIEW,
            disable_notification=call.silent or None,
            reply_parameters=_reply(call.reply_to),
        )
        return message.message_id

    async def _send_picture(self, call: SendPicture) -> int:
        message = await self._bot.send_photo(
            call.chat,
            call.png,
            caption=call.words,
            parse_mode=_mode(is_html=call.is_html),
            reply_markup=_markup(call.keyboard),
            disable_notification=call.silent or None,
            reply_parameters=_reply(call.reply_to),
        )
        return message.message_id

    async def _copy(self, call: CopyOver) -> int:
        copied = await self._bot.copy_message(
            call.chat, call.source_chat, call.source_message, reply_parameters=_reply(call.reply_to)
        )
        return copied.message_id


def _mode(*, is_html: bool) -> str | None:
    return ParseMode.HTML if is_html else None


def _reply(message: int | None) -> ReplyParameters | None:
    """An answer to that message; where it is gone, the words go out all the same."""
    return None if message is None else ReplyParameters(message, allow_sending_without_reply=True)


def _markup(keyboard: Keyboard) -> InlineKeyboardMarkup | None:
    if not keyboard:
        return None
    return InlineKeyboardMarkup([[InlineKeyboardButton.de_json(dict(b)) for b in row] for row in keyboard])
