"""The coach's notes on a client: for the coach alone, never sent; part of the record that a client may ask for."""

from dataclasses import replace
from datetime import timedelta

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import ClientDesk, CoachDesk, Desk
from bot.dialogue.digest import DESK
from bot.dialogue.incoming import Tapped, Typed
from bot.dialogue.ordering import with_order
from bot.dialogue.turn import Talk, TalkSet, Turn
from bot.saying import Button, Rows, Say, Strip, Toast, line
from bot.training.facts import NoteKept

ASKED_FOR = timedelta(minutes=10)
LONGEST_NOTE = 500


def show(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The coach's notes on a client, and a button for a new one."""
    del desk, press
    about = coach.about
    if about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    return Turn(says=(Toast(tap.query), _page(coach, about)))


def _page(coach: CoachDesk, about: ClientDesk) -> Say:
    me = about.profile
    lines = [line("notes-title", name=me.name)]
    lines += [line("notes-entry", day=n.day, words=n.words) for n in about.orders.notes] or [line("notes-none")]
    rows: Rows = (
        (Button(line("notes-new"), show_press("c.note", me.id)),),
        (Button(line("back-client", name=me.name), show_press("c.view", me.id, "clients")),),
    )
    return Say(coach.profile.chat, tuple(lines), rows, slot=DESK, about=me.id)


def ask(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The coach's next message is a note."""
    del press
    if coach.about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    me, chat = coach.about.profile, coach.profile.chat
    talk = TalkSet(chat, Talk("note", me.id, expires_at=desk.now + ASKED_FOR))
    cancel = Button(line("cancel"), show_press("c.cancel", "", "note"))
    return Turn(
        says=(Toast(tap.query), Say(chat, (line("notes-ask", name=me.name),), ((cancel,),), slot="note", fresh=True)),
        keeps=(talk,),
    )


def typed(desk: Desk, coach: CoachDesk, incoming: Typed) -> Turn:
    """The note: for the coach alone, never sent to the client."""
    chat, about = coach.profile.chat, coach.about
    if about is None:
        return Turn(says=(Say(chat, (line("not-available"),)),), keeps=(TalkSet(chat, None),))
    words = incoming.text.strip()
    if not words or len(words) > LONGEST_NOTE:
        return Turn(says=(Say(chat, (line("notes-too-long", longest=LONGEST_NOTE),)),))
    fact = NoteKept(about.profile.id, words)
    page = _page(coach, with_order(desk, about, fact))
    return Turn((fact,), (Strip(chat, slot="note"), replace(page, fresh=True)), (TalkSet(chat, None),))
