"""Any programme that a coach can write, for properties."""

from decimal import Decimal

from hypothesis import strategies as st

from bot.sheets.known import known_exercises
from bot.sheets.own import known_muscle
from bot.training.people import MuscleTarget, Programme, WeekChange, Workout
from bot.training.plan import (
    Drop,
    LoadRule,
    LoadStyle,
    Measure,
    Mini,
    PlannedExercise,
    PlannedSet,
    Region,
    RepRange,
    Tempo,
)
from bot.training.units import Load, Unit

KNOWN = known_exercises()
NASTY = (
    "=1+1",
    "+5",
    "-20 kg",
    "@home",
    "'",
    "'quoted",
    "none",
    "None",
    "sheet",
    "Sheet:",
    "_x0041_",
    "a;b",
    "a, b",
    "8-10",
)
_LETTERS = st.characters(
    codec="utf-8", exclude_categories=("Cc", "Cs", "Cn", "Co", "Zl", "Zp"), exclude_characters="\u200b\ufeff\u00a0"
)


def texts(most: int) -> st.SearchStrategy[str]:
    """Text as people write it, line breaks and what looks like formulas included, without spaces around it."""
    plain = st.text(_LETTERS | st.just("\n"), max_size=min(most, 40)).map(lambda text: text.strip(" \n"))
    return plain | st.sampled_from(NASTY)


def names(most: int = 40) -> st.SearchStrategy[str]:
    """A text on one line with single spaces, not empty."""
    return texts(most).map(lambda text: " ".join(text.split())).filter(bool)


def lists(most: int) -> st.SearchStrategy[tuple[str, ...]]:
    """Names in a cell: no sign that separates them, none begun by the sign that is taken off."""
    clean = names(20).map(lambda n: " ".join(n.translate(str.maketrans(";,|", "   ")).split()))
    return st.lists(clean.filter(lambda n: n and n[0] != "'"), max_size=most, unique=True).map(tuple)


def spans(low: int, high: int) -> st.SearchStrategy[tuple[int, int]]:
    """Two numbers in order."""
    return st.tuples(st.integers(low, high), st.integers(low, high)).map(lambda t: (min(t), max(t)))


HALVES = st.integers(0, 20).map(lambda n: Decimal(n) / 2)
LOADS = st.builds(Load, st.integers(0, 400_000), st.sampled_from(Unit))
DROPS = st.builds(Drop, st.integers(1, 5), spans(1, 90))
MINIS = st.builds(Mini, st.integers(1, 20), spans(1, 120))
TEMPI = st.builds(Tempo, st.integers(0, 20), st.integers(0, 20), st.none() | st.integers(0, 20), st.integers(0, 20))


def sets(style: LoadStyle) -> st.SearchStrategy[PlannedSet]:
    """A set of an exercise whose loads mean this."""
    match style:
        case LoadStyle.NONE:
            loads: st.SearchStrategy[Load | None] = st.none()
        case LoadStyle.BODYWEIGHT:
            loads = st.none() | st.builds(Load, st.integers(-60_000, 60_000), st.sampled_from(Unit))
        case LoadStyle.TOTAL | LoadStyle.PER_HAND:
            loads = st.none() | LOADS
    return st.builds(
        PlannedSet,
        reps=spans(1, 200).map(lambda t: RepRange(*t)),
        rir=st.none() | HALVES,
        load=loads,
        rest_s=st.none() | st.integers(0, 1_800),
        finish=st.none() | DROPS | MINIS,
        percent=st.none() | st.integers(4, 400).map(lambda n: Decimal(n) / 4),
        tempo=st.none() | TEMPI,
        cue=texts(100),
    )


@st.composite
def definitions(draw: st.DrawFn) -> PlannedExercise:
    """An exercise without sets: one of the catalogue, or a coach's own."""
    if draw(st.booleans()):
        found = KNOWN.find(draw(st.sampled_from(KNOWN.names)))
        assert found is not None
        return found
    muscles = lists(4).map(lambda names: tuple(dict.fromkeys(_spelt(name) for name in names)))
    return PlannedExercise(
        name=draw(names()),
        sets=(),
        aliases=draw(lists(3)),
        load_style=draw(st.sampled_from(LoadStyle)),
        sides=draw(st.sampled_from((1, 2))),
        measure=draw(st.sampled_from(Measure)),
        region=draw(st.none() | st.sampled_from(Region)),
        muscles=draw(muscles),
        muscles_indirect=draw(muscles),
        equipment=draw(st.sampled_from(("", "bar", "dumbbells", "stack", "body", "none"))),
        setup_s=draw(st.integers(0, 600)),
    )


def _spelt(muscle: str) -> str:
    return known_muscle(muscle, KNOWN)[0]


@st.composite
def exercises(draw: st.DrawFn, definition: PlannedExercise) -> PlannedExercise:
    """The exercise as prescribed somewhere, told otherwise in what a programme may say itself."""
    blocks = draw(st.lists(st.tuples(sets(definition.load_style), st.integers(1, 4)), min_size=1, max_size=3))
    return PlannedExercise(
        name=definition.name,
        sets=tuple(planned for planned, times in blocks for _ in range(times)),
        aliases=definition.aliases,
        load_style=definition.load_style,
        sides=draw(st.sampled_from((definition.sides, 1, 2))),
        measure=draw(st.sampled_from((definition.measure, *Measure))),
        region=definition.region,
        cue=draw(texts(100)),
        pair=draw(st.just("") | names(3).filter(lambda n: len(n) <= 10)),
        muscles=definition.muscles,
        muscles_indirect=definition.muscles_indirect,
        equipment=definition.equipment,
        load_rule=draw(st.sampled_from(LoadRule)),
        priority=draw(st.integers(1, 3)),
        setup_s=definition.setup_s,
        step=draw(st.none() | LOADS),
        note=draw(texts(200)),
        link=draw(st.sampled_from(("", "https://example.org/a?b=c&d=%20", "http://example.org/x#y"))),
    )


@st.composite
def workouts(draw: st.DrawFn, title: str, pool: list[PlannedExercise]) -> Workout:
    """A workout of some of these exercises, each once."""
    chosen = draw(st.lists(st.sampled_from(pool), min_size=1, max_size=4, unique_by=lambda e: e.name))
    return Workout(title, tuple(draw(exercises(d)) for d in chosen), draw(st.none() | st.integers(1, 600)))


def changes(made: tuple[Workout, ...]) -> st.SearchStrategy[WeekChange]:
    """Weeks that are otherwise, of this programme's workouts and exercises."""
    return st.builds(
        WeekChange,
        weeks=st.sets(st.integers(1, 104), min_size=1, max_size=5).map(lambda weeks: tuple(sorted(weeks))),
        workout=st.sampled_from(["", *(w.title for w in made)]),
        exercise=st.sampled_from(["", *(e.name for w in made for e in w.exercises)]),
        fewer_sets=st.integers(0, 20),
        sets_percent=st.none() | st.integers(1, 100),
        load_percent=st.none() | st.integers(20, 200).map(lambda n: Decimal(n) / 2),
        rir=st.none() | HALVES,
        note=texts(100),
    )


@st.composite
def programmes(draw: st.DrawFn) -> Programme:
    """Any programme in the form in which a sheet gives one: definitions by name, titles different."""
    pool = draw(st.lists(definitions(), min_size=1, max_size=5, unique_by=lambda e: e.name))
    titles = draw(st.lists(names(), min_size=1, max_size=3, unique=True))
    made = tuple(draw(workouts(title, pool)) for title in titles)
    muscles = draw(st.lists(st.sampled_from(KNOWN.muscles), max_size=4, unique=True))
    return Programme(
        id=draw(st.just("") | names()),
        title=draw(names()),
        workouts=made,
        note=draw(texts(200)),
        changes=tuple(draw(st.lists(changes(made), max_size=3))),
        block_weeks=draw(st.none() | st.integers(1, 104)),
        targets=tuple(MuscleTarget(muscle, *draw(spans(0, 60))) for muscle in muscles),
    )
