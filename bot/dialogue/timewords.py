"""Words for less time today that are no number of minutes alone (those the reader knows): "35 minutes total for
everything", "shorten it to 25", "can we do it in 20 min?", "short on time". Whole messages only: what is told beside a
set stays with the set."""

import re
from dataclasses import dataclass
from datetime import date, timedelta

LONGEST_TEXT = 80
LEAST, MOST = 5, 300
"""Minutes: fewer or more are no session's. Ours."""


@dataclass(frozen=True, slots=True)
class TimeWish:
    """How many minutes there are (`None`: not said), and whether it is only asked if that will do."""

    minutes: int | None = None
    is_asked: bool = False


_LEAD = (
    r"(?:(?:hi|hey|hello|ok|okay|so|sorry|coach|please|pls|today|tonight|only|just|about|around|roughly|maybe|max|ah|oh|"
    r"ugh|i|i'm|im|am|we|we're|are|i've|have|got|there's|there|is|it's|a|an|bit|little|very|really|quite|super|need|want|"
    r"let's|do|can|to|you|me)[ ,]+)*"
)
_TAIL = (
    r"(?:[ ,]+(?:today|tonight|now|right now|this time|this evening|this morning|please|pls|sorry|thanks|coach|only|"
    r"max|tops))*"
)
_N = r"(?P<n>\d{1,3})"
_MIN = r" ?(?:minutes?|mins?|min\.?|')"
_SESSION = r"(?:session|workout|thing|lot|programme|plan|training)"
_WHOLE = rf"(?:everything|it all|all(?: of (?:it|this|that))?|(?:the |this )?(?:whole|entire|full) {_SESSION}|the lot)"
_ALL = rf"(?:{_WHOLE}|(?:the |this |my |today's )?{_SESSION}|it|this)"
_CUT = r"(?:make|shorten|cut|trim|keep|get|bring|squeeze|fit|do|finish|have|wrap up|be done(?: with)?)"
_TO = r"(?: (?:down|short|done|all|finished))*(?: (?:to|under|in|into|within|below|inside|at|fit|fit in|fit into|last))"
_STARTS = (
    r"(?!.*\b(?:i|i'm|we|session|workout|training|gym|rest|lifting)\b)(?:[a-z']+ ){1,3}?(?:wakes?(?: up)?|starts?|"
    r"begins?|comes?|arrives?|is due|is here|gets here|picks me up|calls?)"
)
_SAID = (
    rf"{_LEAD}{_N}{_MIN} (?:in )?(?:total|altogether|overall|all in all|all in|in all|all told)(?: for {_ALL})?",
    rf"{_LEAD}{_N}{_MIN} for {_WHOLE}",
    rf"{_LEAD}{_N}(?: ?-?ish{_MIN}|{_MIN} ?-?ish)",
    rf"{_LEAD}{_N} ?(?:-|–|to|or) ?\d{{1,3}}{_MIN}",
    rf"{_LEAD}{_CUT}(?: {_ALL})?{_TO} {_N}{_MIN}",
    rf"{_LEAD}(?:shorten|trim) {_ALL}{_TO} {_N}",
    rf"{_LEAD}{_WHOLE} (?:in|within|under) {_N}{_MIN}",
    rf"{_LEAD}{_N}(?:{_MIN})? (?:to|for) (?:train|training|work ?out|working out|lift|lifting|the gym|a session)",
    rf"{_LEAD}{_N}(?:{_MIN})? (?:is|are) all (?:that )?(?:i|i've|we|we've|there) ?(?:have|got|is)?",
    rf"{_STARTS} in {_N}{_MIN}",
)
_ASKED = rf"{_LEAD}(?:can|could|may|is it possible|would it be possible|any way)(?: (?:we|you|i|to|it|this))*"
_ASKS = (rf"{_ASKED} {_CUT}(?: {_ALL})?{_TO} {_N}{_MIN}", rf"{_ASKED} be (?:done )?(?:in|under|within) {_N}{_MIN}")
_VAGUE = (
    rf"{_LEAD}(?:short|tight|pressed|pushed|low) (?:on|of|for) time",
    rf"{_LEAD}(?:not|don't have|haven't got|haven't) (?:much|a lot of|enough|lots of) time(?: for {_ALL})?",
    rf"{_LEAD}(?:little|less|limited) time(?: than (?:usual|planned))?",
    rf"{_LEAD}(?:in a (?:rush|hurry)|running late|time is (?:short|tight|limited))",
    rf"{_LEAD}(?:short|shorter|quick|quicker|brief) (?:one|session|workout|version|training)",
    rf"{_LEAD}(?:make|keep|cut|do|have) {_ALL}(?: a bit| a little)? (?:short|shorter|quick|quicker)",
    rf"{_LEAD}(?:shorten|cut down|trim) {_ALL}",
    rf"{_LEAD}no time for {_WHOLE}",
)
_SAID_PATTERNS, _ASKS_PATTERNS, _VAGUE_PATTERNS = (
    tuple(re.compile(p + _TAIL) for p in group) for group in (_SAID, _ASKS, _VAGUE)
)


_DAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
_LATER = re.compile(
    r"\b(?:(?:on|next|this|for|every) )?(?P<day>tomorrow|mon|monday|tues?|tuesday|wed|wednesday|thu|thurs?|thursday|"
    r"fri|friday|sat|saturday|sunday)(?:'s|s)?\b"
)


def named_later(text: str, today: date) -> date | None:
    """The day to come that minutes are told for ("only 25 min on Thursday"); `None` where it is today."""
    found = _LATER.search(text.casefold())
    if found is None:
        return None
    ahead = 1 if found["day"] == "tomorrow" else (_DAYS.index(found["day"][:3]) - today.weekday()) % 7
    return today + timedelta(days=ahead) if ahead else None


def read_time_wish(text: str) -> TimeWish | None:
    """What is wished of today's time; `None` where the words say something else. Never raises."""
    if len(text) > LONGEST_TEXT:
        return None
    plain = " ".join(text.casefold().replace("’", "'").split())
    is_asked = plain.endswith("?")
    plain = plain.rstrip(".!? ")
    if any(p.fullmatch(plain) for p in _VAGUE_PATTERNS):
        return TimeWish()
    for patterns, asked in ((_ASKS_PATTERNS, True), (_SAID_PATTERNS, is_asked)):
        found = next((m for p in patterns if (m := p.fullmatch(plain))), None)
        if found is not None and LEAST <= int(found["n"]) <= MOST:
            return TimeWish(int(found["n"]), asked)
    return None
