"""Joining: an invitation followed, seven short questions, resumable at any point; afterwards the same questions one
at a time as settings."""

from dataclasses import replace
from datetime import time, timedelta

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.daycount import days_changed
from bot.dialogue.daycountwords import wants_other_days
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.hurting import told_of_pain
from bot.dialogue.incoming import Due, Tapped, Typed
from bot.dialogue.journey import moved_to
from bot.dialogue.naming import read_name
from bot.dialogue.resting import rest_line
from bot.dialogue.rules import no_resume, no_training_rules, nudge_rule, training_rules
from bot.dialogue.steps import Answered, Chosen, Misread, Step, ask_step, day_words, read_step
from bot.dialogue.turn import Talk, TalkSet, Turn
from bot.notation.pain import told_pain
from bot.saying import Button, Line, Menu, Repeat, Rows, Say, Strip, Toast, Urgency, line
from bot.training.facts import (
    CameBack,
    ClientJoined,
    ConsentGiven,
    ConsentWithdrawn,
    ProfileChanged,
    ReadinessAnswered,
)
from bot.training.people import Client, Gym, Standing, TrainingTime
from bot.training.units import Unit

STEPS = tuple(Step)
SLOT = "question"
ASKED = (Step.NAME, Step.UNIT, Step.CLOCK, Step.DAYS, Step.GYM)
"""What `/settings` asks anew: consent and readiness have ways of their own."""
ASKED_FOR = timedelta(minutes=30)
"""So long what is typed counts as the answer to a question of `/settings`; later it is a report again."""


def joined(desk: Desk, typed: Typed) -> Turn:
    """Somebody follows a coach's open invitation: they are known from now on, and the first question is asked."""
    invite = desk.invite
    if invite is None or not invite.is_open or not invite.coach:
        return Turn(says=(Say(typed.chat, (line("invite-spent"),)),))
    name = read_name(typed.first_name)
    fact = ClientJoined(desk.tokens[0][:16], invite.coach, typed.chat, name, invite.token_hash)
    talk = Talk("enrol", Step.CONSENT)
    return Turn(
        facts=(fact,),
        says=(
            Say(typed.chat, (line("enrol-hello", coach=invite.coach_name),)),
            Say(typed.chat, _consent_lines(desk, invite.coach_name), _consent_rows(), slot=SLOT, fresh=True),
        ),
        keeps=(TalkSet(typed.chat, talk), nudge_rule(_newcomer(fact, typed), desk.now)),
    )


def resume(desk: Desk, client: ClientDesk) -> Turn:
    """Asks the open question again, below everything else."""
    talk = desk.talk if desk.talk and desk.talk.name == "enrol" else Talk("enrol", _first_open(client))
    return _ask(desk, client, talk, fresh=True)


def typed(desk: Desk, client: ClientDesk, incoming: Typed) -> Turn:
    """A typed answer to the open question, of enrolment or of settings; but pain is never taken for one, and an urgent
    sign is answered first, also before there is a consent to keep it."""
    talk, said = _talk(desk, client), told_pain(incoming.text)
    if said is not None and talk.name == "settings":
        return told_of_pain(desk, client, said, words=incoming.text)
    if said is None or not said.urgent:
        return _answer(desk, client, talk, incoming.text, tapped=False)
    stop = (line("urgent-stop", number=desk.house.emergency_number), line("urgent-who"))
    first = Turn(says=(Say(incoming.chat, stop, urgency=Urgency.URGENT, repeat=Repeat.AGAIN),))
    if talk.step != Step.READY:
        return first
    return first + _answer(desk, client, talk, incoming.text, tapped=False)


def tapped(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """A button under a question. One of an earlier question says so and changes nothing."""
    talk = desk.talk
    if talk is None or talk.name not in ("enrol", "settings") or press.ref != talk.step:
        return Turn(says=(Toast(tap.query, line("toast-step-over")),))
    if talk.step == Step.CONSENT and press.args == ("no",):
        return Turn(says=(Toast(tap.query), Say(tap.chat, (line("enrol-no-consent"),))))
    return Turn(says=(Toast(tap.query),)) + _answer(desk, client, talk, " ".join(press.args), tapped=True)


def nudge(desk: Desk, client: ClientDesk, due: Due) -> Turn:
    """A day after joining: one reminder where the enrolment is not finished, and never another."""
    del due
    if client.profile.standing is not Standing.JOINING:
        return Turn(skipped="enrolled")
    again = resume(desk, client)
    return Turn(says=(Say(client.profile.chat, (line("enrol-nudge"),), urgency=Urgency.NOTICE),)) + again


# --- settings


def settings(client: ClientDesk) -> Turn:
    """`/settings`: what is set, and a button for each."""
    me = client.profile
    lines = (
        line("settings-title"),
        line("settings-name", name=me.name),
        line("settings-unit", unit=me.unit.value),
        line("settings-zone", zone=me.zone.rsplit("/", 1)[-1].replace("_", " ")),
        line("settings-days", days=days_line(me.trains), time=me.trains.at),
        line(
            "settings-gym",
            dumbbell=me.gym.dumbbells[2],
            plate=me.gym.plate,
            stack=me.gym.stack[2],
            unit=me.gym.unit.value,
        ),
        line("settings-words", on="yes" if me.confirm_in_words else "no"),
        rest_line(client.life.rest_notice, client.life.rest_notice_s),
        line("settings-standing", paused="yes" if me.standing is Standing.PAUSED else "no"),
    )
    buttons = [Button(line(f"settings-change-{s}"), show_press("ask", s)) for s in ASKED]
    buttons.append(Button(line("settings-change-words"), show_press("words")))
    buttons.append(Button(line("settings-change-rest"), show_press("restset")))
    pause = "go-on" if me.standing is Standing.PAUSED else "pause"
    buttons.append(Button(line(f"settings-{pause}"), show_press(pause)))
    buttons.append(Button(line("settings-away"), show_press("away")))
    buttons.append(Button(line("settings-withdraw"), show_press("withdraw")))
    rows: Rows = tuple(tuple(buttons[n : n + 2]) for n in range(0, len(buttons), 2))
    return Turn(says=(Say(me.chat, lines, rows, slot="settings", fresh=True),), keeps=(TalkSet(me.chat, None),))


def change(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """A button of `/settings`: asks that one question."""
    if press.ref not in ASKED or client.profile.standing is Standing.JOINING:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    talk = Talk("settings", press.ref, expires_at=desk.now + ASKED_FOR)
    return Turn(says=(Toast(tap.query),)) + _ask(desk, client, talk, fresh=True)


def days_wanted(desk: Desk, client: ClientDesk, incoming: Typed) -> Turn | None:
    """Another number of training days, wanted in words: asks on which, as the button does."""
    if client.profile.standing is not Standing.ACTIVE or not wants_other_days(incoming.text):
        return None
    return _ask(desk, client, Talk("settings", Step.DAYS, expires_at=desk.now + ASKED_FOR), fresh=True)


def words(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """Confirm each set in words, or with a quiet reaction."""
    del desk, press
    me = client.profile
    key = "toast-words-off" if me.confirm_in_words else "toast-words-on"
    return Turn((ProfileChanged(me.id, confirm_in_words=not me.confirm_in_words),), (Toast(tap.query, line(key)),))


def pause(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """No sessions and no reminders until they go on; the coach is told."""
    del desk, press
    me = client.profile
    if me.standing is not Standing.ACTIVE:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    go_on = Button(line("settings-go-on"), show_press("go-on"))
    return Turn(
        (ProfileChanged(me.id, standing=Standing.PAUSED),),
        (
            Toast(tap.query),
            Say(me.chat, (line("paused"),), ((go_on,),)),
            Say(client.coach.chat, (line("coach-client-paused", name=me.name),), about=me.id, urgency=Urgency.NOTICE),
        ),
        no_training_rules(me),
    )


def go_on(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """Back from a pause, unless the coach's word on a readiness answer is still awaited."""
    del desk, press
    me = client.profile
    if me.standing is not Standing.PAUSED:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    if me.readiness_flagged:
        return Turn(says=(Toast(tap.query), Say(me.chat, (line("go-on-waits", coach=client.coach.name),))))
    return Turn(
        (ProfileChanged(me.id, standing=Standing.ACTIVE), CameBack(me.id)),
        (Toast(tap.query), Say(me.chat, (line("went-on", days=days_line(me.trains), time=me.trains.at),))),
        (*training_rules(me), no_resume(me)),
    )


def withdraw(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """Consent taken back, in two taps; nothing is sent or kept afterwards."""
    del desk
    me = client.profile
    if press.args != ("sure",):
        sure = Button(line("withdraw-sure"), show_press("withdraw", "", "sure"))
        keep = Button(line("withdraw-keep"), show_press("keep"))
        return Turn(
            says=(
                Toast(tap.query),
                Say(me.chat, (line("withdraw-ask"),), ((keep,), (sure,)), slot="withdraw", fresh=True),
            )
        )
    return Turn(
        (ConsentWithdrawn(me.id),),
        (
            Toast(tap.query),
            Strip(me.chat, slot="withdraw"),
            Say(me.chat, (line("withdrawn"),)),
            Say(client.coach.chat, (line("coach-client-withdrew", name=me.name),), urgency=Urgency.NOTICE),
        ),
        (*no_training_rules(me), TalkSet(me.chat, None)),
    )


def keep(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """Thought better of it."""
    del desk, press
    return Turn(says=(Toast(tap.query, line("toast-kept")), Strip(client.profile.chat, slot="withdraw")))


def days_line(trains: TrainingTime) -> Line:
    """The training days in words."""
    return day_words(trains.days)


# --- how the questions go on


def _answer(desk: Desk, client: ClientDesk, talk: Talk, text: str, *, tapped: bool) -> Turn:
    result = read_step(Step(talk.step), text, tapped=tapped, desk=desk, client=client, talk=talk)
    match result:
        case Misread(line=problem):
            return Turn(says=(Say(client.profile.chat, (problem,)),))
        case Chosen(data=data):
            merged = replace(talk, data=tuple({**dict(talk.data), **dict(data)}.items()))
            return _ask(desk, client, merged, fresh=not tapped)
        case Answered(facts=facts):
            known = _with(client, facts)
            kept = Turn(facts=facts)
            if talk.name == "settings":
                zone = known.profile.zone
                moved = moved_to(desk, client, zone) if zone != client.profile.zone else Turn()
                return kept + _changed(known) + moved + days_changed(client, known)
            step = STEPS.index(Step(talk.step)) + 1
            if step < len(STEPS):
                return kept + _ask(desk, known, Talk("enrol", STEPS[step]), fresh=not tapped)
            return kept + _finished(known, facts)


def _ask(desk: Desk, client: ClientDesk, talk: Talk, *, fresh: bool) -> Turn:
    step = Step(talk.step)
    lines, rows = ask_step(step, desk, client, talk)
    if talk.name == "enrol":
        lines = (line("enrol-step", step=STEPS.index(step) + 1, steps=len(STEPS)), *lines)
    chat = client.profile.chat
    return Turn(says=(Say(chat, lines, rows, slot=SLOT, fresh=fresh),), keeps=(TalkSet(chat, talk),))


def _changed(client: ClientDesk) -> Turn:
    rules = training_rules(client.profile) if client.profile.standing is Standing.ACTIVE else ()
    chat = client.profile.chat
    kept = Turn(says=(Strip(chat, slot=SLOT), Say(chat, (line("settings-saved"),))), keeps=rules)
    return kept + settings(client)


def _finished(client: ClientDesk, facts: tuple[object, ...]) -> Turn:
    """The last answer: rules are set, the coach is told; a flagged readiness answer waits for the coach's word."""
    me, coach = client.profile, client.coach
    answer = next((f for f in facts if isinstance(f, ReadinessAnswered)), None)
    flagged = answer is not None and answer.flagged
    standing = Standing.PAUSED if flagged else Standing.ACTIVE
    open_client = Button(line("open-client", name=me.name), show_press("c.open", me.id))
    give = Button(line("give-sample", name=me.name), show_press("c.give", me.id))
    start = Button(line("start-client", name=me.name), show_press("c.start", me.id))
    told = [line("coach-joined", name=me.name, days=days_line(me.trains), time=me.trains.at)]
    if flagged:
        told.append(line("coach-readiness", name=me.name))
        if answer is not None and answer.words:
            told.append(line("coach-readiness-words", words=answer.words))
    mine = (
        line("enrol-done", name=me.name, days=days_line(me.trains), time=me.trains.at),
        line("enrol-done-flagged", coach=coach.name) if flagged else line("enrol-done-next", coach=coach.name),
        line("enrol-done-how"),
    )
    return Turn(
        (ProfileChanged(me.id, standing=standing),),
        (
            Strip(me.chat, slot=SLOT),
            Say(me.chat, mine),
            Menu(me.chat, "client"),
            Say(
                coach.chat,
                tuple(told),
                ((start,), (give,), (open_client,)) if flagged else ((give,), (open_client,)),
                about=me.id,
                urgency=Urgency.URGENT if flagged else Urgency.NOTICE,
            ),
        ),
        (TalkSet(me.chat, None), *(() if flagged else training_rules(me))),
    )


def _talk(desk: Desk, client: ClientDesk) -> Talk:
    """The talk about the open question; where another talk came in between (a coach's own), it is found again."""
    if desk.talk is not None and desk.talk.name in ("enrol", "settings"):
        return desk.talk
    return Talk("enrol", _first_open(client))


def _first_open(client: ClientDesk) -> Step:
    return Step.NAME if client.profile.consent else Step.CONSENT


def _with(client: ClientDesk, facts: tuple[object, ...]) -> ClientDesk:
    """The client as these facts leave them, for the words of the same turn."""
    me = client.profile
    for fact in facts:
        match fact:
            case ProfileChanged():
                me = replace(
                    me,
                    name=fact.name or me.name,
                    unit=fact.unit or me.unit,
                    zone=fact.zone or me.zone,
                    trains=fact.trains or me.trains,
                    gym=fact.gym or me.gym,
                )
            case ConsentGiven(version=version):
                me = replace(me, consent=version)
            case ReadinessAnswered(flagged=flagged):
                me = replace(me, readiness_flagged=flagged)
            case _:
                pass
    return replace(client, profile=me)


def _consent_lines(desk: Desk, coach: str) -> tuple[Line, ...]:
    return (
        line("enrol-step", step=1, steps=len(STEPS)),
        line("enrol-consent", coach=coach, contact=desk.house.operator_contact),
        line("enrol-consent-ask", version=desk.house.consent_version),
    )


def _consent_rows() -> Rows:
    yes = Button(line("consent-yes"), show_press("step", Step.CONSENT, "yes"))
    no = Button(line("consent-no"), show_press("step", Step.CONSENT, "no"))
    return ((yes,), (no,))


def _newcomer(fact: ClientJoined, typed: Typed) -> Client:
    trains = TrainingTime((), time(18))
    gym = Gym.usual(Unit.KG)
    return Client(fact.client, fact.coach, typed.chat, fact.name, Unit.KG, "UTC", trains, gym, Standing.JOINING)
