"""Messages as the chat takes them: safe, within limits, split between lines."""

import html
import re
from datetime import UTC, date, datetime, time
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.saying import Button, Say, WeekChart, line
from bot.training.units import Load, Unit
from bot.wording.bundle import plain, show_html, show_plain
from bot.wording.menu import COMMANDS, menu
from bot.wording.render import render_parts, render_say
from bot.wording.values import safe_text, show_day, show_load, show_number, show_time

ALLOWED_TAGS = {"b", "i", "u", "s", "code", "pre", "blockquote", "a", "tg-spoiler", "tg-time"}
"""The chat's HTML (public Bot API documentation, HTML style)."""


def units(text: str) -> int:
    """Length as the platform counts it: UTF-16 code units."""
    return len(text.encode("utf-16-le", "surrogatepass")) // 2


def balanced(markup: str) -> bool:
    """Whether every tag is allowed, opened and closed in order."""
    stack: list[str] = []
    for closing, name in re.findall(r"<(/?)([a-z-]+)[^>]*>", markup):
        if name not in ALLOWED_TAGS:
            return False
        if not closing:
            stack.append(name)
        elif not stack or stack.pop() != name:
            return False
    return not stack


@given(st.text(max_size=5000))
def test_peoples_words_never_break_the_markup(words: str) -> None:
    """Whatever somebody writes, the message is valid, and reads as they wrote it (control characters aside)."""
    rendered = render_say(Say(1, (line("quote", words=words),)))
    assert balanced(rendered.html)
    assert units(rendered.plain) <= 4096
    if units(words) < 3000:
        assert safe_text(words).strip("\n") in html.unescape(
            re.sub(r"<[^>]*>", "", show_html(line("quote", words=words)))
        )


@given(st.lists(st.text(max_size=600), min_size=1, max_size=40))
def test_a_long_message_is_split_between_lines(texts: list[str]) -> None:
    """No part is over the limit, no line is torn, the buttons stand under the last part alone."""
    button = Button(line("cancel"), data="1:x:")
    parts = render_parts(Say(1, tuple(line("name", name=t) for t in texts), ((button,),)))
    assert all(units(p.plain) <= 4096 and balanced(p.html) for p in parts)
    assert [p.keyboard is not None for p in parts] == [False] * (len(parts) - 1) + [True]


def test_a_message_that_must_stay_one_is_clipped_at_a_line() -> None:
    """A card is edited in place: it can't be split, so its end is marked."""
    say = Say(1, tuple(line("name", name=f"{n} " + "x" * 200) for n in range(60)), slot="card:1")
    (only,) = render_parts(say)
    assert units(only.plain) <= 4096
    assert only.plain.endswith("…")


def test_a_caption_is_shorter() -> None:
    """1,024 units under a picture."""
    chart = WeekChart("2027-01-11", (), 0, 0)
    rendered = render_say(Say(1, tuple(line("name", name="y" * 100) for _ in range(20)), picture=chart))
    assert units(rendered.plain) <= 1024


def test_labels_are_one_short_line() -> None:
    """A button's label: no line breaks, forty characters, no markup."""
    button = Button(line("name", name="a\nb <b>" + "c" * 60), data="1:x:")
    rendered = render_say(Say(1, (line("cancel"),), ((button,),)))
    assert rendered.keyboard is not None
    label = str(rendered.keyboard[0][0]["text"])
    assert "\n" not in label
    assert len(label) <= 40
    assert label.startswith("a b <b>")


def test_direction_characters_are_taken_out_and_right_to_left_names_are_isolated() -> None:
    """A name can't reorder the numbers around it (Unicode Standard Annex 9)."""
    assert safe_text("\u202eevil\u202c") == "evil"
    assert safe_text("دانا") == "\u2068دانا\u2069"
    assert safe_text("Ada") == "Ada"


@pytest.mark.parametrize(
    ("shown", "expected"),
    [
        (show_number(Decimal("22.50")), "22.5"),
        (show_number(Decimal(1240)), "1,240"),
        (show_load(Load.of("62.5", Unit.KG)), "62.5 kg"),
        (show_load(Load.of(100, Unit.LB)), "100 lb"),
        (show_load(Load.of(1000, Unit.LB)), "1000 lb"),
        (show_day(date(2027, 1, 11)), "Mon 11 Jan"),
        (show_time(time(6, 5)), "06:05"),
        (show_time(datetime(2027, 1, 11, 18, 30, tzinfo=UTC)), "18:30"),
    ],
)
def test_how_values_are_written(shown: str, expected: str) -> None:
    """Numbers as people read them here; a load without a thousands mark, since it is typed back as it is shown."""
    assert shown == expected


def test_nested_lines_and_long_arguments_come_through() -> None:
    """An argument may be a line of its own, and longer than the library takes by itself."""
    long = "word " * 400
    shown = show_plain(line("list-and-then", first=line("name", name=long), second=line("name", name="<end>")))
    assert shown == f"{long}, <end>"
    assert plain("<b>a &lt; b</b>") == "a < b"


@pytest.mark.parametrize("role", COMMANDS)
def test_the_menu_is_short_and_valid(role: str) -> None:
    """At most eight commands; names and descriptions within the platform's limits (Bot API, BotCommand)."""
    shown = menu(role)
    assert len(shown) <= 8
    for command, description in shown:
        assert re.fullmatch(r"[a-z0-9_]{1,32}", command)
        assert 1 <= len(description) <= 256
