"""A coach's standing orders for a client, folded as they are given and kept beside the profile."""

from collections import Counter

import sqlalchemy as sa

from bot.training.calendar import local_day
from bot.training.orders import NO_ORDERS, Order, Orders, follow
from bot.training.people import ClientId, CoachId
from storage.codec import codec
from storage.ready import ready
from storage.record import Origin
from storage.tables import clients
from storage.work import Work

_ORDERS = codec(Orders)
_OF = ready(sa.select(clients.c.orders, clients.c.zone).where(clients.c.id == sa.bindparam("client")))
_KEEP = ready(
    sa.update(clients).where(clients.c.id == sa.bindparam("client")).values(orders=sa.bindparam("standing_now"))
)


_OF_COACH = ready(
    sa.select(clients.c.orders).where(clients.c.coach == sa.bindparam("of"), clients.c.orders.is_not(None))
)
MOST_PREFERRED = 200
"""Pairs of exercises; the rarest are left out."""


def preferred_by(work: Work, coach: CoachId) -> tuple[tuple[str, str], ...]:
    """What stands in an exercise's place by this coach's word, with any client of theirs: the exercise and what took
    its place, those that most clients have first. What the coach has taken back is no choice any more."""
    found: Counter[tuple[str, str]] = Counter()
    for row in work.all(_OF_COACH, {"of": coach}):
        found.update((swap.exercise, swap.into.name) for swap in read(work, row.orders).swaps)
    ordered = sorted(found.items(), key=lambda item: (-item[1], item[0]))
    return tuple(pair for pair, _ in ordered[:MOST_PREFERRED])


def keep(work: Work, client: ClientId, order: Order, origin: Origin) -> None:
    """One more order; `LookupError` where there is no such client."""
    row = work.first(_OF, {"client": client})
    if row is None:
        raise LookupError("no such client")
    after = follow(read(work, row.orders), order, today=local_day(origin.at, row.zone))
    work.run(_KEEP, {"client": client, "standing_now": work.seal(_ORDERS.show_kept(after))})


def read(work: Work, sealed: bytes | None) -> Orders:
    """What stands, from its column."""
    return _ORDERS.read_kept(work.unseal(sealed)) if sealed else NO_ORDERS
