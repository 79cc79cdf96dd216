"""Which words gave which value of a reading, or where it was taken from: the grounds of its sets, and of the rest."""

from collections.abc import Iterator, Sequence

from bot.notation.answer import Evidence, Meaning, Source, Span
from bot.notation.grounds import Ground, Told
from bot.notation.pain import PainReading
from bot.notation.printer import show_count, show_load
from bot.notation.script import Folded
from bot.training.plan import PlannedExercise

_OF_PAIN = ("pain", "urgent sign")
"""What words of the pain reader's count as that made it pain."""


def evidence_of_sets(told: Sequence[Told], folded: Folded, exercises: Sequence[PlannedExercise]) -> Iterator[Evidence]:
    """The evidence of each value of each set, set by set."""
    by_name = {e.name: e for e in exercises}
    for place, one in enumerate(told):
        for meaning, value, ground in _values(one, by_name[one.row.exercise]):
            if ground is not None:
                span = (0, 0) if ground.at is None else folded.span(*ground.at)
                yield Evidence(meaning, value, span, ground.source, place)


def _values(told: Told, exercise: PlannedExercise) -> Iterator[tuple[Meaning, str, Ground | None]]:
    row, grounds = told.row, told.grounds
    yield Meaning.NAME, row.exercise, grounds.exercise
    if row.set is not None:
        yield Meaning.SET_NUMBER, str(row.set), grounds.number
    yield Meaning.STAGE, row.stage.value, grounds.stage
    if row.load is not None:
        yield Meaning.LOAD, show_load(row.load, exercise.load_style), grounds.load
        yield Meaning.UNIT, row.load.unit.value, grounds.unit
    yield Meaning.REPS, show_count(row.reps, exercise.measure), grounds.reps
    if row.rir is not None:
        yield Meaning.EFFORT, f"rir {row.rir.normalize():f}", grounds.effort or Ground(Source.SAID, grounds.reps.at)
    if row.side is not None:
        yield Meaning.SIDE, row.side.value, grounds.side or Ground(Source.SAID, grounds.reps.at)
    if grounds.sets is not None:
        yield Meaning.SETS, str(grounds.count), grounds.sets


def evidence_of_pain(hurt: PainReading) -> Iterator[Evidence]:
    """The words that made it pain, and those of its score."""
    if hurt.pain is None:
        return
    score = None if hurt.pain.score is None else f"score {hurt.pain.score}"
    cues = [(item.start, item.end) for item in hurt.evidence if item.counts_as in _OF_PAIN]
    for span in dict.fromkeys(_whole(hurt, cue) for cue in cues or hurt.spans):
        yield Evidence(Meaning.PAIN, hurt.pain.where or "", span)
    for item in hurt.evidence:
        if item.counts_as == score:
            yield Evidence(Meaning.SCORE, str(hurt.pain.score), (item.start, item.end))


def _whole(hurt: PainReading, cue: Span) -> Span:
    """The words about a cue of pain, its place with them."""
    return next(((start, end) for start, end in hurt.spans if start <= cue[0] and cue[1] <= end), cue)
