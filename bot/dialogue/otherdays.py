"""A programme's weekly work over other numbers of days, side by side: minutes, sets by muscle, rest between.

Taken, it is a new programme on the coach's shelf, which nobody has before it is given.
"""

from collections.abc import Sequence
from decimal import Decimal

from bot.dialogue.buttons import Press, check_of, show_press
from bot.dialogue.desk import CoachDesk, Desk
from bot.dialogue.incoming import Tapped
from bot.dialogue.lookover import table
from bot.dialogue.phrases import joined
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
EXTRA_SETS = 3
"""A week may be added so many on days that got short, weak points first, where the coach says so. Ours."""
MOST_ROWS = 24


def show(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The programme on two to five days; other minutes, or a little more work, by a button."""
    del desk
    found, minutes, more = named(coach, press), press.number(1), press.number(2)
    if found is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    room = minutes if minutes is not None and LEAST <= minutes <= MOST else room_of(found)
    return Turn(says=(Toast(tap.query), _page(coach, found, room, has_more=bool(more))))


def take(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """One of them is a programme of its own from now on, if it still is what was looked at."""
    del desk
    found, days, minutes, more = named(coach, press), press.number(1), press.number(2), press.number(3)
    if found is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    if days not in COUNTS or minutes is None or not LEAST <= minutes <= MOST:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    plan = _plans(found, (days,), minutes, has_more=bool(more))[0]
    check = check_of(repr(plan))
    if press.args[4:] != (check,):
        return Turn(
            says=(Toast(tap.query, line("toast-look-again")), _page(coach, found, minutes, has_more=bool(more)))
        )
    id_, title = f"d{days}{check}{found.id[:4]}", f"{found.title} ({days} ×)"
    if any(p.id == id_ for p in coach.programmes):
        return Turn(says=(Toast(tap.query, line("toast-already-all")),))
    new = as_programme(plan, found, id=id_, title=title, titles=[_title(day) for day in plan.days])
    return Turn((ProgrammeShelved(coach.profile.id, new),), (Toast(tap.query), page(coach, new, ())))


def _plans(found: Programme, counts: Sequence[int], minutes: int, *, has_more: bool) -> tuple[DaysPlan, ...]:
    extra = Extra(EXTRA_SETS) if has_more else None
    return side_by_side(found, counts, Decimal(minutes), clock=Thinking(), extra=extra, time_limit_s=TIME_LIMIT_S)


def _page(coach: CoachDesk, found: Programme, minutes: int, *, has_more: bool) -> Say:
    plans = tuple(_plans(found, (n,), minutes, has_more=has_more)[0] for n in COUNTS)
    lines = [line("otherdays-title", title=found.title, minutes=minutes)]
    lines += [one for n, plan in zip(COUNTS, plans, strict=True) for one in _told(n, plan, len(found.workouts))]
    if any(plan.sets for plan in plans):
        lines += [BLANK, line("otherdays-table"), _table(plans)]
    more = int(has_more)
    takes = [
        Button(line("otherdays-take", days=n), show_press("c.layit", "", found.id, n, minutes, more, _check(plan)))
        for n, plan in zip(COUNTS, plans, strict=True)
        if n != len(found.workouts) or plan.more
    ]
    room = tuple(
        Button(line("otherdays-minutes", minutes=m), show_press("c.lay", "", found.id, m, more))
        for m in MINUTES
        if m != minutes
    )
    rows: list[tuple[Button, ...]] = [tuple(takes[k : k + 2]) for k in range(0, len(takes), 2)]
    rows.append(room)
    if found.targets:
        label = line("otherdays-less") if has_more else line("otherdays-more", sets=EXTRA_SETS)
        rows.append((Button(label, show_press("c.lay", "", found.id, minutes, 1 - more)),))
    rows.append((Button(line("back-programme"), show_press("c.prog", "", found.id)),))
    shown: Rows = tuple(rows)
    return Say(coach.profile.chat, tuple(lines), shown, slot="shelf")


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
    most = {m: max(p.sets.get(m, Decimal(0)) for p in plans) for p in plans for m in p.sets}
    muscles = sorted(most, key=lambda m: (-most[m], m))[:MOST_ROWS]
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
