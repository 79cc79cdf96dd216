"""A programme's weekly work over other numbers of days, side by side: minutes, sets by muscle, rest between.

It is looked at as a table and as a picture. Taken, it is a new programme on the coach's shelf, which nobody has before
it is given.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from bot.dialogue.buttons import Press, check_of, show_press
from bot.dialogue.dayspicture import days_chart, muscles_by_sets
from bot.dialogue.desk import CoachDesk, Desk
from bot.dialogue.incoming import Tapped
from bot.dialogue.lookover import table
from bot.dialogue.phrases import joined, names_line
from bot.dialogue.programmes import named, page
from bot.dialogue.turn import Turn
from bot.saying import BLANK, Button, Line, Rows, Say, Toast, line
from bot.training.days import DayPlan, DaysPlan, as_programme, side_by_side
from bot.training.days_more import Extra
from bot.training.facts import ProgrammeShelved
from bot.training.lost_day import TIME_LIMIT_S, Thinking, room_of
from bot.training.people import Programme
from bot.training.shown import show_amount

COUNTS = (2, 3, 4, 5)
MINUTES = (30, 45, 60, 75, 90)
LEAST, MOST = 15, 240
EXTRA_SETS = (3, 6)
"""A week may be added so many on days that got short, weak points first, where the coach says so. Ours."""
MOST_WEAK = 3
"""Weak points that are named: with more of them none is first."""
MOST_NAMED = 12
_DIGITS = "0123456789abcdefghijklmnopqrstuvwxyz"
"""A muscle on a button: its place among those of the programme."""
MOST_ROWS = 24


@dataclass(frozen=True, slots=True)
class _Asked:
    """What is looked at: minutes that a day has, sets that may be added, and the muscles that come first, as places
    among those of the programme."""

    found: Programme
    minutes: int
    more: int
    weak: str

    def plan(self, days: int) -> DaysPlan:
        """The programme on so many days."""
        muscles = direct_muscles(self.found)
        extra = Extra(self.more, tuple(muscles[_DIGITS.index(w)] for w in self.weak)) if self.more else None
        limit_s, minutes = TIME_LIMIT_S, Decimal(self.minutes)
        return side_by_side(self.found, (days,), minutes, clock=Thinking(), extra=extra, time_limit_s=limit_s)[0]

    def press(self, *, minutes: int | None = None, more: int | None = None, weak: str | None = None) -> str:
        """A button that looks at it otherwise."""
        changed = (minutes or self.minutes, self.more if more is None else more, self.weak if weak is None else weak)
        return show_press("c.lay", "", self.found.id, *changed)


def direct_muscles(programme: Programme) -> list[str]:
    """The muscles that a programme works directly, as many as have a place on a button."""
    worked = {m for w in programme.workouts for e in w.exercises for m in e.muscles}
    return sorted(worked)[: len(_DIGITS)]


def _asked(found: Programme, press: Press, *, at: int) -> _Asked | None:
    """What a button asks for from this argument on; `None` where it can't be (forged or old data)."""
    minutes, more = press.number(at), press.number(at + 1)
    weak = press.args[at + 2] if len(press.args) > at + 2 else ""
    known = _DIGITS[: len(direct_muscles(found))]
    if minutes is None or not LEAST <= minutes <= MOST or more not in (0, *EXTRA_SETS):
        return None
    if len(weak) > MOST_WEAK or len(set(weak)) < len(weak) or not set(weak) <= set(known):
        return None
    return _Asked(found, minutes, more, weak)


def show(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The programme on two to five days; other minutes, a little more work, weak points, by a button."""
    del desk
    found = named(coach, press)
    if found is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    asked = _asked(found, press, at=1)
    if asked is None:
        return Turn(says=(Toast(tap.query), *_looked(coach, _Asked(found, room_of(found), 0, ""), fresh=True)))
    return Turn(says=(Toast(tap.query), *_looked(coach, asked)))


def take(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """One of them is a programme of its own from now on, if it still is what was looked at."""
    del desk
    found, days = named(coach, press), press.number(1)
    if found is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    asked = _asked(found, press, at=2)
    if days not in COUNTS or asked is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    plan = asked.plan(days)
    check = _check(plan)
    if press.args[5:] != (check,):
        return Turn(says=(Toast(tap.query, line("toast-look-again")), *_looked(coach, asked)))
    id_, title = f"d{days}{check}{found.id[:4]}", f"{found.title} ({days} ×)"
    if any(p.id == id_ for p in coach.programmes):
        return Turn(says=(Toast(tap.query, line("toast-already-all")),))
    new = as_programme(plan, found, id=id_, title=title, titles=[_title(day) for day in plan.days])
    return Turn((ProgrammeShelved(coach.profile.id, new),), (Toast(tap.query), page(coach, new, ())))


def _looked(coach: CoachDesk, asked: _Asked, *, fresh: bool = False) -> tuple[Say, ...]:
    """The page and the picture; opened anew, the picture comes anew, else it follows in its place."""
    plans = tuple(asked.plan(n) for n in COUNTS)
    say = _page(coach, asked, plans)
    chart = days_chart(asked.found, asked.minutes, plans)
    if not chart.muscles:
        return (say,)
    words = line("otherdays-picture", title=asked.found.title, minutes=asked.minutes)
    return say, Say(coach.profile.chat, (words,), slot="shelf-picture", fresh=fresh, picture=chart)


def _page(coach: CoachDesk, asked: _Asked, plans: Sequence[DaysPlan]) -> Say:
    found, now = asked.found, len(asked.found.workouts)
    lines = [line("otherdays-title", title=found.title, minutes=asked.minutes)]
    lines += [one for n, plan in zip(COUNTS, plans, strict=True) for one in _told(n, plan, now)]
    if asked.more:
        lines.append(_first(asked))
    if any(plan.sets for plan in plans):
        lines += [BLANK, line("otherdays-table"), _table(plans)]
    takes = [
        Button(
            line("otherdays-take", days=n),
            show_press("c.layit", "", found.id, n, asked.minutes, asked.more, asked.weak, _check(plan)),
        )
        for n, plan in zip(COUNTS, plans, strict=True)
        if n != now or plan.more
    ]
    rows: list[tuple[Button, ...]] = [tuple(takes[k : k + 2]) for k in range(0, len(takes), 2)]
    rows.append(
        tuple(
            Button(line("otherdays-minutes", minutes=m), asked.press(minutes=m)) for m in MINUTES if m != asked.minutes
        )
    )
    rows += _more_rows(asked, plans)
    rows.append((Button(line("back-programme"), show_press("c.prog", "", found.id)),))
    shown: Rows = tuple(rows)
    return Say(coach.profile.chat, tuple(lines), shown, slot="shelf")


def _more_rows(asked: _Asked, plans: Sequence[DaysPlan]) -> list[tuple[Button, ...]]:
    """A little more work, and where it goes first: the muscles with the fewest sets are offered first."""
    more = [
        Button(line("otherdays-more", sets=n) if n else line("otherdays-less"), asked.press(more=n))
        for n in (*EXTRA_SETS, 0)
        if n != asked.more
    ]
    if not asked.more:
        return [tuple(more)]
    muscles, sets = direct_muscles(asked.found), plans[0].sets
    open_ = [w for w in _DIGITS[: len(muscles)] if w not in asked.weak] if len(asked.weak) < MOST_WEAK else []
    open_ = sorted(open_, key=lambda w: (sets.get(muscles[_DIGITS.index(w)], Decimal(0)), w))[:MOST_NAMED]
    offered = [
        Button(line("otherdays-weak", muscle=muscles[_DIGITS.index(w)]), asked.press(weak=asked.weak + w))
        for w in open_
    ]
    rows = [tuple(more), *(tuple(offered[k : k + 3]) for k in range(0, len(offered), 3))]
    if asked.weak:
        rows.append((Button(line("otherdays-no-weak"), asked.press(weak="")),))
    return rows


def _first(asked: _Asked) -> Line:
    """What gets the added sets first."""
    muscles = direct_muscles(asked.found)
    if asked.weak:
        names = names_line([muscles[_DIGITS.index(w)] for w in asked.weak])
        return line("otherdays-first", names=names)
    return line("otherdays-first-targets" if asked.found.targets else "otherdays-first-none")


def _check(plan: DaysPlan) -> str:
    return check_of(repr(plan))


def _told(days: int, plan: DaysPlan, now: int) -> list[Line]:
    """The days with their minutes, and what is left out or added; on as many days as now, all stays as it is."""
    held = joined(
        [line("otherdays-day", name=line(f"weekplan-label-{d.name.value}"), minutes=d.minutes) for d in plan.days]
    )
    lines = [line("otherdays-as-is" if days == now else "otherdays-entry", days=days, held=held)]
    if plan.cut:
        lines.append(line("otherdays-cut", what=_sets(plan.cut)))
    if plan.more:
        lines.append(line("otherdays-added", what=_sets(plan.more)))
    return lines


def _sets(what: tuple[tuple[str, int], ...]) -> Line:
    return joined([line("days-sets", name=name, sets=sets) for name, sets in what])


def _table(plans: Sequence[DaysPlan]) -> Line:
    """A row a muscle: its hard sets on two to five days, then the least hours between two days that work it."""
    muscles = muscles_by_sets(plans)[:MOST_ROWS]
    width = max((len(m) for m in muscles), default=0)
    return table(
        [
            line(
                "otherdays-row",
                muscle=muscle.ljust(width),
                sets="".join(show_amount(p.sets.get(muscle, Decimal(0))).rjust(5) for p in plans),
                rest="".join(_hours(p, muscle).rjust(5) for p in plans),
            )
            for muscle in muscles
        ]
    )


def _hours(plan: DaysPlan, muscle: str) -> str:
    gap = plan.gap_h.get(muscle)
    return "-" if gap is None else str(gap)


def _title(day: DayPlan) -> str:
    """A day by what it holds: its first two exercises."""
    return " + ".join(e.name for e in day.exercises[:2])
