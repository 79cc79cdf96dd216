"""Words between a client and the coach: questions up, answers down, media and all."""

from datetime import timedelta

from bot.dialogue.addressing import for_whom
from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import ClientDesk, CoachDesk, Desk
from bot.dialogue.incoming import Edited, MediaSent, Tapped, Typed
from bot.dialogue.turn import Talk, TalkSet, Turn
from bot.saying import Button, Line, React, Relay, Rows, Say, Toast, line
from bot.training.calendar import is_night, local_time
from bot.training.facts import DoubtSettled, QuestionAnswered, QuestionAsked
from bot.training.people import Client, Coach, Standing

DELIVERED = "👍"
REPLY_LASTS = timedelta(minutes=10)
"""So long the coach's next message goes to the client chosen; later it is asked for whom it is."""
ALBUM_LASTS = timedelta(seconds=10)
"""The pictures of an album arrive one by one: so long the others follow the first."""


def question(client: ClientDesk, message: int, text: str) -> Turn:
    """A client's words go to the coach now, and stay in the digest until they are answered."""
    me, coach = client.profile, client.coach
    rows: Rows = (
        (Button(line("reply-to", name=me.name), show_press("c.reply", me.id)),),
        (Button(line("handled-question", name=me.name), show_press("c.answered", me.id)),),
    )
    words = Say(
        coach.chat,
        (line("coach-message-from", name=me.name), line("quote", words=text)),
        rows,
        about=me.id,
        silent=True,
    )
    return Turn((QuestionAsked(me.id, f"m{message}", text),), (words,))


def send_to_coach(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The button under a message that was no report: it goes to the coach as it is, once."""
    message = press.number(0)
    if message is None or message <= 0:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    me, coach = client.profile, client.coach
    if any(q.key == f"m{message}" for q in client.questions):
        return Turn(says=(Toast(tap.query, line("toast-sent-to-coach", coach=coach.name)),))
    rows: Rows = ((Button(line("reply-to", name=me.name), show_press("c.reply", me.id)),),)
    return Turn(
        (QuestionAsked(me.id, f"m{message}", ""),),
        (
            Toast(tap.query, line("toast-sent-to-coach", coach=coach.name)),
            Say(coach.chat, (line("coach-message-from", name=me.name),), rows, about=me.id, silent=True),
            Relay(coach.chat, me.chat, message, about=me.id, silent=_at_night(desk, coach)),
            Say(me.chat, (line("sent-to-coach", coach=coach.name),), slot=f"tocoach:{message}"),
        ),
    )


def _at_night(desk: Desk, coach: Coach) -> bool:
    """Whether it is night where the coach lives: what can wait until the morning then makes no sound."""
    return is_night(local_time(desk.now, coach.zone))


def media_to_coach(desk: Desk, client: ClientDesk, media: MediaSent) -> Turn:
    """A picture, a video, a voice note: the coach gets it with the client's name above, the client hears so."""
    me, coach = client.profile, client.coach
    rows: Rows = ((Button(line("reply-to", name=me.name), show_press("c.reply", me.id)),),)
    exercise = client.session.current.name if client.session and client.session.current else ""
    head = (
        line("coach-media-during", name=me.name, exercise=exercise) if exercise else line("coach-media", name=me.name)
    )
    key, slot = f"a{media.album}" if media.album else f"m{media.message}", _slot(media)
    is_new = not any(q.key == key for q in client.questions)
    return Turn(
        (QuestionAsked(me.id, key, media.caption),) if is_new else (),
        (
            Say(coach.chat, (head,), rows, slot=slot, about=me.id, silent=True),
            Relay(coach.chat, me.chat, media.message, about=me.id, silent=_at_night(desk, coach)),
            Say(me.chat, (line("media-sent-to-coach", coach=coach.name),), slot=slot, reply_to=media.message),
        ),
    )


def _slot(incoming: Typed | MediaSent) -> str:
    """What stands above an album, or under it, stands there once."""
    return f"album:{incoming.album}" if isinstance(incoming, MediaSent) and incoming.album else ""


def answer(desk: Desk, coach: CoachDesk, incoming: Typed | MediaSent) -> Turn:
    """The coach's message goes to the client it is about: replied to, or in reply mode; else we ask for whom it is."""
    about = coach.about
    if about is None:
        return for_whom(desk, coach, incoming)
    me, to = coach.profile, about.profile
    if (problem := _closed(to)) is not None:
        return Turn(says=(Say(me.chat, (problem,), reply_to=incoming.message),))
    slot = _slot(incoming)
    return Turn(
        (QuestionAnswered(to.id),),
        (
            *_down(desk, coach, to, incoming),
            React(me.chat, incoming.message, DELIVERED),
            Say(me.chat, (line("coach-delivered", name=to.name),), slot=f"{slot}:sent" if slot else "", silent=True),
        ),
        _after_reply(desk, coach, to, incoming),
    )


def edited(coach: CoachDesk, incoming: Edited) -> Turn:
    """A message that the coach changes is not changed for the client who has it: said, so that nobody relies on it."""
    if incoming.text.lstrip().startswith("/"):
        return Turn()
    said = Say(coach.profile.chat, (line("coach-edit"),), reply_to=incoming.message, silent=True)
    return Turn(says=(said,))


def _closed(to: Client) -> Line | None:
    """Why nothing can be sent to this client; `None` where it can."""
    if to.standing is Standing.WITHDRAWN:
        return line("coach-withdrawn", name=to.name)
    return None if to.reachable else line("coach-unreachable", name=to.name)


def _after_reply(desk: Desk, coach: CoachDesk, to: Client, incoming: Typed | MediaSent) -> tuple[TalkSet, ...]:
    """Reply mode is over with the message; an album's other pictures still follow the first."""
    if desk.talk is None or desk.talk.name != "reply":
        return ()
    chat = coach.profile.chat
    if _slot(incoming):
        return (TalkSet(chat, Talk("reply", to.id, expires_at=desk.now + ALBUM_LASTS)),)
    return (TalkSet(chat, None),)


def _down(desk: Desk, coach: CoachDesk, to: Client, incoming: Typed | MediaSent) -> tuple[Say | Relay, ...]:
    """The coach's words with the name above; other things than words as they are, after the name. At night where the
    client lives they come without a sound."""
    me, reply_to = coach.profile, desk.reply_message
    silent = is_night(local_time(desk.now, to.zone))
    name = line("from-coach", coach=me.name)
    if isinstance(incoming, Typed) and incoming.text:
        return (
            Say(to.chat, (name, line("words", words=incoming.text)), about=me.id, reply_to=reply_to, silent=silent),
        )
    return (
        Say(to.chat, (name,), slot=_slot(incoming), about=me.id, silent=True),
        Relay(to.chat, me.chat, incoming.message, about=me.id, reply_to=reply_to, silent=silent),
    )


def reply_mode(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """`Reply to …`: the coach's next message goes to this client, for some minutes."""
    del press
    if coach.about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    me, to = coach.profile, coach.about.profile
    if (problem := _closed(to)) is not None:
        return Turn(says=(Toast(tap.query), Say(me.chat, (problem,))))
    talk = Talk("reply", to.id, expires_at=desk.now + REPLY_LASTS)
    cancel = Button(line("cancel"), show_press("c.cancel", "", "reply"))
    minutes = int(REPLY_LASTS.total_seconds()) // 60
    words = line("coach-reply-mode", name=to.name, minutes=minutes)
    say = Say(me.chat, (words,), ((cancel,),), slot="reply", fresh=True)
    return Turn(says=(Toast(tap.query), say), keeps=(TalkSet(me.chat, talk),))


def cancel(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """Out of reply mode, or an unaddressed message is for nobody; nothing is sent."""
    what = press.args[0] if press.args and press.args[0] in ("whom", "note", "handover") else "reply"
    slot = "forwhom" if what == "whom" else what
    if desk.talk is None or desk.talk.name != what:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    chat = coach.profile.chat
    return Turn(
        says=(Toast(tap.query, line("toast-cancelled")), Say(chat, (line("cancelled"),), slot=slot)),
        keeps=(TalkSet(chat, None),),
    )


def answered(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The coach marks a client's questions as dealt with."""
    del desk, press
    if coach.about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    to = coach.about.profile
    doubts = tuple(DoubtSettled(to.id, d.session, d.key) for d in coach.about.doubts)
    return Turn((QuestionAnswered(to.id), *doubts), (Toast(tap.query, line("toast-handled")),))
