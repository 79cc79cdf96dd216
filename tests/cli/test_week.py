"""`chalkpost week`: the contract's shape, line by line; whatever is wrong with a line is its answer."""

import json
import sys
from collections.abc import Iterable
from pathlib import Path
from subprocess import PIPE, Popen, run
from typing import Any

import pytest
from click.testing import CliRunner
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.cli import chalkpost
from bot.cli.week import answer

SQUAT = {
    "name": "Squat",
    "sets": 4,
    "minutes": 20,
    "direct": ["quadriceps", "glutes"],
    "indirect": ["lower back"],
    "priority": 1,
    "region": "lower",
}
BENCH = {
    "name": "Bench press",
    "sets": 4,
    "minutes": 18,
    "direct": ["chest"],
    "indirect": ["triceps"],
    "priority": 1,
    "region": "upper",
    "with": "Row",
}
ROW = {"name": "Row", "sets": 4, "minutes": 14, "direct": ["back"], "priority": 2, "region": "upper"}
CURL = {"name": "Curl", "sets": 3, "minutes": 7.5, "direct": ["biceps"], "priority": 3, "region": "upper"}
REQUEST = {
    "id": "w1",
    "items": [SQUAT, BENCH, ROW, CURL],
    "days": [{"day": "Mon", "minutes": 35}, {"day": "Tue", "minutes": 20}],
}
Answer = dict[str, Any]  # Any: JSON as it comes


def ask(request: object) -> Answer:
    """The answer to a request, as JSON gives it back."""
    answered: Answer = json.loads(json.dumps(answer(json.dumps(request))))
    return answered


def changed(**new: object) -> dict[str, object]:
    """The request with other values."""
    return {**REQUEST, **new}


def test_a_week_in_the_contracts_shape() -> None:
    """Worked by hand: 59.5 minutes of work for 55; bench and row (32) share Monday, the squat fills Tuesday, and of
    the curls (2.5 a set) one fits beside on Monday."""
    assert ask(REQUEST) == {
        "id": "w1",
        "days": [
            {
                "day": "Mon",
                "minutes": 34.5,
                "items": [
                    {"name": "Bench press", "sets": 4},
                    {"name": "Row", "sets": 4},
                    {"name": "Curl", "sets": 1},
                ],
                "label": "upper",
            },
            {"day": "Tue", "minutes": 20, "items": [{"name": "Squat", "sets": 4}], "label": "lower"},
        ],
        "cut": [
            {
                "name": "Curl",
                "sets": 2,
                "why": "The minutes run out, and priority 3 goes before what matters more.",
            }
        ],
        "muscles": {
            "quadriceps": {"wanted": 4, "planned": 4, "gap_h": None},
            "glutes": {"wanted": 4, "planned": 4, "gap_h": None},
            "lower back": {"wanted": 2, "planned": 2, "gap_h": None},
            "chest": {"wanted": 4, "planned": 4, "gap_h": None},
            "triceps": {"wanted": 2, "planned": 2, "gap_h": None},
            "back": {"wanted": 4, "planned": 4, "gap_h": None},
            "biceps": {"wanted": 3, "planned": 1, "gap_h": None},
        },
        "clashes": 0,
        "optimal": True,
        "reason": "2 of 15 sets are cut: the work takes 59.5 min, the days hold 55. "
        "No muscle is worked directly on two days less than 48 h apart. The longest day takes 34.5 min.",
    }


def test_optional_keys_may_be_null() -> None:
    nulls = [{**item, "indirect": None, "with": None} for item in (SQUAT, CURL)]
    plain = [{k: v for k, v in item.items() if k != "indirect"} for item in (SQUAT, CURL)]
    assert ask(changed(items=nulls, rest_hours=None, done=None)) == ask(changed(items=plain))


def test_clashes_gaps_and_done_are_told() -> None:
    answered = ask(
        {
            "id": 7,
            "items": [CURL, {**CURL, "name": "Hammer curl"}, {**CURL, "name": "Chin-up"}],
            "days": [{"day": "Wed", "minutes": 8}, {"day": "Thu", "minutes": 10}],
            "rest_hours": 60,
            "done": [{"name": "Curl", "sets": 3, "day": "Mon"}],
        }
    )
    assert [day["minutes"] for day in answered["days"]] == [7.5, 7.5]
    assert answered["clashes"] == 2
    assert answered["muscles"]["biceps"] == {"wanted": 9, "planned": 9, "gap_h": 24}
    assert "2 times a muscle is worked directly on two days less than 60 h apart." in answered["reason"]
    assert answered["optimal"] is True


def test_what_is_done_together_is_said_to_be_why() -> None:
    """The days hold more than the work takes, but not on the day of its partner: that, and no lack of minutes."""
    items = [
        {"name": "A", "sets": 2, "minutes": 10, "direct": ["q"], "priority": 1, "region": "lower", "with": "B"},
        {"name": "B", "sets": 2, "minutes": 10, "direct": ["r"], "priority": 3, "region": "lower"},
    ]
    told = ask({"id": 1, "items": items, "days": [{"day": "Sun", "minutes": 12}, {"day": "Mon", "minutes": 12}]})
    assert told["optimal"]
    assert [(cut["name"], cut["sets"]) for cut in told["cut"]] == [("B", 2)]
    assert told["cut"][0]["why"] == "Only another day has room for it, and what is done together stays on one day."


@pytest.mark.parametrize("line", ["[]", "null", '{"id": 1, "items": [], "days": [], "x": 1}', '{"items": 1e400}'])
def test_what_is_wrong_is_said_without_names_of_the_code(line: str) -> None:
    """No class, no library's words."""
    said = str(answer(line)["error"])
    assert not [word for word in ("WeekRequest", "Value error", "Extra inputs", "Decimal(") if word in said]


def test_no_days_cut_everything() -> None:
    answered = ask(changed(days=[]))
    assert answered["days"] == []
    assert [cut["sets"] for cut in answered["cut"]] == [4, 4, 4, 3]
    assert {cut["why"] for cut in answered["cut"]} == {"There is no day to train on."}
    assert answered["reason"] == "There is no day to train on: all work is cut."


@pytest.mark.parametrize(
    ("request_", "said"),
    [
        (changed(extra=1), "extra"),
        (changed(items=[{**SQUAT, "note": ""}]), "items.0.note"),
        (changed(items=[{**SQUAT, "sets": 0}]), "items.0.sets: Input should be greater than or equal to 1 (got 0)"),
        (changed(items=[{**SQUAT, "sets": 2.5}]), "items.0.sets"),
        (changed(items=[{**SQUAT, "sets": "4"}]), "items.0.sets"),
        (changed(items=[{**SQUAT, "minutes": -1}]), "items.0.minutes"),
        (changed(items=[{**SQUAT, "priority": 4}]), "items.0.priority: Input should be 1, 2 or 3 (got 4)"),
        (changed(items=[{**SQUAT, "region": "legs"}]), "items.0.region: Input should be 'upper', 'lower' or 'trunk'"),
        (changed(items=[{**SQUAT, "with": "Hop"}]), "items.0.with: 'Hop' is none of the items, expected"),
        (changed(items=[{**SQUAT, "with": "Squat"}]), "items.0.with: 'Squat' is the item itself, expected"),
        (changed(items=[ROW, ROW, BENCH]), "items.2.with: several items are named 'Row', expected one"),
        (changed(days=[{"day": "Monday", "minutes": 1}]), "days.0.day: Input should be 'Mon', 'Tue'"),
        (
            changed(days=[{"day": "Mon", "minutes": 1}] * 2),
            "days.1.day: Mon stands there before, expected each day once",
        ),
        (changed(days=None), "days"),
        (changed(rest_hours=-1), "rest_hours"),
        (changed(done=[{"name": "Hop", "sets": 1, "day": "Mon"}]), "done.0.name: 'Hop' is none of the items, expected"),
        (
            changed(
                items=[
                    {**SQUAT, "direct": [f"m{n}" for n in range(40)]},
                    {**ROW, "direct": [f"n{n}" for n in range(40)]},
                ]
            ),
            "items: 80 different muscles in `direct`, expected at most 60",
        ),
        ([1], "the line"),
        ("text", "the line"),
    ],
)
def test_what_is_wrong_is_said_with_its_place(request_: object, said: str) -> None:
    answered = ask(request_)
    assert set(answered) == {"id", "error"}
    assert said in answered["error"]
    assert answered["id"] == (request_["id"] if isinstance(request_, dict) else None)


@pytest.mark.parametrize("line", ["nope", "{", '{"id": 1, "items": [], "days": [], "rest_hours": NaN}', "[" * 100_000])
def test_no_json_is_an_answer_too(line: str) -> None:
    assert "expected a JSON object on one line" in str(answer(line)["error"])


@pytest.mark.parametrize("id_", [None, 3, 1.5, "a", [1.5, {"b": None}], True])
def test_the_id_comes_back_as_it_was(id_: object) -> None:
    assert ask(changed(id=id_))["id"] == id_


json_values = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=8),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=6), inner, max_size=3),
    max_leaves=8,
)


@settings(max_examples=150, deadline=None)
@given(st.sampled_from(sorted(REQUEST)), st.sampled_from(["", *sorted(BENCH)]), json_values)
def test_any_value_anywhere_is_answered(key: str, inside: str, value: object) -> None:
    """Whatever stands in a place, the line gets an answer or an error, both under its id."""
    request = changed(**({key: value} if not inside else {"items": [SQUAT, {**ROW, inside: value}]}))
    answered = answer(json.dumps(request))
    assert "id" in answered
    assert ("error" in answered) != ("days" in answered)


def lines(*requests: object) -> str:
    return "".join(f"{json.dumps(request)}\n" for request in requests)


def test_a_line_in_a_line_out_in_order() -> None:
    """Blank lines are passed over, a broken one doesn't stop those after it, and the exit status is 0."""
    done = CliRunner().invoke(chalkpost, ["week"], input=lines(changed(id=1)) + "\nnope\n" + lines(changed(id=2)))
    answers = [json.loads(line) for line in done.stdout.splitlines()]
    assert [one["id"] for one in answers] == [1, None, 2]
    assert done.exit_code == 0
    assert done.stderr == ""


def read_each(process: "Popen[str]", requests: Iterable[object]) -> Iterable[Answer]:
    """Send a line, wait for its answer, send the next."""
    assert process.stdin is not None
    assert process.stdout is not None
    for request in requests:
        process.stdin.write(lines(request))
        process.stdin.flush()
        yield json.loads(process.stdout.readline())


def test_every_line_is_flushed_and_nothing_else_is_written() -> None:
    """As its own process: an answer comes before the next request goes out, also where the solver was needed."""
    hard = changed(
        items=[{**CURL, "name": f"c{n}", "minutes": 7 + n * 0.7, "direct": ["biceps"]} for n in range(7)],
        days=[{"day": day, "minutes": 31} for day in ("Mon", "Tue")],
    )
    with Popen(
        [sys.executable, "-m", "bot", "week"], stdin=PIPE, stdout=PIPE, text=True, cwd=Path(__file__).parents[2]
    ) as process:
        answered = list(read_each(process, (changed(id=1), hard, changed(id=3))))
        assert process.stdin is not None
        process.stdin.close()
        assert process.wait(timeout=60) == 0
    assert [one["id"] for one in answered] == [1, "w1", 3]
    assert answered[1]["clashes"] == 1


def test_the_help_names_the_contract() -> None:
    root = Path(__file__).parents[2]
    said = run([sys.executable, "-m", "bot", "week", "--help"], capture_output=True, text=True, check=True, cwd=root)
    assert "one JSON request a line in, one answer a line out" in " ".join(said.stdout.split())
