"""`/export`: a copy of all that is kept of somebody, as one file; a coach's is of their practice."""

from datetime import datetime, timedelta

from bot.dialogue import papers
from bot.dialogue.desk import Desk
from bot.dialogue.turn import Turn
from bot.saying import Copy, Say, SayFile, Saying, Wanted, line
from bot.training.calendar import local_day, local_time

EACH = timedelta(hours=1)
"""One copy in this time: it takes the machine a while."""


def copy_key(copy: Copy, whose: str, at: datetime) -> str:
    """The key under which a copy is put: the same within an hour of the clock, so that it is put once."""
    return f"copy:{copy.value}:{whose}:{at:%Y%m%d%H}"


def on_request(desk: Desk, chat: int) -> Turn:
    """Whoever is known here gets it, also who has taken their consent back; a person who is both gets both."""
    zone = _zone(desk)
    if zone is None:
        return papers.stranger(chat)
    if desk.copied_at is not None and desk.now - desk.copied_at < EACH:
        at, ahead = local_time(desk.copied_at, zone), local_time(desk.copied_at + EACH, zone)
        return Turn(says=(Say(chat, (line("copy-again", at=at, **{"from": ahead}),)),))
    says: list[Saying] = []
    if desk.client is not None:
        says += _copy(desk, chat, Copy.OWN, desk.client.profile.id, zone)
    if desk.coach is not None:
        says += _copy(desk, chat, Copy.PRACTICE, desk.coach.profile.id, zone)
    return Turn(says=tuple(says))


def _zone(desk: Desk) -> str | None:
    if desk.client is not None:
        return desk.client.profile.zone
    return None if desk.coach is None else desk.coach.profile.zone


def _copy(desk: Desk, chat: int, copy: Copy, whose: str, zone: str) -> tuple[Say, SayFile]:
    day = local_day(desk.now, zone)
    is_own = copy is Copy.OWN
    coming = line("copy-coming" if is_own else "copy-coming-practice")
    caption = line("copy-caption" if is_own else "copy-caption-practice", day=day)
    name = f"chalkpost-{'record' if is_own else 'practice'}-{day.isoformat()}.zip"
    file = SayFile(chat, name, Wanted(copy, whose), (caption,), key=copy_key(copy, whose, desk.now))
    return Say(chat, (coming,)), file
