"""What ended a set, told with its repetitions: `gave up at 20`, `bailed after 4 at 95`, `legs went at 7 on the last`.

The words become fillers and the number one of repetitions; `on the last` then says of which set. A time of day ends no
set: `stopped at 7 today` beside nothing else stays as it is.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.minutes.past import is_past
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import PlannedExercise

_ENDED = frozenset(
    words(
        "quit stopped stop bailed racked reracked dumped dropped drop died tapped conked packed folded crumbled caved",
        "stalled called cut ended lost lose fell went gone opened slipped failing buckled collapsed fizzled faded",
        "broke broken stuck burned burnt gassed cooked petered flagged wall towel binned ditched crashed jacked gave",
        "down off go rack lasted steam gas puff juice energy breath fuel short blew exploded seized popped shot fried",
        "cramped cramp cramping give",
    )
)
"""Words of what ended a set, or of what there was no more of."""
_SUBJECTS = frozenset(
    words(
        "grip grips leg legs lungs form arm arms back foot feet hand hands belt strap straps wrist wrists shoulder bar",
        "shoulders hip hips core balance technique speed engine breath strength calf calves hamstring quad quads elbow",
        "elbows brain mind body knee knees glutes lats forearm forearms triceps biceps chest towel grippers",
        "fingers it put let apart",
    )
)
"""What gives out; another word before the end tells of something else: `dog went mad at 5`."""
_AHEAD = frozenset(words("at after"))
_LASTED = frozenset(["lasted"])
_TELLS = (Kind.FILL, Kind.WORD, Kind.SKIP, Kind.SKIPPED, Kind.WAS, Kind.DROP, Kind.DROPPED, Kind.FINISH, Kind.TO,
          Kind.GAP, Kind.WEAK, Kind.AT, Kind.DONE, Kind.NO, Kind.PLATES, Kind.WITH, Kind.OTHERTIME, Kind.TALKNUM,
          Kind.COULD)  # fmt: skip
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.AND, Kind.THEN, Kind.CLOSE, Kind.QUERY, Kind.OPEN,
         Kind.RPE, Kind.RIR, Kind.NOT)  # fmt: skip
_COUNTED = (Kind.REPS, Kind.SECONDS, Kind.METRES, Kind.M, Kind.S)
_OF_DAY = frozenset(
    words(
        "day night power gym session class training work shift match game train bus meeting lunch school kids practice",
        "bed home weekend pm am clock oclock music open close closes closing drove drive here we they he she",
    )
)
"""Words beside which a number behind `at` is a time of day."""
_TIMES = frozenset(words("pm am oclock today tonight tomorrow sharp ish"))
_MOST = 8
_WHICH = (Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.SET, Kind.LABEL)
"""Kinds that say which set ended: `cut the last set at 6`."""


def with_set_ends(marks: Sequence[Mark], exercises: Sequence[PlannedExercise]) -> list[Mark]:
    """The marks with the repetitions of such sets as a number of repetitions."""
    out = list(marks)
    most = max((s.reps.high for e in exercises for s in e.sets), default=0)
    loads = {abs(Decimal(s.load.thousandths) / 1000) for e in exercises for s in e.sets if s.load is not None}
    place = 1
    while place < len(out):
        mark = out[place]
        end = _story_end(out, place) if mark.kind is Kind.NUM else None
        if end is not None and _may_count(mark, most) and mark.value not in loads:
            out[place + 1 : end] = [replace(m, kind=Kind.FILL) for m in out[place + 1 : end]]
            out.insert(place + 1, Mark(Kind.REPS, "reps", mark.end, mark.end))
        start = _starts(out, place) if mark.kind is Kind.NUM and mark.value is not None else None
        if start is None or not _counts(out, place, most, loads) or not _is_beside_sets(out, start, place):
            place += 1
            continue
        if _is_told(out, start, place):
            out[start : place + 1] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in out[start : place + 1]]
            place += 1
            continue
        then = Kind.THEN if text_at(out, start).startswith("then ") else Kind.FILL
        out[start:place] = [
            m if m.kind in _WHICH else replace(m, kind=then if m is out[start] else Kind.FILL) for m in out[start:place]
        ]
        if kind_at(out, place + 1) not in _COUNTED:
            out.insert(place + 1, Mark(Kind.REPS, "reps", mark.end, mark.end))
        place += 2
    return out


def _story_end(marks: Sequence[Mark], place: int) -> int | None:
    """Where the story behind `got 8 before my foot slipped` ends; `None` where none is told."""
    joined = text_at(marks, place + 1) in _WHEN or kind_at(marks, place + 1) in (Kind.AND, Kind.THEN)
    if not joined or not set(text_at(marks, place - 1).split()) & _GOT:
        return None
    end = place + 2
    while kind_at(marks, end) in _TELLS and not _is_load(marks, end):
        end += 1
    said = [w for m in marks[place + 2 : end] for w in m.text.split()]
    return end if is_past(said) and kind_at(marks, end) in (*_ENDS, Kind.AT, Kind.WITH) else None


def _is_load(marks: Sequence[Mark], at: int) -> bool:
    return kind_at(marks, at) in (Kind.AT, Kind.WITH) and kind_at(marks, at + 1) is Kind.NUM


_GOT = frozenset(words("got did managed made hit only just"))
_WHEN = frozenset(words("before when until till til as cos because but"))


def _starts(marks: Sequence[Mark], place: int) -> int | None:
    """Where the words of an end before a number start; `None` where none are."""
    lead = place - 1
    while kind_at(marks, lead) is Kind.FILL and text_at(marks, lead) in _LITTLE:
        lead -= 1
    led = text_at(marks, lead).split()[-1:]
    lasted = led == ["to"] and bool(set(text_at(marks, lead - 1).split()) & _LASTED)
    stopped = text_at(marks, lead) in ("stopped at", "had to stop at")
    if not ((led and led[0] in _AHEAD) or lasted) or not (stopped or kind_at(marks, lead) in _TELLS):
        return None
    start = lead
    while start > 0 and start > place - _MOST and marks[start - 1].kind in (*_TELLS, *_WHICH):
        start -= 1
    said = [w for m in marks[start : lead + 1] for w in m.text.split()]
    other = any(m.kind is Kind.WORD and not set(m.text.split()) <= _ENDED | _SUBJECTS for m in marks[start:lead])
    return None if other or not set(said[:-1]) & _ENDED or set(said) & _OF_DAY else start


_LITTLE = frozenset(words("about just only like around roughly rep number the"))


def _counts(marks: Sequence[Mark], place: int, most: int, loads: set[Decimal]) -> bool:
    """Whether a number may be of repetitions, and ends what is told: no load, no time of day."""
    if not _may_count(marks[place], most):
        return False
    if kind_at(marks, place + 1) in _COUNTED:
        return True
    if marks[place].value in loads or text_at(marks, place + 1).split()[:1] in ([w] for w in _TIMES):
        return False
    after = kind_at(marks, place + 1)
    which = after in (Kind.AT, Kind.WITH, Kind.FOR, Kind.FILL, Kind.ORD, Kind.LASTSET, Kind.LASTREP)
    return after in _ENDS or which


def _may_count(mark: Mark, most: int) -> bool:
    return mark.value is not None and mark.value == int(mark.value) and 0 < mark.value <= most


def _is_beside_sets(marks: Sequence[Mark], start: int, place: int) -> bool:
    """Whether sets, an exercise or a set is told too, and the number is not how many sets there were."""
    others = [*marks[:start], *marks[place + 1 :]]
    counted = sum(m.kind in (Kind.X, Kind.FOR) for m in others) == marks[place].value
    return not counted and any(m.kind in _OF_SETS for m in others)


def _is_told(marks: Sequence[Mark], start: int, place: int) -> bool:
    """Whether a set tells the number too: `90x7, gave up at 7`, `racked at 6. 85x6`; not `90x7 then gave up at 7`."""
    alike = [i for i in range(1, len(marks)) if i != place and marks[i].value == marks[place].value]
    told = [i for i in alike if marks[i].kind is Kind.NUM and marks[i - 1].kind in (Kind.X, Kind.FOR)]
    after = any(i > place for i in told)
    before = [i for i in range(start) if marks[i].kind is Kind.NUM][-1:]
    return after or (before[:1] == told[-1:] != [] and kind_at(marks, start - 1) is not Kind.THEN)


_OF_SETS = (Kind.NUM, Kind.NAME, Kind.AGAIN, Kind.SAME, Kind.SAMELOAD, Kind.ORD, Kind.LASTSET, Kind.SET, Kind.LABEL)
