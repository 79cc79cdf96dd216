"""Every call the platform refuses is refused, in the words its client library understands.

Source of each limit: the public Bot API documentation (the method or type named in each docstring); the wording is that
of the platform's own public server.
"""

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta

import aiohttp
import pytest
from telegram import (
    Bot,
    BotCommand,
    CopyTextButton,
    ForceReply,
    InlineKeyboardButton,
    InlineKeyboardMarkup,
    ReactionTypeEmoji,
    ReplyKeyboardMarkup,
    ReplyKeyboardRemove,
    ReplyParameters,
)
from telegram.constants import ReactionEmoji
from telegram.error import BadRequest, Forbidden, InvalidToken

from bot.tryout.standin import Limits, Seat, StandIn
from bot.tryout.standin.reactions import REACTIONS
from tests.tryout.conftest import MINA, OLEK, TOKEN, HandClock, HandSeconds
from tests.tryout.drawings import png


def buttons(*rows: list[InlineKeyboardButton]) -> InlineKeyboardMarkup:
    return InlineKeyboardMarkup(rows)


@pytest.mark.parametrize(
    ("text", "parse_mode", "said"),
    [
        ("", None, "Message text is empty"),
        (" \n ", None, "Text must be non-empty"),
        ("<b> </b>", "HTML", "Text must be non-empty"),
        ("x" * 4097, None, "Message is too long"),
        ("😀" * 2049, None, "Message is too long"),
        ("a <5 kg", "HTML", 'Can\'t parse entities: unsupported start tag "5" at byte offset 2'),
        ("ä <x>", "HTML", 'Can\'t parse entities: unsupported start tag "x" at byte offset 3'),
        ("<b>bold", "HTML", "Can't parse entities: can't find end tag corresponding to start tag \"b\""),
        (
            "<b><i>x</b></i>",
            "HTML",
            'Can\'t parse entities: unmatched end tag at byte offset 7, expected "</i>", found "</b>"',
        ),
        ("x</b>", "HTML", "Can't parse entities: unexpected end tag at byte offset 1"),
        ("x <b", "HTML", "Can't parse entities: unclosed start tag at byte offset 2"),
        ("<b>x</b", "HTML", "Can't parse entities: unclosed end tag at byte offset 4"),
        ("<a =x>y</a>", "HTML", 'Can\'t parse entities: empty attribute name in the tag "a" at byte offset 0'),
        ("<a href=x_y>y</a>", "HTML", "Can't parse entities: unexpected end of name token at byte offset 8"),
        ("<span>x</span>", "HTML", 'Can\'t parse entities: tag "span" must have class "tg-spoiler" at byte offset 0'),
        ("*x*", "MarkdownV2", "Unsupported parse_mode"),
    ],
)
async def test_text(bot: Bot, mina: Seat, text: str, parse_mode: str | None, said: str) -> None:
    """sendMessage: 1 to 4096 characters after entity parsing, in UTF-16 units; bad markup is refused whole."""
    with pytest.raises(BadRequest) as refused:
        await bot.send_message(mina.person.id, text, parse_mode=parse_mode)
    assert refused.value.message.lower() == said.lower()
    assert len(mina.messages()) == 1


async def test_longest_text_and_caption(bot: Bot, mina: Seat) -> None:
    """sendMessage, sendPhoto: 4096 and 1024 units are allowed; tags don't count."""
    sent = await bot.send_message(mina.person.id, "<b>" + "x" * 4094 + "😀</b>", parse_mode="HTML")
    assert sent.text is not None
    assert len(sent.text) == 4095
    shown = await bot.send_photo(MINA, png(2, 2), caption="y" * 1024)
    assert shown.caption == "y" * 1024
    with pytest.raises(BadRequest, match="Message caption is too long"):
        await bot.send_photo(MINA, png(2, 2), caption="y" * 1025)
    with pytest.raises(BadRequest, match="Message caption is too long"):
        await bot.edit_message_caption(MINA, shown.message_id, caption="y" * 1025)


@pytest.mark.parametrize(
    ("markup", "said"),
    [
        (buttons([InlineKeyboardButton("a", callback_data="é" * 33)]), "(?i)button_data_invalid"),
        (buttons([InlineKeyboardButton("a", url="nowhere")]), "(?i)button URL 'nowhere' is invalid"),
        (buttons([InlineKeyboardButton("a", copy_text=CopyTextButton("x" * 257))]), "(?i)button_copy_text_invalid"),
        (buttons([InlineKeyboardButton("a", callback_data="1")] * 9), "(?i)reply markup is too long"),
        (
            buttons(*([[InlineKeyboardButton("a", callback_data="1")] * 8] * 13)),
            "(?i)reply markup is too long",
        ),
        (buttons([InlineKeyboardButton("a")]), "(?i)Text buttons are unallowed in the inline keyboard"),
        (ReplyKeyboardMarkup([["a"]], input_field_placeholder="x" * 65), "(?i)placeholder_invalid"),
        (ForceReply(input_field_placeholder="x" * 65), "(?i)placeholder_invalid"),
    ],
)
async def test_keyboards(bot: Bot, mina: Seat, markup: InlineKeyboardMarkup, said: str) -> None:
    """InlineKeyboardButton: callback_data 1 to 64 bytes, exactly one action; placeholder 1 to 64 characters.
    At most 100 buttons and 8 in a row: `telegram.constants.InlineKeyboardMarkupLimit`, undocumented otherwise."""
    with pytest.raises(BadRequest, match=said):
        await bot.send_message(mina.person.id, "x", reply_markup=markup)


async def test_callback_data_of_64_bytes(bot: Bot, mina: Seat) -> None:
    """InlineKeyboardButton.callback_data: 64 bytes are allowed, and come back whole."""
    markup = buttons([InlineKeyboardButton("a", callback_data="é" * 32)] * 8)
    sent = await bot.send_message(MINA, "x", reply_markup=markup)
    mina.tap(sent.message_id, 3)
    (update,) = await bot.get_updates()
    assert update.callback_query is not None
    assert update.callback_query.data == "é" * 32


async def test_edit_that_changes_nothing(bot: Bot, mina: Seat) -> None:
    """editMessageText: the same words and buttons again are refused; other buttons alone are a change."""
    markup = buttons([InlineKeyboardButton("a", callback_data="1")])
    sent = await bot.send_message(mina.person.id, "<b>x</b>", parse_mode="HTML", reply_markup=markup)
    with pytest.raises(BadRequest, match="Message is not modified: specified new message content"):
        await bot.edit_message_text("<strong>x</strong>", MINA, sent.message_id, parse_mode="HTML", reply_markup=markup)
    with pytest.raises(BadRequest, match="Message is not modified"):
        await bot.edit_message_reply_markup(MINA, sent.message_id, reply_markup=markup)
    edited = await bot.edit_message_reply_markup(MINA, sent.message_id, reply_markup=None)
    assert not isinstance(edited, bool)
    assert edited.reply_markup is None


@pytest.mark.parametrize("markup", [ReplyKeyboardMarkup([["a"]]), ReplyKeyboardRemove(), ForceReply()])
async def test_edit_under_another_keyboard(bot: Bot, mina: Seat, markup: ReplyKeyboardMarkup) -> None:
    """ "Updating messages": only messages without markup or with an inline keyboard can be edited."""
    sent = await bot.send_message(mina.person.id, "x", reply_markup=markup)
    with pytest.raises(BadRequest, match="Message can't be edited"):
        await bot.edit_message_text("y", MINA, sent.message_id)


async def test_edit_of_what_is_not_the_bots(bot: Bot, mina: Seat) -> None:
    """ "Updating messages": a person's message can't be edited, one that isn't there can't be found."""
    spoken = mina.say("mine")
    with pytest.raises(BadRequest, match="Message can't be edited"):
        await bot.edit_message_text("yours", MINA, spoken)
    with pytest.raises(BadRequest, match="Message to edit not found"):
        await bot.edit_message_text("yours", MINA, 999)
    sent = await bot.send_message(MINA, "x")
    mina.delete(sent.message_id)
    with pytest.raises(BadRequest, match="Message to edit not found"):
        await bot.edit_message_text("y", MINA, sent.message_id)


async def test_edit_of_the_wrong_part(bot: Bot, mina: Seat) -> None:
    """editMessageText is for texts, editMessageCaption for files."""
    text = await bot.send_message(mina.person.id, "x")
    picture = await bot.send_photo(MINA, png(3, 3))
    with pytest.raises(BadRequest, match="There is no caption in the message to edit"):
        await bot.edit_message_caption(MINA, text.message_id, caption="y")
    with pytest.raises(BadRequest, match="There is no text in the message to edit"):
        await bot.edit_message_text("y", MINA, picture.message_id)


async def test_chats_one_may_not_write_in(bot: Bot, mina: Seat, standin: StandIn) -> None:
    """ "Bot FAQ" and error 403: nobody is written to first, or after a block; an unknown chat is not found."""
    with pytest.raises(BadRequest, match="Chat not found"):
        await bot.send_message(999, "x")
    with pytest.raises(Forbidden, match="bot can't initiate conversation with a user"):
        await bot.send_message(OLEK, "x")
    sent = await bot.send_message(MINA, "x")
    mina.block()
    with pytest.raises(Forbidden, match="bot was blocked by the user"):
        await bot.send_message(MINA, "x")
    with pytest.raises(Forbidden, match="bot was blocked by the user"):
        await bot.edit_message_text("y", MINA, sent.message_id)
    mina.unblock()
    await bot.send_message(MINA, "again")
    standin.seat(OLEK).say("hello")
    assert (await bot.send_message(OLEK, "x")).chat_id == OLEK


async def test_an_answer_to_a_tap(bot: Bot, mina: Seat, seconds: HandSeconds, limits: Limits) -> None:
    """answerCallbackQuery: once, in time, for a query there is, with at most 200 characters."""
    sent = await bot.send_message(MINA, "x", reply_markup=buttons([InlineKeyboardButton("a", callback_data="1")]))
    too_old = "Query is too old and response timeout expired or query id is invalid"
    with pytest.raises(BadRequest, match=f"(?i){too_old}"):
        await bot.answer_callback_query("1")
    first = mina.tap(sent.message_id, "a")
    with pytest.raises(BadRequest, match=r"(?i)message_too_long"):
        await bot.answer_callback_query(first, "x" * 201)
    await bot.answer_callback_query(first, "kept", show_alert=True)
    assert mina.answer_to(first) == "kept"
    with pytest.raises(BadRequest, match=f"(?i){too_old}"):
        await bot.answer_callback_query(first)
    second = mina.tap(sent.message_id, "a")
    seconds.at_s += limits.callback_life_s + 0.1
    with pytest.raises(BadRequest, match=f"(?i){too_old}"):
        await bot.answer_callback_query(second)


async def test_reactions(bot: Bot, mina: Seat) -> None:
    """setMessageReaction: at most one, from the platform's list, on a message that is there."""
    spoken = mina.say("5x5 100")
    await bot.set_message_reaction(MINA, spoken, ReactionEmoji.THUMBS_UP)
    assert mina.message(spoken).reactions == ("👍",)
    await bot.set_message_reaction(MINA, spoken, [])
    assert mina.message(spoken).reactions == ()
    with pytest.raises(BadRequest, match=r"(?i)reaction_invalid"):
        await bot.set_message_reaction(MINA, spoken, "✅")
    with pytest.raises(BadRequest, match=r"(?i)reactions_too_many"):
        await bot.set_message_reaction(MINA, spoken, [ReactionTypeEmoji("👍"), ReactionTypeEmoji("🔥")])
    with pytest.raises(BadRequest, match="Message to react not found"):
        await bot.set_message_reaction(MINA, 999, "👍")


def test_the_list_of_reactions() -> None:
    """ReactionTypeEmoji: the list is that of the client library's own constants."""
    assert {reaction.value for reaction in ReactionEmoji} == REACTIONS


async def test_replies(bot: Bot, mina: Seat) -> None:
    """ReplyParameters: the message must be there unless told otherwise, and a quote must be part of it."""
    spoken = mina.say("bench 80 for 5")
    sent = await bot.send_message(MINA, "x", reply_parameters=ReplyParameters(spoken, quote="80 for"))
    assert sent.reply_to_message is not None
    assert sent.reply_to_message.text == "bench 80 for 5"
    with pytest.raises(BadRequest, match=r"(?i)quote_text_invalid"):
        await bot.send_message(MINA, "x", reply_parameters=ReplyParameters(spoken, quote="90"))
    with pytest.raises(BadRequest, match="Message to be replied not found"):
        await bot.send_message(MINA, "x", reply_parameters=ReplyParameters(999))
    loose = await bot.send_message(MINA, "x", reply_parameters=ReplyParameters(999, allow_sending_without_reply=True))
    assert loose.reply_to_message is None


async def test_deleting(bot: Bot, mina: Seat, clock: HandClock) -> None:
    """deleteMessage: any message of a private chat within 48 hours; then no more."""
    spoken = mina.say("mine")
    sent = await bot.send_message(MINA, "x")
    assert await bot.delete_message(MINA, spoken)
    with pytest.raises(BadRequest, match="Message to delete not found"):
        await bot.delete_message(MINA, spoken)
    clock.add(timedelta(hours=47, minutes=59))
    assert await bot.delete_message(MINA, sent.message_id)
    kept = await bot.send_message(MINA, "y")
    clock.add(timedelta(hours=48))
    with pytest.raises(BadRequest, match="Message can't be deleted"):
        await bot.delete_message(MINA, kept.message_id)


async def test_copying(bot: Bot, mina: Seat, standin: StandIn) -> None:
    """copyMessage: what is there, without a link to where it came from; a caption may be replaced."""
    olek = standin.seat(OLEK)
    olek.start()
    spoken = olek.say("knee hurts")
    copied = await bot.copy_message(MINA, OLEK, spoken)
    assert mina.message(copied.message_id).words.text == "knee hurts"
    voice = olek.send("voice", b"OggS", mime="audio/ogg", seconds=4, caption="listen")
    renamed = await bot.copy_message(MINA, OLEK, voice, caption="Olek: listen")
    kept = mina.message(renamed.message_id)
    assert kept.media is not None
    assert (kept.media.kind, kept.words.text, kept.reply_to) == ("voice", "Olek: listen", 0)
    with pytest.raises(BadRequest, match="Message to copy not found"):
        await bot.copy_message(MINA, OLEK, 999)
    with pytest.raises(BadRequest, match=r"(?i)caption is too long"):
        await bot.copy_message(MINA, OLEK, voice, caption="x" * 1025)


async def test_commands(bot: Bot, mina: Seat) -> None:
    """setMyCommands: names of 1 to 32 of a-z, 0-9 and _, words of 1 to 256, at most 100; the narrowest list shows."""
    await bot.set_my_commands([BotCommand("start", "Begin"), BotCommand("help", "What this does")])
    await bot.set_my_commands([BotCommand("today", "Heute")], language_code="de")
    assert [one.command for one in await bot.get_my_commands()] == ["start", "help"]
    menu = mina.bot.menu
    assert [one.command for one in menu.shown_in(MINA, "en")] == ["start", "help"]
    assert [one.command for one in menu.shown_in(MINA, "de")] == ["today"]
    await bot.set_my_commands([BotCommand("log", "x")], scope={"type": "chat", "chat_id": MINA})  # type: ignore[arg-type]
    assert [one.command for one in menu.shown_in(MINA, "de")] == ["log"]
    await bot.delete_my_commands(scope={"type": "chat", "chat_id": MINA})  # type: ignore[arg-type]
    assert [one.command for one in menu.shown_in(MINA, "de")] == ["today"]
    with pytest.raises(BadRequest, match=r"(?i)bot_command_invalid"):
        await bot.set_my_commands([BotCommand("Too Odd", "x")])
    with pytest.raises(BadRequest, match=r"(?i)bot_command_description_invalid"):
        await bot.set_my_commands([BotCommand("ok", "x" * 257)])
    with pytest.raises(BadRequest, match=r"(?i)bot_commands_too_much"):
        await bot.set_my_commands([BotCommand(f"c{number}", "x") for number in range(101)])


async def test_descriptions(bot: Bot, standin: StandIn) -> None:
    """setMyDescription: up to 512 characters; setMyShortDescription: up to 120."""
    assert await bot.set_my_description("x" * 512)
    assert await bot.set_my_short_description("x" * 120)
    assert standin.house.bot(0).menu.short_descriptions[""] == "x" * 120
    with pytest.raises(BadRequest, match=r"(?i)description is too long"):
        await bot.set_my_description("x" * 513)
    with pytest.raises(BadRequest, match=r"(?i)short description is too long"):
        await bot.set_my_short_description("x" * 121)


async def test_chat_actions(bot: Bot, mina: Seat, standin: StandIn) -> None:
    """sendChatAction: one of the documented actions; the person sees it."""
    seen = standin.news.last
    await bot.send_chat_action(mina.person.id, "typing")
    assert [notice.text for notice in standin.news.since(seen)] == ["typing"]
    with pytest.raises(BadRequest, match=r"(?i)wrong parameter action in request"):
        await bot.send_chat_action(MINA, "dancing")


async def test_groups(bot: Bot, standin: StandIn, mina: Seat) -> None:
    """my_chat_member, leaveChat: the bot learns that it was put into a group, and can go; not from a private chat."""
    group = standin.invite_to_group(MINA, -500, "Lifters")
    (update,) = await bot.get_updates(allowed_updates=["my_chat_member", "message"])
    assert update.my_chat_member is not None
    assert update.my_chat_member.chat.type == "group"
    assert update.my_chat_member.new_chat_member.status == "member"
    standin.say_in_group(MINA, group, "hello bot")
    assert await bot.leave_chat(-500)
    with pytest.raises(Forbidden, match="bot is not a member of the group chat"):
        await bot.send_message(-500, "x")
    with pytest.raises(BadRequest, match=r"(?i)can't be changed in private chats"):
        await bot.leave_chat(mina.person.id)
    again = standin.invite_to_group(MINA, -501, "Others")
    standin.kick_from_group(MINA, again)
    with pytest.raises(Forbidden, match="bot was kicked from the group chat"):
        await bot.send_message(-501, "x")


@pytest.mark.parametrize("token", ["42:another", "nonsense", "43:TEST-TOKEN"])
async def test_tokens(new_bot: Callable[..., Bot], token: str) -> None:
    """ "Authorizing your bot": another token is 401, what is no token 404; the client library says InvalidToken."""
    with pytest.raises(InvalidToken):
        await new_bot(token).get_me()


async def test_envelopes(standin: StandIn) -> None:
    """ "Making requests": `ok`, `error_code`, `description`; names in any case; GET, form and JSON alike."""
    async with aiohttp.ClientSession() as http:
        async with http.get(f"{standin.base_url}{TOKEN}/GETME") as reply:
            assert (await reply.json())["result"]["username"] == "chalk_bot"
        async with http.post(f"{standin.base_url}{TOKEN}/dance") as reply:
            assert reply.status == 404
            assert await reply.json() == {
                "ok": False,
                "error_code": 404,
                "description": "Not Found: method not found",
            }
        async with http.post(f"{standin.base_url}{TOKEN}/sendMessage", json={"chat_id": OLEK, "text": "x"}) as reply:
            assert reply.status == 403
            assert (await reply.json())["error_code"] == 403
        async with http.post(f"{standin.base_url}{TOKEN}/sendMessage", data="{", headers=JSON) as reply:
            assert (await reply.json())["description"] == "Bad Request: can't parse JSON object"
        async with http.post(f"{standin.base_url}{TOKEN}/sendMessage", data={"text": "x"}) as reply:
            assert (await reply.json())["description"] == "Bad Request: chat_id is empty"


JSON = {"Content-Type": "application/json"}


async def test_a_call_without_the_wrong_markup(bot: Bot, mina: Seat) -> None:
    """Objects in a form are JSON in text; what can't be read is refused, not passed over."""
    with pytest.raises(BadRequest, match=r"(?i)object expected as reply markup"):
        await bot.send_message(mina.person.id, "x", reply_markup=[1])  # type: ignore[arg-type]
    with pytest.raises(BadRequest, match=r"(?i)can't parse reply markup JSON object"):
        await bot.send_message(mina.person.id, "x", api_kwargs={"reply_markup": "{"})


def test_limits_can_be_made_smaller() -> None:
    """Every number is one of `Limits`."""
    assert replace(Limits(), text_units=10).text_units == 10
