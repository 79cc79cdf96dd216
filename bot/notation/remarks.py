"""Remarks joined to sets without a comma: `the kids were up all night so only 8`, `95x8 but the rack was taken`.

A word that joins (`so`, `but`, `because`) between a remark and a set ends a sentence: what is told on one side then
says nothing about the other. A remark tells no number, names no exercise or set, and changes nothing that is kept.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.days.weekdays import WEEKDAYS, YESTERDAY
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wholes import is_whole, tells_sets
from bot.notation.wordlist import words

_BOUNDS = (Kind.STOP, Kind.LINE, Kind.QUERY, Kind.COMMA, Kind.BREAK, Kind.OPEN, Kind.CLOSE)
_REASONS = frozenset(words("because cos coz cuz cause bc since"))
_JOINS = _REASONS | frozenset(words("so but though tho although however yet still"))
_PLAIN = frozenset(
    (Kind.FILL, Kind.WORD, Kind.OTHERPERSON, Kind.WAS, Kind.GAP, Kind.TALKNUM, Kind.TO, Kind.AT, Kind.FOR, Kind.WITH,
     Kind.AND, Kind.ALL, Kind.NO, Kind.RIGHT, Kind.OTHERTIME, Kind.FEELS, Kind.HOURS, Kind.MINUTES, Kind.LASTSET)
)  # fmt: skip
"""Kinds that a remark is made of."""
_TELLING = (Kind.WORD, Kind.OTHERPERSON, Kind.WAS, Kind.GAP, Kind.TALKNUM, Kind.MINUTES, Kind.HOURS)
_OF_SETS = frozenset(words("both each more again same rest left reps rep sets set one other others half except last"))
"""Words that say something of sets beside them."""


def with_plain_words(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with words that name sets or plans elsewhere made plain where they are of talk."""
    told = any(m.kind is Kind.NUM for m in marks)
    return [
        replace(m, kind=Kind.FILL, names=()) if _is_of_talk(marks, i, told=told) else m for i, m in enumerate(marks)
    ]


def _is_of_talk(marks: Sequence[Mark], place: int, *, told: bool) -> bool:
    mark, before = marks[place], text_at(marks, place - 1)
    match mark.kind:
        case Kind.THEREST:  # `short rest`, `kept the rest short`: the time between sets
            return mark.text.endswith("rest") and (before in _HOW_LONG or text_at(marks, place + 1) in _HOW_LONG)
        case Kind.SKIPPED | Kind.SKIP:  # `had to wait for the bench`, `rdl felt off today`
            waits = mark.text.endswith("wait") and kind_at(marks, place + 1) is Kind.FOR
            return waits or (mark.text.startswith("off ") and before in _HOW_IT_FELT)
        case Kind.NAME:
            waits = kind_at(marks, place - 2) is Kind.FOR and "wait" in text_at(marks, place - 3)
            return waits and before == "the" and not mark.names
        case Kind.TALKNUM:  # `thrusts flew up`
            return mark.text in ("flew", "flies") and text_at(marks, place + 1) == "up"
        case Kind.EMPTY:  # `90 felt like nothing`
            return mark.text == "nothing" and before == "like"
        case Kind.PLANNED:  # `8, as you said`: the coach's words beside numbers of one's own
            return told and mark.text in _AS_YOU_SAID
        case Kind.COULD | Kind.MORE:  # `room for more`
            at = place if mark.kind is Kind.COULD else place - 1
            could = kind_at(marks, at) is Kind.COULD and text_at(marks, at).endswith("for")
            return could and kind_at(marks, at + 1) is Kind.MORE and kind_at(marks, at + 2) is not Kind.NUM
        case _:
            return False


_HOW_LONG = frozenset(words("short long longer shorter brief tight good little extra decent proper more less minimal"))
_HOW_IT_FELT = frozenset(words("felt feels feel feeling bit little was were seemed so very pretty kinda"))
_AS_YOU_SAID = ("as you said", "like you said", "as you told me", "like you told me", "as discussed")


def with_joined_remarks(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with a stop at a join between a remark and a set."""
    out = list(marks)
    for place in range(1, len(marks) - 1):
        if not _joins(marks, place):
            continue
        start, end = part_of(marks, place, ends=_BOUNDS)
        before, after = marks[start:place], marks[place + 1 : end]
        if marks[place].text in _REASONS and any(m.kind is Kind.NUM for m in marks[:start]):
            continue  # `80x7, just 7 cause i slept badly` tells one set
        if kind_at(before, 0) is Kind.NO and any(m.kind is Kind.NAME for m in after):
            continue  # `no belt so chins 7` says what was worn
        if (is_remark(before) and _tells(after)) or (is_remark(after) and _tells(before) and is_whole(before)):
            out[place] = Mark(Kind.STOP, ".", marks[place].start, marks[place].end)
    return out


def with_named_remarks(marks: Sequence[Mark]) -> list[Mark]:
    """The marks without what is remarked between a name and its sets: `rdl felt off today so 60x8` as `rdl: 60x8`."""
    out: list[Mark] = []
    place = 0
    while place < len(marks):
        mark = marks[place]
        out.append(mark)
        place += 1
        starts = place == 1 or marks[place - 2].kind in _BOUNDS or marks[place - 2].text in _ARTICLES
        if mark.kind is not Kind.NAME or len(mark.names) != 1 or not starts:
            continue
        join = next((i for i in range(place, min(len(marks), place + _FAR)) if _joins_name(marks, i)), 0)
        end = next((i for i in range(join + 1, len(marks)) if marks[i].kind in _BOUNDS), len(marks))
        if join and _is_remark_on_name(marks[place:join]) and _tells(marks[join + 1 : end]):
            out.append(Mark(Kind.COLON, ":", marks[join].start, marks[join].end))
            place = join + 1
    return out


_ARTICLES = frozenset(words("the my on and"))
_FAR = 10
"""Marks of a remark between a name and its sets."""


def _joins_name(marks: Sequence[Mark], place: int) -> bool:
    mark = marks[place]
    dash = mark.kind is Kind.DASH and not mark.tight and not marks[min(place + 1, len(marks) - 1)].tight
    return _joins(marks, place) or mark.kind is Kind.COMMA or dash or mark.text in ("anyway", "anyways", "lol")


def _is_remark_on_name(part: Sequence[Mark]) -> bool:
    """`felt off today`, `wasnt great`, `was better than last week`."""
    said = [w for m in part if m.kind is not Kind.OTHERTIME for w in m.text.split()]
    told = [w for w in said[1:] if w not in _WHEN]
    if told[:1] and (told[0] in YESTERDAY or told[0] in WEEKDAYS):
        return False  # `chins were yesterday at the park`
    judges = bool(part) and (part[0].kind in (Kind.WAS, Kind.NOT) or text_at(part, 0) in _FELT | {"wasnt", "werent"})
    return (
        judges and len(said) > 1 and all(m.kind in (*_PLAIN, Kind.NOT) for m in part) and not _OF_SETS & set(said[1:])
    )


_WHEN = ("on", "from", "last", "the", "done", "already", "done on", "day", "before", "this")


def is_remark(part: Sequence[Mark]) -> bool:
    """Whether a part says something that bears on no set: `the rack was taken`, `legs are like jelly`."""
    judged = _judged_from(part)
    part = _without_times(part[judged:])
    if not all(m.kind in _PLAIN for m in part):
        return False
    said = [w for m in part if m.kind not in (Kind.LASTSET, Kind.OTHERTIME) for w in m.text.split()]
    tells = judged > 0 or kind_at(part, 0) is Kind.NO or any(m.kind in _TELLING for m in part)
    return (
        len(said) > 1
        and tells
        and not _OF_SETS & set(said)
        and part[-1].kind not in (Kind.TO, Kind.AT, Kind.FOR, Kind.WITH)
    )


def _without_times(part: Sequence[Mark]) -> list[Mark]:
    """The part without its durations: `rested 3 min`, `slept 5 hours`."""
    times = (Kind.MINUTES, Kind.HOURS)
    return [m for i, m in enumerate(part) if not (m.kind is Kind.NUM and kind_at(part, i + 1) in times)]


def _judged_from(part: Sequence[Mark]) -> int:
    """Where what is said of a load, or of a set by its number, begins: behind `90 kg` of `90 kg felt light`."""
    at = 0
    while at < len(part) and part[at].kind in (Kind.NUM, Kind.KG, Kind.LB, Kind.ORD):
        at += 1
    if [m.kind for m in part[:at] if m.kind in (Kind.NUM, Kind.ORD)] not in ([Kind.NUM], [Kind.ORD]):
        return 0
    at += text_at(part, at) in ("one", "set")
    return at if kind_at(part, at) is Kind.WAS or text_at(part, at) in _FELT else 0


_FELT = frozenset(words("felt feels feel seemed looked moved flew"))


def _joins(marks: Sequence[Mark], place: int) -> bool:
    mark = marks[place]
    return mark.text in _JOINS or (mark.kind in (Kind.THEN, Kind.AND) and mark.text in ("then", "and then", "and"))


def _tells(part: Sequence[Mark]) -> bool:
    """Whether a part tells a set and nothing else: `still only 8`, `went 95kg x 8`."""
    return tells_sets(part) and any(m.kind is Kind.NUM for m in part)
