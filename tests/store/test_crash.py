"""Workers are killed with -9 at any moment, several at once work side by side: nothing lost, nothing twice."""

import random
import subprocess
import sys
from collections import Counter
from collections.abc import Callable
from pathlib import Path

import sqlalchemy as sa

from storage import inbox
from storage.engine import Store
from storage.inbox import RawUpdate
from tests.store import practice
from tests.store.practice import NOW

ROOT = Path(__file__).parents[2]
CHATS, EACH = 6, 12


def start(url: str, name: str, chat_file: Path, life: int) -> "subprocess.Popen[bytes]":
    command = [sys.executable, "-m", "tests.store.victim", url, name, str(chat_file), str(life)]
    process = subprocess.Popen(command, cwd=ROOT, stdout=subprocess.PIPE)
    assert process.stdout is not None
    assert process.stdout.readline() == b"ready\n"
    return process


def fill(store: Store) -> None:
    with store.begin() as work:
        practice.coach(work)
        for chat in range(1, CHATS + 1):
            practice.client(work, id=f"k{chat}", chat=chat)
        updates = [
            RawUpdate(1, n * CHATS + chat, chat, f"words {n}") for n in range(EACH) for chat in range(1, CHATS + 1)
        ]
        inbox.receive(work, updates, now=NOW)


def audit(store: Store, chat_file: Path, kills: int) -> None:
    with store.begin() as work:
        assert inbox.chats_waiting(work) == ()
        kept = work.connection.execute(
            sa.text("SELECT client, source FROM facts WHERE kind = 'QuestionAsked' ORDER BY id")
        )
        rows = [tuple(row) for row in kept]
        for chat in range(1, CHATS + 1):
            expected = [f"t{n * CHATS + chat}" for n in range(EACH)]
            assert [source for client, source in rows if client == f"k{chat}"] == expected, "once each, in order"
        states = work.connection.execute(sa.text("SELECT state, count(*) FROM outbox GROUP BY state")).fetchall()
        assert [tuple(row) for row in states] == [("sent", CHATS * EACH)]
    lines = [line.split() for line in chat_file.read_text().splitlines()]
    sent = Counter(key for _, key, _ in lines)
    assert len(sent) == CHATS * EACH, "every reply was sent"
    again = sum(sent.values()) - len(sent)
    assert again <= 4 * kills, "at most what was on its way when it was killed"
    marked = sum(1 for _, _, maybe in lines if maybe == "1")
    assert again <= marked, "and each repetition was known to be one"


def test_killed_at_any_moment_nothing_is_lost_or_done_twice(store: Store, url: str, tmp_path: Path) -> None:
    chat_file, chance = tmp_path / "chat", random.Random(7)
    chat_file.touch()
    fill(store)
    kills = 0
    for life in range(200):
        process = start(url, f"life{life}", chat_file, life)
        try:
            if process.wait(timeout=chance.uniform(0.0, 0.12) if kills < 6 else 60) == 0:
                break
        except subprocess.TimeoutExpired:
            process.kill()
            process.wait()
            kills += 1
        finally:
            if process.stdout is not None:
                process.stdout.close()
    assert kills > 0
    audit(store, chat_file, kills)


def test_several_workers_at_once_share_the_chats(open_store: Callable[[], Store], url: str, tmp_path: Path) -> None:
    """On SQLite they take turns at the file, on PostgreSQL they skip each other's rows."""
    store, chat_file = open_store(), tmp_path / "chat"
    chat_file.touch()
    fill(store)
    workers = [start(url, f"w{n}", chat_file, 0) for n in range(3)]
    for process in workers:
        assert process.wait(timeout=120) == 0
        if process.stdout is not None:
            process.stdout.close()
    audit(store, chat_file, 0)
