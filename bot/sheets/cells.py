"""Cells to plain values: texts, whole numbers, ranges, percentages, choices. Each answers a value or a `Problem`.

A blank cell is `None`. Nothing is guessed: what a spreadsheet program has made a day or a time of is named as that.
"""

import re
from collections.abc import Mapping
from decimal import Decimal
from typing import TypeVar

from bot.sheets.dates import mistaken_range
from bot.sheets.layout import plain_name
from bot.sheets.problems import Fault, Problem
from bot.sheets.table import Cell, Kind

V = TypeVar("V")
NONE_WORD = "none"
"""What stands for "no text" where a blank cell means something else."""
_SHIELD = "'"
"""Before a text that would else mean something: a formula, or `none`. One is taken off when read."""
_FORMULA_SIGNS = "=+-@\t\r\n＝＋－＠"
"""With which a spreadsheet program may take a cell of a text file for a formula, the wide forms included."""
_DASHES = re.compile(r"\s*(?:[-\u2010-\u2015\u2212]|\bto\b|\bbis\b)\s*")
NUMBER = r"\d{1,6}(?:\.\d{1,3}|,\d{1,2})?"
_NUMBER = re.compile(NUMBER)
_SPAN = re.compile(rf"({NUMBER})(?:-({NUMBER}))?")


def faulty(cell: Cell) -> Problem | None:
    """What is wrong with the cell before it is looked at."""
    match cell.kind:
        case Kind.FORMULA:
            return Problem(Fault.FORMULA)
        case Kind.FAULT:
            return Problem(Fault.ERROR_VALUE, cell.text)
        case Kind.DATE:
            return Problem(Fault.DATE, cell.text, mistaken_range(cell.text) or "8-10")
        case Kind.CLOCK:
            return Problem(Fault.CLOCK, cell.text, "90 s")
        case Kind.TEXT | Kind.NUMBER | Kind.PERCENT:
            return None


def read_text(cell: Cell, most: int) -> str | Problem | None:
    """A text of at most so many characters, line breaks kept."""
    if (problem := faulty(cell)) is not None:
        return problem
    text = shown_text(cell)
    if len(text) > most:
        return Problem(Fault.TOO_LONG, text, str(most))
    return text.removeprefix(_SHIELD) or None


def read_name(cell: Cell, most: int) -> str | Problem | None:
    """A text on one line, single spaces."""
    text = read_text(cell, most)
    return " ".join(text.split()) if isinstance(text, str) else text


def read_text_or_none(cell: Cell, most: int) -> str | Problem | None:
    """As `read_text`; `none` is the empty text."""
    return "" if cell.text.lower() == NONE_WORD else read_text(cell, most)


def shown_text(cell: Cell) -> str:
    """The cell's text as a person sees it."""
    return f"{cell.text} %" if cell.kind is Kind.PERCENT else cell.text


def shielded(text: str, *, in_text_file: bool) -> str:
    """A text as it is written: it can't become a formula in a text file, nor be taken for `none` or a new table."""
    words = (NONE_WORD, "sheet", "sheet:") if in_text_file else (NONE_WORD,)
    signs = _SHIELD + _FORMULA_SIGNS if in_text_file else _SHIELD
    return _SHIELD + text if text and (text[0] in signs or text.lower() in words) else text


def read_number(text: str) -> Decimal | None:
    """A number with a point or a comma before its decimals; a comma before three digits could be either: none."""
    return Decimal(text.replace(",", ".")) if _NUMBER.fullmatch(text) else None


def read_whole(cell: Cell, low: int, high: int, example: str) -> int | Problem | None:
    """A whole number from `low` to `high`."""
    if (problem := faulty(cell)) is not None:
        return problem
    if not cell.text:
        return None
    number = None if cell.kind is Kind.PERCENT else read_number(cell.text)
    if number is None or number != number.to_integral_value():
        return Problem(Fault.NOT_A_NUMBER, shown_text(cell), example)
    if not low <= number <= high:
        return Problem(Fault.OUT_OF_RANGE, shown_text(cell), f"{low}-{high}")
    return int(number)


def read_span(text: str) -> tuple[Decimal, Decimal] | None:
    """`8-10`, `8 to 10`, `8`: both ends; `None` where it is something else."""
    found = _SPAN.fullmatch(_DASHES.sub("-", text.strip()))
    if found is None:
        return None
    low = read_number(found[1])
    high = read_number(found[2]) if found[2] else low
    return None if low is None or high is None else (low, high)


def whole_span(text: str, found: str, low: int, high: int, example: str) -> tuple[int, int] | Problem:
    """A range of whole numbers within bounds, its ends in order."""
    if (meant := mistaken_range(text)) is not None:
        return Problem(Fault.DATE, found, meant)
    span = read_span(text)
    if span is None or any(n != n.to_integral_value() for n in span):
        return Problem(Fault.NOT_A_RANGE, found, example)
    first, last = (int(n) for n in span)
    if first > last:
        return Problem(Fault.BACKWARDS, found, f"{last}-{first}")
    if first < low or last > high:
        return Problem(Fault.OUT_OF_RANGE, found, f"{low}-{high}")
    return first, last


def read_percent(cell: Cell, low: int, high: int, example: str) -> Decimal | Problem | None:
    """A percentage: `85 %`, 85, or a cell that shows one. A share such as 0.85 is asked about."""
    span = read_percents(cell, low, high, example)
    if not isinstance(span, tuple):
        return span
    return span[0] if span[0] == span[1] else Problem(Fault.NOT_A_PERCENT, shown_text(cell), example)


def read_percents(cell: Cell, low: int, high: int, example: str) -> tuple[Decimal, Decimal] | Problem | None:
    """A range of percentages: `20-30 %`."""
    if (problem := faulty(cell)) is not None:
        return problem
    if not cell.text:
        return None
    shown = shown_text(cell)
    text = cell.text.replace("percent", "%").replace("%", " ").strip()
    if (meant := mistaken_range(text)) is not None:
        return Problem(Fault.DATE, shown, f"{meant} %")
    span = read_span(re.sub(r"\s+-", "-", text))
    if span is None:
        return Problem(Fault.NOT_A_PERCENT, shown, example)
    if "%" not in shown and "percent" not in shown and 0 < span[1] <= Decimal("1.5"):
        return Problem(Fault.BARE_SHARE, shown, f"{(span[1] * 100).normalize():f} %")
    if span[0] > span[1]:
        return Problem(Fault.BACKWARDS, shown, f"{span[1]}-{span[0]} %")
    if span[0] < low or span[1] > high:
        return Problem(Fault.OUT_OF_RANGE, shown, f"{low}-{high} %")
    return span


def read_choice(cell: Cell, choices: Mapping[str, V]) -> V | Problem | None:
    """One of these, in any case; the keys are as they are shown."""
    if (problem := faulty(cell)) is not None:
        return problem
    if not cell.text:
        return None
    plain = {plain_name(shown): value for shown, value in choices.items()}
    found = plain.get(plain_name(cell.text))
    return Problem(Fault.NOT_A_CHOICE, shown_text(cell), ", ".join(choices)) if found is None else found


YES_NO: Mapping[str, bool] = {"yes": True, "no": False}
YES_NO_WORDS: Mapping[str, bool] = {**YES_NO, "y": True, "n": False, "true": True, "false": False, "x": True}
