"""How numbers, loads, dates and names are written, and how people's text is made safe to show."""

import html
import unicodedata
from datetime import date, datetime, time
from decimal import Decimal

from babel.dates import format_date, format_time
from babel.numbers import format_decimal

from bot.training.units import Load

LOCALE = "en_GB"
"""The one language so far. 24-hour clock, day before month."""

_BIDI_CONTROLS = dict.fromkeys([*range(0x202A, 0x202F), *range(0x2066, 0x206A), 0x200E, 0x200F, 0x061C])
_FIRST_STRONG_ISOLATE, _POP_ISOLATE = "\u2068", "\u2069"


def show_number(value: Decimal | int) -> str:
    """A number with up to two decimals (22.5, 1,240); a minus as people type it."""
    return str(format_decimal(value, format="#,##0.##", locale=LOCALE))


def show_load(load: Load, *, step_digits: str = "0.##") -> str:
    """A load with its unit: `62.5 kg`. No thousands mark: a load is read back as it is written."""
    return f"{format_decimal(load.amount, format=step_digits, locale=LOCALE)} {load.unit.value}"


def show_day(day: date) -> str:
    """A training day: `Mon 2 Mar`."""
    return str(format_date(day, format="EEE d MMM", locale=LOCALE))


def show_time(at: time | datetime) -> str:
    """A local time: `18:30`. A `datetime` is shown in its own zone."""
    clock = at.time() if isinstance(at, datetime) else at
    return str(format_time(clock, format="HH:mm", locale=LOCALE))


def safe_text(text: str) -> str:
    """People's text without control, private and direction characters; right-to-left text is isolated so that it can't
    reorder the numbers around it (Unicode Standard Annex 9, isolates)."""
    cleaned = "".join(
        c for c in text.translate(_BIDI_CONTROLS) if c == "\n" or unicodedata.category(c) not in ("Cc", "Co", "Cs")
    )
    if any(unicodedata.bidirectional(c) in ("R", "AL") for c in cleaned):
        return f"{_FIRST_STRONG_ISOLATE}{cleaned}{_POP_ISOLATE}"
    return cleaned


def escape(text: str) -> str:
    """Text made safe for the chat's HTML: only `< > & "` are special there (Bot API, HTML style)."""
    return html.escape(text, quote=True)
