"""Where talk and sets of one message meet: `is two minutes enough - 90x9`, `the lad squats 200 lol 90x10`.

A dash, `btw`, a laugh or a bracket between them ends a sentence, as does a comma beside a question: what is told on
one side then says nothing about the other.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.questions import opens_question
from bot.notation.remarks import is_remark, with_joined_remarks, with_named_remarks, with_plain_words
from bot.notation.strays.equipment import GONE
from bot.notation.strays.people import with_people
from bot.notation.strays.wordings import is_apology
from bot.notation.tokens import Mark
from bot.notation.wholes import has_entry, is_whole, tells_sets
from bot.notation.wordlist import words

_HARD = (Kind.STOP, Kind.LINE, Kind.QUERY)
_SOFT = (Kind.COMMA, Kind.BREAK, Kind.OPEN, Kind.CLOSE)
_LAUGHS = frozenset(words("lol lmao lmfao rofl haha hahaha hahah hehe hah btw fyi ps anyway anyways anyhow"))
_TALK = (Kind.WORD, Kind.OTHERPERSON, Kind.OTHERTIME, Kind.TALKNUM, Kind.ASKING)
_NAMES_SET = (Kind.SET, Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.LABEL, Kind.NAME, Kind.WEAK, Kind.SAME)
_CORRECTS = (Kind.SORRY, Kind.MEANT, Kind.WROTE, Kind.SCRAP, Kind.NOT, Kind.UNITALL, Kind.INSTEAD)
_LEAST = 3
"""Words of a part that talks."""


def with_seams(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with a stop wherever talk and sets meet."""
    out = with_joined_remarks(with_named_remarks(with_plain_words(marks)))
    told = with_people(out)
    for place in range(len(out)):
        if _is_seam(told, place):
            out[place] = told[place] = replace(out[place], kind=Kind.STOP, text=".")
    return _with_bare_seams(out, told)


def _with_bare_seams(marks: list[Mark], told: Sequence[Mark]) -> list[Mark]:
    """`playlist on 11 90x10`, `train was 20 late and 90x10`: a stop between talk with a number and the sets behind."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind is Kind.NUM and kind_at(marks, place + 1) is Kind.X and kind_at(marks, place + 2) is Kind.NUM:
            at = place - (kind_at(marks, place - 1) is Kind.AND or (place > 0 and _parts(marks, place - 1)))
            start = _start(told, at)
            if _is_idle_talk(told[start:at]) and tells_sets(marks[place : _end(marks, place - 1)]):
                del out[len(out) - (place - at) :]
                out.append(Mark(Kind.STOP, ".", mark.start, mark.start))
        out.append(mark)
    return out


_IDLE = frozenset(
    (Kind.WORD, Kind.FILL, Kind.TALKNUM, Kind.NUM, Kind.CLOCK, Kind.AT, Kind.WAS, Kind.FOR, Kind.WITH, Kind.TO,
     Kind.KG, Kind.LB, Kind.MINUTES, Kind.HOURS, Kind.GAP, Kind.NO, Kind.COUNTED)
)  # fmt: skip
_DOING = frozenset(words("did got hit made managed do doing get then so only just the a with was is to another did"))


_LATE = frozenset(words("late early train gym class traffic"))


def _is_idle_talk(part: Sequence[Mark]) -> bool:
    """Whether words with a number straight before a set are talk: `playlist on 11`; not `then managed`."""
    kinds = {m.kind for m in part}
    spoken = [w for m in part if m.kind is not Kind.NUM for w in m.text.split()]
    talks = bool(kinds & {Kind.WORD, Kind.TALKNUM}) or bool(set(spoken) & _LATE)
    if not (kinds <= _IDLE and talks and kinds & {Kind.NUM, Kind.CLOCK}):
        return False
    leads = part[-1].kind in (Kind.AT, Kind.WITH, Kind.FOR, Kind.TO, Kind.WAS) or spoken[-1:] == ["of"]
    leads = leads or (part[-1].kind is not Kind.NUM and part[-1].text.split(" ")[-1] in _DOING)
    numbers = [i for i, m in enumerate(part) if m.kind is Kind.NUM]
    return not leads and numbers[:1] != [0] and len(numbers) <= 1


def _is_seam(marks: Sequence[Mark], place: int) -> bool:
    mark = marks[place]
    if not (_parts(marks, place) or mark.kind in _SOFT):
        return False
    before = marks[_start(marks, place) : place]
    behind = place + (kind_at(marks, place + 1) is Kind.COMMA and _parts(marks, place))
    after = marks[behind + 1 : _end(marks, behind)]
    told = tells_sets(before), tells_sets(after)
    if told[0] == told[1]:
        return False
    talk, sets = (after, before) if told[0] else (before, after)
    if told[1] and mark.kind not in _SOFT:
        talk = marks[_sentence_start(marks, place) : place]
    if mark.kind in _SOFT and (not is_whole(sets) or _heads(marks, place)):
        return False
    if (
        opens_question(talk)
        or (told[1] and opens_question(before))
        or (told[0] and kind_at(marks, _end(marks, place)) is Kind.QUERY)
    ):
        query = mark.kind is Kind.COMMA and told[1] and _ends_asking(marks, place)
        return not query and not has_entry(talk)
    if mark.kind in (Kind.COMMA, Kind.BREAK):
        return False
    return (_talks(talk) or is_remark(talk)) and not _names_for(talk, sets)


def _heads(marks: Sequence[Mark], place: int) -> bool:
    """Whether a colon stands behind the bracket: `saturday (no wifi): 60x5`."""
    if marks[place].kind is Kind.OPEN:
        place = next((i for i in range(place, len(marks)) if marks[i].kind is Kind.CLOSE), place)
    return marks[place].kind is Kind.CLOSE and kind_at(marks, place + 1) is Kind.COLON


def _parts(marks: Sequence[Mark], place: int) -> bool:
    """Whether a mark may part two things by itself: a dash between spaces, a laugh, `btw`."""
    mark = marks[place]
    if mark.kind is Kind.DASH:
        following = marks[place + 1] if place + 1 < len(marks) else None
        return not mark.tight and following is not None and not following.tight
    if mark.kind is not Kind.FILL:
        return False
    return mark.text in _LAUGHS or not any(c.isalnum() for c in mark.text)


def _start(marks: Sequence[Mark], place: int) -> int:
    at = place
    while at > 0 and _parts(marks, at - 1):
        at -= 1
    while at > 0 and not _bounds(marks, at - 1):
        at -= 1
    return at


def _sentence_start(marks: Sequence[Mark], place: int) -> int:
    """Where the words before a seam start: behind what ends a sentence, or what may part it."""
    at = place
    while at > 0 and _parts(marks, at - 1):
        at -= 1
    while at > 0 and marks[at - 1].kind not in _HARD and not _parts(marks, at - 1):
        at -= 1
    return at


def _end(marks: Sequence[Mark], place: int) -> int:
    at = place + 1
    while at < len(marks) and not _bounds(marks, at):
        at += 1
    return at


def _bounds(marks: Sequence[Mark], place: int) -> bool:
    return marks[place].kind in (*_HARD, *_SOFT) or _parts(marks, place)


def _ends_asking(marks: Sequence[Mark], place: int) -> bool:
    """Whether the sentence around a comma ends with a question mark: `is it ok, 60x5?`."""
    at = place
    while at < len(marks) and marks[at].kind not in _HARD:
        at += 1
    return kind_at(marks, at) is Kind.QUERY


def _talks(part: Sequence[Mark]) -> bool:
    """Whether a part is talk of its own, with no set and no change of one."""
    spoken = [
        w
        for m in part
        if m.kind not in (Kind.NUM, Kind.KG, Kind.LB, Kind.S, Kind.HAND, Kind.REPS)
        for w in m.text.split()
        if w.isalpha()
    ]
    told = has_entry(part) or any(m.kind in _CORRECTS and not is_apology(part, i) for i, m in enumerate(part))
    tells = any(m.kind is Kind.WAS for m in part) and not any(m.kind in _NAMES_SET for m in part)
    talks = any(m.kind in _TALK for m in part) or bool(GONE & set(spoken)) or (tells and len(spoken) > _LEAST)
    talks = talks or any(m.kind is Kind.NAME and not m.names for m in part)
    talks = talks or {Kind.DONE, Kind.WARMUP} <= {m.kind for m in part}
    two = sum(m.kind in (Kind.WORD, Kind.OTHERPERSON) for m in part) >= _LEAST - 1
    return not told and (len(spoken) >= _LEAST or two) and talks


def _names_for(talk: Sequence[Mark], sets: Sequence[Mark]) -> bool:
    """Whether talk names the exercise whose sets stand beside it: `rdl felt gross - 60x10`."""
    others = any(m.kind is Kind.OTHERPERSON for m in talk)
    others = others or any(m.kind is Kind.OTHERTIME for m in talk)
    return any(_named(talk)) and not any(_named(sets)) and not others


def _named(part: Sequence[Mark]) -> Iterator[bool]:
    return (bool(m.names) for m in part if m.kind in (Kind.NAME, Kind.WEAK))
