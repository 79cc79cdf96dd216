"""Words that switch the rest notice: "rest notice on", "rest timer 90 s", "tell me when my rest is over", "no rest
messages". Whole messages only: a rest that is told of a set stays with the set."""

import re
from dataclasses import dataclass

LONGEST_TEXT = 80


@dataclass(frozen=True, slots=True)
class RestWish:
    """Whether notices are wanted, and after how many seconds (`None`: as planned)."""

    on: bool
    seconds: int | None = None


_LEAD = r"(?:(?:please|pls|hi|hey|ok|coach|can you|could you|would you|i'd like(?: you)? to|i want(?: you)? to)[ ,]+)*"
_NOTICE = (
    r"(?:my |the |a )?(?:rest|resting|break|pause)[ -]?(?:over )?(?:notices?|notifications?|timers?|messages?|"
    r"reminders?|alerts?|alarms?|pings?)"
)
_TIME = r"(?P<n>\d{1,3}(?:[.,]5)?)\s*(?P<unit>s|secs?|seconds?|min|mins|minutes?|m|')?"
_CLOCK = r"(?P<minutes>\d{1,2}):(?P<secs>[0-5]\d)"
_TELL = r"(?:tell|ping|remind|notify|buzz|alert|message|text|warn) me"
_OVER = r"(?:the |my |a |each |every )?(?:rest|break|pause)s?(?: time)?(?: is| are|'s)? (?:over|up|done|finished)"
_END = r"(?: please| pls| thanks)?"
_ON = (
    rf"{_LEAD}(?:(?:turn|switch) )?(?:on )?{_NOTICE}(?: on| yes| as planned)?{_END}",
    rf"{_LEAD}(?:turn|switch) {_NOTICE} on{_END}",
    rf"{_LEAD}{_TELL} (?:when|as soon as|once) {_OVER}{_END}",
)
_OFF = (
    rf"{_LEAD}(?:(?:turn|switch) )?(?:off|no|no more|stop|without)(?: the)? {_NOTICE}{_END}",
    rf"{_LEAD}(?:(?:turn|switch) )?{_NOTICE} (?:off|no|stop){_END}",
    rf"{_LEAD}(?:don't|do not|stop|never|no longer) (?:{_TELL}|telling me|pinging me|reminding me)(?: any ?more)?"
    rf" (?:when|as soon as|once) {_OVER}{_END}",
)
_FOR = tuple(
    f"{before}(?:{time}){after}"
    for time in (_TIME, _CLOCK)
    for before, after in (
        (rf"{_LEAD}(?:set |put )?{_NOTICE}(?: on| to| at| after| for| of|:)* ", _END),
        (
            rf"{_LEAD}{_TELL} (?:when|after|once) ",
            rf"(?: of)? ?(?:rest(?:ing)?)?(?: (?:is|are|have) (?:over|up|passed))?{_END}",
        ),
    )
)
_ON_PATTERNS, _OFF_PATTERNS, _FOR_PATTERNS = (tuple(re.compile(p) for p in group) for group in (_ON, _OFF, _FOR))


def read_rest_wish(text: str) -> RestWish | None:
    """What is wished of rest notices; `None` where the words say something else. Never raises."""
    if len(text) > LONGEST_TEXT:
        return None
    plain = " ".join(text.casefold().replace("’", "'").split()).rstrip(".!")
    if any(p.fullmatch(plain) for p in _OFF_PATTERNS):
        return RestWish(on=False)
    if any(p.fullmatch(plain) for p in _ON_PATTERNS):
        return RestWish(on=True)
    found = next((m for p in _FOR_PATTERNS if (m := p.fullmatch(plain))), None)
    return None if found is None else RestWish(True, _seconds(found.groupdict()))


def _seconds(said: dict[str, str | None]) -> int:
    """A bare number up to ten is minutes, above it seconds."""
    if said.get("minutes"):
        return 60 * int(said["minutes"] or 0) + int(said["secs"] or 0)
    amount = float((said["n"] or "0").replace(",", "."))
    unit = said["unit"] or ("min" if amount <= 10 else "s")
    return round(amount if unit.startswith("s") else 60 * amount)
