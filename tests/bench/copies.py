"""A coach's copy of a whole practice: how long it takes, how large it is, and what it costs those who train meanwhile.

`python -m tests.bench copies [--clients 200] [--weeks 104] [--postgres]`

Three sessions of fifteen sets a week, each set a message of its own: about a million facts. One client's history is
kept by the runtime's own functions, and the others' are its rows under other ids. Replies of another client are
measured before and while the copy is made, in this process, as in the bot.
Goals: every part below the 50 MB that the platform takes; replies meanwhile at most 0.25 s (median).
"""

import argparse
import resource
import sys
import tempfile
import threading
import time
from collections.abc import Sequence
from contextlib import ExitStack
from datetime import UTC, datetime, timedelta
from itertools import count
from pathlib import Path
from statistics import median

import sqlalchemy as sa

from bot.runtime.copies.pack import copier
from bot.runtime.logs import set_up_logs
from bot.saying import Copy, Wanted
from bot.training.facts import Ending, Reported, SessionEnded, SessionPlanned
from bot.training.plan import PlannedSession
from storage.engine import Store
from storage.keyring import Keyring
from storage.tables import clients, facts, sessions, sets
from storage.work import Work
from tests.bench.flat import House
from tests.postgres import server
from tests.store import practice
from tests.store.conftest import KEY

LARGEST = 50_000_000
"""Bytes (Bot API, "Sending files")."""
SLOWEST_S = 0.25
FIRST = "c" * 22 + "00"
NAMES = ("Back squat", "Bench press", "Row", "Romanian deadlift", "Press")
PLAN = PlannedSession("Whole body", tuple(practice.exercise(name) for name in NAMES), 55)


def first_client(work: Work, weeks: int) -> None:
    """A client with so many weeks of three sessions, as the runtime keeps them."""
    practice.client(work, id=FIRST, chat=200_000, name="Person 0")
    for n in range(weeks * 3, 0, -1):
        day = practice.TODAY - timedelta(days=7 + n * 7 // 3)
        at = datetime.combine(day, datetime.min.time(), UTC) + timedelta(hours=17)
        session = f"{FIRST}s{n:05d}"
        practice.keep(work, SessionPlanned(session, FIRST, day, n % 2, PLAN, f"t{session}"), at=at)
        messages = count(1)
        for name in NAMES:
            for number in (1, 2, 3):
                at += timedelta(minutes=3)
                done = practice.done(name, number, load=str(80 + n % 17))
                practice.keep(work, Reported(session, f"m{n * 20 + next(messages)}", (done,)), at=at)
        practice.keep(work, SessionEnded(session, Ending.FINISHED, 50), at=at)


def another(work: Work, n: int) -> None:
    """The first one's rows under another id."""
    id = f"{'c' * 22}{n:02d}"[-24:] if n < 100 else f"{'c' * 21}{n:03d}"
    for table, column in ((clients, clients.c.id), (sessions, sessions.c.client), (facts, facts.c.client)):
        rows = [dict(row._mapping) for row in work.connection.execute(sa.select(table).where(column == FIRST))]
        work.connection.execute(sa.insert(table), [_under(work, row, id, n) for row in rows])
    rows = [dict(row._mapping) for row in work.connection.execute(sa.select(sets).where(sets.c.client == FIRST))]
    work.connection.execute(sa.insert(sets), [_under(work, row, id, n) for row in rows])


def _under(work: Work, row: dict[str, object], id: str, n: int) -> dict[str, object]:
    out: dict[str, object] = {}
    for name, value in row.items():
        if isinstance(value, str):
            out[name] = value.replace(FIRST, id)
        elif isinstance(value, bytes) and value:
            out[name] = work.seal(work.unseal(value).replace(FIRST, id))
        else:
            out[name] = value
    if "gym" in row:
        out["chat"] = 200_000 + n
    elif "body" in row:
        del out["id"]
    return out


def replies(house: House, stop: threading.Event | None = None, *, most: int = 100) -> list[float]:
    """What replies took, in seconds: until the event is set, or so many."""
    resting = stop or threading.Event()
    before = len(house.took_ms["100x5 @2"])
    at = practice.NOW + timedelta(hours=len(house.took_ms["100x5 @2"]))
    while len(house.took_ms["100x5 @2"]) - before < most and not (stop is not None and stop.is_set()):
        for text in ("100x5 @2", "/undo"):
            at += timedelta(seconds=20)
            house.reply(text, at)
        resting.wait(0.05)  # somebody rests between sets
    return [ms / 1000 for ms in house.took_ms["100x5 @2"][before:]]


def main(argv: Sequence[str]) -> int:
    """Measures and prints; 1 where a goal is missed."""
    parser = argparse.ArgumentParser(prog="copies")
    parser.add_argument("--clients", type=int, default=200)
    parser.add_argument("--weeks", type=int, default=104)
    parser.add_argument("--postgres", action="store_true", help="on an embedded PostgreSQL that waits for no disk")
    asked = parser.parse_args(argv)
    set_up_logs(as_json=False, level="critical")
    with ExitStack() as stack:
        folder = Path(stack.enter_context(tempfile.TemporaryDirectory()))
        postgres = stack.enter_context(server()) if asked.postgres else None
        url = postgres.url(postgres.new_database()) if postgres else f"sqlite:///{folder / 'practice.db'}"
        store = Store.open(url, Keyring.of(KEY))
        stack.callback(store.close)
        store.migrate()
        begun = time.perf_counter()
        fill(store, asked.clients, asked.weeks)
        sys.stdout.write(
            f"filled: {asked.clients} clients, {asked.weeks} weeks ({time.perf_counter() - begun:.0f} s)\n"
        )
        return measure(House("practice", store))


def fill(store: Store, people: int, weeks: int) -> None:
    """The coach, the client who replies, and the practice."""
    with store.begin() as work:
        practice.practice(work)
        practice.session(work)
        first_client(work, weeks)
    for n in range(1, people):
        with store.begin() as work:
            another(work, n)


def measure(house: House) -> int:
    """The copy, part by part, and the replies before and beside it."""
    out, store = sys.stdout.write, house.store
    make = copier(store, lambda: practice.NOW)
    alone = replies(house)
    done, beside = threading.Event(), list[float]()
    person = threading.Thread(target=lambda: beside.extend(replies(house, done, most=1_000_000)))
    person.start()
    begun, worked, sizes = time.perf_counter(), time.thread_time(), list[int]()
    following: Wanted | None = Wanted(Copy.PRACTICE, "coach-one")
    while following is not None:
        made = make(following)
        assert made is not None
        sizes.append(len(made.content))
        following = made.following
    took, worked = time.perf_counter() - begun, time.thread_time() - worked
    done.set()
    person.join()
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    out(f"copy: {took:.1f} s, {worked:.1f} s of them at work\n")
    out(f"parts: {len(sizes)}, the largest {max(sizes) / 1e6:.1f} MB\n")
    out(f"peak memory of the process: {peak:.0f} MB\n")
    out(f"reply alone: median {median(alone) * 1000:.1f} ms, worst {max(alone) * 1000:.0f} ms\n")
    out(f"reply beside it: median {median(beside) * 1000:.1f} ms, worst {max(beside) * 1000:.0f} ms\n")
    is_reached = max(sizes) < LARGEST and median(beside) <= SLOWEST_S
    out(f"goals: parts below 50 MB, replies within {SLOWEST_S} s: {'reached' if is_reached else 'missed'}\n")
    return 0 if is_reached else 1
