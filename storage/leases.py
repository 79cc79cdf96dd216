"""Who may do what only one may do at a time (poll the platform, keep the pace of sending), for how long."""

from datetime import datetime, timedelta

import sqlalchemy as sa
from sqlalchemy.dialects import postgresql, sqlite

from storage.ready import ready
from storage.tables import leases
from storage.work import Work

_HELD = sa.or_(leases.c.holder == sa.bindparam("by"), leases.c.until <= sa.bindparam("now"))
_NEW: dict[str, sa.ColumnElement[str]] = {"holder": sa.bindparam("by"), "until": sa.bindparam("ends")}
_lite = sqlite.insert(leases).values(name=sa.bindparam("lease"), **_NEW)
_post = postgresql.insert(leases).values(name=sa.bindparam("lease"), **_NEW)
_TAKE = ready(
    _lite.on_conflict_do_update(index_elements=["name"], set_=_NEW, where=_HELD),
    _post.on_conflict_do_update(index_elements=["name"], set_=_NEW, where=_HELD),
)
_GIVE = ready(sa.delete(leases).where(leases.c.name == sa.bindparam("lease"), leases.c.holder == sa.bindparam("by")))


def take(work: Work, name: str, holder: str, now: datetime, seconds: int) -> bool:
    """Takes the lease, or holds it on; false while another holds it. Commit before relying on it."""
    params = {"lease": name, "by": holder, "now": now, "ends": now + timedelta(seconds=seconds)}
    return work.run(_TAKE, params) == 1


def give(work: Work, name: str, holder: str) -> None:
    """Gives the lease up, where this holder has it."""
    work.run(_GIVE, {"lease": name, "by": holder})
