"""Away or ill in plain words. What is clear is done at once, with a tap that goes on; an end or a reason that was not
said is asked about. A time away that begins on a later day begins by itself, unless it is taken back."""

from datetime import date, timedelta

from bot.dialogue.awaying import (
    TALK,
    WEEKS,
    begins_at,
    by_client,
    date_talk,
    go_on_row,
    leave_rule,
    may_go,
    read_since,
    read_why,
    stands,
)
from bot.dialogue.awaywords import Absent, read_absence, read_beside, read_end, says_back, says_ill
from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.incoming import Tapped, Typed
from bot.dialogue.sayday import FARTHEST
from bot.dialogue.turn import TalkSet, Turn
from bot.notation.pain import told_pain
from bot.saying import Button, Line, Rows, Say, Toast, Urgency, line
from bot.training.calendar import local_day
from bot.training.life import Absence
from bot.training.people import Standing

SLOT = "away"
DAYS = 3
"""The shortest that a button offers. Ours."""


def away_said(desk: Desk, client: ClientDesk, typed: Typed) -> Turn | None:
    """What follows where the words say that somebody is away, ill, or back; `None` where they say something else, and
    beside pain, which goes before."""
    me = client.profile
    if not may_go(me):
        return None
    if me.standing is Standing.PAUSED and says_back(typed.text):
        return _back(client)
    said = read_absence(typed.text, local_day(desk.now, me.zone))
    if said is None or told_pain(typed.text) is not None:
        return None
    if said.why is None or said.until is None:
        return _ask_more(desk, client, said)
    return _kept(desk, client, said.why, said.since, said.until)


def said_beside(desk: Desk, client: ClientDesk, typed: Typed) -> Turn:
    """What a message says of an absence beside its sets, its pain or its end: asked about, one tap away, never lost."""
    me = client.profile
    said = read_beside(typed.text, local_day(desk.now, me.zone)) if may_go(me) else None
    if said is None or (said.why is not None and said.until is not None and stands(client, said.why, said.until)):
        return Turn()
    return _ask_more(desk, client, said)


def ill_said(desk: Desk, client: ClientDesk, typed: Typed) -> Turn | None:
    """An illness named in words that are else not understood: never left without its caution."""
    if not may_go(client.profile) or not says_ill(typed.text):
        return None
    return _ask_more(desk, client, Absent(Absence.ILL, local_day(desk.now, client.profile.zone)))


def date_typed(desk: Desk, client: ClientDesk, typed: Typed) -> Turn | None:
    """The day that was asked for; `None` where the words are something else: a report, pain."""
    if desk.talk is None or desk.talk.name != TALK or not may_go(client.profile):
        return None
    today = local_day(desk.now, client.profile.zone)
    said = desk.talk.get("since")
    since = max(today, date.fromisoformat(said)) if said else today
    until = read_end(typed.text, since)
    if until is None:
        return None
    return _kept(desk, client, Absence(desk.talk.step), since, until) + Turn(keeps=(TalkSet(typed.chat, None),))


def _ask_more(desk: Desk, client: ClientDesk, said: Absent) -> Turn:
    """What is not clear yet is asked; an end may be typed, and the coach hears of an illness at once."""
    turn = Turn(says=(_asked(desk, client, said),))
    if said.why is not None and said.until is None:
        turn += Turn(keeps=(date_talk(desk, client, said.why, said.since),))
    if said.why is Absence.ILL and said.until is None and client.profile.standing is Standing.ACTIVE:
        turn += Turn(says=(_to_coach(client, line("coach-client-ill-asked", name=client.profile.name)),))
    return turn


def by_button(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """What was not clear, answered by a tap: why, from when, until when."""
    why, until, since = read_why(press), read_since(press, 1), read_since(press, 2)
    today = local_day(desk.now, client.profile.zone)
    if why is None or until is None or not may_go(client.profile):
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    since = max(today, since or today)
    if not since < until <= today + FARTHEST:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    if stands(client, why, until):
        return Turn(says=(Toast(tap.query, line("toast-already-all")),))
    return Turn(says=(Toast(tap.query),)) + _kept(desk, client, why, since, until, fresh=False)


def take_back(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """`I'm staying after all`, before it has begun."""
    why, until, since = read_why(press), read_since(press, 1), read_since(press, 2)
    me = client.profile
    if why is None or until is None or since is None or begins_at(me, since) <= desk.now:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    mine = Say(me.chat, (line("leave-taken-back", since=since),), slot=SLOT)
    return Turn(
        says=(Toast(tap.query), mine, _to_coach(client, line("coach-client-stays", name=me.name, since=since))),
        keeps=(leave_rule(me, why, since, until, off=True),),
    )


def _kept(desk: Desk, client: ClientDesk, why: Absence, since: date, until: date, *, fresh: bool = True) -> Turn:
    """From now on, or from a day to come."""
    me = client.profile
    if since <= local_day(desk.now, me.zone) or me.standing is Standing.PAUSED:
        return by_client(client, why, until, fresh=fresh)
    told = line(f"leave-{why.value}", since=since, day=until)
    stay = Button(line("leave-not"), show_press("awaynot", "", why.value, until.isoformat(), since.isoformat()))
    mine = Say(me.chat, (told,), ((stay,),), slot=SLOT, fresh=fresh)
    coachs = line("coach-client-leave", name=me.name, why=why.value, since=since, day=until)
    return Turn(says=(mine, _to_coach(client, coachs)), keeps=(leave_rule(me, why, since, until),))


def _asked(desk: Desk, client: ClientDesk, said: Absent) -> Say:
    """Until when, or why: nothing changes before one of the buttons is tapped."""
    if said.until is not None:
        return _which(desk, client, said, said.until)
    why = said.why or Absence.AWAY
    chips = (
        Button(line(f"{why.value}-days", days=DAYS), _press(why, said.since, said.since + timedelta(days=DAYS))),
        *(
            Button(line(f"{why.value}-weeks", weeks=n), _press(why, said.since, said.since + timedelta(weeks=n)))
            for n in WEEKS
        ),
    )
    own = Button(line(f"{why.value}-until"), show_press("awayask", "", why.value, said.since.isoformat()))
    lines: list[Line] = [line(f"{why.value}-how-long")]
    if why is Absence.ILL:
        lines.append(line("away-ill-care"))
    rows: Rows = (chips[:2], chips[2:], (own,))
    return Say(client.profile.chat, tuple(lines), rows, slot=SLOT, fresh=True)


def _which(desk: Desk, client: ClientDesk, said: Absent, until: date) -> Say:
    today = local_day(desk.now, client.profile.zone)
    rows: Rows = tuple(
        (Button(line(f"away-{why.value}-until", day=until), _press(why, said.since, until)),)
        for why in ((Absence.AWAY, Absence.ILL) if said.why is None else (said.why,))
    )
    since = "now" if said.since <= today else said.since
    key = "away-which" if said.why is None else f"{said.why.value}-beside"
    return Say(client.profile.chat, (line(key, since=since, day=until),), rows, slot=SLOT, fresh=True)


def _back(client: ClientDesk) -> Turn:
    """Going on is one tap, and theirs: words of a good day are no decision."""
    away = client.life.away
    lines: list[Line] = [line("away-back-any")]
    if away is not None and away.until is not None:
        lines = [line("away-back-now", day=away.until)]
    if away is not None and away.why is Absence.ILL:
        lines.append(line("away-back-care"))
    return Turn(says=(Say(client.profile.chat, tuple(lines), go_on_row(), slot=SLOT, fresh=True),))


def _to_coach(client: ClientDesk, told: Line) -> Say:
    me = client.profile
    return Say(client.coach.chat, (told,), about=me.id, urgency=Urgency.NOTICE, silent=True)


def _press(why: Absence, since: date, until: date) -> str:
    return show_press("awayto", "", why.value, until.isoformat(), since.isoformat())
