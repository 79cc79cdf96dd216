"""Buttons of the card: a set, a drop, minis, effort, another load, skip, undo, the end."""

from dataclasses import dataclass, replace
from decimal import Decimal
from typing import TypeGuard

from bot.dialogue.buttons import Press
from bot.dialogue.card import card
from bot.dialogue.cardkeys import is_one_number, reported_sets
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.ending import finish
from bot.dialogue.incoming import Tapped
from bot.dialogue.keeping import keep_report, keep_taken_back
from bot.dialogue.phrases import done_line
from bot.dialogue.pointing import pointed
from bot.dialogue.replanning import may_change, taken_back, undoes_change
from bot.dialogue.turn import Turn
from bot.dialogue.underway import UnderWay, pressed_session
from bot.saying import Line, Say, Toast, Urgency, line
from bot.training.facts import Reported, ReportTakenBack
from bot.training.plan import Drop, LoadStyle, Measure, Mini, PlannedExercise, PlannedSet
from bot.training.report import Performed, Stage
from bot.training.units import Load, Unit

MOST_REPS, MOST_COUNTED = 200, 3600
"""Repetitions, and seconds or metres, of a set at the most; more is a forged button."""
MOST_LOAD, MOST_HELP = 1_000_000, 300_000
"""Thousandths: the heaviest load, and the most assistance to the body weight; more is a forged button."""


@dataclass(frozen=True, slots=True)
class _Aim:
    """What a card's button points at, checked against the session."""

    at: UnderWay
    exercise: PlannedExercise
    number: int

    @property
    def planned(self) -> PlannedSet:
        """The set as prescribed."""
        return self.exercise.sets[self.number - 1]

    def has(self, stage: Stage) -> bool:
        """Whether something of this kind is reported for the set."""
        return any(p.stage is stage for p in reported_sets(self.at, self.exercise, self.number))

    def may_count(self, count: int | None) -> TypeGuard[int]:
        """Whether that many can be done."""
        most = MOST_REPS if self.exercise.measure is Measure.REPS else MOST_COUNTED
        return count is not None and 0 <= count <= most

    def may_load(self, load: Load | None) -> bool:
        """Whether the exercise can be loaded so."""
        match self.exercise.load_style:
            case LoadStyle.NONE:
                return True
            case LoadStyle.BODYWEIGHT:
                return load is None or -MOST_HELP <= load.thousandths <= MOST_LOAD
            case LoadStyle.TOTAL | LoadStyle.PER_HAND:
                return load is not None and 0 <= load.thousandths <= MOST_LOAD


def a_set(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """A work set, as the button says."""
    aim, count = _aim(client, press), press.number(2)
    if aim is None or not aim.may_count(count) or not aim.may_load(_load(press, 3)):
        return _old(tap)
    if any(p.set == aim.number for p in aim.at.session.work_done(aim.exercise.name)):
        return Turn(says=(Toast(tap.query, line("toast-already", number=aim.number)), card(aim.at)))
    load = _load(press, 3)
    done = Performed(aim.exercise.name, aim.number, Stage.WORK, _fitting_load(aim.exercise, load), count)
    return _saved(desk, aim, tap, (done,))


def a_drop(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """A drop after the set just done: the one that the button was for, once."""
    aim, count, load = _aim(client, press), press.number(2), _load(press, 4)
    if aim is None or not isinstance(aim.planned.finish, Drop) or not aim.has(Stage.WORK):
        return _old(tap)
    if not aim.may_count(count) or not (load is None or aim.may_load(load)):
        return _old(tap)
    made = sum(1 for p in reported_sets(aim.at, aim.exercise, aim.number) if p.stage is Stage.DROP)
    if made != press.number(3) or made >= aim.planned.finish.times:
        return Turn(says=(Toast(tap.query, line("toast-already", number=aim.number)), card(aim.at)))
    done = Performed(aim.exercise.name, aim.number, Stage.DROP, load, count)
    return _saved(desk, aim, tap, (done,))


def minis(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """So many mini sets after the set just done, at its load."""
    aim, times = _aim(client, press), press.number(2)
    if aim is None or times is None or not 0 < times <= 10:
        return _old(tap)
    if aim.has(Stage.MINI):
        return Turn(says=(Toast(tap.query, line("toast-already", number=aim.number)), card(aim.at)))
    finish_of = aim.planned.finish
    top = next((p for p in aim.at.session.work_done(aim.exercise.name) if p.set == aim.number), None)
    if not isinstance(finish_of, Mini) or top is None:
        return _old(tap)
    mini = Performed(aim.exercise.name, aim.number, Stage.MINI, top.load, finish_of.reps)
    return _saved(desk, aim, tap, (mini,) * times)


def left(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """How many were left in the set just done."""
    aim, rir = _aim(client, press), press.number(2)
    if aim is None or rir is None or not 0 <= rir <= 10:
        return _old(tap)
    report = next((r for r in reversed(aim.at.session.reports) if _has(r, aim)), None)
    if report is None:
        return _old(tap)
    sets = tuple(replace(p, rir=Decimal(rir)) if _is(p, aim) else p for p in report.sets)
    return Turn(says=(Toast(tap.query, line("toast-left", left=rir, number=aim.number)),)) + keep_report(
        desk, aim.at, replace(report, sets=sets)
    )


def rest_as_planned(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The sets that are left of an exercise, each as planned; only offered where that is one number each."""
    aim = _aim(client, press, numbered=False)
    if aim is None:
        return _old(tap)
    first = aim.at.session.next_set(aim.exercise)
    live = aim.at.live(aim.exercise)
    if first is None:
        return Turn(says=(Toast(tap.query, line("toast-already-all")), card(aim.at)))
    rest = live.sets[first - 1 :]
    if not all(is_one_number(s, live) for s in rest):
        return _old(tap)
    done = tuple(
        Performed(live.name, first + n, Stage.WORK, _fitting_load(live, s.load), s.reps.low) for n, s in enumerate(rest)
    )
    return _saved(desk, aim, tap, done)


def skip(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The exercise is given up for today, or what is left of it."""
    aim = _aim(client, press, numbered=False)
    if aim is None:
        return _old(tap)
    if aim.at.session.is_complete(aim.exercise):
        return Turn(says=(Toast(tap.query, line("toast-already-all")), card(aim.at)))
    report = Reported(aim.at.session.id, _key(tap), (), (), (aim.exercise.name,))
    toast = Toast(tap.query, line("toast-skipped", name=aim.exercise.name))
    return Turn(says=(toast,)) + keep_report(desk, aim.at, report)


def choose_load(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """Another load for the set that comes: the card shows it, with its neighbours; nothing is kept yet."""
    del desk
    aim = _aim(client, press)
    if aim is None or aim.at.session.next_set(aim.exercise) != aim.number:
        return _old(tap)
    load = _load(press, 2)
    if load is not None and not aim.may_load(load):
        return _old(tap)
    words = line("toast-load", load=load) if load else line("toast-load-choose")
    return Turn(says=(Toast(tap.query, words), card(aim.at, load=load, urgency=Urgency.REPLY)))


def undo(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """Takes back the report that was the last one when the button was drawn; a second tap takes back no more."""
    session, key = pressed_session(client, press), press.args[0] if press.args else ""
    if session is None:
        return _old(tap)
    report = next((r for r in session.reports if r.key == key), None)
    if report is None:
        return Turn(says=(Toast(tap.query, line("toast-undone-already")), card(UnderWay(client, session))))
    words, turn = _taken_back(desk, UnderWay(client, session), report)
    return Turn(says=(Toast(tap.query, words),)) + turn


def undo_typed(desk: Desk, client: ClientDesk) -> Turn:
    """`/undo`: the last report taken back, or the change of plan after it, said in words."""
    session, chat = client.session, client.profile.chat
    if session is None:
        return Turn(says=(Say(chat, (line("undo-nothing"),)),))
    if undoes_change(session) and may_change(desk, UnderWay(client, session)):
        words, turn = taken_back(UnderWay(client, session))
        return Turn(says=(Say(chat, (words,)),)) + turn
    if not session.reports:
        return Turn(says=(Say(chat, (line("undo-nothing"),)),))
    words, turn = _taken_back(desk, UnderWay(client, session), session.reports[-1])
    return Turn(says=(Say(chat, (words,)),)) + turn


def _taken_back(desk: Desk, at: UnderWay, last: Reported) -> tuple[Line, Turn]:
    """A report of the session taken back, and what it was, in words."""
    session = at.session
    words = line("undone-skip", name=last.skipped[-1]) if last.skipped else line("undone")
    if last.sets:
        shown = last.sets[-1]
        exercise = session.exercise(shown.exercise)
        words = line("undone-set", name=exercise.name, set=done_line(exercise, shown), count=len(last.sets))
    return words, keep_taken_back(desk, at, ReportTakenBack(session.id, last.key))


def end(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The end, whatever is left; a report may still come."""
    session = pressed_session(client, press)
    if session is None:
        return _old(tap)
    if session.ended is not None:
        return Turn(says=(Toast(tap.query, line("toast-ended")),))
    return Turn(says=(Toast(tap.query, line("toast-ended")),)) + finish(desk, UnderWay(client, session))


def _saved(desk: Desk, aim: _Aim, tap: Tapped, done: tuple[Performed, ...]) -> Turn:
    toast = Toast(tap.query, line("toast-saved", number=aim.number, set=done_line(aim.exercise, done[0])))
    report = Reported(aim.at.session.id, _key(tap), done)
    return Turn(says=(toast,)) + keep_report(desk, aim.at, report)


def _aim(client: ClientDesk, press: Press, *, numbered: bool = True) -> _Aim | None:
    """The exercise and set that a button means; `None` where the session is another, or the data make no sense."""
    session = pressed_session(client, press)
    number = press.number(1) if numbered else 1
    exercise = None if session is None else pointed(session, press)
    if session is None or exercise is None or number is None:
        return None
    if not 1 <= number <= len(exercise.sets):
        return None
    return _Aim(UnderWay(client, session), exercise, number)


def _load(press: Press, place: int) -> Load | None:
    thousandths = press.number(place)
    unit = press.args[place + 1] if place + 1 < len(press.args) else ""
    if thousandths is None or unit not in (Unit.KG, Unit.LB):
        return None
    return Load(thousandths, Unit(unit))


def _fitting_load(exercise: PlannedExercise, load: Load | None) -> Load | None:
    return None if exercise.load_style is LoadStyle.NONE else load


def _has(report: Reported, aim: _Aim) -> bool:
    return any(_is(p, aim) for p in report.sets)


def _is(performed: Performed, aim: _Aim) -> bool:
    return (performed.exercise, performed.set, performed.stage) == (aim.exercise.name, aim.number, Stage.WORK)


def _key(tap: Tapped) -> str:
    return f"t{tap.update}"


def _old(tap: Tapped) -> Turn:
    return Turn(says=(Toast(tap.query, line("toast-old")),))
