"""`/delete_me`: all that is kept of somebody is deleted, at once and for good, after a yes that names how much."""

from datetime import timedelta

from bot.dialogue import papers
from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import ClientDesk, CoachDesk, Desk, Holdings
from bot.dialogue.incoming import Tapped
from bot.dialogue.turn import ClientForgotten, CoachForgotten, Talk, TalkSet, Turn
from bot.saying import Button, Line, Menu, Rows, Say, Saying, Toast, line
from bot.training.people import Standing

ANSWER_WITHIN = timedelta(minutes=5)
"""So long the second yes may take; then it is asked anew."""


def on_request(desk: Desk, chat: int) -> Turn:
    """Says what would go, and asks. A client's own data first; a coach's where they have no client any more."""
    if desk.client is not None:
        held = desk.client.holdings or Holdings()
        sure = line("leave-sure", sets=held.sets)
        return _asked(desk, chat, (line("leave-ask"), *_counted(held), line("leave-after")), sure, "erase")
    if desk.coach is None:
        return papers.stranger(chat)
    left = [entry for entry in desk.coach.roster if entry.standing != Standing.WITHDRAWN]
    if left:
        words = line("leave-coach-has-clients", count=len(left), contact=desk.house.operator_contact)
        return Turn(says=(Say(chat, (words,)),))
    asked = line("leave-coach-ask", programmes=len(desk.coach.programmes))
    return _asked(desk, chat, (asked, line("leave-after")), line("leave-coach-sure"), "c.erase")


def _counted(held: Holdings) -> tuple[Line, ...]:
    """What there is of each, where there is any."""
    return (
        *((line("leave-sets", sets=held.sets, sessions=held.sessions),) if held.sets else ()),
        *((line("leave-pains", count=held.pains),) if held.pains else ()),
        *((line("leave-words", count=held.words),) if held.words else ()),
        line("leave-settings"),
    )


def _asked(desk: Desk, chat: int, lines: tuple[Line, ...], sure: Line, op: str) -> Turn:
    """The question; the button that keeps stands first, and the other one works once, for some minutes."""
    token = desk.tokens[0]
    prefix = "c." if op.startswith("c.") else ""
    rows: Rows = (
        (Button(line("leave-keep"), show_press(f"{prefix}keepall")),),
        (Button(sure, show_press(op, "", token)),),
    )
    talk = Talk("leaving", token, expires_at=desk.now + ANSWER_WITHIN)
    return Turn(says=(Say(chat, lines, rows, slot="leaving", fresh=True),), keeps=(TalkSet(chat, talk),))


def _is_sure(desk: Desk, press: Press) -> bool:
    """The yes to the question that stands now, in time."""
    return desk.talk is not None and desk.talk.name == "leaving" and press.args == (desk.talk.step,)


def keep_client(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """Nothing is deleted."""
    del client, press
    return _kept(desk, tap)


def keep_coach(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """Nothing is deleted."""
    del coach, press
    return _kept(desk, tap)


def _kept(desk: Desk, tap: Tapped) -> Turn:
    if desk.talk is None or desk.talk.name != "leaving":
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    said = Say(tap.chat, (line("leave-kept"),), slot="leaving")
    return Turn(says=(Toast(tap.query, line("toast-kept")), said), keeps=(TalkSet(tap.chat, None),))


def erase_client(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """All of the client goes. The coach reads once who has left, and nothing of it stays."""
    if not _is_sure(desk, press):
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    me, coach = client.profile, client.coach
    says: list[Saying] = [Toast(tap.query), Say(me.chat, (line("leave-done", contact=desk.house.operator_contact),))]
    if desk.coach is None:
        says.append(Menu(me.chat, "stranger"))
    if coach.chat != me.chat:
        says.append(Say(coach.chat, (line("leave-coach-told", name=me.name),)))
    return Turn(says=tuple(says), keeps=(TalkSet(me.chat, None), ClientForgotten(me.chat)))


def erase_coach(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """All of the coach goes, where nobody trains with them any more."""
    is_alone = all(entry.standing == Standing.WITHDRAWN for entry in coach.roster)
    if not _is_sure(desk, press) or not is_alone:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    me = coach.profile
    done = Say(me.chat, (line("leave-done", contact=desk.house.operator_contact),))
    return Turn(
        says=(Toast(tap.query), done, Menu(me.chat, "stranger")),
        keeps=(TalkSet(me.chat, None), CoachForgotten(me.id)),
    )
