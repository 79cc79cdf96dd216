"""Who is who, and the one door to people's data: whatever a coach asks for goes through `client_of`."""

from dataclasses import dataclass
from datetime import date, datetime
from functools import lru_cache
from typing import Any

import sqlalchemy as sa

from bot.dialogue.desk import Invite, PaceRow
from bot.training.life import PLAIN_LIFE, Life
from bot.training.orders import NO_ORDERS, Orders
from bot.training.people import Client, ClientId, Coach, CoachId, Gym, Standing, TrainingTime
from bot.training.units import Unit
from storage import life, orders, paces
from storage.columns import fixed
from storage.erasure import forget
from storage.plans import GYM
from storage.ready import Row, ready
from storage.tables import clients, coaches, invites, talks
from storage.work import Work, insert_new

__all__ = [
    "ClientRow",
    "at_chat",
    "client_at",
    "client_by_id",
    "client_of",
    "coach_at",
    "coach_by_id",
    "forget",
    "invite_of",
    "new_coach_invite",
    "read_client",
    "row_of",
]

_c = clients.c


@dataclass(frozen=True, slots=True)
class ClientRow:
    """A client with what stands beside the profile: the coach, the programme's snapshot, how many matters are open,
    the last day with a reported set, the coach's orders, the day on which the programme was given, what stands beside
    it, and the pace."""

    profile: Client
    coach: Coach
    snapshot: str | None
    matters_open: int
    last_day: date | None
    orders: Orders = NO_ORDERS
    begun: date | None = None
    snapshot_before: str | None = None
    life: Life = PLAIN_LIFE
    pace: PaceRow | None = None


_COACH = tuple(coaches.c[f].label(f"coach_{f}") for f in ("chat", "name", "zone", "digest_at"))
_OF_CLIENT = sa.select(clients, *_COACH).join_from(clients, coaches, coaches.c.id == _c.coach)
_BY_ID = _OF_CLIENT.where(_c.id == sa.bindparam("client"))


def _locked(statement: sa.Select[Any]) -> sa.Select[Any]:
    """On PostgreSQL a turn holds its client's row, so that two turns of one client (a message, the clock, a coach's
    tap) never work from the same desk. SQLite has one writer anyway."""
    return statement.with_for_update(key_share=True, of=clients)


_BY_ID_LOCKED = ready(_locked(_BY_ID))
_OF_COACH_LOCKED = ready(_locked(_BY_ID.where(_c.coach == sa.bindparam("of_coach"))))
_own = coaches.alias("own")
_BY_CHAT = ready(
    _locked(
        _OF_CLIENT.add_columns(
            _own.c.id.label("own_coach"), talks.c.data.label("talk_data"), talks.c.expires_at.label("talk_expires_at")
        )
        .outerjoin(_own, _own.c.chat == _c.chat)
        .outerjoin(talks, talks.c.chat == _c.chat)
        .where(_c.chat == sa.bindparam("in_chat"))
        .order_by(_c.standing == fixed("withdrawn"), _c.joined_at.desc())
        .limit(1)
    )
)
_COACH_BY_ID = ready(sa.select(coaches).where(coaches.c.id == sa.bindparam("coach")))
_COACH_BY_CHAT = ready(sa.select(coaches).where(coaches.c.chat == sa.bindparam("in_chat")))
_INVITE = ready(
    sa.select(invites.c.coach, invites.c.expires_at, invites.c.used_at, coaches.c.name, coaches.c.chat)
    .join_from(invites, coaches, coaches.c.id == invites.c.coach, isouter=True)
    .where(invites.c.token_hash == sa.bindparam("hash"))
)
_NEW_INVITE = insert_new(invites, "token_hash")


def client_of(work: Work, coach: CoachId, client: ClientId) -> Client | None:
    """The coach's client of this id. The one door: another coach's client and an absent one are both `None`."""
    row = row_of(work, coach, client)
    return None if row is None else row.profile


def row_of(work: Work, coach: CoachId, client: ClientId) -> ClientRow | None:
    """The same with what stands beside the profile."""
    row = work.first(_OF_COACH_LOCKED, {"client": client, "of_coach": coach})
    return None if row is None else read_client(work, row)


def client_by_id(work: Work, client: ClientId) -> ClientRow | None:
    """A client for the clock's own turns, which no coach asks for."""
    row = work.first(_BY_ID_LOCKED, {"client": client})
    return None if row is None else read_client(work, row)


def client_at(work: Work, chat: int) -> Client | None:
    """The client of this chat; `None` where there is none, or they have withdrawn."""
    row = at_chat(work, chat)
    if row is None or row.standing == Standing.WITHDRAWN:
        return None
    return read_client(work, row).profile


def at_chat(work: Work, chat: int) -> Row | None:
    """The row of this chat's client (a withdrawn one where there is no other), with `own_coach`, the id under which
    the same chat is a coach's, and the talk."""
    return work.first(_BY_CHAT, {"in_chat": chat})


def coach_at(work: Work, chat: int) -> Coach | None:
    """The coach of this chat; `None` where there is none."""
    row = work.first(_COACH_BY_CHAT, {"in_chat": chat})
    return None if row is None else _read_coach(work, row)


def coach_by_id(work: Work, coach: CoachId) -> Coach | None:
    """The coach of this id; `None` where there is none."""
    row = work.first(_COACH_BY_ID, {"coach": coach})
    return None if row is None else _read_coach(work, row)


def invite_of(work: Work, token_hash: str, *, now: datetime) -> Invite | None:
    """The invitation of this hash; `None` where there never was one."""
    row = work.first(_INVITE, {"hash": token_hash})
    if row is None:
        return None
    name = work.unseal(row.name) if row.name else ""
    is_open = row.used_at is None and row.expires_at > now
    return Invite(token_hash, row.coach or "", name, is_open=is_open, coach_chat=row.chat or 0)


def new_coach_invite(work: Work, token_hash: str, expires_at: datetime, now: datetime) -> None:
    """The operator's single-use link for a coach; only the token's hash is kept."""
    row = {"token_hash": token_hash, "coach": None, "made_at": now, "expires_at": expires_at, "used_at": None}
    work.run(_NEW_INVITE, row)


def read_client(work: Work, row: Row) -> ClientRow:
    """A client from a row with the coach's columns beside it."""
    profile = Client(
        id=row.id,
        coach=row.coach,
        chat=row.chat,
        name=work.unseal(row.name),
        unit=Unit(row.unit),
        zone=row.zone,
        trains=TrainingTime(row.days, row.hour),
        gym=_read_gym(row.gym),
        standing=Standing(row.standing),
        consent=row.consent,
        programme=row.programme,
        workout=row.workout,
        readiness_flagged=row.readiness_flagged,
        confirm_in_words=row.confirm_in_words,
        reachable=row.unreachable_at is None,
    )
    coach = Coach(row.coach, row.coach_chat, work.unseal(row.coach_name), row.coach_zone, row.coach_digest_at)
    return ClientRow(
        profile=profile,
        coach=coach,
        snapshot=row.snapshot,
        matters_open=row.matters_open,
        last_day=row.last_day,
        orders=orders.read(work, row.orders),
        begun=row.begun,
        snapshot_before=row.snapshot_before,
        life=life.read(work, row.life),
        pace=paces.read(work, row.pace),
    )


def _read_coach(work: Work, row: Row) -> Coach:
    return Coach(row.id, row.chat, work.unseal(row.name), row.zone, row.digest_at)


@lru_cache(1024)
def _read_gym(text: str) -> Gym:
    return GYM.read_kept(text)
