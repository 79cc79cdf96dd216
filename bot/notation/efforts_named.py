"""Efforts told by the sets that they are of: `10 9 8, first two rpe 8, last rpe 9`, `nothing left on the 8`."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.answer import AskKind, Source, Span
from bot.notation.bounds import EASIEST, HARDEST, MOST_LEFT, SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.draft import Draft
from bot.notation.grounds import Ground, Told
from bot.notation.kinds import Kind
from bot.notation.order.in_reserve import NOTHING
from bot.notation.order.near import whole_number
from bot.notation.said import Doubt
from bot.notation.tokens import Mark
from bot.training.report import SetKey, Stage

_WORDS = (Kind.RPE, Kind.RIR)
_TELLING = (Kind.NUM, Kind.EMPTY, *_WORDS)
"""What an effort begins with."""
_NAMING = (Kind.NUM, Kind.ALL, Kind.ORD, Kind.LASTSET, Kind.LASTREP, Kind.THEREST)
"""What the name of some sets begins with."""
_JOINS = (Kind.COMMA, Kind.AND, Kind.FILL, Kind.THEN, Kind.STOP, Kind.EXCEPT, Kind.PLATES)
_LITTLE = (Kind.FILL, Kind.WAS, Kind.COLON, Kind.AT, Kind.WITH, Kind.FOR, Kind.SET, Kind.COULD)
_ENDS = (None, Kind.COMMA, Kind.AND, Kind.THEN, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.FILL, Kind.CLOSE)
_OTHERS = frozenset(["other", "others", "rest"])
_BUT = (Kind.EXCEPT, Kind.PLATES)
_BEHIND = {
    Kind.RPE: Kind.RPE, Kind.RPEPOST: Kind.RPE, Kind.RIR: Kind.RIR, Kind.RIRPOST: Kind.RIR, Kind.TANK: Kind.RIR,
    Kind.LEFT: Kind.RIR,
}  # fmt: skip
"""What an effort is told in, by the word behind its number."""


@dataclass(frozen=True, slots=True)
class _Sets:
    """Which sets: the first of them by its number (`None`: the last ones, or those that are left), and how many."""

    first: int | None
    count: int
    rest: bool
    end: int
    but_last: bool = False
    """Of `all but the last`: what the last one was may follow."""
    reps: Decimal | None = None
    """The repetitions that name one set of those told: `the 8`."""


@dataclass(frozen=True, slots=True)
class _Effort:
    """Repetitions in reserve, the word that they were told by, and the places where they stand."""

    left: Decimal
    word: Kind
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class NamedEfforts:
    """Repetitions in reserve with the sets that they are of, and where each stands; and where all stand."""

    efforts: tuple[tuple[_Sets, Decimal, Span], ...]
    at: Span
    place: int | None
    """The exercise that was named before, if one was."""


def split_named(marks: list[Mark]) -> tuple[list[Mark], tuple[NamedEfforts, ...]]:
    """The marks without efforts that name their sets, and those, where at least two stand behind sets that are told.

    One is enough where it is of several sets, or of one of sets told alike: `rpe 9 on the last two`.
    """
    out, said = list(marks), list[NamedEfforts]()
    at = 0
    name: int | None = None
    told = seen = False
    while at < len(out):
        mark = out[at]
        if mark.kind is Kind.NAME:
            name, told = mark.names[0] if len(mark.names) == 1 else None, False
        felt = _felt_end(out, at) if told else None
        if felt is not None:
            del out[at:felt]
            continue
        talk = _talk_end(out, at) if told else None
        if talk is not None:
            out[at:talk] = [replace(m, kind=Kind.GAP, value=None) for m in out[at:talk]]
            at = talk
            continue
        if (told or not seen) and (_sets_at(out, at) is not None or effort_at(out, at, None) is not None):
            found, end = _read(out, at)
            enough = len(found) >= SEVERAL or (bool(found) and _is_of_several(out, at, found[0][0]))
            heads = kind_at(out, end) in (Kind.COLON, Kind.STOP, Kind.LINE, Kind.DASH)
            enough = enough if told else len(found) >= SEVERAL and heads and _has_sets(out, end)
            if enough and (kind_at(out, end) in _ENDS or heads):
                said.append(NamedEfforts(tuple(found), (mark.start, out[end - 1].end), name))
                del out[at : end + (not told)]
                continue
        if mark.kind in (Kind.NUM, Kind.PLANNED):
            told = seen = True
        at += 1
    return out, tuple(said)


def _has_sets(marks: Sequence[Mark], end: int) -> bool:
    """Whether a list of sets follows the efforts of `one left on the first, none on the last: 60 8 8 7`."""
    return sum(max(1, len(m.parts)) for m in marks[end:] if m.kind is Kind.NUM) > SEVERAL


def _is_of_several(marks: Sequence[Mark], at: int, sets: _Sets) -> bool:
    """Whether an effort is of several sets, or of one by its number of those that are told alike in every set."""
    start = max((i for i, m in enumerate(marks[:at]) if m.kind in (Kind.NAME, Kind.STOP, Kind.LINE)), default=0)
    alike = any(m.kind is Kind.ALL for m in marks[start:at])
    planned = alike and any(m.kind is Kind.PLANNED for m in marks[start:at])
    apart = sets.count > 1 or sets.rest or sets.reps is not None or planned
    return apart or (alike and sets.first is not None)


def _read(piece: Sequence[Mark], start: int) -> tuple[list[tuple[_Sets, Decimal, Span]], int]:
    """The efforts from a place on, and where their words end."""
    found: list[tuple[_Sets, Decimal, Span]] = []
    word = _word_behind(piece, start)
    at = end = start
    while at < len(piece):
        at = _past(piece, at, _JOINS) if found else at
        excepted = bool(found) and kind_at(piece, at - 1) in _BUT
        sets = _sets_at(piece, at)
        sets = replace(sets, end=_past_talk(piece, sets.end)) if sets is not None and sets.reps is not None else sets
        place = _past(piece, sets.end if sets is not None else at, (*_LITTLE, Kind.COMMA) if excepted else _LITTLE)
        effort = effort_at(piece, place, word)
        if effort is None:
            break
        word, stop = effort.word, effort.end
        if sets is None and _excepts(piece, stop):
            sets = _Sets(None, 1, True, stop)
        if sets is None:
            link = _past(piece, stop, _LITTLE)
            sets = _sets_at(piece, link) if link > stop or kind_at(piece, link) is Kind.ALL else None
            stop = sets.end if sets is not None else stop
        if sets is None:
            break
        found.append((sets, effort.left, (piece[effort.start].start, piece[effort.end - 1].end)))
        at = end = stop
        apart = _past(piece, stop, (*_LITTLE, Kind.COMMA, Kind.WORD)) if sets.but_last else at
        last = effort_at(piece, apart, word) if sets.but_last else None
        if last is not None:
            span = (piece[last.start].start, piece[last.end - 1].end)
            found.insert(0, (_Sets(None, 1, False, apart), last.left, span))
            at = end = last.end
    return found, end


def _word_behind(piece: Sequence[Mark], start: int) -> Kind | None:
    """The `rpe` of `both 275x5, second was 8 third was rpe 9`, of the first number too; none where none is left out."""
    one = _sets_at(piece, start)
    number = _past(piece, one.end, _LITTLE) if one is not None else start
    two = _sets_at(piece, _past(piece, number + 1, _JOINS)) if one is not None else None
    if one is None or two is None or kind_at(piece, one.end) is not Kind.WAS or one.first is None:
        return None
    told_alike = any(m.kind in _ALIKE for m in piece[:start]) or kind_at(piece, start - 5) is Kind.X
    rated = kind_at(piece, _past(piece, two.end, _LITTLE)) is Kind.RPE
    return Kind.RPE if told_alike and rated and _is_effort(piece, number, Kind.RPE) else None


_ALIKE = (Kind.EACH, Kind.ALL, Kind.SETS, Kind.TIMES)


def effort_at(piece: Sequence[Mark], at: int, word: Kind | None) -> _Effort | None:
    """An effort that starts here: `rpe 8`, `2 rir`, `two in the tank`, `nothing left`, or a number of its `word`."""
    kind, start = kind_at(piece, at), at
    if word is None and kind not in _TELLING:
        return None
    none = word is Kind.RIR and text_at(piece, at) in NOTHING and kind_at(piece, at + 1) in (*_LITTLE, *_ENDS)
    if kind is Kind.EMPTY or none:
        return _Effort(Decimal(0), Kind.RIR, start, at + 1)
    led = text_at(piece, at - 1) == "@" and word is None and not _is_entry_led(piece, at)
    word = Kind.RPE if led else word
    if kind in _WORDS:
        word, at = kind, _past(piece, at + 1, _LITTLE)
    behind = _BEHIND.get(kind_at(piece, at + 1) or Kind.GAP) if kind is Kind.NUM else None
    if behind is Kind.RIR and kind_at(piece, at + 1) is Kind.LEFT and text_at(piece, at + 1) != "left":
        behind = None
    word = behind or word
    if word is None or not _is_effort(piece, at, word):
        return None
    value = piece[at].value or Decimal(0)
    return _Effort(value if word is Kind.RIR else 10 - value, word, start, at + 1 + (behind is not None))


def _is_entry_led(piece: Sequence[Mark], at: int) -> bool:
    """Whether sets name themselves before their entries: the `@8` of `first 90x4 @7, second @8` is of one to come."""
    return any(m.kind is Kind.ORD and kind_at(piece, i + 2) is Kind.X for i, m in enumerate(piece[:at]))


def _sets_at(piece: Sequence[Mark], at: int) -> _Sets | None:
    """The sets that words name here: `first`, `first two`, `second set`, `the other two`, `all but the last`."""
    kind, text = kind_at(piece, at), text_at(piece, at)
    if kind not in _NAMING and text not in _OTHERS:
        return None
    if kind is Kind.NUM and (
        text_at(piece, at - 1).split()[-1:] in (["the"], ["that"]) or text_at(piece, at - 1) == "after"
    ):
        before = {value for m in piece[:at] for value in (m.parts or (m.value,)) if m.kind is Kind.NUM}
        end = at + 1 + (kind_at(piece, at + 1) is Kind.REPS)
        named = piece[at].value in before and kind_at(piece, end) in (*_ENDS, *_LITTLE, Kind.EMPTY)
        return _Sets(None, 1, False, end, reps=piece[at].value) if named else None
    if kind is Kind.ALL and _all_but(piece, at):
        return _Sets(None, 1, True, at + 1)
    if kind is Kind.ALL and (kind_at(piece, at + 1) is Kind.EXCEPT or text_at(piece, at + 1) in ("but", "bar")):
        last = _past(piece, at + 2, (Kind.FILL,))
        named = kind_at(piece, last) in (Kind.LASTSET, Kind.LASTREP)
        return _Sets(None, 1, True, last + 1, but_last=True) if named else None
    count = whole_number(piece, at + 1, 2, 4) if kind_at(piece, at + 2) not in (Kind.KG, Kind.LB, Kind.S) else None
    counted = count is not None and kind_at(piece, at + 2) in (*_WORDS, *_LITTLE, *_ENDS, Kind.SETS)
    end = at + 1 + counted
    while kind_at(piece, end) in (Kind.SET, Kind.SETS) or text_at(piece, end) in ("one", "ones"):
        end += 1
    many = count if counted and count is not None else 1
    if kind is Kind.ORD and piece[at].value is not None:
        number = int(piece[at].value or 0)
        return _Sets(number, many if number == 1 else 1, False, end) if number == 1 or not counted else None
    if kind in (Kind.LASTSET, Kind.LASTREP) and "last" in text.split():
        return _Sets(None, many, False, end)
    if kind is Kind.THEREST or text in _OTHERS:
        return _Sets(None, many, True, end)
    return None


def _all_but(piece: Sequence[Mark], at: int) -> bool:
    """The `all` of `all @7 except the last @8`: all sets, of which some are told apart behind it."""
    effort = effort_at(piece, _past(piece, at + 1, _LITTLE), None)
    return effort is not None and _excepts(piece, effort.end)


def _excepts(piece: Sequence[Mark], at: int) -> bool:
    """Whether some sets are told apart here: `except the last`."""
    excepted = kind_at(piece, at) in _BUT or text_at(piece, at) == "but"
    return excepted and _sets_at(piece, _past(piece, at + 1, (Kind.FILL,))) is not None


def _is_effort(piece: Sequence[Mark], at: int, word: Kind) -> bool:
    """Whether a number on the scale of its word stands there, and counts nothing."""
    value = piece[at].value if kind_at(piece, at) is Kind.NUM else None
    if value is None or kind_at(piece, at + 1) in (
        Kind.X,
        Kind.REPS,
        Kind.KG,
        Kind.LB,
        Kind.SETS,
        Kind.SLASH,
        Kind.NUM,
    ):
        return False
    return value <= MOST_LEFT if word is Kind.RIR else EASIEST <= value <= HARDEST


def _past(piece: Sequence[Mark], at: int, kinds: Sequence[Kind]) -> int:
    while kind_at(piece, at) in kinds and text_at(piece, at) not in _OTHERS | NOTHING:
        at += 1
    return at


def _past_talk(piece: Sequence[Mark], at: int) -> int:
    """Behind the talk of `the 4 was all i had, nothing left`, where an effort follows it."""
    end = at
    while kind_at(piece, end) in _TALK:
        end += 1
    effort = effort_at(piece, end, None) if kind_at(piece, at) is Kind.WAS and end > at + 1 else None
    return end if effort is not None else at


def _talk_end(marks: Sequence[Mark], at: int) -> int | None:
    """Where the talk of `5 5 4, the 4 was all i had` ends, which tells no set anew; `None` where it is none."""
    sets = _sets_at(marks, at) if kind_at(marks, at) is Kind.NUM else None
    if sets is None or sets.reps is None or kind_at(marks, sets.end) is not Kind.WAS:
        return None
    end = sets.end + 1
    while kind_at(marks, end) in _SAYING and text_at(marks, end) not in ("so", "then"):
        end += 1
    rated = end < len(marks) and (
        effort_at(marks, end, None) is not None or effort_at(marks, _past_talk(marks, sets.end), None) is not None
    )
    ends = kind_at(marks, end) in (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.THEN, Kind.FILL)
    return end if ends and end > sets.end + 1 and not rated else None


def _felt_end(marks: Sequence[Mark], at: int) -> int | None:
    """Where `first three easy` ends, before the effort of another set: `first three easy last one rpe 9`."""
    sets = _sets_at(marks, at) if kind_at(marks, at) in (Kind.ORD, Kind.LASTSET) else None
    if sets is None or sets.first is None:
        return None
    end = sets.end
    counted = sets.count > 1
    if kind_at(marks, end) is Kind.NUM and sets.count == 1 and text_at(marks, end + 1) in _FELT:
        counted, end = True, end + 1
    while kind_at(marks, end) in (Kind.WAS, Kind.FILL) and text_at(marks, end) not in ("but", "so"):
        end += 1
    felt = any(m.text in _FELT for m in marks[sets.end : end])
    while kind_at(marks, end) in (Kind.COMMA, Kind.AND) or text_at(marks, end) in ("but", "so", "the"):
        end += 1
    ends = kind_at(marks, end) in (None, Kind.STOP, Kind.LINE) and counted
    return end if felt and (ends or _sets_at(marks, end) is not None) else None


_FELT = frozenset(["easy", "fine", "good", "ok", "okay", "smooth", "solid", "clean", "light", "fast", "hard", "tough",
                   "heavy", "slow", "comfortable", "great", "grand"])  # fmt: skip
_SAYING = (Kind.WAS, Kind.FILL, Kind.WORD, Kind.ALL, Kind.COULD)
_TALK = (Kind.WAS, Kind.FILL, Kind.WORD, Kind.ALL, Kind.COULD, Kind.COMMA, Kind.DASH)


def rate_named(draft: Draft, said: NamedEfforts) -> None:
    """Gives the sets that the message told last their efforts; asks where they are not so many."""
    record = draft.record
    last = record.last(said.place if said.place is not None else record.last_exercise)
    if last is None:
        return
    rows = [t.row for t in record.told if t.row.exercise == last.exercise and t.row.stage is Stage.WORK]
    keys = list(dict.fromkeys((p.exercise, p.set) for p in rows if p.set is not None))
    rated: set[SetKey] = set()
    if any((sets.first or 0) > len(keys) for sets, _, _ in said.efforts):
        keys = _numbered(keys)
    for sets, rir, at in said.efforts:
        if sets.reps is not None:
            alike = [k for k in keys if any(p.reps == sets.reps and (p.exercise, p.set) == k for p in rows)]
        chosen = _chosen(keys, sets, rated) if sets.reps is None else alike
        chosen = [k for k in chosen if k[0]]
        if len(chosen) != sets.count and not sets.rest:
            draft.doubt(Doubt(AskKind.EFFORT, *said.at))
            return
        rated.update(chosen)
        for key in chosen:
            record.change(key, lambda told, rir=rir, at=at: [_rated(t, rir, at) for t in told])  # type: ignore[misc]
    draft.note_replaced(said.at)


def _numbered(keys: Sequence[SetKey]) -> list[SetKey]:
    """The sets told, each at its number in the exercise: of `second and third both 275x5, third was rpe 9`."""
    told = {number: (name, number) for name, number in keys}
    return [told.get(n, ("", n)) for n in range(1, max(told, default=0) + 1)]


def _chosen(keys: Sequence[SetKey], sets: _Sets, rated: set[SetKey]) -> list[SetKey]:
    """The sets that words name among those that were told."""
    if sets.rest:
        return [k for k in keys if k not in rated]
    if sets.first is None:
        return list(keys[-sets.count :])
    return list(keys[sets.first - 1 : sets.first - 1 + sets.count])


def _rated(told: Told, rir: Decimal, at: Span) -> Told:
    if told.row.stage is not Stage.WORK:
        return told
    ground = Ground(Source.SAID, at)
    return replace(told, row=replace(told.row, rir=rir), grounds=replace(told.grounds, effort=ground))
