"""Whole sessions told at once, put together by chance from how people write them, with what they say known beforehand.

Common practice, no source: ways to write the sets of an exercise, what parts one from the next, and what is said
between. Each dump is a text, the plan and what is to be stored, left out and ended.
"""

import random
from collections.abc import Callable
from dataclasses import dataclass, field

from bot.notation.reading import Request
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.report import Performed, Stage
from bot.training.units import Load, Unit
from tests.notation.plans import NOW, sets


def _loaded(name: str, alias: str, load: str, reps: tuple[int, int], count: int = 3) -> PlannedExercise:
    return PlannedExercise(name, sets(load, *reps, count), aliases=(alias,))


def _in_hands(
    name: str, alias: str, load: str, reps: tuple[int, int], *, sides: int = 1, count: int = 2
) -> PlannedExercise:
    planned = sets(load, *reps, count)
    return PlannedExercise(name, planned, load_style=LoadStyle.PER_HAND, sides=sides, aliases=(alias,))


def _on_body(name: str, alias: str, reps: tuple[int, int], count: int) -> PlannedExercise:
    return PlannedExercise(name, sets("0", *reps, count), load_style=LoadStyle.BODYWEIGHT, aliases=(alias,))


def _held(name: str, alias: str, reps: tuple[int, int], *, sides: int = 1) -> PlannedExercise:
    planned, none, time = sets(None, *reps, 2), LoadStyle.NONE, Measure.SECONDS
    return PlannedExercise(name, planned, load_style=none, measure=time, sides=sides, aliases=(alias,))


BARBELL = (
    _loaded("Front Squat", "front squats", "80", (4, 6)),
    _loaded("Barbell Row", "rows", "60", (8, 10)),
    _loaded("Incline Bench Press", "incline", "57.5", (6, 8)),
    _loaded("Romanian Deadlift", "rdl", "90", (8, 10), 2),
    _loaded("Lat Pulldown", "pulldowns", "55", (10, 12)),
    _loaded("Leg Press", "leg press", "160", (10, 12), 2),
    _loaded("Close-Grip Bench Press", "close grip", "62.5", (6, 8)),
    _loaded("Cable Curl", "curls", "25", (10, 12), 2),
    _loaded("Hip Thrust", "thrusts", "110", (8, 10)),
    _loaded("Deadlift", "deads", "140", (3, 5)),
)
OTHERS = (
    _in_hands("Dumbbell Bench Press", "db bench", "24", (8, 10), count=3),
    _in_hands("Lateral Raise", "laterals", "8", (12, 15)),
    _in_hands("Hammer Curl", "hammers", "14", (10, 12)),
    _in_hands("Bulgarian Split Squat", "bulgarians", "16", (8, 10), sides=2),
    _in_hands("One-Arm Row", "one arm row", "26", (8, 10), sides=2),
    _on_body("Chin-Up", "chins", (6, 10), 3),
    _on_body("Push-Up", "push ups", (12, 20), 3),
    _on_body("Back Extension", "back ext", (12, 15), 2),
    _held("Plank", "planks", (30, 60)),
    _held("Side Plank", "side planks", (20, 40), sides=2),
    _held("Dead Hang", "hang", (20, 45)),
)
PARTS = (
    ". ",
    ", ",
    "; ",
    "\n",
    " / ",
    " then ",
    " and then ",
    " | ",
    "\n- ",
    " + ",
    " -> ",
    "\n\n",
    " ... ",
    ". next ",
    " and ",
)
ASIDES = (
    "", "", "", " (felt good)", " lol", " 💪", ", easy", " - bar felt slow", ". rested 3 min",
    ". some guy took my rack", " which was hard", ". grip went a bit", ", happy with that", " ✅",
    ". water break", " (music was awful)",
    ". had to wait for the cable", ". my mate jo was there too", ", last one slow",
)  # fmt: skip
EACH = (" each", " each side", " a side", " per side", "/side", " ea")
OPENINGS = ("", "", "", "hey, ", "today: ", "ok so ", "hi coach, ", "right, ", "session: ", "warmed up on the bike. ")
ENDINGS = ("", "", "", ". that was tough", " 😅", "\ncheers", ". thanks", ". see you thursday", ". off for food")
LEFT_OUT = (
    "skipped {}", "no {} today", "didn't do {}", "{} - skipped", "no time for {}", "left out {} (rack was busy)",
    "{} ❌", "skipped {}, too tired", "gave {} a miss", "had to skip {} bc the machine was broken", "{}: skipped",
    "never got to {}", "{} didnt happen", "binned {}",
)  # fmt: skip
FINISHED = ("that's me done", "done for today", "finished", "all done", "that's it for today")


@dataclass(slots=True)
class Dump:
    """A message with what it tells."""

    text: str = ""
    plan: list[PlannedExercise] = field(default_factory=list)
    stored: list[Performed] = field(default_factory=list)
    left_out: list[str] = field(default_factory=list)
    finished: bool = False

    @property
    def request(self) -> Request:
        return Request(self.text, Unit.KG, NOW, tuple(self.plan), (), None)


def dump(seed: int) -> Dump:
    """One dump of two to four exercises, one of them perhaps left out."""
    chance = random.Random(seed)
    some = chance.sample(BARBELL, chance.randint(1, 2)) + chance.sample(OTHERS, chance.randint(1, 3))
    chance.shuffle(some)
    told = Dump(plan=some)
    parts = [_part(one, told, chance) for one in some]
    listed = chance.random() < 0.12
    joined = "\n".join(f"{n}. {p}" for n, p in enumerate(parts, 1)) if listed else chance.choice(PARTS).join(parts)
    told.finished = not listed and chance.random() < 0.2
    ending = f"\n{chance.choice(FINISHED)}" if told.finished else "" if listed else chance.choice(ENDINGS)
    told.text = ("" if listed else chance.choice(OPENINGS)) + joined + ending
    return told


def _part(one: PlannedExercise, told: Dump, chance: random.Random) -> str:
    """What is said of one exercise; what it says goes into the dump."""
    called = chance.choice((one.name, one.name.lower(), one.aliases[0], one.aliases[0]))
    if len(told.plan) > 2 and told.stored and not told.left_out and chance.random() < 0.2:
        told.left_out.append(one.name)
        return chance.choice(LEFT_OUT).format(called)
    low, high = one.sets[0].reps.low, one.sets[0].reps.high
    step = 5 if one.measure is Measure.SECONDS else 1
    reps = [chance.choice(range(low, high + 1, step)) for _ in one.sets]
    if chance.random() < 0.25:
        reps = [reps[0]] * len(reps)
    load = one.sets[0].load
    for number, count in enumerate(reps, 1):
        told.stored.append(Performed(one.name, number, Stage.WORK, load, count, None, None))
    return chance.choice(ways_of(one)(called, load, [str(r) for r in reps], chance)) + chance.choice(ASIDES)


_Ways = Callable[[str, Load | None, list[str], random.Random], list[str]]


def ways_of(one: PlannedExercise) -> _Ways:
    if one.measure is Measure.SECONDS:
        return _of_time if one.sides == 1 else _of_time_each
    if one.load_style is LoadStyle.BODYWEIGHT:
        return _of_body
    if one.sides > 1:
        return _of_sides
    return _of_load if one.load_style is LoadStyle.TOTAL else _of_hands


def _of_load(name: str, load: Load | None, reps: list[str], chance: random.Random) -> list[str]:
    assert load is not None
    w, u = f"{load.amount.normalize():f}", chance.choice(("", "", "kg", " kg", " kilos"))
    first, count, spaced, listed = reps[0], len(reps), " ".join(reps), ", ".join(reps)
    joined = f"{', '.join(reps[:-1])} and {reps[-1]}"
    ways = [
        f"{name} " + ", ".join(f"{w}{u}x{r}" for r in reps), f"{name} " + " ".join(f"{w}x{r}" for r in reps),
        f"{name} {w}{u} {spaced}", f"{name} {w}{u}: {listed}", f"{name} {w}{u} {'/'.join(reps)}",
        f"{name} {w}{u} for {joined}", f"{name} {w}{u} x {listed}", f"{name} - {w}{u} - {spaced}",
        f"{name}: {listed} at {w}{u}", f"{name} {spaced} @ {w}kg", f"{w}{u} x {listed} on {name}",
        f"{name} " + " ".join(f"{r}x{w}kg" for r in reps), f"did {name} with {w}{u}, got {joined}",
        f"{name} {w}{u} " + " ".join(f"x{r}" for r in reps), f"{name} {w}{u}, {listed}", f"{name}, {w}{u} for {spaced}",
        f"{name} {w}{u} {first} reps, {', '.join(reps[1:])}",
    ]  # fmt: skip
    if len(set(reps)) == 1:
        ways += [f"{name} {count}x{first} @ {w}kg", f"{name} {w}{u}x{first}x{count}",
                 f"{count}x{first} {name} at {w}{u}",
                 f"{name} {count} sets of {first} at {w}{u}", f"{name} {w}{u} for {count} sets of {first}"]  # fmt: skip
    return ways


def _of_hands(name: str, load: Load | None, reps: list[str], chance: random.Random) -> list[str]:
    assert load is not None
    w, spaced = f"{load.amount.normalize():f}", " ".join(reps)
    own = [f"{name} {w}s x {', '.join(reps)}", f"{name} with the {w}s, {spaced}", f"{name} {w}s: {'/'.join(reps)}"]
    return own + [way for way in _of_load(name, load, reps, chance) if "@" not in way and " at " not in way]


def _of_sides(name: str, load: Load | None, reps: list[str], chance: random.Random) -> list[str]:
    assert load is not None
    w, each = (
        f"{load.amount.normalize():f}",
        chance.choice(EACH),
    )
    one, two = reps
    ways = [
        f"{name} {w}s {one}{each}, {two}{each}", f"{name} {w}x{one}{each}, {w}x{two}{each}",
        f"{name} {w} x {one}, {two}{each}", f"{name} {w}: {one} {two}{each}",
        f"{name} with {w}s {one}{each} then {two}{each}",
        f"{name} {w} {one} and {two}{each}", f"{name} {w}kg {one}/{two}{each}",
    ]  # fmt: skip
    if one == two:
        ways += [f"{name} {w}s {one}{each} x2", f"{name} {w}s {one}{each} twice", f"{name} 2x{one}{each} @ {w}kg"]
    return ways


def _of_body(name: str, _load: Load | None, reps: list[str], _chance: random.Random) -> list[str]:
    spaced, listed = " ".join(reps), ", ".join(reps)
    joined = f"{', '.join(reps[:-1])} and {reps[-1]}"
    return [
        f"{name} {spaced}", f"{name} {listed}", f"{name}: {'/'.join(reps)}", f"{name} bw x {listed}",
        f"{name} {joined}",
        f"{listed} {name}", f"{name} bw {spaced}", f"{name} " + " ".join(f"x{r}" for r in reps), f"did {joined} {name}",
        f"{name} - {spaced}", f"{name} got {listed}",
    ]  # fmt: skip


def _of_time(name: str, _load: Load | None, reps: list[str], _chance: random.Random, each: str = "") -> list[str]:
    one, two = reps
    return [
        f"{name} {one} sec{each}, {two} sec{each}", f"{name} {one}s{each} {two}s{each}",
        f"{name} {one}, {two} secs{each}",
        f"{name} {one}/{two}{each}", f"{name}: {one} and {two} seconds{each}",
        f"{name} {one} sec{each} then {two}{each}",
    ]  # fmt: skip


def _of_time_each(name: str, load: Load | None, reps: list[str], chance: random.Random) -> list[str]:
    return _of_time(name, load, reps, chance, chance.choice((" each side", " a side", " each")))
