"""A session as planned but for what is told, and the rest of it as planned: what each sentence stores, set for set.

Common practice, no source: how people in a gym put it.
"""

from dataclasses import replace

import pytest

from bot.notation.answer import AskKind
from bot.notation.reading import read_message
from bot.training.plan import LoadStyle, PlannedExercise
from tests.notation.plans import request, row, sets

PLAN = (
    PlannedExercise("Pause Squat", sets("90", 4, 4), aliases=("squats",)),
    PlannedExercise("Romanian Deadlift", sets("80", 8, 8), aliases=("rdl",)),
    PlannedExercise("Hanging Leg Raise", sets(None, 10, 10, 2), load_style=LoadStyle.NONE, aliases=("hlr",)),
)
SQUATS = [f"Pause Squat#{n} 90x4" for n in (1, 2, 3)]
HEAVY = [f"Pause Squat#{n} 92.5x4" for n in (1, 2, 3)]
RDL = [f"Romanian Deadlift#{n} 80x8" for n in (1, 2, 3)]
HLR = [f"Hanging Leg Raise#{n} -x10" for n in (1, 2)]
SHORT = [*SQUATS[:2], "Pause Squat#3 90x3"]
SAID: tuple[tuple[str, list[str], tuple[str, ...]], ...] = (
    ("squats 92.5x4x3, everything else as planned", [*HEAVY, *RDL, *HLR], ()),
    ("squats 92.5x4x3, rest as planned", [*HEAVY, *RDL, *HLR], ()),
    ("squats 92.5x4x3. the rest of the session as planned", [*HEAVY, *RDL, *HLR], ()),
    ("squats 92.5x4x3, the rest all went as planned", [*HEAVY, *RDL, *HLR], ()),
    ("squats 92.5x4x3, others as planned", [*HEAVY, *RDL, *HLR], ()),
    ("squats 92.5x4x3, other two as planned", [*HEAVY, *RDL, *HLR], ()),
    ("squats 92.5x4x3, everything else as planned except hlr, skipped", [*HEAVY, *RDL], ("Hanging Leg Raise",)),
    ("squats 92.5x4x3, skipped hlr, everything else as planned", [*HEAVY, *RDL], ("Hanging Leg Raise",)),
    ("squats 90 4 4 3, everything else by the book", [*SHORT, *RDL, *HLR], ()),
    ("squats 92.5, everything else as planned", [*HEAVY, *RDL, *HLR], ()),
    ("only got 3 on the last squat, everything else as planned", [*SHORT, *RDL, *HLR], ()),
    ("squats 90x4x2, rest as planned", SQUATS, ()),
    ("everything as planned but the squats were 92.5", [*HEAVY, *RDL, *HLR], ()),
    ("everything as planned, just the squats were 92.5 instead of 90", [*HEAVY, *RDL, *HLR], ()),
    ("everything as planned except hlr 10 and 8", [*SQUATS, *RDL, HLR[0], "Hanging Leg Raise#2 -x8"], ()),
    ("everything as planned bar the hlr, skipped them", [*SQUATS, *RDL], ("Hanging Leg Raise",)),
    ("whole session as planned but i went 85 on rdl",
     [*SQUATS, *(f"Romanian Deadlift#{n} 85x8" for n in (1, 2, 3)), *HLR], ()),
    ("everything as planned, rdl felt heavy", [*SQUATS, *RDL, *HLR], ()),
    ("did everything as planned: squats, rdl and hlr", [*SQUATS, *RDL, *HLR], ()),
    ("squats, rdl, hlr. all as planned", [*SQUATS, *RDL, *HLR], ()),
    ("whole thing exactly as planned today, squats, rdl and hlr, every rep", [*SQUATS, *RDL, *HLR], ()),
    ("squats as planned, every set", SQUATS, ()),
    ("squats all as planned", SQUATS, ()),
)  # fmt: skip


@pytest.mark.parametrize(("text", "stored", "left_out"), SAID, ids=[s[0] for s in SAID])
def test_what_is_as_planned(text: str, stored: list[str], left_out: tuple[str, ...]) -> None:
    """No exercise of `everything else` is lost, and none is kept that was given up or told otherwise."""
    reading = read_message(replace(request(text), exercises=PLAN))
    assert reading.ask is None
    assert sorted(map(repr, reading.performed)) == sorted(repr(row(one)) for one in stored)
    assert reading.skipped == left_out


@pytest.mark.parametrize("text", ["all as planned", "all sets as planned", "all exactly as planned today"])
def test_all_of_what(text: str) -> None:
    """Where nothing is begun, `all` may be of the first exercise or of the session: both are offered."""
    reading = read_message(replace(request(text), exercises=PLAN))
    assert reading.ask is not None
    assert reading.ask.kind is AskKind.DONE
    assert [len(c.reading.performed) for c in reading.ask.choices] == [3, 8]


def test_a_range_is_asked_about() -> None:
    """`everything else as planned`, where the plan has a range of repetitions, does not say how many."""
    ranged = replace(PLAN[1], sets=sets("80", 8, 10))
    asked = replace(request("squats 92.5x4x3, everything else as planned"), exercises=(PLAN[0], ranged))
    reading = read_message(asked)
    assert reading.ask is not None
    assert not reading.performed


def test_all_of_the_one_that_the_chat_is_on() -> None:
    """`all as planned`, where the chat is on an exercise: that one."""
    asked = replace(request("all as planned", current="Romanian Deadlift"), exercises=PLAN)
    assert [p.exercise for p in read_message(asked).performed] == ["Romanian Deadlift"] * 3


OF_SOMETHING_ELSE = (
    "everything went to plan at work today. squats 90 4 4 4",
    "everything as planned at home? squats 90 4 4 4",
    "not everything went to plan. squats 90 4 4 3",
    "squats 90 4 4 4, is everything else as planned?",
    "squats 90 4 4 4, everything else as planned tomorrow",
    "squats 90 4 4 4. going to do the rest as planned later",
    "squats 90 4 4 4, rest times as planned",
    "squats 90 4 4 4, couldnt do everything as planned",
)


@pytest.mark.parametrize("text", OF_SOMETHING_ELSE)
def test_what_only_sounds_like_it(text: str) -> None:
    """What is of another thing, another day, denied or asked stores no exercise that was not told."""
    reading = read_message(replace(request(text), exercises=PLAN))
    assert {p.exercise for p in reading.performed} <= {"Pause Squat"}
