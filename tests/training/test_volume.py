"""Hard sets by muscle, tonnage, best sets."""

from decimal import Decimal

from bot.training.plan import LoadStyle, PlannedExercise, PlannedSet, RepRange
from bot.training.report import Performed, Side, Stage
from bot.training.units import Load, Unit
from bot.training.volume import Done, best_of, hard_sets, planned_sets, tonnage


def exercise(name: str, direct: str, indirect: str = "", sets: int = 1, **more: object) -> PlannedExercise:
    """An exercise that works these muscles."""
    style, sides = more.get("style", LoadStyle.TOTAL), more.get("sides", 1)
    assert isinstance(style, LoadStyle)
    assert isinstance(sides, int)
    planned = (PlannedSet(RepRange(8, 10)),) * sets
    return PlannedExercise(
        name,
        planned,
        muscles=tuple(direct.split()),
        muscles_indirect=tuple(indirect.split()),
        load_style=style,
        sides=sides,
    )


def done(of: PlannedExercise, load: str | None, reps: int, stage: Stage = Stage.WORK, side: Side | None = None) -> Done:
    """A set of it in kilograms."""
    return Done(of, Performed(of.name, 1, stage, Load.of(load, Unit.KG) if load else None, reps, None, side))


BENCH = exercise("Bench", "chest", "triceps shoulders", 4)
ROW = exercise("Row", "back", "biceps", 3)
CURL = exercise("Curl", "biceps", "", 2, style=LoadStyle.PER_HAND)
PUSHDOWN = exercise("Pushdown", "triceps", "", 2)


def test_the_fractional_count_worked_by_hand() -> None:
    """Direct 1, indirect 0.5 (Pelland et al. 2024, preprint): four bench, three row, two curl, two pushdown sets give
    chest 4, triceps 0.5 x 4 + 2 = 4, biceps 0.5 x 3 + 2 = 3.5, back 3, shoulders 2."""
    expected = {"chest": 4, "triceps": 4, "shoulders": 2, "back": 3, "biceps": Decimal("3.5")}
    assert planned_sets([BENCH, ROW, CURL, PUSHDOWN]) == expected
    reported = [done(BENCH, "60", 8)] * 4 + [done(ROW, "50", 8)] * 3 + [done(CURL, "12", 8)] * 2
    assert hard_sets([*reported, *[done(PUSHDOWN, "25", 8)] * 2]) == expected


def test_a_side_is_half_a_set_and_continuations_and_warm_ups_are_none() -> None:
    """Left and right make one set; a drop belongs to its work set; a warm-up is no hard set."""
    lunge = exercise("Lunge", "quadriceps", sides=2)
    sets = [done(lunge, "10", 8, side=Side.LEFT), done(lunge, "10", 8, side=Side.RIGHT), done(lunge, "10", 8)]
    sets += [done(lunge, "6", 8, Stage.DROP), done(lunge, "5", 8, Stage.WARMUP), done(lunge, "10", 4, Stage.MINI)]
    assert hard_sets(sets) == {"quadriceps": 2}


def test_tonnage_counts_both_hands_and_both_sides() -> None:
    """60 x 5 is 300; two dumbbells of 10 for 8 are 160, each side of them 320; body weight is not known."""
    lunge = exercise("Lunge", "quadriceps", style=LoadStyle.PER_HAND, sides=2)
    dips = exercise("Dip", "chest", style=LoadStyle.BODYWEIGHT)
    assert tonnage([done(BENCH, "60", 5)], Unit.KG) == 300
    assert tonnage([done(CURL, "10", 8)], Unit.KG) == 160
    assert tonnage([done(lunge, "10", 8)], Unit.KG) == 320
    assert tonnage([done(lunge, "10", 8, side=Side.LEFT)], Unit.KG) == 160
    assert tonnage([done(dips, "-20", 8), done(dips, None, 8)], Unit.KG) == 0
    assert tonnage([done(BENCH, "60", 5), done(BENCH, "20", 5, Stage.WARMUP)], Unit.KG) == 300
    assert tonnage([done(BENCH, "45.359237", 10)], Unit.LB) == 1000


def test_the_best_set_is_the_heaviest_then_the_longest() -> None:
    """One an exercise, warm-ups and drops aside, in the order met."""
    sets = [done(BENCH, "60", 5), done(BENCH, "62.5", 3), done(ROW, "50", 8), done(ROW, "50", 9)]
    sets.append(done(ROW, "70", 2, Stage.DROP))
    assert [(d.exercise.name, d.performed.reps) for d in best_of(sets)] == [("Bench", 3), ("Row", 9)]
