"""The weekly summary: sessions, hard sets by muscle, tonnage, best sets, one thing to look at; picture and words."""

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.incoming import Due, RuleKind
from bot.dialogue.makinggood import given_up
from bot.dialogue.missing import MORNING, may_still_train
from bot.dialogue.mylifts import my_lifts_row
from bot.dialogue.phrases import done_line, joined
from bot.dialogue.thisweek import page
from bot.dialogue.turn import RuleSet, Turn
from bot.saying import BLANK, Line, Say, Urgency, WeekChart, line
from bot.training.calendar import instant, local_day, monday_of
from bot.training.people import Standing
from bot.training.session import Session
from bot.training.strength import State, estimate
from bot.training.units import KG_PER_LB, Unit
from bot.training.volume import Done, best_of, hard_sets, planned_sets, tonnage

LOW_SHARE = Decimal("0.6")
"""A muscle with less than this share of its planned sets is the thing to look at. Ours."""
MOST_UNSURE = 0.1
"""An estimate with a wider standard deviation, as a share of it, is not told: it says too little. Ours."""


def due(desk: Desk, client: ClientDesk, incoming: Due) -> Turn:
    """The last training day's evening; in the morning where somebody may still be training, late at night. Where it
    comes late (we were down, or so), it is still of the week that it was for."""
    me = client.profile
    if me.standing is not Standing.ACTIVE:
        return Turn(skipped=f"client is {me.standing.value}")
    if not incoming.ref and may_still_train(desk, client):
        day = local_day(incoming.due_at, me.zone)
        at = instant(day + timedelta(days=1), MORNING, me.zone)
        again = RuleSet(me.id, RuleKind.WEEK, me.zone, once_at=at, ref=monday_of(day).isoformat())
        return Turn(keeps=(again,), skipped="may still train")
    day = date.fromisoformat(incoming.ref) if incoming.ref else local_day(incoming.due_at, me.zone)
    monday, this_monday = monday_of(day), monday_of(local_day(desk.now, me.zone))
    if monday < this_monday - timedelta(days=7):
        return Turn(skipped="too late")
    seen = client if monday == this_monday else replace(client, week=client.last_week)
    if not seen.week:
        return Turn(skipped="nothing was asked this week")
    return summary(seen, monday, day, urgency=Urgency.NOTICE)


def on_request(desk: Desk, client: ClientDesk) -> Turn:
    """`/week`: the week as days, and what was done so far."""
    today = local_day(desk.now, client.profile.zone)
    monday = monday_of(today)
    days = page(desk, client, monday, fresh=True)
    shown = () if days is None else (days,)
    if not client.week:
        return Turn(says=shown or (Say(client.profile.chat, (line("week-nothing"),)),))
    return Turn(says=shown) + summary(client, monday, today, urgency=Urgency.REPLY)


def summary(client: ClientDesk, monday: date, today: date, *, urgency: Urgency) -> Turn:
    """The picture with its finding as caption, and the same in words."""
    me = client.profile
    chart = week_chart(client, monday)
    picture = Say(
        me.chat,
        (line("week-caption", done=chart.done, planned=chart.planned, first=monday, last=monday + timedelta(days=6)),),
        urgency=urgency,
        picture=chart,
    )
    return Turn(says=(picture, Say(me.chat, week_lines(client, chart, today), (my_lifts_row(),), urgency=urgency)))


def week_chart(client: ClientDesk, monday: date) -> WeekChart:
    """What is drawn: by muscle, most work first."""
    done = hard_sets(all_done(client.week))
    wanted = planned_sets(e for session in client.week for e in session.plan.exercises)
    muscles = sorted({**wanted, **done}, key=lambda m: (-wanted.get(m, Decimal(0)), m))
    trained = sum(1 for s in client.week if s.done)
    return WeekChart(
        title=monday.isoformat(),
        muscles=tuple((m, done.get(m, Decimal(0))) for m in muscles),
        done=trained,
        planned=max(len(client.week), trained),
        wanted=tuple((m, wanted.get(m, Decimal(0))) for m in muscles),
    )


def week_lines(client: ClientDesk, chart: WeekChart, today: date) -> tuple[Line, ...]:
    """The words beside the picture."""
    unit = client.profile.unit
    done = all_done(client.week)
    lines = [line("week-sessions", done=chart.done, planned=chart.planned)]
    lines.append(line("week-tonnage", tonnage=tonnage(done, unit), unit=unit.value))
    wanted = dict(chart.wanted)
    lines += [BLANK, line("week-muscles")]
    lines += [
        line("week-muscle", muscle=muscle, sets=sets, planned=wanted.get(muscle, Decimal(0)))
        for muscle, sets in chart.muscles
    ]
    lines += _given_up(client.week)
    best = best_of(done)
    if best:
        lines += [BLANK, line("week-best-title"), *(_best_line(client, item, unit) for item in best)]
    lines += [BLANK, one_thing(client, chart, today)]
    return tuple(lines)


def _given_up(sessions: tuple[Session, ...]) -> list[Line]:
    """Hard sets by muscle that went for time this week; nothing where none did."""
    what = [line("week-given-muscle", muscle=muscle, sets=sets) for muscle, sets in given_up(sessions).items()]
    return [line("week-given-up", what=joined(what))] if what else []


def all_done(sessions: tuple[Session, ...]) -> tuple[Done, ...]:
    """Every set of these sessions with its exercise."""
    return tuple(Done(s.exercise(p.exercise), p) for s in sessions for p in s.done)


def is_open(session: Session, today: date) -> bool:
    """Whether it is today's and can still be done: nothing of it is left out yet."""
    return session.day >= today and session.ended is None and not session.miss_noted


def one_thing(client: ClientDesk, chart: WeekChart, today: date) -> Line:
    """The one thing to look at: pain first, then what was left out, then a muscle that fell short; else well done."""
    urgent = next((p for p in client.pains if p.said.urgent), None)
    if urgent is not None:
        return line("week-look-urgent", day=local_day(urgent.at, client.profile.zone))
    if client.pains:
        pain = client.pains[0]
        return line("week-look-pain", where=pain.said.where or pain.exercise or line("pain-place-none"))
    missed = chart.planned - chart.done - sum(1 for s in client.week if is_open(s, today) and not s.done)
    if missed > 0:
        return line("week-look-missed", missed=missed)
    if any(is_open(s, today) for s in client.week):
        return line("week-look-open")
    wanted = dict(chart.wanted)
    short = [m for m, sets in chart.muscles if wanted.get(m) and sets < wanted[m] * LOW_SHARE]
    if short:
        return line("week-look-muscle", muscle=short[0], sets=dict(chart.muscles)[short[0]], planned=wanted[short[0]])
    return line("week-look-fine")


def _best_line(client: ClientDesk, item: Done, unit: Unit) -> Line:
    shown = done_line(item.exercise, item.performed)
    row = client.strength(item.exercise.name)
    known = estimate(State.from_json(row.after), row.day) if row else None
    if known is None or known.mean_kg <= 0 or known.sd_kg > MOST_UNSURE * known.mean_kg:
        return line("week-best", name=item.exercise.name, set=shown)
    kg = Decimal(repr(round(known.mean_kg, 3)))
    amount = kg if unit is Unit.KG else kg / KG_PER_LB
    return line("week-best-max", name=item.exercise.name, set=shown, max=amount.quantize(Decimal(1)), unit=unit.value)
