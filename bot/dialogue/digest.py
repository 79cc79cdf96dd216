"""The coach's daily digest: pain, then missed, unread, off plan, stalls, done; buttons for those who need something."""

from decimal import Decimal

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import CoachDesk, Desk, DigestEntry, OpenPain
from bot.dialogue.ending import minutes_of
from bot.dialogue.hurting import place_line
from bot.dialogue.incoming import Tapped
from bot.dialogue.lightening import offer_lines, offer_rows
from bot.dialogue.lookover import few
from bot.dialogue.phrases import joined, shortened
from bot.dialogue.saytrades import trades_line
from bot.dialogue.turn import Turn
from bot.saying import BLANK, Button, Line, Rows, Say, Toast, Urgency, line
from bot.training.calendar import local_time
from bot.training.exposure import Mark
from bot.training.facts import Ending
from bot.training.life import DayChange
from bot.training.replanned import Instead, SetMore, Shorter
from bot.training.report import Performed, Stage
from bot.training.session import Change, Session
from bot.training.stalls import Advice, Drift
from bot.training.units import Load, Unit

MOST_BUTTONS = 8
LONGEST = 120
"""Characters of somebody's words that are shown."""
MOST_LINES = 14
"""Of a section but pain, which is told whole; the rest is counted: a large practice's digest stays one message."""
MOST_DRIFTS = 4
"""Clients with a button under what stalls; the others are named all the same."""
OVER_MINUTES = 1.25
"""So many times its planned minutes a session may take before it is told. Ours."""
DESK = "desk"
"""The slot of the coach's digest and list: a client is opened in its place."""


def due(desk: Desk, coach: CoachDesk) -> Turn:
    """At the coach's hour, every day; a quiet day is one line without a sound."""
    return Turn(says=(message(desk, coach, urgency=Urgency.NOTICE),))


def on_request(desk: Desk, coach: CoachDesk) -> Turn:
    """`/digest`: the same, now."""
    return Turn(says=(message(desk, coach, urgency=Urgency.REPLY),))


def again(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """Back to the digest, in place, as it stands now."""
    del press
    return Turn(says=(Toast(tap.query), message(desk, coach, urgency=Urgency.REPLY, fresh=False)))


def message(desk: Desk, coach: CoachDesk, *, urgency: Urgency, fresh: bool = True) -> Say:
    """The digest as one message; a client opened from it takes its place, and gives it back."""
    me = coach.profile
    title = line("digest-title", day=local_time(desk.now, me.zone).date(), name=me.name)
    sections = _sections(coach.digest)
    if not any(lines for _, lines in sections):
        return Say(me.chat, (title, line("digest-quiet")), slot=DESK, fresh=fresh, urgency=urgency, silent=True)
    lines: list[Line] = [title]
    for key, entries in sections:
        if entries:
            shown = entries if key == "digest-pain" else few(entries, MOST_LINES)
            lines += [BLANK, line(key, count=len(entries)), *shown]
    needing = [e for e in coach.digest if e.pains or e.missed or e.questions or e.doubts or e.readiness_flagged]
    rows: Rows = tuple(
        (Button(line("open-client", name=e.name), show_press("c.view", e.client, "digest")),)
        for e in needing[:MOST_BUTTONS]
    )
    rows = (*rows, *offer_rows(coach.digest), *_drift_rows(coach.digest))
    return Say(me.chat, tuple(lines), rows, slot=DESK, fresh=fresh, urgency=urgency)


def _sections(entries: tuple[DigestEntry, ...]) -> list[tuple[str, list[Line]]]:
    return [
        ("digest-pain", [line_ for e in sorted(entries, key=_gravest) for line_ in _pain_lines(e)]),
        ("digest-missed", [line("digest-missed-entry", name=e.name, day=day) for e in entries for day in e.missed]),
        ("digest-unread", [line_ for e in entries for line_ in _unread_lines(e)]),
        ("digest-off-plan", [line_ for e in entries for s in e.sessions for line_ in _off_plan(e, s)]),
        ("digest-drift", [line_ for e in entries for line_ in _drift_lines(e)]),
        ("digest-done", [_done_line(e, s) for e in entries for s in e.sessions if s.done and s.ended]),
        ("digest-light", offer_lines(entries)),
        ("digest-days", [_day_line(e, change) for e in entries for change in e.days]),
        ("digest-unreachable", [line("digest-entry", name=e.name) for e in entries if e.unreachable]),
    ]


def _gravity(pain: OpenPain) -> tuple[bool, int]:
    """Urgent first, then the higher score; a score not said counts as the highest."""
    return not pain.said.urgent, -(10 if pain.said.score is None else pain.said.score)


def _gravest(entry: DigestEntry) -> tuple[bool, int]:
    return min((_gravity(p) for p in entry.pains), default=(True, 1))


def _pain_lines(entry: DigestEntry) -> list[Line]:
    lines = [
        line(
            "digest-urgent-entry" if p.said.urgent else "digest-pain-entry",
            name=entry.name,
            pain=place_line("digest-pain-place", p.said),
        )
        for p in sorted(entry.pains, key=_gravity)
    ]
    if entry.readiness_flagged:
        lines.append(line("digest-readiness-entry", name=entry.name))
    return lines


def _unread_lines(entry: DigestEntry) -> list[Line]:
    lines: list[Line] = []
    for question in entry.questions:
        words = shortened(question.words, LONGEST) if question.words else line("a-message")
        lines.append(line("digest-question-entry", name=entry.name, words=words))
    clipped = (shortened(doubt.words, LONGEST) for doubt in entry.doubts)
    lines += [line("digest-doubt-entry", name=entry.name, words=words) for words in clipped]
    return lines


def _off_plan(entry: DigestEntry, session: Session) -> list[Line]:
    """A session that was changed on the day, ended with sets left out, repetitions below the range, or effort beyond
    what was asked."""
    if not session.done or session.ended is not Ending.FINISHED:
        return []
    lines = [_change_line(entry, change) for change in session.changes]
    missing = session.plan.set_count - len({(p.exercise, p.set) for p in session.done if p.stage is Stage.WORK})
    below = [p for p in session.done if _is_below(session, p)]
    if missing > 0:
        lines.append(line("digest-short-entry", name=entry.name, missing=missing, sets=session.plan.set_count))
    if below:
        lines.append(line("digest-below-entry", name=entry.name, exercise=below[0].exercise, count=len(below)))
    return lines


def _change_line(entry: DigestEntry, change: Change) -> Line:
    match change.why:
        case Instead(exercise, into):
            return line("digest-swapped-entry", name=entry.name, exercise=exercise, into=into)
        case Shorter(minutes, trades):
            given = trades_line(trades, change.before)
            return line("digest-shorter-entry", name=entry.name, minutes=minutes, given=given)
        case SetMore(exercise):
            return line("digest-more-entry", name=entry.name, exercise=exercise)


def _drift_lines(entry: DigestEntry) -> list[Line]:
    """What stalls, what gets harder, what takes longer than planned, who comes less: each with its numbers."""
    lines = [drift_line(entry.name, exercise, drift, entry.unit) for exercise, drift in entry.drifts]
    for session in entry.sessions:
        minutes = minutes_of(session)
        if minutes is not None and minutes > OVER_MINUTES * session.plan.minutes:
            lines.append(line("digest-over-entry", name=entry.name, minutes=minutes, planned=session.plan.minutes))
    if entry.slipping is not None:
        done, due = entry.slipping
        lines.append(line("digest-slipping-entry", name=entry.name, done=done, due=due))
    return lines


def drift_line(name: str, exercise: str, drift: Drift, unit: Unit) -> Line:
    """A finding with the sets it is read from, and one suggestion."""
    return line(
        f"drift-{drift.trend.value}",
        name=name,
        exercise=exercise,
        sessions=drift.sessions,
        since=drift.first.day,
        first=_mark_line(drift.first, unit),
        last=_mark_line(drift.last, unit),
        advice=line(f"drift-advice-{drift.advice.value}"),
    )


def _mark_line(mark: Mark, unit: Unit) -> Line:
    load = Load.of((Load.of(repr(mark.load_kg), Unit.KG).amount_in(unit) * 4).quantize(Decimal(1)) / 4, unit)
    if mark.rir is None:
        return line("drift-set", load=load, reps=mark.reps)
    return line("drift-set-left", load=load, reps=mark.reps, left=Decimal(repr(mark.rir)))


def _drift_rows(entries: tuple[DigestEntry, ...]) -> Rows:
    """What the finding suggests, one tap away: a light week, or the lifts where a load is set."""
    rows: list[tuple[Button, ...]] = []
    for entry in [e for e in entries if e.drifts][:MOST_DRIFTS]:
        wants_light = any(drift.advice is Advice.LIGHT_WEEK for _, drift in entry.drifts)
        if wants_light and not entry.signs and entry.next_monday is not None:
            monday = entry.next_monday.isoformat()
            words = line("light-make", name=entry.name, monday=entry.next_monday)
            rows.append((Button(words, show_press("c.light", entry.client, monday, 1)),))
        if any(drift.advice is not Advice.LIGHT_WEEK for _, drift in entry.drifts):
            rows.append((Button(line("drift-lifts", name=entry.name), show_press("c.lifts", entry.client)),))
    return tuple(rows)


def _is_below(session: Session, performed: Performed) -> bool:
    if performed.stage is not Stage.WORK or performed.set is None:
        return False
    planned = session.exercise(performed.exercise).sets
    if performed.set > len(planned) or planned[performed.set - 1].load is None:
        return False  # beyond the plan, or a load was still to be found
    return performed.reps < planned[performed.set - 1].reps.low


def _done_line(entry: DigestEntry, session: Session) -> Line:
    sets = sum(1 for p in session.done if p.stage is Stage.WORK)
    key = "digest-done-entry" if session.effort is None else "digest-done-effort-entry"
    args: dict[str, int] = {} if session.effort is None else {"effort": session.effort}
    return line(key, name=entry.name, title=session.plan.title, day=session.day, sets=sets, **args)


def _day_line(entry: DigestEntry, change: DayChange) -> Line:
    """A day that the client moved, or gave up, with what found no room."""
    if change.to is not None:
        return line("digest-day-moved", name=entry.name, day=change.day, to=change.to)
    if change.waits:
        return line("digest-day-waits", name=entry.name, day=change.day)
    if not change.cut:
        return line("digest-day-lost", name=entry.name, day=change.day)
    what = joined([line("days-sets", name=name, sets=sets) for name, sets in change.cut])
    return line("digest-day-cut", name=entry.name, day=change.day, what=what)
