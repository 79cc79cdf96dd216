"""What stands beside a client's programme, folded as it comes and kept beside the profile."""

import sqlalchemy as sa

from bot.training.calendar import local_day
from bot.training.life import PLAIN_LIFE, Life
from bot.training.living import LifeFact, follow
from storage.codec import codec
from storage.ready import ready
from storage.record import Origin
from storage.tables import clients
from storage.work import Work

_LIFE = codec(Life)
_OF = ready(sa.select(clients.c.life, clients.c.zone).where(clients.c.id == sa.bindparam("client")))
_KEEP = ready(sa.update(clients).where(clients.c.id == sa.bindparam("client")).values(life=sa.bindparam("as_lived")))


def keep(work: Work, fact: LifeFact, origin: Origin) -> None:
    """One more change; `LookupError` where there is no such client."""
    row = work.first(_OF, {"client": fact.client})
    if row is None:
        raise LookupError("no such client")
    after = follow(read(work, row.life), fact, today=local_day(origin.at, row.zone))
    work.run(_KEEP, {"client": fact.client, "as_lived": work.seal(_LIFE.show_kept(after))})


def read(work: Work, sealed: bytes | None) -> Life:
    """What stands, from its column."""
    return _LIFE.read_kept(work.unseal(sealed)) if sealed else PLAIN_LIFE
