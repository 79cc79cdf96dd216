"""What facts about people change: coaches, invitations, clients and their settings."""

from datetime import datetime, time

import sqlalchemy as sa

from bot.training.calendar import local_day
from bot.training.facts import (
    ClientJoined,
    CoachChanged,
    CoachJoined,
    ConsentGiven,
    ConsentWithdrawn,
    InviteMade,
    ProfileChanged,
    ProgrammeAssigned,
    ProgrammeShelved,
    ReachChanged,
    ReadinessAnswered,
)
from bot.training.people import ClientId, Gym, Standing
from bot.training.units import Unit
from storage import plans, schedule
from storage.plans import GYM
from storage.ready import ready
from storage.record import About, Origin
from storage.tables import clients, coaches, invites, matters, sessions
from storage.work import Overtaken, Work, insert_new

USUAL_HOUR = time(18)
"""The training hour of somebody who hasn't said one yet: it stands beside no days, and so does nothing."""

CoachFact = InviteMade | CoachJoined | CoachChanged | ProgrammeShelved
ClientFact = (
    ClientJoined
    | ConsentGiven
    | ConsentWithdrawn
    | ProfileChanged
    | ReadinessAnswered
    | ReachChanged
    | ProgrammeAssigned
)

_INVITE = ready(sa.insert(invites))
_USE = ready(
    sa.update(invites)
    .where(
        invites.c.token_hash == sa.bindparam("hash"),
        invites.c.used_at.is_(None),
        invites.c.expires_at > sa.bindparam("now"),
        invites.c.coach.is_not_distinct_from(sa.bindparam("from_coach", type_=sa.Text)),
    )
    .values(used_at=sa.bindparam("now"))
)
_NEW_COACH = insert_new(coaches, "chat")
_ZONE_OF = ready(sa.select(coaches.c.zone).where(coaches.c.id == sa.bindparam("coach")))
_NEW_CLIENT = ready(sa.insert(clients))
_HAS_CLIENT = ready(
    sa.select(clients.c.id).where(
        clients.c.chat == sa.bindparam("in_chat"), clients.c.standing != Standing.WITHDRAWN.value
    )
)
_CLIENTS_ZONE = ready(sa.select(clients.c.zone).where(clients.c.id == sa.bindparam("client")))
_SNAPSHOT_OF = ready(sa.select(clients.c.snapshot).where(clients.c.id == sa.bindparam("client")))
_COACH_OF = ready(sa.select(clients.c.coach).where(clients.c.id == sa.bindparam("client")))


def follow_coach(work: Work, fact: CoachFact, origin: Origin) -> About:
    """A fact about a coach."""
    match fact:
        case InviteMade(coach, token_hash, expires_at):
            row = {"token_hash": token_hash, "coach": coach, "made_at": origin.at, "expires_at": expires_at}
            work.run(_INVITE, {**row, "used_at": None})
        case CoachJoined():
            use_invite(work, fact.token_hash, None, origin.at)
            row = {"id": fact.coach, "chat": fact.chat, "name": work.seal(fact.name), "zone": fact.zone}
            if work.run(_NEW_COACH, {**row, "digest_at": fact.digest_at, "joined_at": origin.at}) != 1:
                raise Overtaken
        case ProgrammeShelved(coach, programme):
            plans.keep(work, programme, coach=coach, at=origin.at)
        case CoachChanged():
            name = None if fact.name is None else work.seal(fact.name)
            changes = {"name": name, "zone": fact.zone, "digest_at": fact.digest_at}
            _update(work, coaches, fact.coach, {k: v for k, v in changes.items() if v is not None})
    return About(coach=fact.coach)


def follow_client(work: Work, fact: ClientFact, origin: Origin) -> About:
    """A fact about a client."""
    match fact:
        case ClientJoined():
            _join(work, fact, origin.at)
            return About(client=fact.client, coach=fact.coach)
        case ConsentGiven(client, version):
            _update(work, clients, client, {"consent": version})
        case ConsentWithdrawn(client):
            _update(work, clients, client, {"consent": "", "standing": Standing.WITHDRAWN.value})
            schedule.drop_rules(work, client)
        case ProfileChanged():
            _update(work, clients, fact.client, _profile_columns(work, fact))
            if fact.zone is not None:
                schedule.follow_zone(work, fact.client, fact.zone)
        case ReadinessAnswered(client, flagged):
            _update(work, clients, client, {"readiness_flagged": flagged, "readiness_at": origin.at})
        case ReachChanged(client, reachable):
            _update(work, clients, client, {"unreachable_at": None if reachable else origin.at})
        case ProgrammeAssigned(client, programme):
            coach = coach_of(work, client)
            snapshot = plans.keep(work, programme, coach=coach, at=origin.at)
            before = work.first(_SNAPSHOT_OF, {"client": client})
            _update(
                work,
                clients,
                client,
                {
                    "programme": programme.id,
                    "snapshot": snapshot,
                    "snapshot_before": None if before is None else before.snapshot,
                    "workout": 0,
                    "workout_since": None,
                    "begun": local_day(origin.at, zone_of(work, client)),
                },
            )
            return About(client=client, coach=coach)
    return About(client=fact.client, coach=coach_of(work, fact.client))


def coach_of(work: Work, client: ClientId) -> str:
    """The client's coach; `LookupError` where there is no such client."""
    row = work.first(_COACH_OF, {"client": client})
    if row is None:
        raise LookupError("no such client")
    return str(row.coach)


def zone_of(work: Work, client: ClientId) -> str:
    """The client's time zone; `LookupError` where there is no such client."""
    row = work.first(_CLIENTS_ZONE, {"client": client})
    if row is None:
        raise LookupError("no such client")
    return str(row.zone)


def _join(work: Work, fact: ClientJoined, at: datetime) -> None:
    use_invite(work, fact.token_hash, fact.coach, at)
    if work.first(_HAS_CLIENT, {"in_chat": fact.chat}) is not None:
        raise Overtaken
    zone = work.first(_ZONE_OF, {"coach": fact.coach})
    if zone is None:
        raise LookupError("no such coach")
    work.run(
        _NEW_CLIENT,
        {
            "id": fact.client,
            "coach": fact.coach,
            "chat": fact.chat,
            "name": work.seal(fact.name),
            "unit": Unit.KG.value,
            "zone": zone.zone,
            "days": (),
            "hour": USUAL_HOUR,
            "gym": GYM.show_kept(Gym.usual(Unit.KG)),
            "standing": Standing.JOINING.value,
            "joined_at": at,
        },
    )


def use_invite(work: Work, token_hash: str, coach: str | None, at: datetime) -> None:
    """An invitation is used once, also in a race."""
    if work.run(_USE, {"hash": token_hash, "now": at, "from_coach": coach}) != 1:
        raise Overtaken


def hand_over(work: Work, client: ClientId, to: str) -> None:
    """The client, with their sessions and what waits, is this coach's from now on; facts stay as they were said."""
    _update(work, clients, client, {"coach": to})
    for table in (sessions, matters):
        work.run(sa.update(table).where(table.c.client == client).values(coach=to))


def _profile_columns(work: Work, fact: ProfileChanged) -> dict[str, object]:
    changes: dict[str, object | None] = {
        "name": None if fact.name is None else work.seal(fact.name),
        "unit": None if fact.unit is None else fact.unit.value,
        "zone": fact.zone,
        "days": None if fact.trains is None else fact.trains.days,
        "hour": None if fact.trains is None else fact.trains.at,
        "gym": None if fact.gym is None else GYM.show_kept(fact.gym),
        "confirm_in_words": fact.confirm_in_words,
        "standing": None if fact.standing is None else fact.standing.value,
    }
    return {name: value for name, value in changes.items() if value is not None}


def _update(work: Work, table: sa.Table, row: str, columns: dict[str, object]) -> None:
    if columns and work.run(sa.update(table).where(table.c.id == row).values(columns)) != 1:
        raise LookupError(f"no such row of {table.name}")
