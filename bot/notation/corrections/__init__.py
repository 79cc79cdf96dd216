"""Which pieces of a message correct what is said already: `that was 62.5 not 60`, `sorry 8 reps`, `scrap that`."""

from collections.abc import Sequence

from bot.notation.corrections.told_new import tells_new
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.shaping import shape_marks
from bot.notation.tokens import Mark
from bot.notation.wholes import has_entry
from bot.notation.wordlist import words
from bot.training.report import Stage

CUES = frozenset((Kind.SORRY, Kind.MEANT, Kind.WAS, Kind.NOT))
_LATE = frozenset(["forgot", "forget", "late", "delay", "missed", "delayed", "slow"])
"""Words of an apology for something else than a number."""


def is_correction(piece: Sequence[Mark], record: Record, under: str | None) -> bool:
    """Whether a piece of the message corrects what is said already, rather than reporting a set."""
    if record.last() is None:
        return False
    marks = [m for m in piece if m.kind is not Kind.FILL]
    kinds = [m.kind for m in marks]
    if not any(m.kind in (Kind.NUM, Kind.BODY, Kind.EMPTY, Kind.CLOCK) for m in marks):
        return False
    cue = next((i for i, k in enumerate(kinds) if k in CUES), None)
    if kinds and kinds[0] is Kind.X and len(kinds) > 1 and kinds[1] is Kind.NUM and piece[0].text == "*":
        return piece[0].end == marks[1].start
    plain = [k for k in kinds if k is not Kind.COMMA]
    if plain[:1] == [Kind.NO] and plain[1:3] in ([Kind.X, Kind.NUM], [Kind.LEADX, Kind.NUM]) and len(plain) <= 4:
        return True
    if plain[:1] == [Kind.NO] and plain[1:2] == [Kind.NUM] and (len(plain) <= 4 or _is_denied_then_talk(piece)):
        return True
    names = [m for m in marks if m.kind in (Kind.NAME, Kind.WEAK) and m.names]
    if names and all(record.last(p) is None for m in names for p in m.names):
        return False
    if tells_new(piece, record):
        return False
    if _relabels(marks, record, under) or _is_of_one_side(piece, record):
        return True
    if _is_of_whole(marks, record):
        return True
    if cue is None:
        return False
    telling = (Kind.SET, Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.LABEL, Kind.NOT, Kind.ALL, Kind.DROP, Kind.MINI)
    entry = Kind.X in kinds or (Kind.FOR in kinds and kinds.count(Kind.NUM) > 1) or _is_next_whole(marks, record)
    if names and kinds[cue] is Kind.WAS and not any(k in telling for k in kinds) and entry:
        return False
    ahead = [m for m in marks[:cue] if m.kind in (Kind.NUM, Kind.CLOCK, Kind.BODY)]
    named = any(
        k in (Kind.SET, Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.LABEL, Kind.DROP, Kind.ALL) for k in kinds[:cue]
    )
    if ahead and not named and Kind.NOT not in kinds and Kind.WROTE not in kinds:
        return False
    if Kind.WARMUP in kinds and kinds[cue] is Kind.WAS:
        return False
    now = marks[cue].text in ("is", "are", "its") and not any(k in telling for k in kinds)
    if now and Kind.X in kinds[cue:]:
        return False
    wanted = Stage.DROP if Kind.DROP in kinds else Stage.MINI if Kind.MINI in kinds else None
    last = record.last(names[0].names[0]) if len(names) == 1 else record.last()
    stored = [] if last is None else record.rows((last.exercise, last.set or 0))
    if wanted is not None and kinds[cue] is Kind.WAS and not any(p.stage is wanted for p in stored):
        return False
    if kinds[cue] is Kind.SORRY and any(m.text in _LATE and not _tells_how(piece, i) for i, m in enumerate(piece)):
        return False
    near = [k for k in kinds[cue + 1 : cue + 4] if k not in (Kind.COMMA, *CUES, Kind.STOP, Kind.AT, Kind.FOR, Kind.TO)]
    following = marks[cue + 1 :]
    if not any(m.kind in (Kind.NUM, Kind.BODY, Kind.EMPTY, Kind.RPE, Kind.RIR, Kind.CLOCK) for m in following):
        return False
    if kinds[cue] is Kind.SORRY and near and near[0] in (Kind.WORD, Kind.GAP):
        return False
    if kinds[cue] is Kind.WAS:
        at = next(i for i, m in enumerate(piece) if m is marks[cue])
        direct = [m.kind for m in piece[at + 1 : at + 4] if m.kind is not Kind.FILL]
        told = (Kind.COMMA, Kind.WORD, Kind.NAME, Kind.OTHERTIME)
        direct_number = not direct or direct[0] not in told or Kind.NOT in kinds
        return direct_number and not _is_of_talk(piece, at) and not _is_judged(piece, at, named=named)
    return True


def _tells_how(piece: Sequence[Mark], place: int) -> bool:
    """The `slow` of `no wait 9 - bar felt slow`: how the set went, and no apology."""
    return place > 0 and piece[place - 1].text in ("felt", "feels", "was", "moved", "moving", "a bit", "bit", "too")


def _is_denied_then_talk(piece: Sequence[Mark]) -> bool:
    """`no 3 lol my belt broke`, `no 3, music was awful`: a number put right, and then talk without another."""
    number = next(i for i, m in enumerate(piece) if m.kind is Kind.NUM)
    apart = piece[number + 1].kind in (Kind.FILL, Kind.COMMA, Kind.DONE, Kind.GAP)
    talk = (Kind.FILL, Kind.COMMA, Kind.WORD, Kind.WAS, Kind.GAP, Kind.DONE, Kind.FEELS, Kind.AND, Kind.STOP)
    return apart and all(m.kind in talk for m in piece[number + 1 :])


def _is_judged(piece: Sequence[Mark], cue: int, *, named: bool) -> bool:
    """`that was easy so i went up to 95x8`: what was is how it went, and the number behind is of the next set.

    Of a set that is named (`set 2 was hard, only 8`) only what is drawn from it (`so`) and told whole is the next one.
    """
    number = next((i for i in range(cue + 1, len(piece)) if piece[i].kind in _NUMBERED), len(piece))
    said = [w for m in piece[cue + 1 : number] if m.kind is Kind.FILL for w in m.text.split()]
    judged = [w for w in said if w not in _BEFORE_NUMBER]
    if not judged or set(said) & _MISTAKES or any(m.kind is Kind.NOT for m in piece):
        return False
    return not named or (bool(set(said) & _HENCE) and has_entry(piece[number:]))


_NUMBERED = (Kind.NUM, Kind.BODY, Kind.CLOCK, Kind.EMPTY)
_HENCE = frozenset(words("so then hence thus therefore"))
_BEFORE_NUMBER = frozenset(words(
    "actually really only just about like maybe roughly probably more exactly precisely around approx nearer",
    "closer to at with for the a an all both my your our i think thought believe of in fact definitely clearly",
    "truly be been supposed meant also too still well um uh erm er hmm on each per side done did got had by it me",
    "mine that this them those these set sets rep reps even up there here today yes yeah no indeed sorry honestly",
    "tbh as is in total lol",
))  # fmt: skip
"""Words between `was` and the number that it tells: `it was actually only 8`."""


def _is_next_whole(marks: Sequence[Mark], record: Record) -> bool:
    """`side plank was 25 seconds each`, `pull-ups were minus 20 nine reps`: a set told whole, where some are open."""
    named = next((m.names[0] for m in marks if m.kind is Kind.NAME and len(m.names) == 1), None)
    kinds = [m.kind for m in marks]
    measured = any(k in (Kind.SECONDS, Kind.METRES, Kind.EACH) for k in kinds)
    whole = measured or (Kind.REPS in kinds and kinds.count(Kind.NUM) > 1)
    return named is not None and whole and bool(record.context(named).open_sets)


def _is_of_talk(piece: Sequence[Mark], cue: int) -> bool:
    """`bench is full of people, 95 for 5`: what was is told before the comma, and is no number."""
    comma = next((i for i in range(cue + 1, len(piece)) if piece[i].kind is Kind.COMMA), cue)
    said = {w for m in piece[cue + 1 : comma] for w in m.text.split()}
    numbers = (Kind.NUM, Kind.BODY, Kind.CLOCK, Kind.LABEL, Kind.ORD, Kind.RPE, Kind.RIR, Kind.NOT)
    plain = not any(m.kind in numbers for m in piece[cue + 1 : comma])
    talks = any(m.kind in (Kind.WORD, Kind.OTHERPERSON, Kind.GAP, Kind.TALKNUM) for m in piece[cue + 1 : comma])
    named = any(m.kind in (Kind.SET, Kind.LASTSET, Kind.ORD, Kind.LABEL, Kind.NUM) for m in piece[:cue])
    told = not named and len(said) >= _LEAST and has_entry(piece[comma:])
    return plain and (talks or told) and not said & _MISTAKES


_LEAST = 3
"""Words that tell what was, where a whole set follows."""


_MISTAKES = frozenset(["mistake", "error", "fault", "bad", "miscounted", "misread", "typo", "miscount", "wrong"])


_AFTERWARDS = frozenset(["oh", "forgot", "actually", "btw", "that", "there", "thinking", "earlier", "before"])
"""Words of what comes to mind afterwards."""


def _is_of_whole(marks: Sequence[Mark], record: Record) -> bool:
    """`on squats i did 72.5 for the last one`, where every set of squats is stored."""
    named = next((m.names[0] for m in marks if m.kind is Kind.NAME and len(m.names) == 1), record.last_exercise)
    whole = named is not None and record.last(named) is not None and not record.context(named).open_sets
    alone = sum(m.kind is Kind.NUM for m in marks) == 1 and not any(m.kind is Kind.X for m in marks)
    return whole and alone and any(m.kind is Kind.LASTSET for m in marks)


def _is_of_one_side(piece: Sequence[Mark], record: Record) -> bool:
    """`on the lunges the left leg only managed 10`: what one side of the set before really was."""
    named = next((m for m in piece if m.kind is Kind.NAME and len(m.names) == 1), None)
    last = record.last(record.last_exercise if named is None else named.names[0])
    sides = [m for m in piece if m.kind in (Kind.LEFT, Kind.RIGHT)]
    numbers = [m for m in piece if m.kind is Kind.NUM]
    only = any(m.text == "only" for m in piece)
    whole = last is not None and last.side is None and last.set is not None
    sided = last is not None and record.exercises[record.place_of(last.exercise) or 0].sides == 2
    late = bool({w for m in piece for w in m.text.split()} & _AFTERWARDS)
    place = None if last is None else record.place_of(last.exercise)
    lasts = any(m.kind in (Kind.LASTSET, Kind.LASTREP) for m in piece)
    late = late or (lasts and place is not None and not record.context(place).open_sets)
    return only and late and whole and sided and len(sides) == len(numbers) == 1


def _relabels(marks: Sequence[Mark], record: Record, under: str | None) -> bool:
    """Whether a piece starts with the number of a set that is stored: `set 2: 9`, `second set 62.5`."""
    names = [m for m in marks if m.kind is Kind.NAME]
    if len(names) == 1 and len(names[0].names) == 1:
        last = record.last(names[0].names[0])
    else:
        last = record.last(record.last_exercise)
        if names or last is None or under != last.exercise:
            return False
    if last is None:
        return False
    marks = [m for m in marks if m.kind is not Kind.NAME and m.text != "of"]
    shaped = [m for m in shape_marks(marks, True) if m.kind is not Kind.GAP]
    labels = [int(m.value) for m in shaped if m.kind is Kind.LABEL and m.value is not None]
    numbers = [m for m in shaped if m.kind is Kind.NUM]
    stages = {r.stage for n in labels for r in record.rows((last.exercise, n))}
    if any(m.kind is kind and stage not in stages for m in shaped for kind, stage in _STAGES):
        return False
    return (
        bool(shaped)
        and shaped[0].kind is Kind.LABEL
        and len(labels) == 1
        and 0 < len(numbers) <= 2
        and bool(record.rows((last.exercise, labels[0])))
    )


_STAGES = ((Kind.DROP, Stage.DROP), (Kind.MINI, Stage.MINI))


def takes_back(piece: Sequence[Mark]) -> bool:
    """`no, set 2 was`: another set is meant by what was just corrected."""
    kinds = [m.kind for m in piece if m.kind not in (Kind.FILL, Kind.COMMA, Kind.STOP, Kind.LINE)]
    return (
        kinds[:1] in ([Kind.NO], [Kind.SORRY])
        and Kind.SET in kinds
        and kinds.count(Kind.NUM) == 1
        and kinds[-1] is Kind.WAS
    )
