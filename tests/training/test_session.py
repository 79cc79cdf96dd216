"""The fold of reports: added, replaced in place, taken back; what is open, what is current."""

from dataclasses import replace
from datetime import date

from hypothesis import given
from hypothesis import strategies as st

from bot.training.facts import Reported, ReportTakenBack
from bot.training.plan import PlannedExercise, PlannedSession, PlannedSet, RepRange
from bot.training.report import Performed, Stage
from bot.training.session import Session, sets_done, with_report, without_report
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
