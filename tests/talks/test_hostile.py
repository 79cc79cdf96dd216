"""Whatever comes in, the bot goes on: hostile updates, forged buttons, odd words and names; nothing is set aside."""

from collections.abc import Iterator
from contextlib import contextmanager

import pytest
import sqlalchemy as sa
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.dialogue.router import CLIENT_TAPS, COACH_TAPS
from bot.tryout.practice.people import ADA as ADA_PLAYER
from bot.tryout.practice.people import COACH as COACH_PLAYER
from bot.tryout.standin.values import JsonObject
from storage.health import health
from tests.talks.practice import Practice
from tests.talks.wireless import ADA, BO, COACH, DANA, EVE, OTHER_COACH, STRANGER, Raw, Wired, Wireless

KINDLY = settings(max_examples=12, deadline=None, suppress_health_check=[HealthCheck.too_slow])
EVERYBODY = (COACH, OTHER_COACH, ADA, BO, DANA, EVE, STRANGER)
MONDAY_EVENING = "2027-01-11 18:05"

LONG = "x" * 4096
NASTY = (
    "", " ", "\n\n", "\u200b\u200d\ufeff", "\u202eevil\u202c", "<b>bold</b> & <i>", "&lt;", "</code><code>",
    "\x00\x01\x1b[31m", LONG, "😀" * 200, "9" * 4096, "60x8 " * 40, "a\n" * 200, "(" * 300, "1e999x1e999",
    "60x8\x00", "٦٠×٨", "６０ｘ８", "NaN x inf", "-60x-8", "60x8 @ 11", "/", "//", "/ ", "/\u200b", "@chalk_bot",
    "' OR 1=1; --", "{ $name }", "{0}%s%n", "\ud83d", "100x5; DROP TABLE facts", "https://example.org/?q=60x8",
    "skip " * 100, "60x8" + "\u0301" * 300, "½×½", "0x0",
)  # fmt: skip
"""Words that have broken programs before."""


@contextmanager
def monday(wired: Wired) -> Iterator[Wireless]:
    """Ada's and Bo's sessions are there, Ada has reported a set and asked something; pain and doubt wait."""
    with wired.bot(MONDAY_EVENING) as bot:
        bot.say(ADA, "60x5 2 left")
        bot.say(ADA, "left knee hurts 4/10")
        bot.say(ADA, "should I use a belt?")
        bot.say(ADA, "600x5")
        yield bot
        bot.no_turn_failed()


# --- any update

anything = st.recursive(
    st.none() | st.booleans() | st.integers(-(2**70), 2**70) | st.floats(allow_nan=False) | st.sampled_from(NASTY),
    lambda inner: (
        st.lists(inner, max_size=3) | st.dictionaries(st.sampled_from(("id", "type", "text", "x")), inner, max_size=3)
    ),
    max_leaves=6,
)
FIELDS = (
    "message_id", "date", "chat", "from", "text", "caption", "reply_to_message", "photo", "document", "video",
    "voice", "sticker", "location", "poll", "contact", "dice", "media_group_id", "forward_origin", "via_bot",
    "edit_date", "entities", "pinned_message", "new_chat_members", "left_chat_member", "sender_chat", "animation",
    "video_note", "audio", "venue",
)  # fmt: skip


@st.composite
def mangled_updates(draw: st.DrawFn) -> Raw:
    """An update of a kind that we ask for or not, whole or with fields missing, of the wrong type, or added."""
    kind = draw(
        st.sampled_from(
            (
                "message",
                "edited_message",
                "callback_query",
                "my_chat_member",
                "channel_post",
                "inline_query",
                "poll",
                "zzz",
            )
        )
    )
    who = draw(st.sampled_from(EVERYBODY))
    person: Raw = {"id": who, "is_bot": False, "first_name": draw(st.sampled_from(NASTY))[:64]}
    chat: Raw = {"id": who, "type": draw(st.sampled_from(("private", "private", "private", "group", "channel", 3)))}
    text = draw(st.sampled_from(NASTY))
    body: Raw = {
        "message_id": draw(st.integers(1, 200)),
        "date": 1_800_000_000,
        "chat": chat,
        "from": person,
        "text": text,
    }
    if kind == "callback_query":
        body = {"id": "1", "from": person, "message": dict(body), "data": text}
    if kind == "my_chat_member":
        body = {
            "chat": chat,
            "from": person,
            "date": 5,
            "new_chat_member": {"status": draw(st.sampled_from(("kicked", "member", 7)))},
        }
    for name in draw(st.lists(st.sampled_from(FIELDS), max_size=3)):
        if draw(st.booleans()):
            body.pop(name, None)
        else:
            body[name] = draw(anything)
    return {kind: body if draw(st.booleans()) or draw(st.booleans()) else draw(anything)}


@KINDLY
@given(updates=st.lists(mangled_updates(), min_size=8, max_size=12))
def test_any_update_is_survived(wired: Wired, updates: list[Raw]) -> None:
    """Missing fields, wrong types, unknown kinds, groups and channels: each is done with, none stops the next."""
    with monday(wired) as bot:
        for update in updates:
            bot.raw(update)
        bot.say(STRANGER, "hello")
        assert "invitation only" in bot.text(STRANGER)


# --- any words


@pytest.mark.parametrize("who", [COACH, ADA, DANA, EVE, STRANGER])
def test_any_words_are_answered_or_quietly_kept(wired: Wired, who: int) -> None:
    """As words, as a command's rest, as a link's payload, as an edit, as a caption, and forwarded."""
    with monday(wired) as bot:
        first = bot.say(who, "hello there")
        for n, text in enumerate(NASTY):
            number = bot.say(who, text)
            match n % 6:
                case 0:
                    bot.say(who, f"/start {text}")
                case 1:
                    bot.say(who, f"/today {text}")
                case 2:
                    bot.edit(who, number, f"{text} 62.5x5")
                case 3:
                    bot.edit(who, first, text)
                case 4:
                    picture = {"photo": [{"file_id": "f", "width": 1, "height": 1}], "caption": text}
                    bot.raw({"message": {**bot.message(who, 90_000 + n), **picture}})
                case _:
                    bot.say(who, text, forward_origin={"type": "hidden_user", "sender_user_name": text[:64]})
        for shown in bot.screen(who):
            assert len(shown.text.encode("utf-16-le")) // 2 <= 4096
            assert all(1 <= len(data.encode()) <= 64 and label for label, data in shown.data)


@KINDLY
@given(texts=st.lists(st.text(max_size=40), min_size=6, max_size=10), who=st.sampled_from((ADA, EVE, COACH)))
def test_random_words_are_survived(wired: Wired, texts: list[str], who: int) -> None:
    """Of any script, with anything in between."""
    with monday(wired) as bot:
        for text in texts:
            bot.say(who, text.encode("utf-8", "replace").decode())


# --- any button

OPS = (*CLIENT_TAPS, *COACH_TAPS, "zzz", "")
GARBAGE = (
    "", "0", "1", "2", "3", "7", "-1", "99", "100", "11", "3600", "99999", "999999999", "-999999999", "kg", "lb",
    "x", "²", "sure", "no", "yes", "d", "h", "ok", "usual", "plate", "stack", "dumbbell", "0.0001", "nan",
    "Infinity", "zone", "hour", "clock", "name", "Europe/Berlin", "../../etc/passwd", "gone", "worse", "60000",
    "m100000", "s", "None", "\u202e",
)  # fmt: skip


@st.composite
def forged_taps(draw: st.DrawFn, shown: tuple[str, ...], names: tuple[str, ...]) -> str:
    """A button that stands on somebody's screen with a part of it exchanged, or any operation about anything known
    (sessions, clients, pain) or made up, with any arguments.

    What is drawn depends on nothing that stands there, so that an example can be played again: names are random.
    """
    if draw(st.booleans()):
        parts = _one_of(draw, shown).split(":")
        for place in draw(st.lists(st.integers(1, 6), max_size=2)):
            part = draw(st.sampled_from(OPS)) if place == 1 else _one_of(draw, (*GARBAGE, *names))
            if place < len(parts):
                parts[place] = part
        return ":".join(parts)
    ref = _one_of(draw, (*names, "", "x", "consent", "name", "unit", "clock", "days", "gym", "ready"))
    args = draw(st.lists(st.sampled_from(GARBAGE), max_size=5))
    return ":".join(["1", draw(st.sampled_from(OPS)), ref, *args])


def _one_of(draw: st.DrawFn, values: tuple[str, ...]) -> str:
    """One of however many there are."""
    return values[draw(st.integers(0, 999)) % len(values)]


def _names(bot: Wireless) -> tuple[str, ...]:
    """Every name that stands in a button on anybody's screen, in the order of the screens."""
    refs = (part for who in EVERYBODY for _, data in bot.buttons(who) for part in data.split(":")[2:4])
    return tuple(dict.fromkeys(part for part in refs if part))


@settings(KINDLY, max_examples=25)
@given(data=st.data())
def test_any_forged_button_is_survived_and_breaks_nothing(wired: Wired, data: st.DataObject) -> None:
    """Every operation of clients and coaches with garbage in its arguments, by everybody, on everything; afterwards
    the session can be reported as ever, and no kept load is one that nobody could lift."""
    with monday(wired) as bot:
        names = _names(bot)
        for _ in range(12):
            who = data.draw(st.sampled_from((ADA, ADA, *EVERYBODY)))
            shown = tuple(d for _, d in bot.buttons(who)) or ("1:set:x:0:1:5",)
            bot.tap_data(who, data.draw(forged_taps(shown, names)))
        for row in bot.work.all(sa.text("SELECT thousandths, reps, set_number FROM sets")):
            assert row.thousandths is None or -300_000 <= row.thousandths <= 1_000_000
            assert 0 <= row.reps <= 3600
            assert row.set_number is None or row.set_number <= 20


# --- the same over the wire


async def test_the_platform_refuses_nothing_that_hostile_words_made_us_say(practice: Practice) -> None:
    """Through the poller and the Bot API: odd updates in one batch, odd words in every place where words are shown; the
    bot goes on, nothing is set aside, and no message of ours is refused for its markup, length or buttons."""
    stage = practice.stage
    await practice.monday()
    updates = stage.seat(ADA_PLAYER).bot.updates
    odd: tuple[JsonObject, ...] = (
        {},
        {"message": None},
        {"callback_query": []},
        {"message": {"chat": {"id": "x"}}},
        {"x": 1},
    )
    for body in odd:
        updates.push_raw(body)
    await stage.settle()
    odd_words = (
        "<b>60x8",
        "</code>&amp;<a href='x'>",
        "left knee <i>hurts</i> 4/10",
        "what does <u>RPE</u> mean?",
        LONG,
    )
    for text in odd_words:
        await stage.say(ADA_PLAYER, text)
    await stage.say(COACH_PLAYER, "<script>&", reply_to=stage.seat(COACH_PLAYER).last().id)
    for command in ("/digest", "/clients"):
        await stage.say(COACH_PLAYER, command)
    await stage.say(ADA_PLAYER, "60x5")
    assert "1. done: 60 kg × 5" in practice.card().words.text
    calls = [(c.method, c.refusal) for c in practice.held.standin.record.calls if c.refusal is not None]
    assert [c for c in calls if "not modified" not in str(c[1])] == []  # buttons taken away that had gone already
    now = practice.held.clock.now()
    how = await practice.held.bot.service.writer.run(lambda work: health(work, now))
    assert (how.set_aside, how.inbox_waiting, how.outbox_waiting) == (0, 0, 0)
