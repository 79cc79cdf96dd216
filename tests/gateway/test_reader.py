"""Raw updates read: what each kind means, and that no shape whatever raises."""

import copy
import json
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from bot.dialogue.incoming import BotBlocked, Edited, Incoming, MediaKind, MediaSent, Tapped, Typed
from bot.gateway.reader import ASKED_FOR, LONGEST_TEXT, RawReader, chat_of, update_id_of
from bot.saying import Leave
from tests.gateway.conftest import NOON

Json = dict[str, Any]  # Any: JSON

MINA: Json = {"id": 7, "is_bot": False, "first_name": "Mina", "language_code": "de"}
PRIVATE: Json = {"id": 7, "type": "private", "first_name": "Mina"}
GROUP: Json = {"id": -100, "type": "supergroup", "title": "Gym"}
AT = NOON - timedelta(seconds=2)
STAMP = int(AT.timestamp())


def message(**more: object) -> Json:
    """A message of Mina's in her private chat."""
    return {"message_id": 5, "from": MINA, "chat": PRIVATE, "date": STAMP, **more}


def read(update: object) -> Incoming | Leave | None:
    """The update as the bot reads it at noon."""
    return RawReader().read(json.dumps(update), received_at=NOON)


def of(kind: str, body: Json) -> Incoming | Leave | None:
    """An update of this kind."""
    return read({"update_id": 9, kind: body})


ROWS: tuple[tuple[str, str, Json, Incoming | Leave | None], ...] = (
    ("text", "message", message(text="100x5"), Typed(7, 5, AT, "100x5", "Mina", "de")),
    (
        "an answer",
        "message",
        message(text="ok", reply_to_message={"message_id": 3}),
        Typed(7, 5, AT, "ok", "Mina", "de", reply_to=3),
    ),
    (
        "forwarded",
        "message",
        message(text="100x5", forward_origin={"type": "user"}),
        Typed(7, 5, AT, "100x5", "Mina", "de", forwarded=True),
    ),
    ("no author", "message", {**message(text="a"), "from": None}, Typed(7, 5, AT, "a")),
    (
        "a photo's largest size",
        "message",
        message(photo=[{"file_id": "s"}, {"file_id": "l"}], caption="knee", media_group_id="a1"),
        MediaSent(7, 5, AT, MediaKind.PHOTO, "knee", "l", album="a1"),
    ),
    (
        "a document",
        "message",
        message(document={"file_id": "d", "file_name": "plan.xlsx", "mime_type": "application/x"}),
        MediaSent(7, 5, AT, MediaKind.DOCUMENT, file="d", file_name="plan.xlsx"),
    ),
    (
        "a video sent as a file",
        "message",
        message(document={"file_id": "d", "mime_type": "video/mp4"}),
        MediaSent(7, 5, AT, MediaKind.VIDEO, file="d"),
    ),
    (
        "an animation carries a document too",
        "message",
        message(document={"file_id": "d"}, animation={"file_id": "d"}),
        MediaSent(7, 5, AT, MediaKind.VIDEO, file="d"),
    ),
    ("voice", "message", message(voice={"file_id": "v"}), MediaSent(7, 5, AT, MediaKind.VOICE, file="v")),
    ("a sticker", "message", message(sticker={"file_id": "k"}), MediaSent(7, 5, AT, MediaKind.STICKER, file="k")),
    ("a place", "message", message(location={"latitude": 1}), MediaSent(7, 5, AT, MediaKind.OTHER)),
    ("a pin notice", "message", message(pinned_message={"message_id": 1}), None),
    ("a bot's", "message", {**message(text="a"), "from": {**MINA, "is_bot": True}}, None),
    ("through a bot", "message", message(text="a", via_bot={"id": 1}), None),
    ("in a group", "message", {**message(text="a"), "chat": GROUP}, Leave(-100)),
    ("our own leaving", "message", {**message(left_chat_member=MINA), "chat": GROUP}, None),
    ("no number", "message", {**message(text="a"), "message_id": None}, None),
    ("no date", "message", {**message(text="a"), "date": None}, Typed(7, 5, NOON, "a", "Mina", "de")),
    (
        "a date far ahead",
        "message",
        {**message(text="a"), "date": STAMP + 9_000},
        Typed(7, 5, NOON, "a", "Mina", "de"),
    ),
    ("an edit", "edited_message", message(text="105x5", edit_date=STAMP), Edited(7, 5, AT, "105x5")),
    (
        "an edited caption",
        "edited_message",
        message(caption="60x5", photo=[], edit_date=STAMP),
        Edited(7, 5, AT, "60x5"),
    ),
    ("an edited picture without words", "edited_message", message(photo=[]), None),
    ("an edit in a group", "edited_message", {**message(text="a"), "chat": GROUP}, None),
    (
        "a tap",
        "callback_query",
        {"id": "77", "from": MINA, "message": message(), "data": "1:set:x"},
        Tapped(7, "77", NOON, "1:set:x", 9, 5),
    ),
    (
        "a tap under a message out of reach",
        "callback_query",
        {"id": "77", "from": MINA, "message": {"message_id": 5, "chat": PRIVATE, "date": 0}, "data": "a"},
        Tapped(7, "77", NOON, "a", 9, 5),
    ),
    ("a tap without data", "callback_query", {"id": "77", "from": MINA, "message": message()}, None),
    (
        "a tap in somebody else's chat",
        "callback_query",
        {"id": "77", "from": {**MINA, "id": 8}, "message": message(), "data": "a"},
        None,
    ),
    (
        "blocked",
        "my_chat_member",
        {"chat": PRIVATE, "date": STAMP, "new_chat_member": {"status": "kicked"}},
        BotBlocked(7, AT, blocked=True),
    ),
    (
        "let in again",
        "my_chat_member",
        {"chat": PRIVATE, "date": STAMP, "new_chat_member": {"status": "member"}},
        BotBlocked(7, AT, blocked=False),
    ),
    ("brought into a group", "my_chat_member", {"chat": GROUP, "new_chat_member": {"status": "member"}}, Leave(-100)),
    ("thrown out of a group", "my_chat_member", {"chat": GROUP, "new_chat_member": {"status": "left"}}, None),
    ("a channel's post", "channel_post", message(text="a"), None),
)


@pytest.mark.parametrize(("kind", "body", "expected"), [row[1:] for row in ROWS], ids=[row[0] for row in ROWS])
def test_what_each_update_means(kind: str, body: Json, expected: Incoming | Leave | None) -> None:
    """One row an update, in the shapes of the Bot API's documentation."""
    assert of(kind, body) == expected


def test_text_is_made_fit_to_keep() -> None:
    """No null characters, no half characters, not endless."""
    typed = RawReader().read(
        '{"update_id":1,"message":{"message_id":5,"chat":{"id":7,"type":"private"},"date":1,"text":"a\\u0000\\ud800b"}}',
        received_at=NOON,
    )
    assert isinstance(typed, Typed)
    assert typed.text == "a?b"
    long = of("message", message(text="x" * 100_000))
    assert isinstance(long, Typed)
    assert len(long.text) == LONGEST_TEXT


# --- fuzz

WHOLE: tuple[Json, ...] = tuple({"update_id": n, kind: body} for n, (_, kind, body, _) in enumerate(ROWS))

values = st.recursive(
    st.none()
    | st.booleans()
    | st.integers(-(2**70), 2**70)
    | st.floats(allow_nan=False, allow_infinity=False)
    | st.text(max_size=20),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=8), inner, max_size=3),
    max_leaves=8,
)


@st.composite
def bent(draw: st.DrawFn) -> Json:
    """A true update in which something, anywhere, was replaced or taken away."""
    update: Json = copy.deepcopy(draw(st.sampled_from(WHOLE)))
    for _ in range(draw(st.integers(1, 3))):
        place: Json = update
        while True:
            inner = [k for k, v in place.items() if isinstance(v, dict)]
            if not inner or draw(st.booleans()):
                break
            place = place[draw(st.sampled_from(inner))]
        if not place:
            continue
        key = draw(st.sampled_from(sorted(place)))
        if draw(st.booleans()):
            del place[key]
        else:
            place[key] = draw(values)
    return update


def check_survives(update: object, raw: str) -> None:
    """Whatever it is: read to something of ours or nothing, and every number fits its column."""
    number, chat = update_id_of(update), chat_of(update)
    assert number is None or 0 <= number < 2**63
    assert chat is None or abs(chat) <= 2**52
    incoming = RawReader().read(raw, received_at=NOON)
    if incoming is None:
        return
    if isinstance(incoming, Typed | Edited | MediaSent):
        assert abs(incoming.message) <= 2**52
        assert datetime(1970, 1, 1, tzinfo=UTC) <= incoming.at <= NOON + timedelta(minutes=5)
        text = incoming.caption if isinstance(incoming, MediaSent) else incoming.text
        assert "\0" not in text
        text.encode("utf-8")
    if not isinstance(incoming, Leave):
        assert not isinstance(incoming, Tapped) or len(incoming.data) <= 64


@settings(max_examples=400, deadline=None)
@given(bent())
def test_bent_updates_are_survived(update: Json) -> None:
    """Fields of the wrong type, or gone, anywhere."""
    check_survives(update, json.dumps(update))


@settings(max_examples=200, deadline=None)
@given(st.dictionaries(st.sampled_from((*ASKED_FOR, "update_id", "poll")), values, max_size=4) | values)
@example([])
@example({"message": {"chat": []}})
def test_anything_is_survived(update: object) -> None:
    """No update at all."""
    check_survives(update, json.dumps(update))


@settings(max_examples=200, deadline=None)
@given(st.text(max_size=60))
@example("[" * 100_000)
@example('{"update_id": NaN}')
@example("9" * 5_000)
def test_text_that_is_no_json_is_survived(raw: str) -> None:
    """A broken body is nothing."""
    assert RawReader().read(raw, received_at=NOON) is None
