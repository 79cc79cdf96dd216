"""What waits for somebody: pain that is not settled, questions, reports in doubt. Kept from the facts.

How many are open stands beside each client, so that most turns need not look here.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime
from enum import StrEnum
from zoneinfo import ZoneInfo

import sqlalchemy as sa

from bot.dialogue.desk import OpenDoubt, OpenPain, OpenQuestion
from bot.training.pain import PainSaid
from bot.training.people import ClientId, CoachId
from storage.codec import codec
from storage.ready import Row, ready
from storage.tables import clients, matters
from storage.work import Work, insert_or_replace

_c = matters.c
_OPEN = _c.closed_at.is_(None)


class Kind(StrEnum):
    """What kind of thing waits."""

    PAIN = "pain"
    QUESTION = "question"
    DOUBT = "doubt"


@dataclass(frozen=True, slots=True)
class Hurt:
    """What is sealed of pain; `ended` is the answer with which it was settled."""

    exercise: str | None
    said: PainSaid
    words: str
    ended: str = ""


@dataclass(frozen=True, slots=True)
class Words:
    """What is sealed of a question or a doubt; `stood` as in `DoubtKept`."""

    words: str
    stood: tuple[str, ...] | None = None


HURT = codec(Hurt)
WORDS = codec(Words)


@dataclass(frozen=True, slots=True)
class Open:
    """What waits with one client."""

    pains: tuple[OpenPain, ...] = ()
    doubts: tuple[OpenDoubt, ...] = ()
    questions: tuple[OpenQuestion, ...] = ()
    held: tuple[tuple[str, date], ...] = ()


NOTHING_OPEN = Open()

COLUMNS = (_c.id, _c.client, _c.kind, _c.key, _c.session, _c.body, _c.holds, _c.at)
_OF_CLIENT = ready(sa.select(*COLUMNS).where(_c.client == sa.bindparam("of"), _OPEN).order_by(_c.id))


def open_of(work: Work, client: ClientId, zone: str) -> Open:
    """What waits with this client; days are those of the zone."""
    return read_open(work, work.all(_OF_CLIENT, {"of": client}), zone)


def read_open(work: Work, rows: Sequence[Row], zone: str) -> Open:
    """The same from its rows."""
    pains: list[OpenPain] = []
    held: dict[str, date] = {}
    for row in rows:
        if row.kind != Kind.PAIN:
            continue
        hurt = HURT.read_kept(work.unseal(row.body))
        pains.append(OpenPain(row.key, hurt.exercise, hurt.said, hurt.words, row.at))
        if row.holds and hurt.exercise is not None:
            held.setdefault(hurt.exercise, row.at.astimezone(ZoneInfo(zone)).date())
    doubts = [_doubt(work, row) for row in rows if row.kind == Kind.DOUBT]
    questions = [OpenQuestion(r.key, _words(work, r).words, r.at) for r in rows if r.kind == Kind.QUESTION]
    return Open(tuple(pains), tuple(doubts), tuple(questions), tuple(held.items()))


def _doubt(work: Work, row: Row) -> OpenDoubt:
    kept = _words(work, row)
    return OpenDoubt(row.session, row.key, kept.words, kept.stood)


def _words(work: Work, row: Row) -> Words:
    return WORDS.read_kept(work.unseal(row.body))


# --- changes

_OPENED = insert_or_replace(
    matters, "client", "kind", "key", columns=("session", "body", "holds", "at", "closed_at", "handled_at")
)
_CLOSE = ready(
    sa.update(matters)
    .where(_c.client == sa.bindparam("of"), _c.kind == sa.bindparam("what"), _c.key == sa.bindparam("with_key"), _OPEN)
    .values(closed_at=sa.bindparam("now"), holds=False)
)
_CLOSE_ALL = ready(
    sa.update(matters)
    .where(_c.client == sa.bindparam("of"), _c.kind == sa.bindparam("what"), _OPEN)
    .values(closed_at=sa.bindparam("now"), holds=False)
)
_COUNT = ready(
    sa.update(clients)
    .where(clients.c.id == sa.bindparam("of"))
    .values(
        matters_open=sa.select(sa.func.count())
        .select_from(matters)
        .where(_c.client == sa.bindparam("of"), _OPEN)
        .scalar_subquery()
    )
)
_PAIN = ready(
    sa.select(*COLUMNS).where(_c.client == sa.bindparam("of"), _c.kind == "pain", _c.key == sa.bindparam("with_key"))
)
_ALL_PAIN = ready(sa.select(*COLUMNS).where(_c.client == sa.bindparam("of"), _c.kind == "pain"))
_REWRITE = ready(sa.update(matters).where(_c.id == sa.bindparam("row")).values(body=sa.bindparam("as_body")))
_LIFT = ready(sa.update(matters).where(_c.id == sa.bindparam("row")).values(holds=False))
_HANDLED = ready(
    sa.update(matters)
    .where(_c.coach == sa.bindparam("of_coach"), _c.key == sa.bindparam("with_key"), _c.kind == "pain")
    .values(handled_at=sa.bindparam("now"))
    .returning(_c.client)
)


def open_pain(
    work: Work, client: ClientId, coach: CoachId, *, key: str, session: str | None, hurt: Hurt, at: datetime
) -> None:
    """Pain is reported: its exercise, where one is named, is held."""
    body = work.seal(HURT.show_kept(hurt))
    _open(
        work, client, coach, kind=Kind.PAIN, key=key, session=session, body=body, at=at, holds=hurt.exercise is not None
    )


def open_words(
    work: Work,
    client: ClientId,
    coach: CoachId,
    *,
    kind: Kind,
    key: str,
    session: str | None,
    body: Words,
    at: datetime,
) -> None:
    """A question, or a doubt, waits."""
    sealed = work.seal(WORDS.show_kept(body))
    _open(work, client, coach, kind=kind, key=key, session=session, body=sealed, at=at)


def _open(
    work: Work,
    client: ClientId,
    coach: CoachId,
    *,
    kind: Kind,
    key: str,
    session: str | None,
    body: bytes,
    at: datetime,
    holds: bool = False,
) -> None:
    row = {"client": client, "coach": coach, "kind": kind.value, "key": key, "session": session, "body": body}
    work.run(_OPENED, {**row, "holds": holds, "at": at, "closed_at": None, "handled_at": None})
    work.run(_COUNT, {"of": client})


def close(work: Work, client: ClientId, *, kind: Kind, key: str, at: datetime) -> None:
    """It waits no more."""
    work.run(_CLOSE, {"of": client, "what": kind.value, "with_key": key, "now": at})
    work.run(_COUNT, {"of": client})


def close_all(work: Work, client: ClientId, *, kind: Kind, at: datetime) -> None:
    """None of this kind waits any more."""
    work.run(_CLOSE_ALL, {"of": client, "what": kind.value, "now": at})
    work.run(_COUNT, {"of": client})


def score(work: Work, client: ClientId, *, key: str, score: int) -> None:
    """The pain's score was said."""
    row = work.first(_PAIN, {"of": client, "with_key": key})
    if row is not None:
        hurt = HURT.read_kept(work.unseal(row.body))
        scored = replace(hurt, said=replace(hurt.said, score=score))
        work.run(_REWRITE, {"row": row.id, "as_body": work.seal(HURT.show_kept(scored))})


def settle(work: Work, client: ClientId, *, key: str, answer: str, at: datetime) -> None:
    """The pain is settled, with this answer."""
    row = work.first(_PAIN, {"of": client, "with_key": key})
    if row is not None:
        hurt = replace(HURT.read_kept(work.unseal(row.body)), ended=answer)
        work.run(_REWRITE, {"row": row.id, "as_body": work.seal(HURT.show_kept(hurt))})
    close(work, client, kind=Kind.PAIN, key=key, at=at)


def lift(work: Work, client: ClientId, exercise: str) -> None:
    """No pain holds this exercise any more; the pain itself stays open until it is settled."""
    for row in work.all(_OF_CLIENT, {"of": client}):
        if row.holds and HURT.read_kept(work.unseal(row.body)).exercise == exercise:
            work.run(_LIFT, {"row": row.id})


def handled(work: Work, coach: CoachId, key: str, *, at: datetime) -> ClientId | None:
    """The coach has seen to this pain; gives whose it is, `None` where no client of theirs has it."""
    row = work.first(_HANDLED, {"of_coach": coach, "with_key": key, "now": at})
    return None if row is None else row.client


def pain_scores(work: Work, client: ClientId) -> dict[tuple[str, str], int]:
    """The highest score of pain said in a session, by session and exercise, settled or not."""
    scores: dict[tuple[str, str], int] = {}
    for row in work.all(_ALL_PAIN, {"of": client}):
        hurt = HURT.read_kept(work.unseal(row.body))
        if row.session is not None and hurt.exercise is not None and hurt.said.score is not None:
            place = (row.session, hurt.exercise)
            scores[place] = max(hurt.said.score, scores.get(place, 0))
    return scores
