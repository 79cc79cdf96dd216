"""`chalkpost next`: the contract, line by line, and the words of every reason."""

import json
from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest
from click.testing import CliRunner
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.cli.next import Memory, answer, next_
from bot.saying import Line
from bot.training.lifter import Level
from bot.training.plan import LoadRule, PlannedExercise, PlannedSet, Region, RepRange
from bot.training.reason import AFTER_A_SET, Reason, Why
from bot.training.strength import begin
from bot.training.units import Load, Unit
from bot.wording.bundle import show_plain

Json = dict[str, object]


def request(**more: object) -> Json:
    """A bench press for three sets of 8 to 10 with two left, after two sessions at 50 kg."""
    sets = [{"load": 50, "reps": 9, "rir": 2}] * 3
    whole: Json = {
        "id": "a",
        "exercise": {
            "name": "Bench press",
            "load_style": "total",
            "sides": 1,
            "region": "upper",
            "sets": [{"reps": [8, 10], "rir": 2, "rest_s": 120}] * 3,
        },
        "unit": "kg",
        "loads": {"from": 20, "to": 120, "step": 2.5},
        "today": "2026-03-09",
        "history": [{"date": "2026-03-02", "sets": sets}, {"date": "2026-03-05", "sets": sets}],
    }
    return {**whole, **more}


def told(*requests: Json | str, explain: bool = False) -> list[Json]:
    """The answers to these lines."""
    lines = [one if isinstance(one, str) else json.dumps(one) for one in requests]
    result = CliRunner().invoke(next_, ["--explain"] if explain else [], input="\n".join(lines) + "\n")
    assert result.exit_code == 0
    return [json.loads(line) for line in result.output.splitlines()]


def test_the_answer_has_the_keys_of_the_contract() -> None:
    """Every key, each load of the ladder, numbers as numbers."""
    (found,) = told(request())
    assert list(found) == ["id", "sets", "finish", "e1rm", "warmup", "reason", "find"]
    assert found["id"] == "a"
    assert found["sets"] == [{"load": 50, "reps": [8, 10], "rir": 2}] * 3
    assert (found["finish"], found["find"]) == ([], False)
    assert isinstance(found["e1rm"], dict)
    assert 64 < found["e1rm"]["mean"] < 74
    assert 0 < found["e1rm"]["sd"] < 7
    assert found["reason"] == "9 at 50 kg with 2 left: stay at 50 kg, 8-10 repetitions."


def test_a_session_under_way_is_asked_again_after_every_set() -> None:
    """Today's entry is what is done; the answer is about the rest, and warms up no more."""
    history = request()["history"]
    assert isinstance(history, list)
    for done in range(4):
        today = {"date": "2026-03-09", "sets": [{"load": 50, "reps": 9, "rir": 2}] * done}
        (found,) = told(request(history=[*history, today]))
        assert isinstance(found["sets"], list)
        assert len(found["sets"]) == 3 - done
        assert (found["warmup"] == []) is (done > 0)


def test_nothing_known() -> None:
    """Find is true, loads are null, the reason says how."""
    (found,) = told(request(history=[]))
    assert (found["find"], found["e1rm"]) == (True, None)
    assert found["sets"] == [{"load": None, "reps": [8, 10], "rir": 2}] * 3
    assert "how many were left" in str(found["reason"])


def test_pounds_stay_pounds() -> None:
    """The same numbers in pounds give the same numbers: nothing is rounded through kilograms."""
    (kilos,), (pounds,) = told(request()), told(request(unit="lb"))
    assert kilos["sets"] == pounds["sets"]
    assert isinstance(kilos["e1rm"], dict)
    assert isinstance(pounds["e1rm"], dict)
    assert kilos["e1rm"]["mean"] == pytest.approx(pounds["e1rm"]["mean"], rel=1e-4)


def test_a_list_of_loads() -> None:
    """Loads may be a list in any order; the answer takes from it alone."""
    (found,) = told(request(loads=[70, 10, 48.5, 60]))
    assert isinstance(found["sets"], list)
    assert found["sets"][0]["load"] == 48.5


@pytest.mark.parametrize(
    ("more", "said"),
    [
        ({"extra": 1}, "extra"),
        ({"unit": "st"}, "unit"),
        ({"today": "9 March"}, "today"),
        ({"loads": {"from": 5, "to": 1, "step": 1}}, "from <= to"),
        ({"loads": {"from": 0, "to": 100000, "step": 0.001}}, "loads"),
        ({"style": "random"}, "style"),
        ({"level": "expert"}, "level"),
        ({"history": [{"date": "2026-03-10", "sets": []}]}, "after today"),
        ({"history": [{"date": "2026-03-02", "sets": [{"load": 50, "reps": 9.5}]}]}, "reps"),
        ({"history": [{"date": "2026-03-02", "sets": [{"load": 50, "reps": 9, "rir": 11}]}]}, "rir"),
        ({"history": [{"date": "2026-03-02", "sets": [], "pain": 11}]}, "pain"),
        ({"history": [{"date": "2026-03-02", "sets": [{"load": 50, "reps": 9, "side": "left"}]}]}, "side"),
    ],
)
def test_what_is_wrong_is_said_and_the_next_line_goes_on(more: Json, said: str) -> None:
    """The id comes back with what is wrong and where; later lines are answered."""
    wrong, right = told(request(**more), request())
    assert list(wrong) == ["id", "error"]
    assert wrong["id"] == "a"
    assert said in str(wrong["error"])
    assert "error" not in right


def test_lines_that_are_no_request() -> None:
    """Not JSON, not an object, nothing in it: an error each; a blank line is none."""
    found = told("{", "[]", "null", "", "{}", '{"id": 7, "loads": "x"}', '{"id": 8, "loads": NaN}', "[" * 100_000)
    assert [one["id"] for one in found] == [None, None, None, None, 7, None, None]
    assert all("error" in one for one in found)


def test_optional_keys_may_be_null() -> None:
    """As absent."""
    (plain,), (null,) = told(request()), told(request(hold=None, style=None, level=None))
    assert plain == null


def test_the_style_and_the_level_are_heard() -> None:
    """Double progression holds until every set reaches the top; held stays."""
    easy = [{"date": f"2026-03-0{d}", "sets": [{"load": 50, "reps": 10, "rir": 5}] * 3} for d in (2, 5)]
    loads = {style: told(request(history=easy, style=style))[0]["sets"] for style in LoadRule}
    first = {style: sets[0]["load"] for style, sets in loads.items() if isinstance(sets, list)}
    assert first[LoadRule.DOUBLE] == 52.5
    assert first[LoadRule.FIXED] == 52.5
    assert first[LoadRule.HELD] == 50
    assert first[LoadRule.TRACKED] in (52.5, 55)


def test_explained() -> None:
    """The band holds the estimate; the chances are shares; what was set aside is named with its day."""
    history = request()["history"]
    assert isinstance(history, list)
    odd = {"date": "2026-03-07", "sets": [{"load": 500, "reps": 9, "rir": 2}]}
    (found,) = told(request(history=[*history, odd]), explain=True)
    whole = found["explain"]
    assert isinstance(whole, dict)
    assert isinstance(found["e1rm"], dict)
    assert whole["band"][0] < found["e1rm"]["mean"] < whole["band"][1]
    assert all(0 <= row[key] <= 1 for row in whole["chances"] for key in ("lands", "over", "easy"))
    assert whole["aside"] == {"date": "2026-03-07", "load": 500, "reps": 9}
    assert any("500 kg" in line and "Sat 7 Mar" in line for line in whole["text"])
    assert sum("Chosen." in line for line in whole["text"]) == 1


def test_what_is_remembered_changes_no_answer() -> None:
    """A filter that has seen earlier parts of the history answers as a fresh one; a corrected past is told anew."""
    history = [
        {"date": f"2026-03-0{d}", "sets": [{"load": 50 + d, "reps": 9, "rir": 2}] * 3, "pain": 0} for d in range(1, 9)
    ]
    corrected = [{**history[0], "sets": [{"load": 40, "reps": 9, "rir": 2}]}, *history[1:]]
    lines = [request(history=history[:n]) for n in (1, 2, 3, 8, 5)] + [request(history=corrected)]
    together, alone = told(*lines), [told(one)[0] for one in lines]
    assert together == alone
    assert together[3]["e1rm"] != together[5]["e1rm"]


def test_memory_is_bounded() -> None:
    """However many histories come, only so many states are kept."""
    memory = Memory(most=3)
    plan = PlannedExercise("Press", (PlannedSet(RepRange(8, 10)),), region=Region.UPPER)
    empty = begin(level=Level.NOVICE, region=Region.UPPER)
    for n in range(10):
        memory.state(empty, plan, ((date(2026, 1, 1 + n), (), None),))
    assert len(memory.states) <= 3


@pytest.mark.parametrize("why", Why)
def test_every_reason_has_words(why: Why) -> None:
    """With and without a deciding set, with and without its effort: each key is there and takes what it is given."""
    full = Reason(
        why,
        next=Load.of(26, Unit.KG),
        load=Load.of(24, Unit.KG),
        reps=8,
        left=2.0,
        low=8,
        high=10,
        share=90,
        weeks=3,
    )
    ways = [full]
    if why in AFTER_A_SET:
        ways += [replace(full, left=None), replace(full, load=None)]
    for reason in ways:
        assert "{" not in show_plain(Line(reason.key, reason.args))


def test_the_line_of_an_example() -> None:
    """8 at 24 kg with two left, up to 26."""
    reason = Reason(Why.UP, next=Load.of(26, Unit.KG), load=Load.of(24, Unit.KG), reps=8, left=2.0, low=8, high=8)
    assert show_plain(Line(reason.key, reason.args)) == "8 at 24 kg with 2 left: 26 kg next, 8 repetitions."


NUMBER = st.one_of(st.none(), st.integers(-10, 100_000), st.floats(allow_nan=False), st.text(max_size=3), st.booleans())


@settings(deadline=None, max_examples=80)
@given(
    st.recursive(
        st.one_of(NUMBER, st.text(max_size=5)),
        lambda inner: st.one_of(
            st.lists(inner, max_size=3),
            st.dictionaries(st.sampled_from(["id", "sets", "reps", "from"]), inner, max_size=3),
        ),
        max_leaves=8,
    ),
    st.sampled_from(["id", "exercise", "unit", "loads", "today", "history", "hold", "style", "level"]),
)
def test_anything_gets_an_answer_or_an_error(junk: object, key: str) -> None:
    """Whatever stands where, the filter goes on."""
    found = answer(json.dumps(request(**{key: junk})), Memory())
    assert "error" in found or "sets" in found


def test_decimals_come_through() -> None:
    """Steps that binary floats can't hold are kept: 0.1 steps make 50.3, not 50.300000000000004."""
    ladder = {"from": 0.1, "to": 90, "step": 0.1}
    (found,) = told(request(loads=ladder))
    assert isinstance(found["sets"], list)
    load = found["sets"][0]["load"]
    assert Decimal(repr(load)) * 10 == int(Decimal(repr(load)) * 10)
