"""Everything kept as text comes back equal, to the last digit, and old text stays readable."""

import json
from dataclasses import dataclass
from datetime import UTC, date, datetime, time
from decimal import Decimal

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.dialogue.turn import Talk
from bot.faults import StoreFault
from bot.training.facts import Fact, PainReported, Reported
from bot.training.pain import PainSaid
from bot.training.people import Gym, Programme
from bot.training.plan import Drop, LoadStyle, Mini, PlannedExercise, PlannedSession, PlannedSet, RepRange, WarmupStep
from bot.training.report import Performed, Side, Stage
from bot.training.units import Load, Unit
from storage.codec import codec
from storage.plans import PLAN, PROGRAMME
from storage.record import CODECS
from tests.store.values import FACTS, KINDS, PLANS, PROGRAMMES

MANY = settings(max_examples=200, deadline=None, suppress_health_check=[HealthCheck.too_slow])
FEW = settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
LARGE = settings(FEW, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
"""For whole programmes: most that are drawn are larger than the library thinks handy."""


def digits(value: object) -> str:
    """Equality that also tells 2.50 from 2.5: `repr` shows every digit of a Decimal."""
    return repr(value)


@MANY
@given(FACTS)
def test_any_fact_comes_back_equal(fact: Fact) -> None:
    kept = CODECS[type(fact).__name__]
    again = kept.read_kept(kept.show_kept(fact))
    assert again == fact
    assert digits(again) == digits(fact)


@FEW
@given(PLANS)
def test_any_planned_session_comes_back_equal(plan: PlannedSession) -> None:
    assert digits(PLAN.read_kept(PLAN.show_kept(plan))) == digits(plan)


@LARGE
@given(PROGRAMMES)
def test_any_programme_comes_back_equal(programme: Programme) -> None:
    assert digits(PROGRAMME.read_kept(PROGRAMME.show_kept(programme))) == digits(programme)


@pytest.mark.parametrize("kind", [Gym, Talk])
def test_other_values_come_back_equal(kind: type[Gym] | type[Talk]) -> None:
    @FEW
    @given(st.from_type(kind))
    def holds(value: Gym | Talk) -> None:
        kept = codec(kind)
        assert digits(kept.read_kept(kept.show_kept(value))) == digits(value)

    holds()


def test_every_kind_of_fact_is_kept_under_its_name_for_good() -> None:
    """A class that is renamed must keep its old name in the record: facts under it exist."""
    assert sorted(CODECS) == sorted(kind.__name__ for kind in KINDS)
    assert sorted(CODECS) == [
        "AlertHandled",
        "AutonomySet",
        "CameBack",
        "ClientJoined",
        "CoachChanged",
        "CoachJoined",
        "ConsentGiven",
        "ConsentWithdrawn",
        "DoubtKept",
        "DoubtSettled",
        "EffortRated",
        "ExerciseHeld",
        "ExerciseSwapped",
        "HandoverAnswered",
        "HandoverOffered",
        "HoldLifted",
        "InviteMade",
        "LightWeekDeclined",
        "LightWeekOrdered",
        "LoadOrdered",
        "LoadsApproved",
        "MissNoted",
        "NoteKept",
        "PainFollowedUp",
        "PainReported",
        "PainScored",
        "PlanChanged",
        "ProfileChanged",
        "ProgrammeAssigned",
        "ProgrammeShelved",
        "QuestionAnswered",
        "QuestionAsked",
        "ReachChanged",
        "ReadinessAnswered",
        "ReportTakenBack",
        "Reported",
        "RestNoticeSet",
        "ReturnEased",
        "SessionEnded",
        "SessionMoved",
        "SessionPlanned",
        "SessionReopened",
        "WeekLaid",
        "WentAway",
    ]


FULL = PlannedSession(
    "Lower",
    (
        PlannedExercise(
            "Back squat",
            (
                PlannedSet(RepRange(4, 6), Decimal("1.5"), Load.of("102.5", Unit.KG), 180, Drop(2, (20, 40))),
                PlannedSet(RepRange(8, 8), None, None, None, Mini(3, (15, 20))),
            ),
            aliases=("squat",),
            load_style=LoadStyle.PER_HAND,
            warmup=(WarmupStep(Load.of(45, Unit.LB), 8),),
        ),
    ),
    50,
)


def test_text_written_by_the_first_version_is_read() -> None:
    """This text is in people's databases: it may never stop meaning what it meant."""
    text = (
        '[1,{"title":"Lower","exercises":[{"name":"Back squat","sets":[{"reps":{"low":4,"high":6},"rir":"1.5",'
        '"load":"102500 kg","rest_s":180,"finish":{"is":"Drop","times":2,"percent":[20,40]}},{"reps":{"low":8,'
        '"high":8},"finish":{"is":"Mini","reps":3,"rest_s":[15,20]}}],"aliases":["squat"],"load_style":"per_hand",'
        '"warmup":[{"load":"45000 lb","reps":8}]}],"minutes":50}]'
    )
    assert PLAN.read_kept(text) == FULL
    assert PLAN.show_kept(FULL) == text


def test_facts_written_by_the_first_version_are_read() -> None:
    performed = Performed("Row", 2, Stage.DROP, Load.of("-10.5", Unit.KG), 9, Decimal("0.50"), Side.LEFT)
    assert CODECS["Reported"].read_kept(
        '[1,{"session":"s","key":"m5","sets":[{"exercise":"Row","set":2,"stage":"drop","load":"-10500 kg","reps":9,'
        '"rir":"0.50","side":"left"}],"replaces":[["Row",2]],"skipped":["Curl"]}]'
    ) == Reported("s", "m5", (performed,), (("Row", 2),), ("Curl",))
    assert CODECS["PainReported"].read_kept(
        '[1,{"pain":"p","client":"c","session":null,"exercise":null,"said":{"where":"knee","score":null,'
        '"side":"right","urgent":false},"words":"my knee"}]'
    ) == PainReported("p", "c", None, None, PainSaid("knee", None, Side.RIGHT, False), "my knee")


@dataclass(frozen=True)
class Older:
    name: str


@dataclass(frozen=True)
class Newer:
    name: str
    day: date | None = None
    at: time = time(7)


def test_a_field_added_with_a_default_reads_older_text() -> None:
    assert codec(Newer).read_kept(codec(Older).show_kept(Older("a"))) == Newer("a")


@pytest.mark.parametrize(
    "text", ["", "null", "[1]", "[1,2,3]", '[1,{"nonsense":1}]', '[1,{"title":1}]', '[2,{"title":"x"}]', '["x",{}]']
)
def test_what_cannot_be_read_is_a_fault_that_the_operator_hears(text: str) -> None:
    with pytest.raises(StoreFault):
        PLAN.read_kept(text)


def test_text_of_a_newer_version_says_so() -> None:
    with pytest.raises(StoreFault, match="newer"):
        PLAN.read_kept(json.dumps([2, {}]))


def test_instants_keep_their_microseconds() -> None:
    @dataclass(frozen=True)
    class At:
        at: datetime

    at = At(datetime(2027, 3, 28, 1, 0, 0, 1, tzinfo=UTC))
    kept = codec(At)
    assert kept.read_kept(kept.show_kept(at)) == at


def test_a_type_that_cannot_be_kept_is_refused_at_once() -> None:
    @dataclass(frozen=True)
    class Bad:
        things: dict[str, int]

    with pytest.raises(TypeError):
        codec(Bad)
