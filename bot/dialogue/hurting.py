"""Pain: kept whatever else is wrong, answered with care and never with a diagnosis, told to the coach at once."""

from dataclasses import replace
from datetime import timedelta

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.card import card, card_slot
from bot.dialogue.desk import ClientDesk, Desk, OpenPain
from bot.dialogue.incoming import Due, Tapped, Typed
from bot.dialogue.rules import no_training_rules, pain_check_rule
from bot.dialogue.sayrating import read_morning, read_rating
from bot.dialogue.turn import Talk, TalkSet, Turn
from bot.dialogue.underway import UnderWay
from bot.notation.pain import read_pain, told_pain
from bot.saying import Button, Line, Repeat, Rows, Say, Strip, Toast, Urgency, line
from bot.training.calendar import local_day
from bot.training.facts import PainFollowedUp, PainReported, PainScored, ProfileChanged, ReadinessAnswered
from bot.training.pain import (
    AskScore,
    GetHelp,
    KeepLoad,
    Morning,
    PainSaid,
    Release,
    StopExercise,
    after_morning,
    respond,
)
from bot.training.people import Coach, Standing
from bot.training.session import Session

ANSWERS = ("gone", "better", "same", "worse")
ASKED_FOR = timedelta(hours=1)
"""So long what is typed counts as the answer to the Pain button."""
SCORE_ASKED_FOR, CHECK_ASKED_FOR = timedelta(minutes=10), timedelta(hours=8)
"""So long a typed number counts as the score that was asked, and typed words as the answer of the morning after."""


def told_of_pain(desk: Desk, client: ClientDesk, said: PainSaid, *, words: str, exercise: str | None = None) -> Turn:
    """Pain in a message: kept, the exercise held, the coach told, the score asked; urgent signs answered first.

    `exercise` is the one that the message names; else it is laid to the one reported last.
    """
    me, coach = client.profile, client.coach
    held = None if said.urgent else exercise or exercise_of(client.session)
    pain = OpenPain(desk.tokens[1][:12], held, said, words, desk.now)
    fact = PainReported(pain.id, me.id, client.session.id if client.session else None, held, said, words)
    turn = _said_before(client, said) + Turn((fact,), (), (pain_check_rule(me, pain.id, desk.now),))
    if said.urgent:
        return turn + _stop(desk, client, pain)
    lines = [place_line("pain-heard", said)]
    if held:
        lines.append(line("pain-held", name=held))
    lines += [line("pain-told", coach=coach.name), _care(said)]
    rows: Rows = ()
    keeps: tuple[TalkSet, ...] = ()
    if said.score is None:
        lines.append(line("pain-score-ask"))
        rows = score_rows(pain.id)
        keeps = (TalkSet(me.chat, Talk("score", pain.id, expires_at=desk.now + SCORE_ASKED_FOR)),)
    mine = Say(me.chat, tuple(lines), rows, slot=f"pain:{pain.id}", urgency=Urgency.URGENT, repeat=Repeat.AGAIN)
    turn += Turn(says=(mine, alert(client, pain)), keeps=keeps)
    if held and client.session is not None and client.session.ended is None:
        turn += Turn(says=(card(UnderWay(with_hold(desk, client, held), client.session)),))
    return turn


def _stop(desk: Desk, client: ClientDesk, pain: OpenPain) -> Turn:
    """An urgent sign: help first and nothing beside it. Sessions wait until the coach says that they may go on."""
    me, coach = client.profile, client.coach
    lines = (
        line("urgent-stop", number=desk.house.emergency_number),
        line("urgent-who"),
        line("urgent-waits", coach=coach.name),
    )
    mine = Say(me.chat, lines, slot=f"pain:{pain.id}", urgency=Urgency.URGENT, repeat=Repeat.AGAIN)
    strips = (Strip(me.chat, slot=card_slot(client.session.id)),) if client.session is not None else ()
    return Turn(
        (ReadinessAnswered(me.id, flagged=True, words=pain.words), ProfileChanged(me.id, standing=Standing.PAUSED)),
        (mine, alert(client, pain), *strips),
        (*no_training_rules(me), TalkSet(me.chat, None)),
    )


def _said_before(client: ClientDesk, said: PainSaid) -> Turn:
    """The same place again: what was open there gives way to what is said now; one place is asked about once."""
    same = [
        p for p in client.pains if (p.said.where, p.said.side, p.said.urgent) == (said.where, said.side, said.urgent)
    ]
    return Turn(tuple(PainFollowedUp(p.id, client.profile.id, "said again", settled=True) for p in same))


def _care(said: PainSaid) -> Line:
    """What to do now, by the policy of `training.pain`: firmer the higher the score."""
    match respond(said):
        case StopExercise(severe=True):
            return line("pain-high")
        case GetHelp() | AskScore() | StopExercise() | KeepLoad():
            return line("pain-care")


def with_hold(desk: Desk, client: ClientDesk, exercise: str | None) -> ClientDesk:
    """The client with this exercise on hold from today."""
    if exercise is None or any(name == exercise for name, _ in client.held):
        return client
    return replace(client, held=(*client.held, (exercise, local_day(desk.now, client.profile.zone))))


LONGEST_QUOTE, _LEAD = 500, 80
"""Characters of a message that the alert quotes, and those before the hurt among them."""


def _about(pain: OpenPain) -> str:
    """The client's words; of a long message those around the hurt, an urgent one before others."""
    words = pain.words
    if len(words) <= LONGEST_QUOTE:
        return words
    spans = read_pain(words).spans
    urgent = [s for s in spans if pain.said.urgent and (told := told_pain(words[slice(*s)])) and told.urgent]
    hurt = min((start for start, _ in urgent or spans), default=0)
    first = max(0, min(hurt - _LEAD, len(words) - LONGEST_QUOTE))
    return ("…" if first else "") + words[first : first + LONGEST_QUOTE]


def alert(client: ClientDesk, pain: OpenPain) -> Say:
    """What the coach sees, at once; a score that comes later brings it up to date."""
    me = client.profile
    lines: list[Line] = [line("alert-urgent" if pain.said.urgent else "alert-pain", name=me.name)]
    lines.append(place_line("alert-place", pain.said))
    if pain.exercise:
        lines.append(line("alert-during", exercise=pain.exercise))
    if pain.words:
        lines.append(line("quote", words=_about(pain)))
    if pain.said.urgent:
        lines.append(line("alert-urgent-told", name=me.name))
    start = ((Button(line("start-client", name=me.name), show_press("c.start", me.id)),),) if pain.said.urgent else ()
    rows: Rows = (
        (Button(line("reply-to", name=me.name), show_press("c.reply", me.id)),),
        (Button(line("open-client", name=me.name), show_press("c.open", me.id)),),
        (Button(line("handled-pain", name=me.name), show_press("c.handled", me.id, pain.id)),),
        *start,
    )
    return Say(
        client.coach.chat,
        tuple(lines),
        rows,
        slot=f"alert:{pain.id}",
        about=me.id,
        urgency=Urgency.URGENT,
        repeat=Repeat.AGAIN,
    )


def scored(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The score, 0 to 10, by a button."""
    del desk
    score = press.number(0)
    pain = next((p for p in client.pains if p.id == press.ref), None)
    if pain is None or pain.said.urgent or score is None or not 0 <= score <= 10:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    return Turn(says=(Toast(tap.query, line("toast-score", score=score)),)) + _with_score(client, pain, score)


def score_typed(desk: Desk, client: ClientDesk, text: str) -> Turn | None:
    """The score, typed as the very next message; `None` where it is something else, or nothing waits for it."""
    score = read_rating(text)
    pain = next((p for p in client.pains if desk.talk and p.id == desk.talk.step), None)
    return None if pain is None or score is None else _with_score(client, pain, score)


def _with_score(client: ClientDesk, pain: OpenPain, score: int) -> Turn:
    me = client.profile
    said = PainSaid(pain.said.where, score, pain.said.side, pain.said.urgent)
    mine = [place_line("pain-heard", said)]
    if pain.exercise:
        mine.append(line("pain-held", name=pain.exercise))
    mine.append(_care(said))
    again = alert(client, replace(pain, said=said))
    says = (Say(me.chat, tuple(mine), slot=f"pain:{pain.id}"), again)
    return Turn((PainScored(pain.id, me.id, score),), says, (TalkSet(me.chat, None),))


def button(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The Pain button, or `/pain`: asks where and how bad; signs that can't wait are named."""
    del press
    return Turn(says=(Toast(tap.query),)) + ask(desk, client)


def ask(desk: Desk, client: ClientDesk) -> Turn:
    """Asks for the words; whatever is typed next is taken as pain, unless it comes much later."""
    chat = client.profile.chat
    rows: Rows = (
        (Button(line("pain-urgent-button"), show_press("urgent")),),
        (Button(line("pain-nothing"), show_press("nopain")),),
    )
    say = Say(chat, (line("pain-ask"), line("pain-ask-urgent")), rows, slot="painask", fresh=True)
    return Turn(says=(say,), keeps=(TalkSet(chat, Talk("pain", "words", expires_at=desk.now + ASKED_FOR)),))


def typed(desk: Desk, client: ClientDesk, incoming: Typed) -> Turn:
    """The answer to the Pain button. Even words that hold no pain to our reader count: they were asked for as such."""
    said = told_pain(incoming.text) or PainSaid(None, None, None, urgent=False)
    ended = Turn(keeps=(TalkSet(incoming.chat, None),))
    return ended + told_of_pain(desk, client, said, words=incoming.text)


def urgent(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """One of the signs that can't wait, by a button."""
    del press
    said = PainSaid(None, None, None, urgent=True)
    turn = told_of_pain(desk, client, said, words="")
    return Turn(says=(Toast(tap.query),), keeps=(TalkSet(client.profile.chat, None),)) + turn


def nothing(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The Pain button was a slip."""
    del desk, press
    chat = client.profile.chat
    return Turn(
        says=(Toast(tap.query), Say(chat, (line("pain-nothing-kept"),), slot="painask")), keeps=(TalkSet(chat, None),)
    )


# --- the next morning


def check(desk: Desk, client: ClientDesk, due: Due) -> Turn:
    """The morning after: how is it?"""
    pain = next((p for p in client.pains if p.id == due.ref), None)
    if pain is None:
        return Turn(skipped="settled")
    buttons = [Button(line(f"check-{a}"), show_press("check", pain.id, a)) for a in ANSWERS]
    say = Say(
        client.profile.chat,
        (place_line("pain-check", pain.said),),
        (tuple(buttons[:2]), tuple(buttons[2:])),
        slot=f"check:{pain.id}",
        fresh=True,
        urgency=Urgency.NOTICE,
    )
    talk = Talk("check", pain.id, expires_at=desk.now + CHECK_ASKED_FOR)
    return Turn(says=(say,), keeps=(TalkSet(client.profile.chat, talk),) if desk.talk is None else ())


def checked(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The answer of the morning after. Gone lifts the hold; anything else keeps it, asks again, and worse alerts."""
    answer = press.args[0] if press.args else ""
    pain = next((p for p in client.pains if p.id == press.ref), None)
    if pain is None or answer not in ANSWERS:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    return Turn(says=(Toast(tap.query),)) + _followed_up(desk, client, pain, answer)


def check_typed(desk: Desk, client: ClientDesk, text: str) -> Turn | None:
    """The morning's answer, typed; `None` where the words say something else, or nothing waits for them."""
    answer = read_morning(text)
    pain = next((p for p in client.pains if desk.talk and p.id == desk.talk.step), None)
    if pain is None or answer is None:
        return None
    return _followed_up(desk, client, pain, answer) + Turn(keeps=(TalkSet(client.profile.chat, None),))


def _followed_up(desk: Desk, client: ClientDesk, pain: OpenPain, answer: str) -> Turn:
    me, coach = client.profile, client.coach
    settled = isinstance(after_morning(pain.said, Morning(answer)), Release)
    lines = _checked_lines(pain, answer, coach)
    if pain.said.urgent and answer == "worse":
        lines = (line("urgent-stop", number=desk.house.emergency_number), *lines)
    mine = Say(me.chat, lines, slot=f"check:{pain.id}")
    turn = Turn((PainFollowedUp(pain.id, me.id, answer, settled),), (mine,))
    if not settled:
        turn += Turn(keeps=(pain_check_rule(me, pain.id, desk.now),))
    return turn + Turn(says=(_coach_checked(desk, client, pain, answer),))


def _checked_lines(pain: OpenPain, answer: str, coach: Coach) -> tuple[Line, ...]:
    if answer == "gone" and pain.said.urgent:
        return (line("checked-gone-urgent", coach=coach.name),)
    if answer == "gone":
        return (line("checked-gone", name=pain.exercise or ""),) if pain.exercise else (line("checked-gone-plain"),)
    if answer == "worse":
        return line("checked-worse", coach=coach.name), line("pain-high")
    return (line("checked-still", coach=coach.name),)


def _checked_line(name: str, pain: OpenPain, answer: str) -> Line:
    """The coach's line: gone lifts a hold, but never what an urgent sign stopped."""
    if answer == "gone" and pain.said.urgent:
        return line("coach-checked-urgent-gone", name=name)
    return line(f"coach-checked-{answer}", name=name)


def _coach_checked(desk: Desk, client: ClientDesk, pain: OpenPain, answer: str) -> Say:
    """What the coach hears of it: each answer once on a day, however often it is tapped."""
    me, coach = client.profile, client.coach
    rows: Rows = ((Button(line("reply-to", name=me.name), show_press("c.reply", me.id)),),)
    return Say(
        coach.chat,
        (_checked_line(me.name, pain, answer), place_line("alert-place", pain.said)),
        rows if answer != "gone" else (),
        slot=f"checked:{pain.id}:{answer}:{local_day(desk.now, me.zone)}",
        about=me.id,
        urgency=Urgency.URGENT if answer == "worse" else Urgency.NOTICE,
        silent=answer != "worse",
    )


# --- words


def place_line(key: str, said: PainSaid) -> Line:
    """A line about pain with its place and score as far as they were said."""
    place = line("pain-place-none")
    if said.where:
        side = f"-{said.side.value}" if said.side else ""
        place = line(f"pain-place{side}", where=said.where)
    if said.score is not None:
        place = line("pain-scored", place=place, score=said.score)
    return line(key, place=place)


def score_rows(pain: str) -> Rows:
    """0 to 10, four in a row."""
    chips = [Button(line("pain-chip", score=n), show_press("score", pain, n)) for n in range(11)]
    return (tuple(chips[:4]), tuple(chips[4:8]), tuple(chips[8:]))


def exercise_of(session: Session | None) -> str | None:
    """The exercise that pain in a session is laid to: the one reported last, else the one that comes."""
    if session is None or session.ended:
        return None
    done = session.done
    if done:
        return done[-1].exercise
    return session.current.name if session.current else None
