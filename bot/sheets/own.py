"""The sheet Exercises: a coach's own definitions."""

from functools import partial

from bot.sheets.cells import YES_NO_WORDS, read_choice, read_name, read_text
from bot.sheets.headings import Headed
from bot.sheets.known import EQUIPMENT, NEAREST, Known
from bot.sheets.layout import plain_name
from bot.sheets.prescriptions import read_seconds
from bot.sheets.problems import Fault, Problem
from bot.sheets.table import Cell, Row
from bot.sheets.taking import Taking
from bot.training.plan import LoadStyle, Measure, PlannedExercise, Region
from bot.training.shown import MEASURES, STYLES

LONGEST_NAME = 100
LONGEST_CUE = 300
MOST_OWN = 300
MOST_NAMES = 30
"""Aliases, or muscles, of one exercise."""
STYLE_WORDS = {shown: style for style, shown in STYLES.items()}
MEASURE_WORDS = {shown: measure for measure, shown in MEASURES.items()}
REGION_WORDS = {region.value: region for region in Region}
EQUIPMENT_WORDS = {word: word for word in EQUIPMENT}


def read_own(headed: Headed, known: Known) -> tuple[tuple[PlannedExercise, ...], list[Problem]]:
    """The definitions, and what is wrong; a row with a problem gives one as far as it goes."""
    taking = Taking(headed)
    own: list[PlannedExercise] = []
    names: set[str] = set()
    for row in taking.rows(MOST_OWN):
        name = taking.need(row, "name", partial(read_name, most=LONGEST_NAME), "Sled push")
        if name is None:
            continue
        if name in names:
            taking.wrong(Problem(Fault.NAMED_TWICE, name), row, "name")
            continue
        names.add(name)
        own.append(_definition(taking, row, name, known))
    return tuple(own), taking.problems


def _definition(taking: Taking, row: Row, name: str, known: Known) -> PlannedExercise:
    equipment = taking.take(row, "equipment", partial(read_choice, choices=EQUIPMENT_WORDS)) or ""
    style = taking.take(row, "style", partial(read_choice, choices=STYLE_WORDS))
    setup_s = taking.take(row, "setup", partial(read_seconds, heading=taking.headed.heading("setup")))
    return PlannedExercise(
        name=name,
        sets=(),
        aliases=taking.take(row, "aliases", read_aliases) or (),
        load_style=style or LoadStyle.TOTAL,
        sides=2 if taking.take(row, "sides", partial(read_choice, choices=YES_NO_WORDS)) else 1,
        measure=taking.take(row, "measure", partial(read_choice, choices=MEASURE_WORDS)) or Measure.REPS,
        region=taking.take(row, "region", partial(read_choice, choices=REGION_WORDS)),
        cue=taking.take(row, "cue", partial(read_text, most=LONGEST_CUE)) or "",
        muscles=_muscles(taking, row, "muscles", known),
        muscles_indirect=_muscles(taking, row, "indirect", known),
        equipment=equipment,
        setup_s=60 if setup_s is None else setup_s,
    )


def _muscles(taking: Taking, row: Row, key: str, known: Known) -> tuple[str, ...]:
    found: list[str] = []
    for text in taking.take(row, key, partial(read_list, commas=True)) or ():
        muscle, problem = known_muscle(text, known)
        found.append(muscle)
        if problem is not None:
            taking.wrong(problem, row, key)
    return tuple(dict.fromkeys(found))


def known_muscle(text: str, known: Known) -> tuple[str, Problem | None]:
    """The muscle in the spelling that is known; one that isn't stays as written, with a remark that does not stop."""
    if text in known.muscles:
        return text, None
    same = next((muscle for muscle in known.muscles if plain_name(muscle) == plain_name(text)), None)
    if same is not None:
        return same, None
    near = sorted(known.muscles, key=lambda muscle: -_shared(muscle, text))[:NEAREST]
    return text, Problem(Fault.MUSCLE_UNKNOWN, text, ", ".join(near), stops=False)


def _shared(one: str, other: str) -> int:
    """Pairs of letters that two words share: enough to rank a slip."""
    pairs = [{word[n : n + 2] for n in range(len(word) - 1)} for word in (plain_name(one), plain_name(other))]
    return len(pairs[0] & pairs[1])


def read_aliases(cell: Cell) -> tuple[str, ...] | Problem | None:
    """Names with semicolons between (or commas, where there is no semicolon)."""
    return read_list(cell, commas=";" not in cell.text)


def read_list(cell: Cell, *, commas: bool) -> tuple[str, ...] | Problem | None:
    """Names with semicolons or line breaks between, and commas where these are told to separate."""
    text = read_text(cell, 2_000)
    if not isinstance(text, str):
        return text
    for sign in "\n,|" if commas else "\n":
        text = text.replace(sign, ";")
    names = tuple(dict.fromkeys(name for part in text.split(";") if (name := " ".join(part.split()))))
    long = next((name for name in names if len(name) > LONGEST_NAME), None)
    if long is not None:
        return Problem(Fault.TOO_LONG, long, str(LONGEST_NAME))
    return names if len(names) <= MOST_NAMES else Problem(Fault.TOO_MANY, str(len(names)), str(MOST_NAMES))
