"""Every value that a reading stores says which words gave it, or where it was taken from."""

import re
from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.notation.answer import Evidence, Meaning, Reading, Source
from bot.notation.reading import Request, read_message
from bot.notation.spoken import NUMBER_WORDS
from bot.notation.wordlist import words
from tests.notation.judging import rows_of
from tests.notation.plans import read, request

B1, B2 = "Bench Press#1 60x5", "Bench Press#2 60x5"


def _told(text: str, reading: Reading, row: int | None = 0) -> dict[str, str]:
    """Of one set (or of what is of no set): meaning by meaning its words, or in angle brackets where it is from."""
    return {
        e.meaning.value: text[slice(*e.span)] if e.source is Source.SAID else f"<{e.source.value}>"
        for e in reading.evidence
        if e.row == row
    }


SETS = [
    ("60x5@9", (), {"name": "<under_way>", "set_number": "<next>", "stage": "<plan>", "load": "60", "unit": "<own>",
                    "reps": "5", "effort": "@9"}),
    ("62.5 kg for 5 reps, 2 left", (), {"load": "62.5 kg", "unit": "kg", "reps": "5 reps", "effort": "2 left"}),
    ("sixty for five at nine", (), {"load": "sixty", "reps": "five", "effort": "at nine"}),
    ("5 reps at 60", (), {"load": "60", "reps": "5 reps"}),
    ("５ reps at ６０", (), {"load": "６０", "reps": "５ reps"}),
    ("  BENCH:  60  ×  5  ", (), {"name": "BENCH", "load": "60", "reps": "5"}),
    ("benhc 60x5", (), {"name": "benhc"}),
    ("all in pounds: 135x5", (), {"load": "135", "unit": "pounds", "reps": "5"}),
    ("5", (B1,), {"load": "<before>", "unit": "<before>", "reps": "5"}),
    ("5", (), {"load": "<plan>", "unit": "<plan>", "reps": "5"}),
    ("same", (B1,), {"load": "<before>", "unit": "<before>", "reps": "<before>", "set_number": "<next>"}),
    ("same but 4", (B1,), {"load": "<before>", "reps": "4"}),
    ("60x5x3", (), {"load": "60", "reps": "5", "sets": "3"}),
    ("60 3x5", (), {"load": "60", "reps": "5", "sets": "3"}),
    ("set 2: 60x5", (), {"set_number": "set 2", "load": "60"}),
    ("warm up 40x8", (), {"stage": "warm up", "load": "40", "reps": "8"}),
    ("row 50 10,9,8", (), {"name": "row", "load": "50", "reps": "10"}),
    ("split squat 16x10/9", (), {"side": "10/9", "reps": "10"}),
    ("split squat L10 R9", (), {"side": "L", "reps": "10", "load": "<plan>"}),
    ("chins +10 x 8", (), {"load": "+10", "reps": "8"}),
    ("chins 20 assist x 8", (), {"load": "20 assist", "reps": "8"}),
    ("split squat 32 total x10 each", (), {"load": "32 total", "reps": "10 each"}),
    ("plank 1:05", (), {"reps": "1:05"}),
    ("plank 1 min 5 sec", (), {"reps": "1 min 5 sec"}),
    ("60x5 failed the 6th", (), {"reps": "5", "effort": "failed the 6th"}),
    ("deadlift 140", (), {"name": "deadlift", "load": "140", "reps": "<plan>"}),
    ("last set as planned", ("Deadlift#1 140x5", "Deadlift#2 115x8"), {"load": "<plan>", "reps": "<plan>"}),
    ("that was 62.5 not 60", (B1,), {"load": "62.5", "unit": "<kept>", "reps": "<kept>", "name": "<kept>"}),
    ("sorry 4 reps", (B1,), {"load": "<kept>", "reps": "4 reps"}),
    ("rpe 9", (B1,), {"load": "<kept>", "reps": "<kept>", "effort": "rpe 9"}),
]  # fmt: skip


@pytest.mark.parametrize(("text", "done", "told"), SETS)
def test_the_words_of_a_set(text: str, done: tuple[str, ...], told: dict[str, str]) -> None:
    """Each value of the first set with its words, as they stand in the raw message."""
    current = "Deadlift" if done and done[0].startswith("Deadlift") else None
    got = _told(text, read(text, *done, current=current))
    assert {meaning: got.get(meaning) for meaning in told} == told


def test_the_words_of_continuations() -> None:
    """A drop by its sign or by the plan, minis at the load of their set; each with the number of its set."""
    text = "pulldown 55x12 > 35x8"
    assert _told(text, read(text), 1) == {
        "name": "pulldown", "set_number": "<before>", "stage": ">", "load": "35", "unit": "<own>", "reps": "8",
    }  # fmt: skip
    text = "pushdown 25x14 +4+3"
    assert _told(text, read(text), 2) == {
        "name": "pushdown", "set_number": "<before>", "stage": "+", "load": "<before>", "unit": "<before>", "reps": "3",
    }  # fmt: skip


def test_the_words_of_a_list() -> None:
    """Each number of a list is its own set's, though they were typed as one; an effort is the last one's."""
    text = "60: 6,5,4 rpe 9"
    reading = read(text)
    assert [_told(text, reading, n)["reps"] for n in range(3)] == ["6", "5", "4"]
    assert [_told(text, reading, n).get("effort") for n in range(3)] == [None, None, "rpe 9"]


REST = [
    ("knee hurts, 4/10", {"pain": "knee hurts", "score": "4/10"}),
    ("60x5, only got 25 min", {"minutes": "25 min"}),
    ("yesterday: 60x5", {"day": "yesterday"}),
    ("60x5, skipped row", {"skip": "row"}),
    ("60x5. that's me done", {"finish": "that's me done"}),
    ("should i add weight?", {"question": "should i add weight"}),
]


@pytest.mark.parametrize(("text", "told"), REST)
def test_the_words_of_what_is_no_set(text: str, told: dict[str, str]) -> None:
    """Pain, its score, time, day, skip, end and question."""
    got = _told(text, read(text), None)
    for meaning, said in told.items():
        assert said in got[meaning], (text, got)


def test_the_words_of_a_correction() -> None:
    """Each stored set that is replaced says by which words."""
    text = "that was 62.5 not 60"
    assert _told(text, read(text, B1, B2), None) == {"correction": text}


def test_an_offered_reading_has_its_own_evidence() -> None:
    """A question can show why each of its readings is one; what only the answer decides says so."""
    reading = read("600x5")
    assert reading.ask is not None
    assert reading.evidence == ()
    by_meaning = {e.meaning: e for e in reading.ask.choices[0].reading.evidence}
    assert by_meaning[Meaning.LOAD].source is Source.ANSWERED
    assert by_meaning[Meaning.REPS].source is Source.SAID


# --- properties -----------------------------------------------------------------------------------------------------


def _missing(reading: Reading) -> list[str]:
    """The values without evidence, and the evidence without a value."""
    wrong = []
    for place, row in enumerate(reading.performed):
        got = {e.meaning for e in reading.evidence if e.row == place} - {Meaning.SETS}
        want = {Meaning.NAME, Meaning.STAGE, Meaning.REPS}
        want |= {Meaning.SET_NUMBER} if row.set is not None else set()
        want |= {Meaning.LOAD, Meaning.UNIT} if row.load is not None else set()
        want |= {Meaning.EFFORT} if row.rir is not None else set()
        want |= {Meaning.SIDE} if row.side is not None else set()
        wrong += [f"set {place}: {got ^ want}"] if got != want else []
    rest = [e for e in reading.evidence if e.row is None]
    said = {meaning: sorted(e.value for e in rest if e.meaning is meaning) for meaning in Meaning}
    wants = {
        Meaning.CORRECTION: sorted(f"{name} {number}" for name, number in reading.replaces),
        Meaning.SKIP: sorted(reading.skipped),
        Meaning.FINISH: [""] if reading.finished else [],
        Meaning.MINUTES: [] if reading.minutes is None else [f"{reading.minutes:f}"],
        Meaning.DAY: [] if reading.day is None else [reading.day.isoformat()],
        Meaning.QUESTION: [""] if reading.question else [],
    }
    wrong += [f"{meaning}: {said[meaning]} for {want}" for meaning, want in wants.items() if said[meaning] != want]
    pain = reading.pain
    if bool(said[Meaning.PAIN]) != (pain is not None) or bool(said[Meaning.SCORE]) != bool(pain and pain.score):
        wrong.append(f"pain: {said[Meaning.PAIN]} {said[Meaning.SCORE]} for {pain}")
    return wrong


def _claims(item: Evidence, text: str, known: frozenset[Decimal]) -> bool:
    """Whether the words hold the number that they gave: as it is, or as the rules make it beside the `known` loads."""
    said = re.sub(r"(?<=\d)o", "0", text[slice(*item.span)].lower())
    number = re.search(r"\d+(?:\.\d+)?", item.value)
    digits = [Decimal(d.replace(",", ".")) for d in re.findall(r"\d+(?:[.,]\d{1,2})?", said)]
    linked = item.meaning is Meaning.REPS and re.search("[x×*]", said)
    if said.count(",") > 1 or (linked and "," in said):  # `10,9,8` is a list, and `x 22,5` may be one
        digits += [Decimal(d) for d in re.findall(r"\d+", said)]
    until = item.meaning is Meaning.MINUTES and re.match("until|till|til|by|to|before|leav|out", said)
    spread = item.meaning is Meaning.SETS and re.search("all|every|each|both|same", said)
    if number is None or not digits or not said.isascii() or until or spread:
        return bool(said.strip())
    wanted = Decimal(number.group())
    allowed = {wanted}
    match item.meaning:
        case Meaning.LOAD:
            allowed |= {wanted * 2}
            if re.match(r" (?:up|down|heavier|lighter|more|less)\b", text[item.span[1] :]):
                allowed |= {abs(wanted - load) for load in known}  # `5 kg up`: so much more than a load that is known
        case Meaning.EFFORT:
            allowed |= {10 - wanted, 10 - wanted - Decimal("0.5"), wanted - Decimal("0.5")}
            if wanted == 0 or min(digits) < wanted < max(digits) or min(digits) < 10 - wanted < max(digits):
                allowed |= set(digits)
        case Meaning.REPS:
            allowed |= {wanted + 1, wanted / 60, wanted - wanted % 60, Decimal(int(wanted) // 60)}
        case Meaning.MINUTES:
            allowed |= {wanted / 60}
        case _:
            pass
    return bool(allowed & set(digits)) or bool(set(re.findall("[a-z]+", said)) & (NUMBER_WORDS | {"single", "twice"}))


_CLAIMING = (Meaning.LOAD, Meaning.REPS, Meaning.EFFORT, Meaning.SETS, Meaning.SET_NUMBER, Meaning.MINUTES)


def _known(asked: Request) -> frozenset[Decimal]:
    """The loads of the plan and of what is done."""
    planned = [s.load for e in asked.exercises for s in e.sets]
    return frozenset(load.amount for load in (*planned, *(d.load for d in asked.done)) if load is not None)


def _check(asked: Request, reading: Reading) -> None:
    known = _known(asked)
    offered = [c.reading for c in reading.ask.choices] if reading.ask is not None else []
    for one in (reading, *offered):
        assert not _missing(one), (asked.text, _missing(one))
        for item in one.evidence:
            assert 0 <= item.span[0] <= item.span[1] <= len(asked.text)
            if item.source is Source.SAID and item.meaning in _CLAIMING:
                assert _claims(item, asked.text, known), (asked.text, item, asked.text[slice(*item.span)])


@pytest.mark.parametrize("name", ["shared", "hand_a", "hand_b", "hand_c", "hand_d"])
def test_every_value_of_a_labelled_message_has_its_words(name: str) -> None:
    """Every value stored has evidence, nothing else has, and the words hold the number that they gave."""
    from bot.cli.read import ReadRequest  # noqa: PLC0415

    for row in rows_of(name):
        asked = ReadRequest.model_validate(row["request"]).request()
        _check(asked, read_message(asked))


PIECES = st.sampled_from(
    (
        *words(
            "60 5 x @ + > / , : 9 10 8.5 22,5 10,9,8 kg lb reps sets each left right bench row squat then drop mini",
            "same rpe rir warm up done skipped not sorry was set 2nd in the tank failed the all bw assist total",
            "minutes yesterday ? 1:05 knee hurts sixty twelve x5 pair twice as planned scrap that last",
        ),
        "\n",
    )
)


@given(st.lists(PIECES, max_size=14).map(" ".join))
@settings(max_examples=400)
def test_every_value_of_any_message_has_its_words(text: str) -> None:
    """The same of anything that is typed from the words of reports."""
    asked = request(text, "Bench Press#1 60x5", "Split Squat#1 16x10 left", "Lat Pulldown#1 55x12")
    _check(asked, read_message(asked))
