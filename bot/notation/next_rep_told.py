"""The repetition behind the last one done, told in a clause of its own: `tried a tenth, no chance`, `the next died`.

Whatever says that it did not come (a miss, a bar that came back, a spotter who helped), the set was to failure. What
was left undone by choice (`didn't risk the tenth`) says nothing of it. Common wordings; no source.
"""

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import EARLIEST_FAILED, HARDEST
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.next_failed import FAILING
from bot.notation.tokens import Mark
from bot.notation.worded import ends_clause, opens_clause, sentence_of
from bot.notation.wordlist import words

_NOT_DONE = FAILING | frozenset(words(
    "no not nope wasnt isnt wouldnt couldnt cant never nothing halfway half midway down back dropped dropping rack "
    "racked "
    "rerack reracked safeties safety pins spotter helped help assist assisted rescue rescued rescuing helping "
    "saving saved gave giving "
    "refused sank sunk rolled roll beat beaten ditched aborted abandoned incomplete collapsed folded gone bounced fell "
    "toppled quit defeated flattened trapped bust void miss misses jammed frozen froze halted slow-motion sticking"
))  # fmt: skip
_BY_CHOICE = re.compile(
    r"\b(?:didnt|did not|not|never|wouldnt|dont|no|without)(?: even)? (?:try|trying|attempt|attempting|need|want|"
    r"wanting|bother|"
    r"bothering|risk|risking|going for|go for|chance|chancing|dare|worth|force|forcing)\b|\b(?:skip|skipped|"
    r"skipping|need|wise|"
    r"sensible)\b"
)
_POSSIBLE = re.compile(r"\b(?:tank|tomorrow|easy|easily|could|reserve|next time|next week)\b")
_TRIED = re.compile(
    r"\b(?:tried|trying|try|went for|going for|go for|attempted|attempting|attempt|reached for|failed|missed|fought "
    r"for|pushed "
    r"for|on|by|at|started|began|chased|chasing|the|my|but|no)\b"
)
_FURTHER = re.compile(
    r"^(?:the |my |a |an |on the |on my )*(?:next|following|subsequent|further|another|one more|extra)(?: one| rep)?$"
)
_NEXT_TO_ME = re.compile(r"\b(?:in|on|at|from) (?:the )?next (?:rack|bench|platform|station|bay|machine|room|lane)\b")
_BLOCKS = frozenset((
    Kind.NUM, Kind.NAME, Kind.SET, Kind.SETS, Kind.LASTSET, Kind.LABEL, Kind.SAME, Kind.AGAIN, Kind.RPE,
    Kind.RIR, Kind.TANK, Kind.CLOCK, Kind.FINISH, Kind.SKIPPED, Kind.ASKING, Kind.EMPTY, Kind.ORD, Kind.KG, Kind.LB,
    Kind.DROP, Kind.LEFT, Kind.RIGHT, Kind.MINI, Kind.SAMELOAD, Kind.SAMEREPS, Kind.MEANT, Kind.ALL,
))  # fmt: skip
"""Kinds that tell of something else than one repetition."""
NEEDS = _NOT_DONE | {"rep", "reps"}
_NOT_COUNTED = frozenset(words("count counting counted scrap leave ignore cheaty cheated cheat"))
"""Words of a repetition that came and is not to count, which other rules read."""
_OF_REP = (Kind.FAILED, Kind.LASTREP)
_NUMBERED = ("rep", "number", "nr", "no", "#", "rep number", "failed rep", "at rep", "on rep")


def with_next_rep_told(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such clauses as `to failure`."""
    out = _with_points(marks)
    said = {w for m in out for w in m.text.split()}
    if not said & _NOT_DONE or not any(m.kind is Kind.NUM for m in out):
        return out
    place = 1
    while place < len(out):
        left_out = out[place].kind is Kind.SKIPPED and kind_at(out, place - 1) is Kind.NAME
        told = _missed(out, place) if opens_clause(out, place) and not left_out else None
        if told is not None:
            kind, end = told
            kind = Kind.GAP if _is_rated_so(out, place) else kind
            text = "to failure" if kind is Kind.EMPTY else ""
            out[place:end] = [Mark(kind, text, out[place].start, out[end - 1].end)]
        place += 1
    return out


def _is_rated_so(marks: Sequence[Mark], at: int) -> bool:
    """Whether a set was told as one to failure straight before: `315 5 rpe 10 (6th stalled)`."""
    before = at - 1
    while kind_at(marks, before) in (Kind.OPEN, Kind.COMMA, Kind.DASH, Kind.STOP, Kind.FILL, Kind.BREAK):
        before -= 1
    rating = kind_at(marks, before - 1) is Kind.RPE or text_at(marks, before - 1) == "@"
    hardest = kind_at(marks, before) is Kind.NUM and marks[before].value == HARDEST and rating
    return hardest or kind_at(marks, before) is Kind.EMPTY


def _with_points(marks: Sequence[Mark]) -> list[Mark]:
    """`10. rep failed`: the tenth, as it is written in some languages."""
    if not any(m.text in ("rep", "reps") for m in marks):
        return list(marks)
    out: list[Mark] = []
    place = 0
    while place < len(marks):
        mark = marks[place]
        pointed = kind_at(marks, place + 1) is Kind.STOP and marks[place + 1].tight
        nth = mark.kind is Kind.NUM and pointed and kind_at(marks, place + 2) is Kind.REPS and not mark.parts
        nth = nth and text_at(marks, place + 2) in ("rep", "reps") and (mark.value or 0) >= EARLIEST_FAILED
        out.append(replace(mark, kind=Kind.ORD) if nth and _is_next(out, mark.value) else mark)
        place += 2 if nth and out[-1].kind is Kind.ORD else 1
    return out


def _missed(marks: Sequence[Mark], start: int) -> tuple[Kind, int] | None:
    """What a clause says that starts here and tells of the next repetition (failed, or not tried), and its end."""
    _, stop = sentence_of(marks, start)
    said = {w for m in marks[start:stop] for w in m.text.split()}
    if _NEXT_TO_ME.search(" ".join(m.text for m in marks[start:stop])):
        return None  # `while some giant in the next rack warms up with it`
    if (
        kind_at(marks, stop) is Kind.QUERY
        or said & _NOT_COUNTED
        or any(m.kind is Kind.SCRAP for m in marks[start:stop])
    ):
        return None
    rep = _rep_in(marks, start, stop)
    if rep is None:
        return None
    first, behind = rep
    end = behind
    while end < stop and marks[end].kind not in _BLOCKS:
        end += 1
    while end > behind and not (end == stop or ends_clause(marks, end)):
        end -= 1
    if end < stop and (end == behind and not ends_clause(marks, end)):
        return None
    if not _is_own_rep(marks, start, first, behind):
        return None
    told = [*marks[start:first], *marks[behind:end]]
    line = " ".join(m.text for m in told)
    if _BY_CHOICE.search(line):
        return Kind.GAP, end
    numbers = marks[first].kind is Kind.NUM and text_at(marks, first - 1) == "no"
    told = [*marks[start : first - 1], *marks[behind:end]] if numbers else told  # `8, 8, no 9`: not the ninth
    fails = bool({w for m in told for w in m.text.split()} & _NOT_DONE) and not _POSSIBLE.search(line)
    return (Kind.EMPTY, end) if fails else None


def _is_own_rep(marks: Sequence[Mark], start: int, first: int, behind: int) -> bool:
    """Whether the repetition is the client's, and what stands behind its number no thing: `tried a sixth coffee`."""
    led = {w for m in marks[start:first] for w in m.text.split()}
    others = any(m.kind is Kind.OTHERPERSON for m in marks[start:first])
    if (others or led & _OTHERS) and not led & _HELPING:
        return False
    nth = marks[first].kind in (Kind.ORD, Kind.NUM)
    after = text_at(marks, behind).split()[:1]
    plain = kind_at(marks, behind) not in (Kind.WORD, Kind.FILL, Kind.OTHERPERSON)
    if not (plain or not after or after[0] in _ABOUT or after[0] in FAILING or after[0] in _NOT_DONE):
        return False
    line = {w for m in marks[behind : behind + _NEAR] for w in m.text.split()}
    return nth or kind_at(marks, behind) is Kind.REPS or bool(led & _REACHED) or not line <= _UNSURE


_OTHERS = frozenset(words("he she they mate mates guy lad bloke buddy friend kid wife husband his her their"))
_HELPING = frozenset(words("helped help assisted saved grabbed caught took pulled rescued gave lifted spotted"))
_REACHED = frozenset(words("tried try trying attempted went reached fought missed failed pushed chased"))
_UNSURE = frozenset(words("down back no not never nothing nope yet belt start started didnt half today to the one"))
"""Words that say of `the next one` alone either that it failed or what it is to be: `next one down`."""
_ABOUT = frozenset(words(
    "rep one was wasnt is isnt just got gets went came",
    "come had has have wouldnt would couldnt could didnt did never not",
    "no nope attempt try tries time half halfway",
    "midway stuck simply really literally absolutely basically almost nearly",
    "barely only ended turned made moved stopped started sort kind of",
    "felt looked hung hovered and but then so to on at",
    "with out up down back into way because cos i ive my the",
    "me a an this that it its too way ground grind slowed crawled",
    "which where when before after by from for pinned needed ran refused died rolled sank dropped fell all nah zero",
    "couldn't cant wont will",
)) - {"in"}  # fmt: skip


def _rep_in(marks: Sequence[Mark], start: int, stop: int) -> tuple[int, int] | None:
    """Where the words of the next repetition start and end, in the clause from a place on."""
    for at in range(start, stop):
        mark = marks[at]
        end = at + 1 + (kind_at(marks, at + 1) is Kind.REPS)
        end += text_at(marks, end) == "one"
        whole = kind_at(marks, end) not in (Kind.SET, Kind.SETS, Kind.NAME, Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.AT)
        counted = mark.kind is Kind.NUM and _is_counting(marks, at, start)
        if mark.kind is Kind.ORD or counted:
            return (at, end) if (whole or mark.kind is Kind.ORD) and _is_next(marks[:start], mark.value) else None
        led = " ".join(m.text for m in marks[start:at])
        if _FURTHER.match(mark.text) and (
            text_at(marks, at).endswith((" rep", " one")) or end > at + 1 or _TRIED.search(led)
        ):
            return (at, end) if _tells_set(marks[:start]) else None
        if mark.kind in _BLOCKS or (at > start and ends_clause(marks, at)):
            return None
    return None


def _is_counting(marks: Sequence[Mark], at: int, start: int) -> bool:
    """Whether a number says which repetition: `rep 10`, or the 10 of `ten got stuck`, `wanted 10 but it failed`."""
    if at > start and (text_at(marks, at - 1) in _NUMBERED or kind_at(marks, at - 1) is Kind.REPS):
        return True
    end = at + 1
    while end < len(marks) and end < at + _NEAR and marks[end].kind not in (*_BLOCKS, Kind.COMMA, Kind.STOP, Kind.LINE):
        end += 1
    plain = kind_at(marks, at + 1) in (Kind.FILL, Kind.WORD, Kind.WAS, Kind.EMPTY, Kind.FAILED)
    return plain and any(set(m.text.split()) & (FAILING - _VAGUE) for m in marks[at + 1 : end])


_NEAR = 7
_VAGUE = frozenset(words("nope f tried attempted never spotter slipped grinder missing lost"))


def _is_next(before: Sequence[Mark], value: Decimal | None) -> bool:
    """Whether the repetition of this number is the one behind those told last."""
    if value is None or value <= EARLIEST_FAILED:
        return False
    told = [
        i for i, m in enumerate(before) if m.kind is Kind.NUM and kind_at(before, i + 1) not in (Kind.SET, Kind.SETS)
    ]
    return any(value - 1 in (before[i].value, *before[i].parts[-1:]) for i in told[-2:])


def _tells_set(before: Sequence[Mark]) -> bool:
    """Whether a set is told before: two numbers at least."""
    return sum(max(1, len(m.parts)) for m in before if m.kind is Kind.NUM) > 1
