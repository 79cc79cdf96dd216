"""Words that give a day of this week or the next up: "can't do Thursday", "no time tomorrow", "Friday won't work"."""

import re
from datetime import date, timedelta

LONGEST = 14
"""Words; who writes more tells a story."""
_DAY = (
    r"(?P<day>today|tonight|tomorrow|mon(?:day)?|tue(?:s|sday)?|wed(?:nesday)?|thu(?:r|rs|rsday)?|fri(?:day)?|"
    r"sat(?:urday)?|sun(?:day)?)"
)
_LEAD = (
    r"^(?:(?:hi|hey|hello|sorry|ok|so|unfortunately|coach|i|we|i'm|i am|i'll|i will|have to|need to|must|can i|can we|"
    r"could i|could we|please|be|going to|probably|just|it looks like|looks like)[ ,]+)*"
)
_TRAIN = (
    r"(?: train| training| make| do| come| go| get| there| to| the| gym| work out| workout| it| my| our| a| session|"
    r" sessions| on| this| next| for| be| here| anything| lift)*"
)
_FIRST = re.compile(
    rf"{_LEAD}(?:(?:can't|cant|cannot|can not|couldn't|won't|wont|will not|not able to|unable to|not going to|no time|"
    rf"no gym|no training|skip|skipping|move|moving|reschedule|postpone|give up){_TRAIN}|"
    rf"(?:busy|away|travelling|traveling|tied up)(?: on| all| this| next)*) {_DAY}\b"
)
_BEHIND = re.compile(
    rf"{_LEAD}(?:on |this )?{_DAY}(?:'s)?(?: session| workout| training| is| it)* (?:i |we |it |that )?(?:can't|cant|"
    r"cannot|won't work|wont work|won't happen|doesn't work|does not work|isn't possible|not possible|is off|is out|"
    r"won't be possible|doesn't suit|not going to happen|is impossible|am busy|i'm busy|i am away)\b"
)
_DAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
_BESIDE = re.compile(
    r"^ ?(?:,? ?\b(?:or|and|nor)\b|[/&,]) ?(?:on |this |next )*(?P<other>[a-z]+)\b"
    r"(?! (?:works|work|instead|would|suits|will|can|could|might|maybe|is (?:fine|ok|okay|good|better|free|possible)))"
)
"""Another day straight behind, that is given up as well: `thursday or monday`."""
_PAST = re.compile(r"\b(?:last|yesterday|did|done|was|were|had|missed|skipped|ago)\b|\d")


def also_given_up(text: str) -> str:
    """The weekday that the words give up beside the first: `can't do Thursday or Monday`; empty where none."""
    plain = " ".join(text.casefold().replace("’", "'").split())
    found = _FIRST.search(plain)
    beside = _BESIDE.match(plain[found.end("day") :]) if found is not None else None
    named = beside["other"] if beside is not None else ""
    known = re.fullmatch(_DAY, named) is not None and named not in ("today", "tonight", "tomorrow")
    return named.capitalize() if known else ""


def read_given_up(text: str, today: date) -> date | None:
    """The day that the words give up, from today on; `None` where they say something else, or tell of what was."""
    plain = " ".join(text.casefold().replace("’", "'").split())
    if len(plain.split()) > LONGEST or _PAST.search(plain):
        return None
    found = _FIRST.search(plain) or _BEHIND.search(plain)
    if found is None:
        return None
    named = found["day"]
    if re.search(rf"\bto {named}", plain):
        return None  # where something else is to go
    if named in ("today", "tonight"):
        return today
    if named == "tomorrow":
        return today + timedelta(days=1)
    place = _DAYS.index(named[:3])
    return today + timedelta(days=(place - today.weekday()) % 7)
