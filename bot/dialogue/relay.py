"""Words between a client and the coach: questions up, answers down, media and all."""

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import ClientDesk, CoachDesk, Desk
from bot.dialogue.incoming import MediaSent, Tapped, Typed
from bot.dialogue.turn import Talk, TalkSet, Turn
from bot.saying import Button, React, Relay, Rows, Say, Toast, line
from bot.training.facts import QuestionAnswered, QuestionAsked
from bot.training.people import Client

DELIVERED = "👍"


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
    """The button under a message that was no report: it goes to the coach as it is."""
    del desk
    message = press.number(0)
    if message is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    me, coach = client.profile, client.coach
    rows: Rows = ((Button(line("reply-to", name=me.name), show_press("c.reply", me.id)),),)
    return Turn(
        (QuestionAsked(me.id, f"m{message}", ""),),
        (
            Toast(tap.query, line("toast-sent-to-coach", coach=coach.name)),
            Say(coach.chat, (line("coach-message-from", name=me.name),), rows, about=me.id, silent=True),
            Relay(coach.chat, me.chat, message, about=me.id),
            Say(me.chat, (line("sent-to-coach", coach=coach.name),), slot=f"tocoach:{message}"),
        ),
    )


def media_to_coach(client: ClientDesk, media: MediaSent) -> Turn:
    """A picture, a video, a voice note: the coach gets it with the client's name above, the client hears so."""
    me, coach = client.profile, client.coach
    rows: Rows = ((Button(line("reply-to", name=me.name), show_press("c.reply", me.id)),),)
    exercise = client.session.current.name if client.session and client.session.current else ""
    head = (
        line("coach-media-during", name=me.name, exercise=exercise) if exercise else line("coach-media", name=me.name)
    )
    return Turn(
        (QuestionAsked(me.id, f"m{media.message}", media.caption),),
        (
            Say(coach.chat, (head,), rows, about=me.id, silent=True),
            Relay(coach.chat, me.chat, media.message, about=me.id),
            Say(me.chat, (line("media-sent-to-coach", coach=coach.name),), reply_to=media.message),
        ),
    )


def answer(desk: Desk, coach: CoachDesk, incoming: Typed | MediaSent) -> Turn:
    """The coach's message goes to the client it is about: replied to, or in reply mode; else we ask for whom it is."""
    about = coach.about
    if about is None:
        return _for_whom(coach, incoming)
    me = coach.profile
    to = about.profile
    if not to.reachable:
        return Turn(says=(Say(me.chat, (line("coach-unreachable", name=to.name),), reply_to=incoming.message),))
    ends = (TalkSet(me.chat, None),) if desk.talk and desk.talk.name == "reply" else ()
    return Turn(
        (QuestionAnswered(to.id),),
        (
            *_down(coach, to, incoming, desk.reply_message),
            React(me.chat, incoming.message, DELIVERED),
            Say(me.chat, (line("coach-delivered", name=to.name),), silent=True),
        ),
        ends,
    )


def _down(coach: CoachDesk, to: Client, incoming: Typed | MediaSent, reply_to: int | None) -> tuple[Say | Relay, ...]:
    """The coach's words with the name above; other things than words as they are, after the name."""
    me = coach.profile
    name = line("from-coach", coach=me.name)
    if isinstance(incoming, Typed) and incoming.text:
        return (Say(to.chat, (name, line("words", words=incoming.text)), about=me.id, reply_to=reply_to),)
    return (
        Say(to.chat, (name,), about=me.id),
        Relay(to.chat, me.chat, incoming.message, about=me.id, reply_to=reply_to),
    )


def reply_mode(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """`Reply to …`: the coach's next message goes to this client."""
    del press
    if coach.about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    me, to = coach.profile, coach.about.profile
    talk = Talk("reply", to.id)
    del desk
    cancel = Button(line("cancel"), show_press("c.cancel"))
    say = Say(me.chat, (line("coach-reply-mode", name=to.name),), ((cancel,),), slot="reply", fresh=True)
    return Turn(says=(Toast(tap.query), say), keeps=(TalkSet(me.chat, talk),))


def cancel(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """Out of reply mode; nothing is sent."""
    del desk, press
    chat = coach.profile.chat
    return Turn(
        says=(Toast(tap.query, line("toast-cancelled")), Say(chat, (line("cancelled"),), slot="reply")),
        keeps=(TalkSet(chat, None),),
    )


def answered(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The coach marks a client's questions as dealt with."""
    del desk, press
    if coach.about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    fact = QuestionAnswered(coach.about.profile.id)
    return Turn((fact,), (Toast(tap.query, line("toast-handled")),))


def pick(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The coach says whom an unaddressed message was for."""
    message = press.number(0)
    if coach.about is None or message is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    sent = answer(desk, coach, Typed(tap.chat, message, tap.at, ""))
    name = coach.about.profile.name
    return Turn(says=(Toast(tap.query, line("toast-sent-to", name=name)),)) + sent


def _for_whom(coach: CoachDesk, incoming: Typed | MediaSent) -> Turn:
    me = coach.profile
    if not coach.roster:
        return Turn(says=(Say(me.chat, (line("coach-no-clients"),)),))
    buttons = [
        Button(line("send-to", name=entry.name), show_press("c.pick", entry.client, incoming.message))
        for entry in coach.roster[:12]
    ]
    rows: Rows = (*((b,) for b in buttons), (Button(line("send-to-nobody"), show_press("c.cancel")),))
    return Turn(says=(Say(me.chat, (line("coach-for-whom"),), rows, slot="forwhom", fresh=True),))
