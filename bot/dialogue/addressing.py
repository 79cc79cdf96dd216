"""A coach's message of which nobody knows for whom it is: asked, with everyone as buttons; to one, to several, to all.

It is never guessed. The talk `whom` holds the messages that wait, and those chosen so far where it is for several.
"""

from dataclasses import dataclass, replace
from datetime import datetime, timedelta

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import CoachDesk, Desk, RosterLine
from bot.dialogue.incoming import MediaSent, Tapped, Typed
from bot.dialogue.turn import Talk, TalkSet, Turn
from bot.saying import Button, React, Relay, Rows, Say, Saying, Toast, line
from bot.training.facts import QuestionAnswered
from bot.training.people import Coach, Standing

TALK = "whom"
SLOT = "forwhom"
DELIVERED = "👍"
TOGETHER_WITHIN = timedelta(minutes=10)
"""What is typed so soon after another unaddressed message goes where that goes."""
LASTS = timedelta(hours=24)
MOST_MESSAGES = 20
MOST_SHOWN = 24


@dataclass(frozen=True, slots=True)
class Waiting:
    """Messages that wait for their reader, the latest last, since when; `chosen` are clients picked so far."""

    messages: tuple[int, ...] = ()
    chosen: tuple[str, ...] = ()
    since: datetime | None = None

    def talk(self, chat: int, now: datetime) -> TalkSet:
        """As the talk that is kept; nothing where no message waits."""
        if not self.messages:
            return TalkSet(chat, None)
        data = (*((str(n), "message") for n in self.messages[-MOST_MESSAGES:]), *((c, "to") for c in self.chosen))
        return TalkSet(chat, Talk(TALK, (self.since or now).isoformat(), data, now + LASTS))


def waiting(talk: Talk | None) -> Waiting:
    """What waits, from the talk."""
    if talk is None or talk.name != TALK:
        return Waiting()
    messages = tuple(int(name) for name, what in talk.data if what == "message")
    chosen = tuple(name for name, what in talk.data if what == "to")
    return Waiting(messages, chosen, datetime.fromisoformat(talk.step))


def for_whom(desk: Desk, coach: CoachDesk, incoming: Typed | MediaSent) -> Turn:
    """Asks for whom a message is; those typed just before it are asked for together."""
    me = coach.profile
    if not _people(coach):
        return Turn(says=(Say(me.chat, (line("coach-no-clients"),)),))
    before = waiting(desk.talk)
    is_near = before.since is not None and before.since + TOGETHER_WITHIN > desk.now
    now = Waiting((*(before.messages if is_near else ()), incoming.message), (), desk.now)
    return Turn(says=(_question(coach, now),), keeps=(now.talk(me.chat, desk.now),))


def _people(coach: CoachDesk) -> list[RosterLine]:
    return [entry for entry in coach.roster if entry.standing != Standing.WITHDRAWN and entry.reachable]


def _members(coach: CoachDesk) -> list[RosterLine]:
    """Those whom a message to many reaches: they have joined, and said yes to the notice."""
    return [entry for entry in _people(coach) if entry.standing != Standing.JOINING]


def _question(coach: CoachDesk, now: Waiting) -> Say:
    people, members, last = _people(coach), _members(coach), now.messages[-1]
    buttons = [Button(line("send-to", name=e.name), show_press("c.pick", e.client, last)) for e in people[:MOST_SHOWN]]
    more: Rows = (
        (
            (
                Button(line("send-several"), show_press("c.several", "", last)),
                Button(line("send-all", count=len(members)), show_press("c.toall", "", last)),
            ),
        )
        if len(members) > 1
        else ()
    )
    nobody = Button(line("send-to-nobody"), show_press("c.cancel", "", TALK))
    rows: Rows = (*((b,) for b in buttons), *more, (nobody,))
    return Say(coach.profile.chat, (line("coach-for-whom", count=len(now.messages)),), rows, slot=SLOT, fresh=True)


# --- to one


def pick(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """It goes to this client, once, with those typed just before it."""
    message, now = press.number(0), waiting(desk.talk)
    if coach.about is None or message is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    if message not in now.messages:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    to, me = coach.about.profile, coach.profile
    if not to.reachable or to.standing is Standing.WITHDRAWN:
        key = "coach-withdrawn" if to.standing is Standing.WITHDRAWN else "coach-unreachable"
        return Turn(says=(Toast(tap.query), Say(me.chat, (line(key, name=to.name),), reply_to=message)))
    sent = tuple(n for n in now.messages if n <= message)
    rest = replace(now, messages=tuple(n for n in now.messages if n > message))
    says: tuple[Saying, ...] = (
        Toast(tap.query, line("toast-sent-to", name=to.name)),
        *_down(me, to.chat, sent),
        *(React(me.chat, n, DELIVERED) for n in sent),
        Say(me.chat, (line("coach-delivered", name=to.name),), slot=SLOT, silent=True),
    )
    return Turn((QuestionAnswered(to.id),), says, (rest.talk(me.chat, desk.now),))


def _down(me: Coach, chat: int, messages: tuple[int, ...]) -> tuple[Say | Relay, ...]:
    """The coach's messages as they are, with the name above."""
    return (
        Say(chat, (line("from-coach", coach=me.name),), about=me.id),
        *(Relay(chat, me.chat, n, about=me.id) for n in messages),
    )


# --- to several, to all


def several(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """Everyone as a switch; a tap chooses or leaves out."""
    now = waiting(desk.talk)
    if not now.messages or press.number(0) not in now.messages:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    return Turn(says=(Toast(tap.query), _switches(coach, now)), keeps=(now.talk(coach.profile.chat, desk.now),))


def switch(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """One of several is chosen, or left out again."""
    now, message = waiting(desk.talk), press.number(0)
    if coach.about is None or message not in now.messages:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    who = coach.about.profile.id
    chosen = tuple(c for c in now.chosen if c != who) if who in now.chosen else (*now.chosen, who)
    now = replace(now, chosen=chosen)
    return Turn(says=(Toast(tap.query), _switches(coach, now)), keeps=(now.talk(coach.profile.chat, desk.now),))


def _switches(coach: CoachDesk, now: Waiting) -> Say:
    last, people = now.messages[-1], _members(coach)[:MOST_SHOWN]
    chosen = [e for e in people if e.client in now.chosen]
    buttons = [
        Button(
            line("several-chosen" if e.client in now.chosen else "several-open", name=e.name),
            show_press("c.switch", e.client, last),
        )
        for e in people
    ]
    pairs: Rows = tuple(tuple(buttons[n : n + 2]) for n in range(0, len(buttons), 2))
    send: Rows = (
        ((Button(line("several-send", count=len(chosen)), show_press("c.tothese", "", last, len(chosen))),),)
        if chosen
        else ()
    )
    nobody = Button(line("send-to-nobody"), show_press("c.cancel", "", TALK))
    words = line("several-ask", count=len(now.messages))
    return Say(coach.profile.chat, (words,), (*pairs, *send, (nobody,)), slot=SLOT)


def to_these(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """To those chosen, as many as the button said."""
    now = waiting(desk.talk)
    people = [e for e in _members(coach) if e.client in now.chosen]
    if press.number(0) not in now.messages or not people or press.number(1) != len(people):
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    return _sent_to(desk, coach, tap, now, people)


def to_all(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """To everyone: the count is confirmed first, and again if it has changed."""
    now, people = waiting(desk.talk), _members(coach)
    message = press.number(0)
    if message is None or message not in now.messages or not people:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    if press.number(1) == len(people):
        return _sent_to(desk, coach, tap, now, people)
    chat = coach.profile.chat
    sure = Button(line("send-all-sure", count=len(people)), show_press("c.toall", "", message, len(people)))
    nobody = Button(line("send-to-nobody"), show_press("c.cancel", "", TALK))
    ask = Say(chat, (line("send-all-ask", count=len(people)),), ((sure,), (nobody,)), slot=SLOT)
    return Turn(says=(Toast(tap.query), ask), keeps=(now.talk(chat, desk.now),))


def _sent_to(desk: Desk, coach: CoachDesk, tap: Tapped, now: Waiting, people: list[RosterLine]) -> Turn:
    """A message to many answers nobody's question: those still wait."""
    me = coach.profile
    says: tuple[Saying, ...] = (
        Toast(tap.query),
        *(one for entry in people for one in _down(me, entry.chat, now.messages)),
        *(React(me.chat, n, DELIVERED) for n in now.messages),
        Say(me.chat, (line("several-sent", count=len(people)),), slot=SLOT, silent=True),
    )
    return Turn((), says, (Waiting().talk(me.chat, desk.now),))
