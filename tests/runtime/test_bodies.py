"""Waiting messages as JSON and back, and the hash of what a reader sees."""

from dataclasses import replace
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from bot.runtime.bodies import (
    MenuBody,
    ReactBody,
    RelayBody,
    SendBody,
    StripBody,
    body_hash,
    read_menu,
    read_react,
    read_relay,
    read_send,
    read_strip,
    show_body,
)
from bot.saying import WeekChart

CHART = WeekChart("Week 9", (("Quads", Decimal("7.5")),), 2, 3, (("Quads", Decimal(9)),))
FULL = SendBody("<b>Hi</b>", "Hi", (({"text": "Go", "callback_data": "1:go:"},),), 5, CHART)


@given(st.text(), st.text(), st.none() | st.integers(1, 2**52), st.booleans())
def test_a_message_is_the_same_after_its_way_through_the_outbox(
    html: str, plain: str, reply_to: int | None, pictured: bool
) -> None:
    """Words of any script, buttons, and the picture's numbers exactly."""
    body = SendBody(html, plain, FULL.keyboard, reply_to, CHART if pictured else None)
    assert read_send(show_body(body)) == body


def test_the_other_kinds_too() -> None:
    """Each with its reader."""
    assert read_strip(show_body(StripBody(4))) == StripBody(4)
    assert read_strip(show_body(StripBody(None))) == StripBody(None)
    assert read_relay(show_body(RelayBody(1, 2, 3))) == RelayBody(1, 2, 3)
    assert read_react(show_body(ReactBody(1, "👍"))) == ReactBody(1, "👍")
    assert read_menu(show_body(MenuBody("client"))) == MenuBody("client")


def test_the_hash_changes_with_what_is_seen_and_with_nothing_else() -> None:
    """Words, buttons, picture; not what it answers."""
    hashes = {
        body_hash(FULL),
        body_hash(replace(FULL, html="<b>Ho</b>")),
        body_hash(replace(FULL, keyboard=())),
        body_hash(replace(FULL, picture=replace(CHART, done=3))),
    }
    assert len(hashes) == 4
    assert body_hash(replace(FULL, reply_to=None)) == body_hash(FULL)
    assert body_hash(read_send(show_body(FULL))) == body_hash(FULL)
