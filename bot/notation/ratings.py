"""Scores of something else than a set: `pain 0/10`, `energy 7 out of 10`, `10/10 would die again`."""

import re
from collections.abc import Iterator, Sequence

from bot.notation.bounds import HARDEST
from bot.notation.clauses import EDGES, kind_at, part_of, parts_between, text_at
from bot.notation.kinds import Kind
from bot.notation.masking import masked
from bot.notation.tokens import Mark
from bot.notation.worded import sentence_of
from bot.notation.wordlist import words

_RATED = frozenset(
    words(
        "pain hurt hurts pains ache discomfort energy sleep mood stress motivation soreness sore tired form technique",
        "depth pump focus vibes mindset feeling confidence control recovery nutrition",
    )
)


def without_ratings(marks: Sequence[Mark], hurts: bool) -> list[Mark]:
    """The marks with such scores without bearing. `hurts`: the message tells of pain, which a bare score rates."""
    gone: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NUM:
            continue
        ten = next((i for i in range(place + 2, min(place + 4, len(marks))) if marks[i].value == 10), None)
        if ten is not None and (
            marks[place + 1].kind is Kind.SLASH or [m.text for m in marks[place + 1 : ten]] == ["out", "of"]
        ):
            near = [w for m in (*marks[max(0, place - 4) : place], *marks[ten + 1 : ten + 3]) for w in m.text.split()]
            told = (hurts and mark.value is not None and mark.value < 10) or mark.value == 0
            told = told or _is_of_talk(marks, place, ten) or _is_opinion(marks, place, ten)
            if set(near) & _RATED or marks[place + 1].kind is not Kind.SLASH or told:
                gone.update(range(place, ten + 1))
    return masked(marks, gone)


def _is_opinion(marks: Sequence[Mark], place: int, ten: int) -> bool:
    """`gym music 2/10`, `3/10 would not do again`: what somebody thinks of a thing, in the words of one clause."""
    start, end = part_of(marks, place)
    said = {
        w for m in (*marks[max(start, place - 4) : place], *marks[ten + 1 : min(end, ten + 4)]) for w in m.text.split()
    }
    return (marks[place].value or HARDEST) < HARDEST and bool(said & _OPINIONS)


_OPINIONS = frozenset(
    words("day gym experience music coffee playlist weather crowd would wouldnt recommend recommended")
)
_SESSION = frozenset(words("session workout training overall srpe"))
_TODAY = frozenset(["today", "day"])
_ALL = frozenset(["everything"])
"""Of the session where no list of sets stands beside it."""
_LISTED = 3
"""So many numbers beside the rating tell sets."""
_OF_SETS = (Kind.X, Kind.KG, Kind.LB, Kind.REPS, Kind.NAME, Kind.SET, Kind.SETS, Kind.LABEL, Kind.LASTSET, Kind.ALL)
_RATING = (Kind.NUM, Kind.RPE, Kind.FEELS, Kind.SLASH)


def of_session(marks: Sequence[Mark]) -> set[int]:
    """`session rpe 8`, `overall effort 7 out of 10`, `whole training 70 minutes, effort 8 of 10`: of no set."""
    out: set[int] = set()
    listed = sum(max(1, len(m.parts)) for m in marks if m.kind is Kind.NUM) > _LISTED
    of_session = _SESSION if listed else _SESSION | _ALL
    if {w for m in marks for w in m.text.split()}.isdisjoint(of_session | _TODAY):
        return out
    spoken = False
    for start, end in parts_between(marks, EDGES):
        part = marks[start:end]
        said = {w for m in part[: _rating_end(part)] for w in m.text.split()}
        heading = any(m.kind is Kind.COLON and part[i + 1 : i + 2] and part[i + 1].names for i, m in enumerate(part))
        spoken = spoken or (bool(said & of_session) and not heading and not any(m.kind in _OF_SETS for m in part))
        spoken = spoken or (bool(_TODAY & said) and any(m.kind is Kind.WAS for m in part) and _slashed(part))
        numbers = [m.value for m in part if m.kind is Kind.NUM]
        rated = any(m.kind in (Kind.RPE, Kind.FEELS) for m in part) or bool(said & of_session) or _slashed(part)
        scaled = 0 < len(numbers) <= 2 and all(v is not None and v <= HARDEST for v in numbers)
        scaled = scaled and not (kind_at(marks, end) is Kind.COMMA and kind_at(marks, end + 1) is Kind.NUM)
        if spoken and rated and scaled and not any(m.kind in _OF_SETS for m in part):
            out |= {i for i in range(start, end) if marks[i].kind in _RATING or marks[i].text in ("out", "of")}
        told = any(m.kind in (Kind.X, Kind.FOR) for m in part) and bool(numbers)
        if told or (end < len(marks) and marks[end].kind in (Kind.STOP, Kind.LINE, Kind.QUERY)):
            spoken = False
    return out


def _rating_end(part: Sequence[Mark]) -> int:
    """Where what a part's first rating is of ends: `rpe 8 for the session`; not `rpe 8 third session this week`."""
    if not part or part[0].kind is not Kind.RPE or [m.kind for m in part[1:2]] != [Kind.NUM]:
        return len(part)
    of = len(part) > _OF_WHAT and part[_OF_WHAT].text.split(" ")[0] in (
        "for",
        "overall",
        "of",
        "session",
        "on",
        "across",
    )
    return len(part) if of else _OF_WHAT


_OF_WHAT = 2
"""The place behind `rpe 8`."""


def _slashed(part: Sequence[Mark]) -> bool:
    """`6/10`: a score out of ten."""
    kinds = [m.kind for m in part]
    return any(
        kinds[i : i + 3] == [Kind.NUM, Kind.SLASH, Kind.NUM] and part[i + 2].value == HARDEST for i in range(len(part))
    )


def _is_of_talk(marks: Sequence[Mark], place: int, ten: int) -> bool:
    """`dog outside the window 10/10`: a score of what a sentence of talk tells, beside a set with its load."""
    start, end = part_of(marks, place)
    rest = [m for i, m in enumerate(marks[start:end], start) if not place <= i <= ten]
    talks = sum(m.kind is Kind.WORD for m in rest) > 0 and all(m.kind in (Kind.WORD, *_PLAIN) for m in rest)
    return talks and any(m.kind in (Kind.X, Kind.FOR) for i, m in enumerate(marks) if not start <= i < end)


_PLAIN = (Kind.FILL, Kind.WAS, Kind.AT, Kind.WITH)


VERDICT_LINKS = (Kind.SLASH, "out", "from", "of")
"""What stands between the two numbers of a verdict."""
_VERDICT = re.compile(
    r"(?:(?:an?|the|of|for|in|on|pure|sheer|absolute|utter|total|complete|full|overall|pretty|proper|scale|such|at) )*"
    r"(?:would(?:nt| not)?(?: \w+){1,5}? (?:again|twice|daily)\b|would(?:nt| not)?(?: \w+)? (?:recommend|repeat)|"
    r"not recommended|highly recommended?|only (?:cos|coz|cuz|because|since|bc|as)\b|from me\b|by me\b|in my book|"
    r"(?:no|zero|not one|nil) (?:notes|regrets?|complaints|stars)|best day|worst day|"
    r"(?:misery|miserable|suffering|torture|agony|experiences?|regrets?|vibes?|fun|evil|hell|hellish|brutality|cruelty|"
    r"carnage|"
    r"murder|punishment|death|deaths|doom|enjoyment|entertainment|trauma|despair|tears|hatred|horror|nightmare|chaos|"
    r"destruction|drama|joy|bliss|happiness|madness|bastard|savagery|nasty|spicy|villain|killer)\b)"
)
"""What is said behind a score that tells what the client thinks of the exercise, and no sides or repetitions."""
_JEST = re.compile(
    r"\b(?:murdered|killed|ended|finished|destroyed|wrecked|slaughtered|ruined|broke|buried|annihilated|obliterated|"
    r"humbled|demolished|cooked|smoked|crushed|roasted) (?:me|us)\b|\b(?:took|stole|ate|has|have|got|claimed) my "
    r"(?:soul|life|will|dignity|spirit)\b|\b(?:made|makes|make) me (?:dead|die|cry)\b"
)
"""What an exercise did to the client, in jest."""
_OF_SCALE = ("point", "points", "star", "stars", "out", "of", "from", "the", "a")


def verdicts(marks: Sequence[Mark]) -> Iterator[int]:
    """`10/10 would die again`, `11/10 misery`, `took my soul, ten out of ten`: what a client thinks of an exercise."""
    for place, mark in enumerate(marks):
        start, end = part_of(marks, place)
        ten = place + 1
        while ten < len(marks) and (marks[ten].text in _OF_SCALE or (ten == place + 1 and marks[ten].text == "/")):
            ten += 1
        told = mark.kind is Kind.NUM and ten > place + 1 and kind_at(marks, ten) is Kind.NUM
        if not told or marks[ten].value != HARDEST or any(m.kind is Kind.NUM for m in marks[start:place]):
            continue
        if kind_at(marks, place - 1) in (Kind.X, Kind.FOR, Kind.RPE, Kind.RIR) or text_at(marks, place - 1) == "@":
            continue
        behind = ten + 1
        while behind < len(marks) and (marks[behind].kind is Kind.COMMA or text_at(marks, behind) in _OF_SCALE):
            behind += 1
        _, stop = sentence_of(marks, behind) if behind < len(marks) else (0, behind)
        following = " ".join(m.text for m in marks[behind:stop])
        before = " ".join(m.text for m in marks[:place])
        ends = end in (ten + 1, len(marks)) and marks[place + 1].text != "/"
        jests = (ends or following == "only") and bool(_JEST.search(before))
        if _VERDICT.match(following) or jests:
            yield from range(place, ten + 1)
