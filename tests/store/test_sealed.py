"""Nothing that people said, nor their names, can be read in the database's files without the key."""

import json
from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
import sqlalchemy as sa

from bot.dialogue.turn import Talk, TalkSet
from bot.training.facts import (
    ClientJoined,
    CoachJoined,
    DoubtKept,
    InviteMade,
    PainReported,
    ProfileChanged,
    ProgrammeAssigned,
    QuestionAsked,
    ReadinessAnswered,
    Reported,
    SessionPlanned,
)
from bot.training.pain import PainSaid
from bot.training.people import Programme
from storage import inbox, outbox, people, talks
from storage.engine import Store
from storage.inbox import RawUpdate
from storage.outbox import NewParcel, ParcelKind
from storage.tables import metadata
from tests.postgres import Postgres
from tests.store import practice
from tests.store.practice import COACH_CHAT, NOW, TODAY, done, hash_of, keep

PLANTED = "Quetzalrind"
"""A word that stands nowhere else."""


def plant(store: Store) -> None:
    """The word in every place where people's words can go."""
    with store.begin() as work:
        people.new_coach_invite(work, hash_of("op"), NOW + timedelta(days=1), NOW)
        keep(work, CoachJoined("c1", COACH_CHAT, f"Coach {PLANTED}", "UTC", NOW.time(), hash_of("op")))
        keep(work, InviteMade("c1", hash_of("t"), NOW + timedelta(days=1)))
        keep(work, ClientJoined("k1", "c1", 101, f"Tamsin {PLANTED}", hash_of("t")))
        keep(work, ProfileChanged("k1", name=f"Tam {PLANTED}"), ReadinessAnswered("k1", True, f"heart {PLANTED}"))
        plan = practice.renamed(practice.planned(), f"For {PLANTED}")
        programme = Programme("p", f"Of {PLANTED}", (practice.workout("Row"),), note=f"note {PLANTED}")
        keep(work, ProgrammeAssigned("k1", programme), SessionPlanned("s1", "k1", TODAY, 0, plan, "t1"))
        keep(work, Reported("s1", "m1", (done(),)))
        hurt = PainSaid(PLANTED.lower(), 4, None, False)
        keep(work, PainReported("p1", "k1", "s1", "Back squat", hurt, f"my {PLANTED} hurts"))
        keep(work, QuestionAsked("k1", "m2", f"may I {PLANTED}?"), DoubtKept("k1", "s1", "m3", f"100 {PLANTED}"))
        talks.keep_talk(work, TalkSet(101, Talk("enrol", "name", (("name", PLANTED),))))
        raw = json.dumps({"update_id": 1, "message": {"text": PLANTED, "from": {"first_name": PLANTED}}})
        inbox.receive(work, [RawUpdate(1, n, 101, raw) for n in range(3)], now=NOW)
        outbox.put(work, [NewParcel("k", 101, ParcelKind.SEND, f'"hello {PLANTED}"', 1, "resend")], now=NOW)
        row = inbox.claim(work, 101, worker="a", now=NOW)
        assert row is not None
        inbox.keep_failed(work, row, f"ValueError: {PLANTED}", now=NOW, limit=1)
    with store.begin() as work:
        (parcel,) = outbox.claim_due(work, worker="a", now=NOW, limit=1)
        outbox.keep_later(work, parcel, until=NOW, error=f"can't send {PLANTED}")


def files_of(store: Store, tmp_path: Path, postgres: Postgres) -> Iterator[Path]:
    """Every file in which the engine keeps anything, its logs of writing among them."""
    folder = postgres.folder if store.is_postgres else tmp_path
    return (path for path in folder.rglob("*") if path.is_file())


@pytest.mark.parametrize("needle", [PLANTED, PLANTED.lower(), PLANTED.encode().hex()])
def test_a_planted_name_and_word_is_in_no_file(store: Store, tmp_path: Path, postgres: Postgres, needle: str) -> None:
    plant(store)
    if store.is_postgres:
        with store.engine.connect().execution_options(isolation_level="AUTOCOMMIT") as connection:
            connection.exec_driver_sql("CHECKPOINT")
    looked_at = 0
    for file in files_of(store, tmp_path, postgres):
        content = file.read_bytes()
        looked_at += len(content)
        for form in (needle.encode(), needle.encode("utf-16-le")):
            assert form not in content, file
    assert looked_at > 100_000
    with store.begin() as work:
        me = people.client_at(work, 101)
        assert me is not None
        assert me.name == f"Tam {PLANTED}", "and with the key it is all there"


def test_the_search_would_find_it(store: Store, tmp_path: Path, postgres: Postgres) -> None:
    """The same search finds a word that is not sealed: a unit, a zone."""
    plant(store)
    if store.is_postgres:
        with store.engine.connect().execution_options(isolation_level="AUTOCOMMIT") as connection:
            connection.exec_driver_sql("CHECKPOINT")
    assert any(b"readiness" in f.read_bytes() for f in files_of(store, tmp_path, postgres))
    assert any(b"Back squat" in f.read_bytes() for f in files_of(store, tmp_path, postgres))


OPEN_TEXT = {
    "facts": "kind client coach session key said_by source",
    "forgetting": "client",
    "resealing": "",
    "coaches": "id zone digest_at",
    "invites": "token_hash coach",
    "programmes": "snapshot id",
    "shelves": "coach programme snapshot",
    "clients": "id coach unit zone days hour gym standing consent programme snapshot snapshot_before last_day begun",
    "sessions": "id client coach day snapshot token ended",
    "sets": "session client exercise day stage unit rir side",
    "strengths": "client exercise session day before after",
    "matters": "client coach kind key session",
    "inbox": "state worker",
    "outbox": "key kind repeat slot about state worker body_hash",
    "slots": "slot body_hash",
    "relays": "about",
    "talks": "name step",
    "schedule": "whose kind ref zone hour days last_day",
    "leases": "name holder",
    "seals": "",
}
"""Every column of text that is not sealed. Whoever adds one answers here whether people's words can get into it."""


def is_text(kind: sa.types.TypeEngine[Any]) -> bool:
    """Whether a column of this kind holds text that can be read."""
    return isinstance(kind.impl_instance if isinstance(kind, sa.types.TypeDecorator) else kind, sa.Text)


def test_every_column_of_open_text_is_known() -> None:
    for table in metadata.sorted_tables:
        found = [c.name for c in table.columns if is_text(c.type)]
        assert sorted(found) == sorted(OPEN_TEXT[table.name].split()), table.name
