"""How fast each client trains: a small state before and after the session that showed it last, like strengths."""

from dataclasses import dataclass

import sqlalchemy as sa

from bot.dialogue.desk import PaceRow
from bot.dialogue.turn import PaceKept
from storage.codec import codec
from storage.ready import ready
from storage.tables import clients
from storage.work import Work


@dataclass(frozen=True, slots=True)
class _Kept:
    session: str
    before: str
    after: str


_PACE = codec(_Kept)
_KEEP = ready(sa.update(clients).where(clients.c.id == sa.bindparam("client")).values(pace=sa.bindparam("as_pace")))


def keep(work: Work, kept: PaceKept) -> None:
    """The pace is this from now on."""
    text = _PACE.show_kept(_Kept(kept.session, kept.before, kept.after))
    work.run(_KEEP, {"client": kept.client, "as_pace": work.seal(text)})


def read(work: Work, sealed: bytes | None) -> PaceRow | None:
    """The pace from its column; `None` where none was ever kept."""
    if not sealed:
        return None
    kept = _PACE.read_kept(work.unseal(sealed))
    return PaceRow(kept.session, kept.before, kept.after)
