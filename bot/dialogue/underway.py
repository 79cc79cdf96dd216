"""A session under way: the plan, what is done, and the strength that each exercise had before it."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date

from bot.dialogue.buttons import Press
from bot.dialogue.desk import ClientDesk
from bot.dialogue.turn import Keeping, StrengthKept, StrengthStale
from bot.training.assemble import fresh_state, next_for, strength_after, under_way
from bot.training.calendar import next_training_day
from bot.training.plan import PlannedExercise
from bot.training.progress import NextLoads
from bot.training.session import Session
from bot.training.strength import State
from bot.training.units import Load


def pressed_session(client: ClientDesk, press: Press) -> Session | None:
    """The session that a button is about; `None` where its token is none of this client's: forged, or another's."""
    session = client.session
    return session if session is not None and press.ref == session.token else None


def session_on(client: ClientDesk, day: date) -> Session | None:
    """This client's session of that day, in this week or the last."""
    return next((s for s in (*client.week, *client.last_week) if s.day == day), None)


@dataclass(frozen=True, slots=True)
class UnderWay:
    """What the talks of a session look at."""

    client: ClientDesk
    session: Session

    def is_held(self, exercise: str) -> bool:
        """Whether its load must not go up: pain, or the coach's word."""
        return any(name == exercise for name, _ in self.client.held)

    @property
    def waits_for_yes(self) -> bool:
        """Whether what this session suggests for the next one waits for the coach's yes."""
        return self.client.orders.asks_first and self.session.id not in self.client.orders.approved

    def before(self, exercise: str) -> State | None:
        """The strength before this session; `None` where the exercise was never done before."""
        row = self.client.strength(exercise)
        if row is None:
            return None
        return State.from_json(row.before if row.session == self.session.id else row.after)

    def near(self, exercise: PlannedExercise) -> Load | None:
        """The load near which to begin to look; `None` where it is known, or no lift like it says anything."""
        before = self.before(exercise.name)
        if exercise.guess is None or (before is not None and before.exposures > 0):
            return None
        client, day = self.client, self.session.day
        return next_for(
            exercise, client.profile.gym, None, held=self.is_held(exercise.name), day=day, orders=client.orders
        ).reason.next

    def live(self, exercise: PlannedExercise) -> PlannedExercise:
        """The exercise with the loads of its remaining sets following from today's sets."""
        return under_way(
            self.session,
            exercise,
            self.client.profile.gym,
            self.before(exercise.name),
            held=self.is_held(exercise.name),
            orders=self.client.orders,
        )

    def live_exercises(self) -> tuple[PlannedExercise, ...]:
        """All of them, in order: what a message is read against."""
        return tuple(self.live(e) for e in self.session.plan.exercises)

    def pain_score(self, exercise: str) -> int | None:
        """The highest score of open pain in this exercise, where one was said."""
        scores = [p.said.score for p in self.client.pains if p.exercise == exercise and p.said.score is not None]
        return max(scores, default=None)

    def after(self, exercise: PlannedExercise) -> State:
        """The strength with today's sets."""
        return strength_after(self.session, exercise, self.before(exercise.name), self.pain_score(exercise.name))

    def next_time(self, exercise: PlannedExercise) -> NextLoads:
        """The loads of the next session, as today's sets suggest."""
        trains = self.client.profile.trains
        day = next_training_day(trains, self.session.day) or self.session.day
        return next_for(
            exercise,
            self.client.profile.gym,
            self.after(exercise),
            held=self.is_held(exercise.name),
            day=day,
            orders=self.client.orders,
        )

    def strengths(self, exercises: Iterable[str]) -> tuple[Keeping, ...]:
        """The states to keep for these exercises; to be built anew where a later session was reported already.

        Where nothing of the exercise is left in this one, the state before it counts again; where there was none
        before, building it anew finds nothing, and is as cheap."""
        me = self.client.profile.id
        kept: list[Keeping] = []
        for name in exercises:
            row = self.client.strength(name)
            is_left = any(p.exercise == name for p in self.session.done)
            was_before = row is not None and row.session == self.session.id and _knows_something(row.before)
            if not self.client.session_is_latest or not (is_left or was_before):
                kept.append(StrengthStale(me, name))
                continue
            if not is_left and row is not None:
                kept.append(StrengthKept(me, name, self.session.id, self.session.day, row.before, row.before))
                continue
            exercise = self.session.plan.exercise(name)
            before = self.before(name) or fresh_state(exercise)
            after = self.after(exercise)
            kept.append(StrengthKept(me, name, self.session.id, self.session.day, before.to_json(), after.to_json()))
        return tuple(kept)


def _knows_something(state: str) -> bool:
    """Whether a kept state is of somebody who has done the exercise before."""
    return State.from_json(state).exposures > 0


def on_another_day(client: ClientDesk, session: Session) -> UnderWay:
    """A session that is not today's: strengths on the desk are another session's, so they are built anew."""
    return UnderWay(replace(client, session=session, session_is_latest=False), session)
