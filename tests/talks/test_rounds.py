"""Whatever a client does in whatever order: card, session, read tables, strengths and facts tell the same story."""

from contextlib import suppress
from dataclasses import replace

import sqlalchemy as sa
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

import storage.desk
from bot.dialogue.card import card
from bot.dialogue.desk import House
from bot.dialogue.incoming import Tapped
from bot.dialogue.underway import UnderWay
from bot.training.assemble import fresh_state, strength_after
from bot.training.facts import (
    EffortRated,
    PlanChanged,
    Reported,
    ReportTakenBack,
    SessionEnded,
    SessionMoved,
    SessionPlanned,
    SessionReopened,
)
from bot.training.session import Session, with_plan, with_report, without_report
from bot.training.strength import State
from bot.wording.render import render_say
from storage import strengths
from storage.people import client_at
from storage.record import facts_of
from storage.sessions import session_of
from storage.tables import sets
from tests.talks.wireless import ADA, Wired, Wireless

MONDAY = "2027-01-11 18:05"
TYPED = (
    "60x5 2 left", "50x9", "50: 9 8", "same", "bench 18x10", "row 40x10 1 left", "plank 45",
    "leg curl 35x12 drop 25x9", "pushdown 25x12", "skip row", "62.5x4", "squat 60x6, 50x9, 50x9", "that's me done",
    "no cable today", "swap rows", "only got 20 min", "8 min", "dumbbell row 20x10", "goblet squat 20x8 2 left",
    "warm-up squat 40x5", "600x5", "yesterday: squat 60x5", "yesterday bench 18x9", "thanks!", "set 2 was 52.5x8",
    "/undo", "/today",
)  # fmt: skip
LEFT_OUT = ("hurt", "start", "did", "skipday", "move", "withdraw", "ask", "step", "tocoach")
"""Buttons of other talks: this one is about the session."""

kinds = st.sampled_from(("tap", "tap", "tap", "type", "type", "edit", "wait"))
acts = st.lists(st.tuples(kinds, st.integers(0, 10**6)), min_size=6, max_size=14)


@settings(max_examples=14, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(acts=acts, sleeps_after=st.integers(3, 40))
@example(  # the only set is taken back by an edit
    acts=[("tap", 0), ("tap", 0), ("tap", 0), ("type", 0), ("tap", 0), ("edit", 742)], sleeps_after=4
)
def test_everything_tells_the_same_story(wired: Wired, acts: list[tuple[str, int]], sleeps_after: int) -> None:
    """Taps on whatever stands on the screen, sets typed, edits, undos, skips, ends, late reports; a night in between.
    After each act nothing has failed, and what is kept is what the facts make; undoing all leaves an empty session."""
    with wired.bot(MONDAY) as bot:
        typed: list[int] = []
        for n, (kind, choice) in enumerate(acts):
            if n == sleeps_after:
                bot.until(bot.wall("Europe/Berlin", "2027-01-12 09:30"))
            _act(bot, kind, choice, typed)
            bot.no_turn_failed()
            _same_story(bot)
        _undo_all(bot)


def _act(bot: Wireless, kind: str, choice: int, typed: list[int]) -> None:
    match kind:
        case "tap":
            shown = [d for _, d in bot.buttons(ADA) if d.split(":")[1] not in LEFT_OUT]
            if shown:
                assert bot.tap_data(ADA, shown[choice % len(shown)]) != "(none)"
        case "type":
            typed.append(bot.say(ADA, TYPED[choice % len(TYPED)]))
        case "edit" if typed:
            bot.edit(ADA, typed[choice % len(typed)], TYPED[(choice // 7) % len(TYPED)])
        case _:
            bot.wait(3)


# --- the story, told by the facts alone


def _folded(bot: Wireless, client: str) -> list[Session]:
    """The sessions that the facts make, in order of their days."""
    found: dict[str, Session] = {}
    for recorded in facts_of(bot.work, client):
        match recorded.fact:
            case SessionPlanned(session, of, day, workout, plan, token):
                found[session] = Session(session, of, day, workout, plan, token)
            case PlanChanged() as changed:
                found[changed.session] = with_plan(found[changed.session], changed)
            case Reported() as report:
                found[report.session] = with_report(found[report.session], report)
            case ReportTakenBack() as taken:
                found[taken.session] = without_report(found[taken.session], taken)
            case SessionEnded(session, how):
                found[session] = replace(found[session], ended=how)
            case SessionReopened(session):
                found[session] = replace(found[session], ended=None)
            case SessionMoved(session, to):
                found[session] = replace(found[session], day=to)
            case EffortRated(session, rating):
                found[session] = replace(found[session], effort=rating)
            case _:
                pass
    return sorted(found.values(), key=lambda s: s.day)


def _same_story(bot: Wireless) -> None:
    me = client_at(bot.work, ADA)
    assert me is not None
    told = _folded(bot, me.id)
    for session in told:
        _kept_is(bot, session)
        _card_is(bot, session)
    for name in sorted({e.name for s in told for e in s.plan.exercises}):
        _strength_is(bot, me.id, name, told)


def _kept_is(bot: Wireless, told: Session) -> None:
    """The session's row and its rows among the sets."""
    kept = session_of(bot.work, told.id)
    assert kept is not None
    assert replace(kept.session, first_at=None, last_at=None, miss_noted=False) == told
    rows = bot.work.all(sa.select(sets).where(sets.c.session == told.id).order_by(sets.c.place))
    loads = [p.load for p in told.done]
    assert [(r.exercise, r.set_number, r.stage, r.reps) for r in rows] == [
        (p.exercise, p.set, p.stage.value, p.reps) for p in told.done
    ]
    assert [r.thousandths for r in rows] == [None if load is None else load.thousandths for load in loads]
    assert (kept.session.first_at is None) == (not told.done)


def _card_is(bot: Wireless, told: Session) -> None:
    """The newest card on the screen is the one that would be drawn now."""
    title = told.plan.title
    shown = next((s for s in reversed(bot.screen(ADA)) if s.text.startswith(f"{title} · {told.day:%a %-d %b}")), None)
    look = Tapped(ADA, "q", bot.now, f"1:x:{told.token}", 1)
    desk = storage.desk.build(bot.work, look, now=bot.now, house=House("b", "112", "o", "1"), tokens=())
    assert desk.client is not None
    assert desk.client.session is not None
    assert shown is not None
    drawn, _, choosing = shown.text.partition("\n\nWith ")  # another load being chosen, kept nowhere
    assert drawn == render_say(card(UnderWay(desk.client, desk.client.session))).plain
    assert not choosing or told.ended is None
    done = {(p.exercise, p.set) for p in told.done if p.stage.value == "work"}
    planned = {(e.name, n + 1) for e in told.plan.exercises for n in range(len(e.sets))}
    assert f"{len(done & planned)} of {told.plan.set_count}" in shown.text


def _strength_is(bot: Wireless, client: str, name: str, told: list[Session]) -> None:
    """The kept state is the one of all sessions with the exercise, in order; so is the one built anew by the store."""
    state: State | None = None
    fresh: State | None = None
    for session in told:
        planned = next((e for e in session.plan.exercises if e.name == name), None)
        if planned is None:
            continue
        fresh = fresh or fresh_state(planned)
        if any(p.exercise == name for p in session.done):
            state = strength_after(session, planned, state, None)
    kept = next(iter(strengths.strengths_of(bot.work, client, [name])), None)
    if state is None:
        assert kept is None or (fresh is not None and State.from_json(kept.after) == fresh), name
        return
    assert kept is not None, name
    assert kept.after == state.to_json(), name
    assert _rebuilt(bot, client, name) == kept.after, name


class _Back(Exception):
    """Undoes what was only tried."""


def _rebuilt(bot: Wireless, client: str, name: str) -> str:
    found = ""
    with suppress(_Back), bot.work.savepoint():
        strengths.rebuild(bot.work, client, name)
        found = strengths.strengths_of(bot.work, client, [name])[0].after
        raise _Back
    return found


def _undo_all(bot: Wireless) -> None:
    """`/undo` until there is nothing: no set is left in the session that was meant, no strength has learnt of it."""
    for _ in range(60):
        bot.say(ADA, "/undo")
        _same_story(bot)
        if "nothing to take back" in bot.text(ADA):
            break
    me = client_at(bot.work, ADA)
    assert me is not None
    look = Tapped(ADA, "q", bot.now, "1:x:", 1)
    desk = storage.desk.build(bot.work, look, now=bot.now, house=House("b", "112", "o", "1"), tokens=())
    assert desk.client is not None
    if desk.client.session is not None:
        assert desk.client.session.reports == ()
        assert desk.client.session.done == ()
