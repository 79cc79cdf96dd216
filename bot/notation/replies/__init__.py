"""What a typed answer makes of the message that was asked about: `15` behind `took a lighter pair, 10 reps`.

An answer is taken where it tells one of the readings from all others (`replies.told`), where it says one of them anew,
or where, in the place of the doubtful words, it leaves no doubt. An answer that leaves several is asked about again, so
that it is never kept as a set of its own.
"""

import re

from bot.notation.answer import Ask, AskKind, Reading, Request
from bot.notation.replies.choosing import fits
from bot.notation.replies.completing import (
    in_its_unit,
    of_what_is_asked,
    put_in_place,
    said_anew,
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
    AskKind.WHICH_SET,
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

    `None` where `text` is no answer but a message of its own. `request` is as it stood when the question was asked.
    """
    if ask.kind is AskKind.DONE and (way := _HOW_MUCH.get(" ".join(_WORD.findall(text.lower())))):
        return without_doubt(request, ask, (way,)) or Unsettled.OPEN
    told = read_told(request, text)
    if told is None or (_is_count_alone(told) and ask.kind not in _OF_NUMBERS):
        return of_what_is_asked(request, text) or said_anew(request, ask, text)
    if told.none or (told.no and not told.says_values and ask.kind in _YES_OR_NO):
        return Unsettled.REFUSED
    if ask.unfinished is not None:
        return with_load(request, ask.unfinished, told)
    chosen = [c for c in ask.choices if fits(request, ask, c, told)]
    if len(chosen) == 1:
        return chosen[0].reading
    if chosen:
        return Unsettled.OPEN
    found = (
        in_its_unit(ask, told)
        or put_in_place(request, ask, text, told)
        or said_anew(request, ask, text)
        or of_what_is_asked(request, text)
    )
    if found is not None or (told.says_values and not (told.yes or told.no)):
        return found
    return Unsettled.OPEN


def _is_count_alone(told: Told) -> bool:
    """Whether it tells numbers and nothing else, as a set might."""
    return bool(told.bare or told.counts or told.loads) and not (
        told.places or told.weekdays or told.month or told.order
    )
