"""The words of a language, loaded once from `en/*.ftl`, and the one place where a key becomes text."""

import html
import re
from datetime import date, datetime, time
from decimal import Decimal
from functools import cache
from importlib.resources import files

from fluent.runtime import FluentBundle, FluentResource
from fluent.syntax.ast import Junk, Message, Term

from bot.saying import Line, Value
from bot.training.units import Load
from bot.wording.values import LOCALE, escape, safe_text, show_day, show_load, show_number, show_time

LONG = 200
"""The library refuses arguments of over 1,000 characters: longer ones than this are put in after it is done."""
_MARK = "\ue0f3"
"""A private-use character, which `safe_text` takes out of people's words."""
_TAG = re.compile(r"</?[a-z][^<>]*>")


@cache
def words() -> FluentBundle:
    """The bundle of all words; a key that two files define, or a file that doesn't parse, is a defect: `ValueError`."""
    bundle = FluentBundle([LOCALE.replace("_", "-")], use_isolating=False)
    seen: set[str] = set()
    for source in sorted(files("bot.wording").joinpath("en").iterdir(), key=lambda f: f.name):
        if not source.name.endswith(".ftl"):
            continue
        resource = FluentResource(source.read_text(encoding="utf-8"))
        for entry in resource.body:
            if isinstance(entry, Junk):
                raise ValueError(f"{source.name}: not understood: {str(entry.content)[:80]!r}")
            if isinstance(entry, Message | Term):
                if entry.id.name in seen:
                    raise ValueError(f"{source.name}: {entry.id.name} is defined twice")
                seen.add(entry.id.name)
        bundle.add_resource(resource)
    return bundle


def show_html(line: Line) -> str:
    """The line as the chat's HTML: the words' own tags stay, arguments are escaped.

    `KeyError` where there is no such key, `ValueError` where an argument is missing: both are defects of ours.
    """
    if not line.key:
        return ""
    bundle = words()
    if not bundle.has_message(line.key):
        raise KeyError(line.key)
    message = bundle.get_message(line.key)
    if message.value is None:
        raise KeyError(line.key)
    arguments = {name: _argument(v) for name, v in line.args}
    long = {name: v for name, v in arguments.items() if isinstance(v, str) and len(v) > LONG}
    marks = {name: f"{_MARK}{n}{_MARK}" for n, name in enumerate(long)}
    text, errors = bundle.format_pattern(message.value, {**arguments, **marks})
    if errors:
        raise ValueError(f"{line.key}: {errors}")
    whole = str(text)
    for name, mark in marks.items():
        whole = whole.replace(mark, long[name])
    return whole


def show_plain(line: Line) -> str:
    """The line as plain text: for button labels, the terminal and a resend without markup."""
    return plain(show_html(line))


def plain(markup: str) -> str:
    """The chat's HTML as plain text."""
    return html.unescape(_TAG.sub("", markup))


def show(key: str, **args: Value | Line) -> str:
    """The words of a key as plain text, for the command line."""
    return show_plain(Line(key, tuple(args.items())))


def _argument(value: Value | Line) -> str | int:
    match value:
        case Line():
            return show_html(value)
        case str():
            return escape(safe_text(value))
        case bool() | int():
            return value
        case Decimal():
            return show_number(value)
        case Load():
            return show_load(value)
        case datetime() | time():
            return show_time(value)
        case date():
            return show_day(value)
