"""The buttons under a session's card: a set on plan is one tap, everything common is a button."""

from dataclasses import dataclass

from bot.dialogue.buttons import show_press
from bot.dialogue.phrases import count_line, load_line
from bot.dialogue.pointing import point_at
from bot.dialogue.underway import UnderWay
from bot.saying import Button, Line, Rows, line
from bot.training.gym import loadable
from bot.training.loads import Loadable, drop_loads
from bot.training.plan import Drop, LoadStyle, Measure, Mini, PlannedExercise, PlannedSet
from bot.training.replanned import Instead, SetMore, Shorter
from bot.training.report import Performed, Stage
from bot.training.session import Session
from bot.training.units import Load

A_ROW = 4
"""Buttons with numbers in a row: big enough for a thumb. Common practice, no source."""
MINI_CHOICES = (1, 2, 3, 4)

_Row = tuple[Button, ...]


@dataclass(frozen=True, slots=True)
class _Place:
    """Where a button points: the session by its token, an exercise by its place in the plan, a set by its number."""

    token: str
    exercise: str
    number: int

    @classmethod
    def of(cls, session: Session, exercise: str, number: int) -> "_Place":
        return cls(session.token, point_at(session, exercise), number)

    def press(self, op: str, *args: str | int) -> str:
        return show_press(op, self.token, self.exercise, self.number, *args)

    def about(self, op: str) -> str:
        """A button about the exercise, whichever set of it."""
        return show_press(op, self.token, self.exercise)


def card_rows(at: UnderWay, live: PlannedExercise | None, load: Load | None) -> Rows:
    """The keyboard for what comes next; `load` is the load chosen in place of the planned one."""
    token = at.session.token
    end = Button(line("button-end"), show_press("end", token))
    last = at.session.reports[-1].key if at.session.reports else ""
    undo = Button(line("button-undo"), show_press("undo", token, last))
    if live is None:
        return (*_continuations(at), *_effort_row(at), *_back_row(at), (undo, end))
    place = _Place.of(at.session, live.name, at.session.next_set(live) or 1)
    planned = live.sets[place.number - 1]
    loaded = load or planned.load
    if live.load_style is LoadStyle.BODYWEIGHT and loaded is None:
        loaded = Load(0, at.client.profile.unit)
    choosing = live.load_style is not LoadStyle.NONE and (load is not None or loaded is None)
    rows: list[_Row] = [*_continuations(at), *_effort_row(at)]
    if loaded is not None or live.load_style is LoadStyle.NONE:
        rows += _count_rows(live, planned, loaded, place)
    if choosing:
        rows += _load_rows(at, live, loaded, place)
    skip = Button(line("button-skip", name=live.name), place.about("skip"))
    change = Button(line("button-load"), place.press("load", *_load_args(loaded)))
    rows.append((skip,) if choosing or live.load_style is LoadStyle.NONE else (change, skip))
    rest = Button(line("button-rest-planned", name=live.name), place.about("rest"))
    if place.number < len(live.sets) and all(is_one_number(s, live) for s in live.sets[place.number - 1 :]):
        rows.append((rest,))
    other = Button(line("button-other"), place.about("other"))
    rows.append((other, *_less_time(at)))
    pain = Button(line("button-pain"), show_press("hurt", token))
    rows += _back_row(at)
    rows.append((pain, undo, end) if at.session.reports else (pain,))
    return tuple(rows)


def back_button(session: Session) -> Button | None:
    """What takes the last change of plan back; `None` where there is none, or sets were reported that only it has."""
    if not session.may_go_back:
        return None
    match session.changes[-1].why:
        case Instead(exercise):
            label = line("button-back-to", name=exercise)
        case Shorter():
            label = line("button-back-to-all")
        case SetMore(exercise):
            label = line("button-back-one", name=exercise)
    return Button(label, show_press("back", session.token, len(session.changes)))


def _back_row(at: UnderWay) -> list[_Row]:
    button = back_button(at.session)
    return [] if button is None else [(button,)]


def _less_time(at: UnderWay) -> _Row:
    """Where more than a set is left to cut."""
    left = sum(len(e.sets) - at.session.sets_reported(e) for e in at.session.plan.exercises)
    return (Button(line("button-less-time"), show_press("time", at.session.token)),) if left > 1 else ()


def is_one_number(planned: PlannedSet, exercise: PlannedExercise) -> bool:
    """Whether the set as planned says it all: a fixed count, a load where one is needed, nothing after it."""
    has_load = planned.load is not None or exercise.load_style in (LoadStyle.NONE, LoadStyle.BODYWEIGHT)
    return planned.reps.is_fixed and has_load and planned.finish is None


def _count_rows(exercise: PlannedExercise, planned: PlannedSet, load: Load | None, place: _Place) -> list[_Row]:
    def press(count: int) -> str:
        return place.press("set", count, *_load_args(load))

    inside: list[_Row]
    if planned.reps.is_fixed:
        count = planned.reps.low
        shown = line("set-at", count=count_line(exercise, count), load=load_line(exercise, load)) if load else None
        label = line("button-set-done", number=place.number, set=shown or count_line(exercise, count))
        inside = [(Button(label, press(count)),)]
    else:
        chips = [
            Button(_chip(exercise, n, place.number), press(n))
            for n in _spread(planned.reps.low, planned.reps.high, exercise.measure)
        ]
        inside = [tuple(chips[n : n + A_ROW]) for n in range(0, len(chips), A_ROW)]
    near = _near(planned.reps.low, planned.reps.high, exercise.measure)
    return [*inside, tuple(Button(_chip(exercise, n, place.number), press(n)) for n in near)]


def set_rows(at: UnderWay, live: PlannedExercise, number: int) -> Rows:
    """The set itself as planned, one tap; nothing where its load is still to be found."""
    planned = live.sets[number - 1]
    loaded = planned.load
    if live.load_style is LoadStyle.BODYWEIGHT and loaded is None:
        loaded = Load(0, at.client.profile.unit)
    if loaded is None and live.load_style is not LoadStyle.NONE:
        return ()
    return tuple(_count_rows(live, planned, loaded, _Place.of(at.session, live.name, number))[:-1])


def _chip(exercise: PlannedExercise, count: int, number: int) -> Line:
    return line(f"chip-{exercise.measure.value}", count=count, number=number)


def _spread(low: int, high: int, measure: Measure) -> list[int]:
    """The numbers to choose from: all of a narrow range of repetitions, every five seconds or metres; eight at most."""
    step = 1 if measure is Measure.REPS else 5
    while (high - low) // step >= 2 * A_ROW:
        step *= 2
    return sorted({*range(low, high + 1, step), high})


def _near(low: int, high: int, measure: Measure) -> list[int]:
    """Two below and two above the range: what happens when a set goes otherwise."""
    step = 1 if measure is Measure.REPS else 10
    return [n for n in (low - 2 * step, low - step, high + step, high + 2 * step) if n > 0]


def _load_rows(at: UnderWay, exercise: PlannedExercise, load: Load | None, place: _Place) -> list[_Row]:
    ladder = loadable(at.client.profile.gym, exercise.equipment)
    if not ladder:
        return []
    if load is None:
        begins = at.near(exercise)
        picks = _starting_loads(ladder) if begins is None else _loads_around(ladder, begins)
        return [
            tuple(Button(load_line(exercise, p), _press_load(place, p)) for p in picks[n : n + 3])
            for n in range(0, len(picks), 3)
        ]
    below, above = ladder.below(load), ladder.above(load)
    near = [
        x for x in (ladder.below(below) if below else None, below, above, ladder.above(above) if above else None) if x
    ]
    far = [ladder.nearest(Load(load.thousandths * share // 100, load.unit)) for share in (80, 90, 110, 125)]
    wide = [x for x in dict.fromkeys(far) if x is not None and x not in near and x != load]
    return [
        tuple(Button(load_line(exercise, x), _press_load(place, x)) for x in group) for group in (near, wide) if group
    ]


def _starting_loads(ladder: Loadable) -> list[Load]:
    """Six loads to begin from where none is known: from the lightest to a third of the heaviest, in equal ratios."""
    rungs = ladder.all()
    low = next((x.thousandths for x in rungs if x.thousandths > 0), 1)
    ratio = max(1.0, rungs[-1].thousandths / 3 / low) ** (1 / 5)
    wanted = [Load(round(low * ratio**n), ladder.unit) for n in range(6)]
    return list(dict.fromkeys(x for x in map(ladder.nearest, wanted) if x is not None))


def _loads_around(ladder: Loadable, near: Load) -> list[Load]:
    """Six loads to begin from where a lift like it says near which: two lighter, three heavier."""
    below = ladder.below(near)
    lighter = None if below is None else ladder.below(below)
    picks = [x for x in (lighter, below, near) if x is not None]
    while len(picks) < 6 and (above := ladder.above(picks[-1])) is not None:
        picks.append(above)
    return picks


def _press_load(place: _Place, load: Load) -> str:
    return place.press("load", *_load_args(load))


def _load_args(load: Load | None) -> tuple[str | int, ...]:
    return () if load is None else (load.thousandths, load.unit.value)


def _continuations(at: UnderWay) -> list[_Row]:
    """After a set with a finish: its drops or minis, one tap each."""
    last = at.session.reports[-1] if at.session.reports else None
    work = [p for p in (last.sets if last else ()) if p.stage is not Stage.WARMUP and p.set is not None]
    if not work:
        return []
    latest = work[-1]
    exercise = next((e for e in at.session.plan.exercises if e.name == latest.exercise), None)
    if exercise is None or latest.set is None or latest.set > len(exercise.sets):
        return []
    planned = exercise.sets[latest.set - 1]
    stages = [p.stage for p in reported_sets(at, exercise, latest.set)]
    place = _Place.of(at.session, exercise.name, latest.set)
    match planned.finish:
        case Drop(times=times) if stages.count(Stage.DROP) < times:
            top = next((p.load for p in reported_sets(at, exercise, latest.set) if p.stage is Stage.WORK), None)
            nth = stages.count(Stage.DROP)
            loads = drops_from(at, exercise, top)
            load = loads[nth] if nth < len(loads) else None
            base = planned.reps.low
            counts = [n for n in (base - 4, base - 2, base, base + 2) if n > 0]
            label = "chip-drop-load" if load else "chip-drop"
            extra = {"load": load} if load else {}
            return [
                tuple(
                    Button(
                        line(label, count=n, **extra),
                        place.press("drop", n, nth, *_load_args(load)),
                    )
                    for n in counts
                )
            ]
        case Mini(reps=reps) if Stage.MINI not in stages:
            return [tuple(Button(line("chip-mini", times=n, reps=reps), place.press("mini", n)) for n in MINI_CHOICES)]
        case _:
            return []


def drops_from(at: UnderWay, exercise: PlannedExercise, load: Load | None) -> tuple[Load, ...]:
    """The drops after a set at this load, on this client's equipment."""
    finish = next((s.finish for s in exercise.sets if isinstance(s.finish, Drop)), None)
    if load is None or finish is None:
        return ()
    return drop_loads(load, finish, loadable(at.client.profile.gym, exercise.equipment))


def effort_open(at: UnderWay) -> Performed | None:
    """The work set just reported, where the plan has a target effort and nothing was said about it."""
    last = at.session.reports[-1] if at.session.reports else None
    work = [p for p in (last.sets if last else ()) if p.stage is Stage.WORK and p.set is not None]
    if not work or work[-1].rir is not None:
        return None
    exercise = next((e for e in at.session.plan.exercises if e.name == work[-1].exercise), None)
    return work[-1] if exercise is not None and any(s.rir is not None for s in exercise.sets) else None


def _effort_row(at: UnderWay) -> list[_Row]:
    """How much was left in the set just done; never needed."""
    latest = effort_open(at)
    if latest is None or latest.set is None:
        return []
    place = _Place.of(at.session, latest.exercise, latest.set)
    return [tuple(Button(line("chip-left", left=n, set=latest.set), place.press("left", n)) for n in range(4))]


def reported_sets(at: UnderWay, exercise: PlannedExercise, number: int) -> list[Performed]:
    """What is reported for a prescribed set: its work set, both sides, drops and minis."""
    return [
        p for p in at.session.done if p.exercise == exercise.name and p.set == number and p.stage is not Stage.WARMUP
    ]
