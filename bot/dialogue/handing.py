"""A client handed over to a colleague, with the client's yes: until then nothing changes for anybody."""

from datetime import timedelta

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import ClientDesk, CoachDesk, Desk
from bot.dialogue.incoming import Tapped, Typed
from bot.dialogue.turn import Talk, TalkSet, Turn
from bot.saying import Button, Rows, Say, Saying, Toast, line
from bot.training.facts import HandoverAnswered, HandoverOffered
from bot.training.people import Standing

ASKED_FOR = timedelta(minutes=30)
SLOT = "handover"
TALK = "handover"


def ask(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """`Hand over`: the colleague's own invitation link says to whom."""
    del press
    about, chat = coach.about, coach.profile.chat
    if about is None or about.profile.standing not in (Standing.ACTIVE, Standing.PAUSED):
        return Turn(says=(Toast(tap.query, line("not-available")),))
    talk = TalkSet(chat, Talk(TALK, about.profile.id, expires_at=desk.now + ASKED_FOR))
    rows: Rows = ((Button(line("cancel"), show_press("c.cancel", "", TALK)),),)
    return Turn(
        says=(
            Toast(tap.query),
            Say(chat, (line("handover-ask", name=about.profile.name),), rows, slot=SLOT, fresh=True),
        ),
        keeps=(talk,),
    )


def link_typed(desk: Desk, coach: CoachDesk, incoming: Typed) -> Turn:
    """The colleague's link: the client is asked. Anything else is no link, and nothing has happened."""
    del incoming
    about, chat, invite = coach.about, coach.profile.chat, desk.invite
    if about is None:
        return Turn(says=(Say(chat, (line("not-available"),)),), keeps=(TalkSet(chat, None),))
    if invite is None or not invite.is_open or not invite.coach or invite.coach == coach.profile.id:
        return Turn(says=(Say(chat, (line("handover-no-link"),)),))
    to = about.profile
    fact = HandoverOffered(to.id, invite.coach, invite.coach_name, invite.coach_chat, invite.token_hash)
    rows: Rows = (
        (Button(line("handover-yes", coach=invite.coach_name), show_press("hand", to.id, 1)),),
        (Button(line("handover-no", coach=coach.profile.name), show_press("hand", to.id, 0)),),
    )
    asked = (
        line("handover-asked", coach=coach.profile.name, to=invite.coach_name),
        line("handover-means", coach=coach.profile.name, to=invite.coach_name),
    )
    says = (
        Say(chat, (line("handover-waits", name=to.name, to=invite.coach_name),), slot=SLOT, about=to.id),
        Say(to.chat, asked, rows, slot=SLOT, fresh=True, about=coach.profile.id),
    )
    return Turn((fact,), says, (TalkSet(chat, None),))


def answered(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The client's yes or no, once."""
    del desk
    offer, yes, me = client.orders.offer, press.number(0), client.profile
    if offer is None or yes is None or press.ref != me.id:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    fact = HandoverAnswered(me.id, offer.to, bool(yes))
    key = "handover-gone" if yes else "handover-stayed"
    mine, before = client.coach.name, client.coach.chat
    says: tuple[Saying, ...] = (
        Toast(tap.query),
        Say(me.chat, (line(f"{key}-client", coach=mine, to=offer.name),), slot=SLOT),
        Say(before, (line(f"{key}-coach", name=me.name, to=offer.name),), slot=f"{SLOT}:{me.id}", fresh=True),
    )
    if yes:
        opened = Button(line("open-client", name=me.name), show_press("c.open", me.id))
        says += (Say(offer.chat, (line("handover-yours", name=me.name, coach=mine),), ((opened,),), about=me.id),)
    return Turn((fact,), says)
