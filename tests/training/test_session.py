"""The fold of reports: added, replaced in place, taken back; what is open, what is current."""

from dataclasses import replace
from datetime import date

from hypothesis import given
from hypothesis import strategies as st

from bot.training.facts import PlanChanged, Reported, ReportTakenBack
from bot.training.plan import PlannedExercise, PlannedSession, PlannedSet, RepRange
from bot.training.replanned import AsBefore, Instead, Shorter
from bot.training.report import Performed, Stage
from bot.training.session import Session, sets_done, with_plan, with_report, without_report
from bot.training.units import Load, Unit

PLAN = PlannedSession(
    "Test",
    (
        PlannedExercise("Squat", (PlannedSet(RepRange(5, 5)),) * 2),
        PlannedExercise("Press", (PlannedSet(RepRange(8, 10)),) * 2, pair="A"),
        PlannedExercise("Row", (PlannedSet(RepRange(8, 10)),) * 2, pair="A"),
    ),
    30,
)
EMPTY = Session("s", "c", date(2027, 1, 11), 0, PLAN, "t")


def work(exercise: str, number: int, reps: int = 5) -> Performed:
    """A work set."""
    return Performed(exercise, number, Stage.WORK, Load.of(60, Unit.KG), reps)


def report(
    key: str, *sets: Performed, replaces: tuple[tuple[str, int], ...] = (), skipped: tuple[str, ...] = ()
) -> Reported:
    """A report of a message."""
    return Reported("s", key, sets, replaces, skipped)


keys = st.sampled_from(["m1", "m2", "m3", "t4"])
sets = st.builds(work, st.sampled_from(["Squat", "Press", "Row"]), st.integers(1, 2), st.integers(1, 12))
reports = st.builds(report, keys, sets, replaces=st.sampled_from([(), (("Squat", 1),), (("Row", 2),)]))


@given(st.lists(reports, max_size=6), reports)
def test_a_report_and_its_undo_leave_no_trace(before: list[Reported], one: Reported) -> None:
    """Taking back the report of a new message gives just what was there, replaced sets included."""
    session = EMPTY
    for item in before:
        session = with_report(session, item)
    fresh = replace(one, key="m99")
    assert without_report(with_report(session, fresh), ReportTakenBack("s", "m99")) == session


@given(st.lists(reports, max_size=6), reports)
def test_an_edited_message_counts_once_and_in_its_place(before: list[Reported], one: Reported) -> None:
    """The same key again replaces: as many reports as keys, in the order in which they were first made."""
    session = EMPTY
    for item in [*before, one]:
        session = with_report(session, item)
    made = list(dict.fromkeys(r.key for r in [*before, one]))
    assert [r.key for r in session.reports] == made
    assert session.reports[made.index(one.key)] == one


def test_a_correction_replaces_whole_sets() -> None:
    """The set named goes with its continuations; the others stay."""
    drop = Performed("Squat", 1, Stage.DROP, Load.of(40, Unit.KG), 8)
    first = report("m1", work("Squat", 1), drop, work("Squat", 2))
    second = report("m2", work("Squat", 1, 4), replaces=(("Squat", 1),))
    assert sets_done((first, second)) == (work("Squat", 2), work("Squat", 1, 4))


def test_the_current_exercise_goes_in_order_and_pairs_in_turn() -> None:
    """Squat first; then press and row change places set by set; a skip goes on."""
    session = EMPTY
    order = []
    while session.current is not None:
        name = session.current.name
        order.append(name)
        number = session.next_set(session.current)
        assert number is not None
        session = with_report(session, report(f"m{len(order)}", work(name, number)))
    assert order == ["Squat", "Squat", "Press", "Row", "Press", "Row"]
    assert session.is_all_done
    skipped = with_report(EMPTY, report("m1", skipped=("Squat",)))
    assert skipped.current is not None
    assert skipped.current.name == "Press"


SWAPPED = replace(PLAN, exercises=(replace(PLAN.exercises[0], name="Leg press"), *PLAN.exercises[1:]))
CUT = replace(PLAN, exercises=PLAN.exercises[:2])


def test_a_change_of_plan_and_the_way_back_leave_no_trace() -> None:
    """The plan before is kept beside the reports that counted then; taken back, nothing of it is left."""
    session = with_report(EMPTY, report("m1", work("Row", 1)))
    changed = with_plan(session, PlanChanged("s", SWAPPED, Instead("Squat", "Leg press")))
    assert changed.plan == SWAPPED
    assert (changed.changes[0].before, changed.changes[0].stood) == (PLAN, ("m1",))
    again = with_plan(changed, PlanChanged("s", CUT, Shorter(20, ())))
    assert len(again.changes) == 2
    one_back = with_plan(again, PlanChanged("s", again.changes[-1].before, AsBefore()))
    assert one_back == changed
    assert with_plan(one_back, PlanChanged("s", PLAN, AsBefore())) == session


def test_what_was_reported_of_the_new_exercise_bars_the_way_back() -> None:
    """Not what was reported of others, nor of a plan that was only cut."""
    changed = with_plan(EMPTY, PlanChanged("s", SWAPPED, Instead("Squat", "Leg press")))
    assert changed.may_go_back
    assert with_report(changed, report("m1", work("Row", 1))).may_go_back
    assert not with_report(changed, report("m1", work("Leg press", 1))).may_go_back
    cut = with_plan(EMPTY, PlanChanged("s", CUT, Shorter(20, ())))
    assert with_report(cut, report("m1", work("Squat", 1))).may_go_back
    assert not EMPTY.may_go_back


def test_a_warm_up_of_what_left_the_plan_is_still_of_an_exercise() -> None:
    """Its sets are read by the plan before."""
    warm = Performed("Squat", None, Stage.WARMUP, Load.of(20, Unit.KG), 5)
    session = with_report(EMPTY, report("m1", warm))
    changed = with_plan(session, PlanChanged("s", SWAPPED, Instead("Squat", "Leg press")))
    assert [changed.exercise(p.exercise).name for p in changed.done] == ["Squat"]
    assert changed.may_go_back
