"""Several exercises told at once with signs, lists and talk between them, each beside near ones that tell otherwise.

Common practice, no source: how people in a gym write it.
"""

from dataclasses import replace

import pytest

from bot.notation.answer import AskKind
from bot.notation.reading import read_message
from bot.training.plan import PlannedExercise
from tests.notation.plans import read, request, rows, sets

BENCH = tuple(f"Bench Press#{n} 60x{r}" for n, r in ((1, 5), (2, 5), (3, 4)))
ROW = tuple(f"Barbell Row#{n} 50x{r}" for n, r in ((1, 10), (2, 9), (3, 9)))
CHIN = ("Chin-Up#1 0x9", "Chin-Up#2 0x8", "Chin-Up#3 0x7")
SPLIT = ("Split Squat#1 16x9", "Split Squat#2 16x8")
DONE = tuple(f"Bench Press#{n} 60x5" for n in (1, 2, 3))
SAID: tuple[tuple[str, tuple[str, ...], tuple[str, ...], tuple[str, ...]], ...] = (
    # typed, done before, stored, left out
    ("bench 60: 5 5 4 -> row 50: 10 9 9", (), (*BENCH, *ROW), ()),
    ("bench 60 5 5 4. grip went a bit -> row 50 10 9 9", (), (*BENCH, *ROW), ()),
    ("bench 60 → 5, 5, 4 / row 50 → 10, 9, 9", (), (*BENCH, *ROW), ()),
    ("bench 60 · 5 · 5 · 4 — row 50 · 10 · 9 · 9", (), (*BENCH, *ROW), ()),
    ("bench 60x5 60x5 60x4 ✅ row skipped, back fried. chins 9 8 7", (), (*BENCH, *CHIN), ("Barbell Row",)),
    ("bench 60 5 5 4 -> row - skipped -> chins 9 8 7", (), (*BENCH, *CHIN), ("Barbell Row",)),
    ("bench 60 5 5 4 -> row ❌ -> chins 9 8 7", (), (*BENCH, *CHIN), ("Barbell Row",)),
    ("bench 60 5 5 4 and no row today and chins 9 8 7", (), (*BENCH, *CHIN), ("Barbell Row",)),
    ("bench 60 5 5 4 and row didnt happen and chins 9 8 7", (), (*BENCH, *CHIN), ("Barbell Row",)),
    ("bench 60 5 5 4. row didnt happen\n9, 8, 7 chins", (), (*BENCH, *CHIN), ("Barbell Row",)),
    ("bench 60 5 5 4. had to skip row bc the machine was broken. chins 9 8 7", (), (*BENCH, *CHIN), ("Barbell Row",)),
    ("bench 60 5 5 4 + 9, 8, 7 chins", (), (*BENCH, *CHIN), ()),
    ("bench 60 5 5 4. rested 3 min + 9, 8 and 7 chins", (), (*BENCH, *CHIN), ()),
    ("bench 60 5 5 4. some guy took my rack + row 50 10/9/9", (), (*BENCH, *ROW), ()),
    ("my mate jo was there too / row 50 10/9/9", (), ROW, ()),
    ("bench 60 5 5 4. 50 x 10, 9, 9 on row (last one rpe 8)", (), (*BENCH, *ROW[:2], f"{ROW[2]} rir 2"), ()),
    ("1. bench 60 5 5 4\n2. did 9, 8 and 7 chins ✅\n3. 50kg x 10, 9, 9 on row", (), (*BENCH, *CHIN, *ROW), ()),
    ("warmed up on the bike. bench 5 5 4 @ 60kg", (), BENCH, ()),
    ("warmed up. split squat 16s 9 each twice", (), ("Split Squat#1 16x9", "Split Squat#2 16x9"), ()),
    ("warm up 40x8, then bench 60 5 5 4. split squat 16s 9 each twice", (),
     ("Bench Press#0 40x8 warmup", *BENCH, "Split Squat#1 16x9", "Split Squat#2 16x9"), ()),
    ("session: 9, 8, 7 chins", (), CHIN, ()),
    ("bench 60 5/5/4, felt heavy today. row 50 10 9 9", (), (*BENCH, *ROW), ()),
    ("row 50: 10/9/9 ✅", (), ROW, ()),
    ("split squat 16kg 9/8 each", (), SPLIT, ()),
    ("split squat 16s 9 each/8 each", (), SPLIT, ()),
    ("split squat 16s 9 and 8 each side", (), SPLIT, ()),
    ("bench 60x5 60x5 failed the 5th on the third so 4", (), (*BENCH[:2], f"{BENCH[2]} rir 0"), ()),
    ("bench 60x5 60x5, failed the 5th rep on the last set so 60x4. chins 9 8 7", (),
     (*BENCH[:2], f"{BENCH[2]} rir 0", *CHIN), ()),
    ("bench 60 5 5 4. row 50 10 9 9. all of these had about 2 left", (),
     tuple(f"{s} rir 2" for s in (*BENCH, *ROW)), ()),
    ("last bench was rpe 9. row 50 10 9 9", DONE, ("Bench Press#3 60x5 rir 1", *ROW), ()),
    ("only managed the first two. bench 60 5 5 4, row 50 10 9 9", (), (*BENCH, *ROW), ()),
    ("bench 60 5 5 4 in the next rack to some giant", (), BENCH, ()),
    ("bench 60x5 60x5, only 4 on the third, still 60", (), BENCH, ()),
    ("20 min queue for one bench is a joke. row 50 10 9 9", (), ROW, ()),
    ("strap snapped, clean in two. row 50 10 9 9", (), ROW, ()),
    ("the coach is trying to kill me 60x5", (), BENCH[:1], ()),
    ("u are actually trying to kill me lol 60x5", (), BENCH[:1], ()),
    ("chins 9 8 7, skipped bench, row, 50 kg for 10 9 9", (), (*CHIN, *ROW), ("Bench Press",)),
)  # fmt: skip


@pytest.mark.parametrize(("text", "done", "stored", "left_out"), SAID, ids=[s[0] for s in SAID])
def test_several_told_at_once(
    text: str, done: tuple[str, ...], stored: tuple[str, ...], left_out: tuple[str, ...]
) -> None:
    """Set for set what is told, and no exercise lost between two signs."""
    reading = read(text, *done)
    assert reading.ask is None
    assert sorted(map(repr, reading.performed)) == sorted(map(repr, rows(*stored)))
    assert reading.skipped == left_out


NEAR: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("60x5 > 50x6 on bench", ("Bench Press#1 60x5", "Bench Press#1 50x6 drop")),
    ("my mate does 140x5 / bench 100x5 like nothing", ()),
    ("split squat 16kg 9/8", ("Split Squat#1 16x9 left", "Split Squat#1 16x8 right")),
    ("3/3 done", ()),
    ("57.5x6, 60, felt grim", ()),
    ("60x5 lost 10 minutes to chat", ("Bench Press#1 60x5",)),
)


@pytest.mark.parametrize(("text", "stored"), NEAR, ids=[n[0] for n in NEAR])
def test_near_ones_are_no_dumps(text: str, stored: tuple[str, ...]) -> None:
    """What is near to it stores no more than it tells; where nothing is stored of sets, it is asked about or talk."""
    reading = read(text)
    assert reading.performed == rows(*stored)
    assert reading.minutes is None


def test_more_than_the_plan_has_is_asked_about() -> None:
    """Two loads with their repetitions that no exercise has room for are never dropped in silence."""
    reading = read("60 x 5 5 5, 61 x 5 5 5, 62 x 5 5", current="Bench Press")
    assert reading.ask is not None


def test_a_bare_list_that_may_begin_with_its_load() -> None:
    """`20 20 18`, where two sets with 20 are planned, is asked about; `20 18 and 17` says which stands apart."""
    pull = PlannedExercise("Face Pull", sets("20", 15, 20, 2))
    asked = replace(request(""), exercises=(pull,))
    bare = read_message(replace(asked, text="face pull 20 20 18"))
    apart = read_message(replace(asked, text="face pull 20 18 and 17"))
    assert bare.ask is not None
    assert bare.ask.kind is AskKind.ORDER
    assert apart.performed == rows("Face Pull#1 20x18", "Face Pull#2 20x17")
