"""What was planned, prescribed or nearly done, by the form of its clause: `was meant to use`, `the sheet said`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, part_of
from bot.notation.kinds import Kind
from bot.notation.masking import masked
from bot.notation.strays.going import going
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_INTENT = frozenset(
    words(
        "meant supposed planning planned hoping hoped intending intended wanting tempted aiming aimed thinking told",
        "asked",
    )
)
_SAYING = frozenset(
    words("say type put write be have read log send enter record text note tell add include mention change")
)
"""Verbs of a correction: `meant to put 60`."""
_SOURCES = frozenset(
    words(
        "plan sheet program programme card spreadsheet template schedule app block script workout prescription target",
        "board whiteboard printout notes list",
    )
)
_CALLS = frozenset(
    words("said says say had has called calls asked asks wanted wants told reads read gave shows showed")
)
_ASKED = frozenset(words("said wanted asked prescribed planned programmed gave told suggested recommended set"))
_WEIGHED_UP = frozenset(
    words("considered considering contemplated contemplating eyed debated fancied toyed flirted pondered")
)
_THOUGHT = frozenset(words("about of bout"))
_MISTAKEN = (("by", "mistake"), ("by", "accident"), ("accidentally",), ("mistakenly",))
_MISTAKES = frozenset(form[-1] for form in _MISTAKEN)
_LOADED = frozenset(words("loaded put grabbed racked had took set picked stuck on"))
_LIFTING = (Kind.X, Kind.FOR, Kind.REPS)


def with_intents(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with the words of such clauses as another time's."""
    out = masked(marks, going(marks))
    for place, mark in enumerate(marks):
        if out[place] is not mark or mark.kind in _TELLING:
            continue
        if mark.kind is Kind.NUM:
            if any(is_so(marks, place) for is_so in (_is_mistaken, _is_up_next, _is_asked_of)):
                out[place] = replace(mark, kind=Kind.GAP, value=None, parts=())
        elif (
            _is_next(marks, place)
            or _is_source(marks, place)
            or _is_intent(marks, place)
            or _is_weighed_up(marks, place)
        ):
            out[place] = replace(mark, kind=Kind.OTHERTIME)
        elif _is_in_place(marks, place):
            out[place] = replace(mark, kind=Kind.INSTEAD)
    return out


_TELLING = frozenset((Kind.COMMA, Kind.STOP, Kind.LINE, Kind.X, Kind.KG, Kind.LB, Kind.REPS, Kind.SLASH, Kind.S))
"""Kinds that open no such clause."""


def _is_source(marks: Sequence[Mark], place: int) -> bool:
    """`the plan said 70`, `you wanted 70`, `the sheet has me at 70`."""
    said = marks[place].text
    if marks[place].kind not in _OF_SOURCE or said not in _SAID_BY:
        return False
    before = marks[place - 1].text.split()[-1:] if place else []
    if not before:
        return False
    if before[0] in ("it", "you", "that") and place > 1 and marks[place - 2].text == "thought":
        return said in (*_CALLS, "was", "were")
    if said == "had" and [m.text for m in marks[place + 1 : place + 2]] == ["me"]:
        return before[0] in _SOURCES or before[0] in ("you", "coach", "u")
    return (before[0] in _SOURCES and said in _CALLS) or (before[0] in ("you", "coach", "u") and said in _ASKED)


_OF_SOURCE = (Kind.FILL, Kind.WORD, Kind.OTHERTIME, Kind.PLANNED, Kind.WROTE, Kind.WAS, Kind.COULD)
_SAID_BY = frozenset([*_CALLS, *_ASKED, "was", "were", "had"])
"""All that a source may do."""


def _is_intent(marks: Sequence[Mark], place: int) -> bool:
    """`was meant to use the 14s`, `intended on 60`; not `meant to put 60`, which corrects."""
    said = marks[place].text.split()
    last = said[-1:]
    if last == ["to"] and len(said) > 1:
        last, following = said[-2:-1], marks[place + 1 : place + 2]
    elif place + 1 < len(marks) and marks[place + 1].text in ("to", "on", "for", "of", "by"):
        following = marks[place + 2 : place + 3]
    else:
        return False
    if not last or last[0] not in _INTENT or marks[place].kind in (Kind.OTHERTIME, Kind.PLANNED):
        return False
    verb = next(iter(following[0].text.split()), "") if following else ""
    if last[0] in ("meant", "supposed") and verb in _SAYING:
        return False
    return bool(verb) and following[0].kind not in (Kind.NUM, Kind.MEANT)


def _is_weighed_up(marks: Sequence[Mark], place: int) -> bool:
    """`thought about 75`, `considered the 30s`."""
    following = marks[place + 1].text if place + 1 < len(marks) else ""
    text = marks[place].text
    return text in _WEIGHED_UP or (text in ("thought", "thinking", "think") and following in _THOUGHT)


def _is_next(marks: Sequence[Mark], place: int) -> bool:
    """`170x3 too easy, 180 next`: the load of a set that is only thought of, behind a set that is told."""
    if marks[place].text != "next" or marks[place].kind is not Kind.THEN:
        return False
    end = place + 1
    while end < len(marks) and marks[end].kind is Kind.FILL:
        end += 1
    ends = end >= len(marks) or marks[end].kind in (Kind.STOP, Kind.LINE, Kind.QUERY)
    at = place - 1
    while at > 0 and marks[at].kind in (Kind.KG, Kind.LB, Kind.S, Kind.FILL):
        at -= 1
    alone = at >= 0 and marks[at].kind is Kind.NUM and marks[max(at - 1, 0)].kind not in _LIFTING
    return ends and alone


def _is_up_next(marks: Sequence[Mark], place: int) -> bool:
    """`235x3. up next: 260`, `now for 260, wish me luck`: the load of a set to come, behind a set that is told."""
    said = [w for m in marks[max(0, place - 4) : place] for w in m.text.split()]
    while said and said[-1] in (":", "is", "the", "a", "it", "with", "-"):
        said.pop()
    if tuple(said[-2:]) not in _COMING:
        return False
    end = place + 1 + (place + 1 < len(marks) and marks[place + 1].kind in (Kind.KG, Kind.LB))
    ends = end >= len(marks) or marks[end].kind in (Kind.STOP, Kind.LINE, Kind.COMMA, Kind.QUERY, Kind.FILL)
    if kind_at(marks, place - 1) is Kind.FOR and _goes_on(marks, place):
        return False
    told = ends and any(m.kind in (Kind.X, Kind.FOR) for m in marks[: max(0, place - 2)])
    return told and not any(m.kind is Kind.NUM for m in marks[end:])


def _goes_on(marks: Sequence[Mark], place: int) -> bool:
    """`for nine and then for eight`: one more number of repetitions, as those before it."""
    at = place - 2
    while at > 0 and marks[at].kind in (Kind.THEN, Kind.COMMA, Kind.FILL):
        at -= 1
    before, value = marks[at], marks[place].value
    lifted = at > 0 and before.kind is Kind.NUM and marks[at - 1].kind in (Kind.FOR, Kind.NUM, Kind.COMMA, Kind.X)
    return lifted and value is not None and before.value is not None and value <= 2 * before.value


def _is_asked_of(marks: Sequence[Mark], place: int) -> bool:
    """`dropping to 275 for the next two right?`: a number in a question about sets to come."""
    start, end = part_of(marks, place)
    if end >= len(marks) or marks[end].kind is not Kind.QUERY:
        return False
    said = [w for m in marks[start:end] for w in m.text.split()]
    return "next" in said[1:] and bool(set(said[:2]) & _GOING)


_GOING = frozenset(words("dropping drop going go moving move adding add taking take stay staying shall should do"))
_COMING = frozenset(tuple(w.split()) for w in (
    "up next", "next up", "now for", "on to", "then for", "off to", "go for", "going for", "next is", "moving to",
    "now to", "try for", "next for", "heading to", "to try", "about to",
))  # fmt: skip


def _is_in_place(marks: Sequence[Mark], place: int) -> bool:
    """`instead of the machine`, `did goblets, not the lunges`: an exercise that another stands in for."""
    following = marks[place + 1].kind if place + 1 < len(marks) else None
    if marks[place].kind is Kind.NOT and following is not None:
        one, other = place - 1, place + 1
        one -= kind_at(marks, one) is Kind.COMMA
        other += kind_at(marks, other) is Kind.FILL
        names = [marks[i].names for i in (one, other) if kind_at(marks, i) is Kind.NAME and i >= 0]
        return len(names) == 2 and not names[0] and bool(names[1])
    return marks[place].text == "instead of the" and following in (Kind.NAME, Kind.WEAK)


def _is_mistaken(marks: Sequence[Mark], place: int) -> bool:
    """`loaded 80 by mistake`: a load that was not lifted."""
    start, end = part_of(marks, place)
    before = {w for m in marks[start:place] for w in m.text.split()}
    if before.isdisjoint(_LOADED):
        return False
    said = tuple(w for m in marks[place + 1 : end] for w in m.text.split())
    mistaken = not _MISTAKES.isdisjoint(said)
    mistaken = mistaken and any(said[i : i + len(form)] == form for form in _MISTAKEN for i in range(len(said)))
    lifted = any(m.kind in _LIFTING and m.text != "by" for m in marks[start:end])
    return (mistaken or "accidentally" in before) and not lifted
