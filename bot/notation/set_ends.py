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
        "cramped cramp cramping give pulled knocked chucked bottled sacked drew shut",
    )
)
"""Words of what ended a set, or of what there was no more of."""
_SUBJECTS = frozenset(
    words(
        "grip grips leg legs lungs form arm arms back foot feet hand hands belt strap straps wrist wrists shoulder bar",
        "shoulders hip hips core balance technique speed engine breath strength calf calves hamstring quad quads elbow",
        "elbows brain mind body knee knees glutes lats forearm forearms triceps biceps chest towel grippers",
        "fingers it put let apart head plug line",
    )
)
"""What gives out; another word before the end tells of something else: `dog went mad at 5`."""
_BY_A_HURT = frozenset(words("finished finish left settled capped"))
"""Beside a hurt these end a set, too; else they may tell a time of day: `finished at 7`."""
_FINISHED = ("finished at", "finished on")
_AHEAD = frozenset(words("at after on"))
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
        "bed home weekend pm am alarm clock oclock music open close closes closing drove drive here we they he she",
    )
)
"""Words beside which a number behind `at` is a time of day."""
_TIMES = frozenset(words("pm am oclock today tonight tomorrow sharp ish"))
_MOST = 8
"""Marks that are looked back at for the words of a set that ended."""
_WHICH = (Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.SET, Kind.LABEL)
"""Kinds that say which set ended: `cut the last set at 6`."""


def with_set_ends(marks: Sequence[Mark], exercises: Sequence[PlannedExercise]) -> list[Mark]:
    """The marks with the repetitions of such sets as a number of repetitions."""
    out = list(marks)
    if not any(_may_end(out, place) for place in range(1, len(out))):
        return out
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
        hurt = start is not None and _by_a_hurt(out, place)
        beside = start is not None and (hurt or _is_beside_sets(out, start, place))
        if start is None or not _counts(out, place, most, loads) or not beside:
            place += 1
            continue
        if _is_told(out, start, place) or _is_inside(out, start, place):
            out[start : place + 1] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in out[start : place + 1]]
            place += 1
            continue
        then = Kind.THEN if text_at(out, start).startswith("then ") else Kind.FILL
        out[start:place] = [
            m if m.kind in (*_WHICH, Kind.NAME) else replace(m, kind=then if m is out[start] else Kind.FILL)
            for m in out[start:place]
        ]
        if kind_at(out, place + 1) not in _COUNTED:
            out.insert(place + 1, Mark(Kind.REPS, "reps", mark.end, mark.end))
        place += 2
    return out


def _may_end(marks: Sequence[Mark], place: int) -> bool:
    """Whether a story may end at a number, or be told behind it."""
    if marks[place].kind is not Kind.NUM:
        return False
    return _story_end(marks, place) is not None or (
        marks[place].value is not None and _starts(marks, place) is not None
    )


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
    stopped = text_at(marks, lead) in ("stopped at", "had to stop at", *_FINISHED)
    then = led == ["so"] and kind_at(marks, lead - 1) is Kind.FINISH  # `stopped there so 3`
    if not ((led and led[0] in _AHEAD) or lasted or then) or not (stopped or kind_at(marks, lead) in _TELLS):
        return None
    start = lead
    while start > max(0, place - _MOST) and (
        marks[start - 1].kind in (*_TELLS, *_WHICH) or (led != ["after"] and _is_ended(marks, start - 1))
    ):
        start -= 1
    said = [w for m in marks[start : lead + 1] for w in m.text.split()]
    hurt = _by_a_hurt(marks, place)
    if text_at(marks, lead) in _FINISHED and not hurt and not _is_told(marks, lead, place):
        return None
    told = _ENDED | _SUBJECTS | (_HURT | _BY_A_HURT if hurt else frozenset())
    told |= _WISHED | _WISHING
    other = any(m.kind is Kind.WORD and not set(m.text.split()) <= told for m in marks[start:lead])
    ended = _ENDED | _BY_A_HURT if hurt or text_at(marks, lead) in _FINISHED else _ENDED
    if led[0] == "on" and not set(said[-4:-1]) & _ENDED_ON:
        return None
    if other or not set(said[:-1]) & ended or set(said) & _OF_DAY or _may_arrive(marks, said[:-1]):
        return None
    return start


def _may_arrive(marks: Sequence[Mark], said: Sequence[str]) -> bool:
    """`pulled up at 10`, where no set goes on without a count: when somebody got there, and no end of a set."""
    arrives = "pulled" in said and not {"plug", "pin", "out"} & set(said)
    return arrives and not any(m.kind in (Kind.SAMELOAD, Kind.SAME, Kind.AGAIN) for m in marks)


def _is_ended(marks: Sequence[Mark], place: int) -> bool:
    """The exercise of `had to stop the leg press at 8`, the words of `bailed on the third at 180m`."""
    if marks[place].kind is Kind.FAILED:
        return marks[place].text.startswith("bail")
    if marks[place].kind is not Kind.NAME:
        return False
    before = place - 1
    while kind_at(marks, before) is Kind.FILL and text_at(marks, before) in ("the", "my"):
        before -= 1
    return bool(set(text_at(marks, before).split()[-2:]) & _ENDING_IT)


_ENDING_IT = frozenset(words("stop stopped cut quit rack racked ended end reracked bail dump dumped drop dropped"))
_ENDED_ON = frozenset(words("ended finished stopped quit bailed racked finish"))
"""Before `on 8` these end a set; `grip went on 8` tells of a repetition."""


def _by_a_hurt(marks: Sequence[Mark], place: int) -> bool:
    """`knee hurts so i ended at 8`, `hip pinched, cut it at 6`: what hurt is why a set ended there."""
    hurts = [i for i in range(place) if set(marks[i].text.split()) & _HURT]
    joined = marks[hurts[-1] + 1 : place] if hurts else ()
    return any(m.text.split()[:1] == ["so"] or m.kind in (Kind.COMMA, Kind.AND, Kind.THEN) for m in joined)


_HURT = frozenset(
    words(
        "hurt hurts hurting pain painful sore ache ached aches aching pinch pinched pinches pinching twinge twinged",
        "niggle niggled tweak tweaked grabbed grumbled grumbling stung sting cramp cramped spasmed spasm pulled tugged",
        "sharp numb tingled tingling dizzy faint stabbed nipped jabbed complained popped clicked clicking gave flared",
        "ouch ow pulling catching burning burned funny weird off wrong moaned moaning barked barking bad angry cranky",
    )
)
"""How a body hurts, in the words before why a set ended."""


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
    within = [m for m in marks[start:place] if m.kind in (Kind.NAME, Kind.ORD, Kind.LASTSET)]
    others = [*marks[:start], *within, *marks[place + 1 :]]
    counted = sum(m.kind in (Kind.X, Kind.FOR) for m in others) == marks[place].value
    return not counted and any(m.kind in _OF_SETS for m in others)


def _is_told(marks: Sequence[Mark], start: int, place: int) -> bool:
    """Whether a set tells the number too: `90x7, gave up at 7`, `racked at 6. 85x6`; not `90x7 then gave up at 7`."""
    alike = [i for i in range(1, len(marks)) if i != place and marks[i].value == marks[place].value]
    told = [i for i in alike if marks[i].kind is Kind.NUM and marks[i - 1].kind in (Kind.X, Kind.FOR)]
    after = any(i > place for i in told)
    before = [i for i in range(start) if marks[i].kind is Kind.NUM][-1:]
    return after or (before[:1] == told[-1:] != [] and kind_at(marks, start - 1) is not Kind.THEN)


def _is_inside(marks: Sequence[Mark], start: int, place: int) -> bool:
    """`90x9, should have stopped at 8`, `90x9, form went at 7`: within the set that was told, whose end it was not."""
    told = next((m for m in reversed(marks[:start]) if m.kind is Kind.NUM), None)
    linked = told is not None and told.value is not None and any(m.kind is Kind.NUM for m in marks[:start][:-1])
    if told is None or not linked or (told.value or 0) <= (marks[place].value or 0):
        return False
    said = [w for m in marks[start:place] for w in m.text.split()]
    ended = next((i for i, w in enumerate(said) if w in _ENDED), len(said))
    wished = [i for i, w in enumerate(said[:ended]) if w in _WISHED]
    return (bool(wished) and set(said[wished[-1] + 1 : ended]) <= _WISHING) or bool(set(said[:ended]) & _QUALITIES)


_WISHED = frozenset(words("should shoulda shouldve shouldof wish wished ought nearly almost wanted meant going gonna"))
_WISHING = frozenset(words("have had of ve to i id it just probably really maybe be been honestly me well that"))
_QUALITIES = frozenset(words("form technique speed"))
"""What may go while the set goes on."""
_OF_SETS = (Kind.NUM, Kind.NAME, Kind.AGAIN, Kind.SAME, Kind.SAMELOAD, Kind.ORD, Kind.LASTSET, Kind.SET, Kind.LABEL)
