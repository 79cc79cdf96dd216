"""What a typed answer makes of the message that was asked about: `15` behind `took a lighter pair, 10 reps`.

An answer is taken where it tells one of the readings from all others (`replies.told`), where it says one of them anew,
or where, in the place of the doubtful words, it leaves no doubt. An answer that leaves several is asked about again, so
that it is never kept as a set of its own.
"""

import re
from dataclasses import replace

from bot.notation.answer import Ask, AskKind, Reading, Request
from bot.notation.reading import read_message
from bot.notation.replies.choosing import as_typed, fits
from bot.notation.replies.completing import (
    in_its_unit,
    of_what_is_asked,
    put_in_place,
    said_anew,
    says_more,
    with_load,
    without_doubt,
)
from bot.notation.replies.told import Told, Unsettled, read_told

__all__ = ["Unsettled", "read_reply"]

_OF_NUMBERS = (
    AskKind.ORDER,
    AskKind.OUT_OF_REASON,
    AskKind.PER_HAND,
    AskKind.RANGE,
    AskKind.LOAD,
    AskKind.NUMBER_FORMAT,
)
"""Questions that a number alone may answer."""
_YES_OR_NO = (AskKind.OUT_OF_REASON, AskKind.UNSURE)


_ONE_SET, _ALL_SETS = "one set as planned", "all as planned"
_HOW_MUCH = {
    **dict.fromkeys(("this set", "just this set", "just the set", "only this set", "one set", "the set"), _ONE_SET),
    **dict.fromkeys(("all", "all of it", "all of them", "all sets", "every set", "everything", "the lot"), _ALL_SETS),
}
"""What answers whether `done` was a set or all of them."""
_WORD = re.compile(r"[a-z]+")


def read_reply(request: Request, ask: Ask, text: str) -> Reading | Unsettled | None:
    """What the message of `request` says once `text` has answered the question `ask` about it.

    `None` where `text` is no answer but a message of its own: whatever tells of pain, time, another day, the end, or
    asks something is one. `request` is as it stood when the question was asked.
    """
    anew = read_message(replace(request, text=text))
    told = read_told(request, text, skips=ask.kind is AskKind.WHICH_SKIP)
    if says_more(anew, ask, may_end=told is not None and told.yes) or ask.kind is AskKind.STOP:
        return None
    if ask.kind is AskKind.DONE and (way := _HOW_MUCH.get(" ".join(_WORD.findall(text.lower())))):
        return without_doubt(request, ask, (way,)) or Unsettled.OPEN
    if told is None or not _may_answer(ask, told):
        return of_what_is_asked(request, anew, text) or said_anew(request, ask, anew, text)
    if told.none or (told.no and not told.says_values and ask.kind in _YES_OR_NO):
        return Unsettled.REFUSED
    if ask.unfinished is not None:
        return with_load(request, ask.unfinished, told)
    chosen = [c for c in ask.choices if fits(request, ask, c, told)]
    if chosen:
        clear = len(chosen) == 1 and not (told.no and chosen[0] is as_typed(ask))
        return chosen[0].reading if clear else Unsettled.OPEN
    if told.places:
        return said_anew(request, ask, anew, text)
    return in_its_unit(ask, told) or put_in_place(request, ask, told) or Unsettled.OPEN


def _may_answer(ask: Ask, told: Told) -> bool:
    """Whether numbers may answer this question: one at a time, and beside no name, which would make it a set."""
    if not told.numbers or told.month or told.weekdays:
        return True
    alone = not told.is_list or (ask.unfinished is not None and len(told.numbers) == 1)
    return alone and not told.places and ask.kind in _OF_NUMBERS
