"""Words that say that somebody is away or ill: "got the flu, back Monday", "on holiday until the 14th".

Every word must have its place: what says anything beside it (a set, a reason, somebody else who is ill) is a story, and
none of it is taken for this. What is clear but for its end, or its reason, is to be asked about.
"""

import re
from dataclasses import dataclass
from datetime import date, timedelta

from bot.dialogue.awaypatterns import (
    AWAY,
    BACK,
    CLAUSES,
    FILLERS,
    FOR,
    FROM,
    FROM_TO,
    ILL,
    ILLNESS,
    NEXT_WEEK,
    NOT_SO,
    NOTHING,
    SINCE,
    THIS_WEEK,
    UNTIL,
)
from bot.dialogue.sayday import read_day
from bot.training.calendar import monday_of
from bot.training.life import Absence

LONGEST, LONGEST_TEXT = 18, 160
"""Words and characters; who writes more tells a story."""
MOST_CLAUSES = 8
FARTHEST_APART = timedelta(days=330)
"""From the first day to the last, where both are named: an end before the beginning is none of next year. Ours."""


@dataclass(frozen=True, slots=True)
class Absent:
    """What is said: why (`None`: not said), from which day on (today unless they say so), and the day on which sessions
    are to come again (`None`: not said)."""

    why: Absence | None
    since: date
    until: date | None = None


def read_absence(text: str, today: date) -> Absent | None:
    """What the words say of an absence; `None` where they say something else, or anything beside it."""
    plain = _plain(text) if len(text) <= LONGEST_TEXT else ""
    if not plain or len(plain.split()) > LONGEST or plain.endswith("?"):
        return None
    since, until, rest = _span_of(SINCE.sub(" ", plain), today)
    if until is not None and since > today and until - since > FARTHEST_APART:
        return None
    if (until is not None and until <= since) or NOT_SO.search(rest):
        return None
    why, left = _kind_of(rest)
    if left is None or any(word not in FILLERS for word in re.findall(r"[^\s,;.!:()-]+", left)):
        return None
    if why is None and until is None:
        return None  # a session given up, not more
    return Absent(why, since, until)


def read_beside(text: str, today: date) -> Absent | None:
    """What a clause, or some that follow each other, say of an absence beside something else: a set, pain. It is to be
    asked about; the sick of gym talk (`60x5, so sick`) is none of it."""
    clauses = [c.strip() for c in CLAUSES.split(text) if c.strip()][:MOST_CLAUSES]
    for size in range(len(clauses) - 1, 0, -1):
        for start in range(len(clauses) - size + 1):
            words = ", ".join(clauses[start : start + size])
            said = read_absence(words, today)
            if said is not None and (said.until is not None or says_ill(words) or said.why is Absence.AWAY):
                return said
    return None


def read_end(text: str, today: date) -> date | None:
    """The day that was asked for, as people answer: "Thursday", "until the 14th", "back on Monday", "2 weeks"."""
    plain = _plain(text) if len(text) <= LONGEST_TEXT else ""
    match = UNTIL.fullmatch(plain) or FOR.fullmatch(plain)
    return read_day(_bare(match["day"]) if match else text, today)


def says_ill(text: str) -> bool:
    """Whether the words name an illness of one's own, or say that one feels ill, whatever stands beside it."""
    plain = SINCE.sub(" ", _plain(text))
    return not plain.endswith("?") and ILLNESS.search(plain) is not None and NOT_SO.search(plain) is None


def says_back(text: str) -> bool:
    """Whether somebody who is away says that they are back, or well again."""
    return len(text) <= LONGEST_TEXT and BACK.fullmatch(_plain(text).rstrip(".!")) is not None


def _plain(text: str) -> str:
    """Lower case, straight apostrophes, single spaces, no little pictures."""
    words = "".join(c if c.isascii() else "'" if c in "’‘" else "-" if c in "–—" else " " for c in text.casefold())
    words = re.sub(r"\b(can|won|don|isn)t\b", r"\1't", words)
    return re.sub(r"[.!]+$", "", " ".join(words.split()))


def _span_of(plain: str, today: date) -> tuple[date, date | None, str]:
    """From when, until when, and the words without that."""
    if (match := FROM_TO.search(plain)) and (first := read_day(_bare(match["first"]), today)):
        return first, read_day(_bare(match["day"]), first), _without(plain, match)
    since, rest = today, plain
    if match := NEXT_WEEK.search(rest):
        if not re.search(r"(?:back|until|till|til|return)(?: (?:on|in))? $", rest[: match.start()]):
            since, rest = monday_of(today) + timedelta(weeks=1), _without(rest, match)
            end, rest = _end_of(rest, since, today)
            return since, end or since + timedelta(weeks=1), rest
    elif (match := FROM.search(rest)) and (first := read_day(_bare(match["first"]), today)):
        since, rest = first, _without(rest, match)
    elif match := THIS_WEEK.search(rest):
        return today, monday_of(today) + timedelta(weeks=1), _without(rest, match)
    end, rest = _end_of(rest, since, today)
    return since, end, rest


def _end_of(rest: str, since: date, today: date) -> tuple[date | None, str]:
    """The day on which sessions come again: a day named, or so long after the first."""
    for pattern, start in ((UNTIL, today), (FOR, since)):
        if match := pattern.search(rest):
            said = _bare(match["day"])
            end = monday_of(today) + timedelta(weeks=1) if said == "week" else read_day(said, start)
            if end is not None:
                return end, _without(rest, match)
    return None, rest


def _kind_of(rest: str) -> tuple[Absence | None, str | None]:
    """Why, and what is left of the words; `None` for those where no absence is said at all."""
    why, left = None, rest
    for kind, pattern in ((Absence.ILL, ILL), (Absence.AWAY, AWAY)):
        if match := pattern.search(left):
            why, left = why or kind, _without(left, match)
    if match := NOTHING.search(left):
        return why, _without(left, match)
    return (why, left) if why is not None else (None, None)


def _bare(said: str) -> str:
    return re.sub(r"^(?:(?:the next|another|about|at least|next|this|on|the) )+(?=\S)", "", said)


def _without(text: str, match: re.Match[str]) -> str:
    return text[: match.start()] + " , " + text[match.end() :]
