"""What a coach's digest costs: two hundred clients with two years behind them, all of whom trained since the last one.

`python -m tests.bench digest [--clients 200] [--weeks 104]`

Baseline: the same number of clients with a month behind them. Goal: within one second, and the same after two years.
"""

import argparse
import sys
import tempfile
import time
from collections.abc import Sequence
from datetime import date, timedelta
from pathlib import Path
from statistics import median

from bot.dialogue.incoming import Due, RuleKind
from bot.dialogue.router import answer
from bot.dialogue.turn import StrengthKept
from bot.runtime.turns import parcels_of
from bot.training.exposure import LiftedSet
from bot.training.plan import PlannedSet, RepRange
from bot.training.strength import after_session, begin
from storage import strengths
from storage.engine import Store
from storage.keyring import Keyring
from tests.store import practice
from tests.store.conftest import KEY

GOAL_S = 1.0
ROUNDS = 5


def fill(store: Store, clients: int, weeks: int) -> None:
    """Everybody trains three times a week, and did so yesterday, with a state for each lift."""
    state = begin()
    for n in range(6):
        day = date(2026, 1, 5) + timedelta(weeks=n)
        state = after_session(state, day=day, sets=(LiftedSet(100, 5, 1),), prescribed=(PlannedSet(RepRange(5, 8)),))
    kept = state.to_json()
    with store.begin() as work:
        practice.coach(work)
    for number in range(clients):
        name = f"c{number:05d}"
        with store.begin() as work:
            practice.client(work, id=name, chat=300_000 + number, name=f"Person {number}")
            for n in range(weeks * 3, 0, -1):
                practice.trained(work, of=name, day=practice.TODAY - timedelta(days=n * 7 // 3), workout=n % 2)
            for lift in ("Back squat", "Bench press"):
                strengths.keep(work, StrengthKept(name, lift, "s", practice.TODAY, kept, kept))
            practice.trained(work, of=name, day=practice.TODAY)


def digest_s(store: Store) -> tuple[float, int]:
    """Seconds from the rule that comes due to the words to send, and how many characters those have."""
    began = time.perf_counter()
    due = Due(1, RuleKind.DIGEST, "coach-one", "", practice.NOW)
    with store.begin() as work:
        turn = answer(practice.build(work, due), due)
    parcels = [parcel for saying in turn.says for parcel in parcels_of(saying, key="digest")]
    return time.perf_counter() - began, sum(len(parcel.body) for parcel in parcels)


def main(argv: Sequence[str]) -> int:
    """Fills two practices and asks each for its digest."""
    parser = argparse.ArgumentParser(prog="digest")
    parser.add_argument("--clients", type=int, default=200)
    parser.add_argument("--weeks", type=int, default=104)
    args = parser.parse_args(argv)
    took: dict[int, float] = {}
    for weeks in (4, args.weeks):
        with tempfile.TemporaryDirectory() as folder:
            store = Store.open(f"sqlite:///{Path(folder)}/store.db", Keyring.of(KEY))
            store.migrate()
            fill(store, args.clients, weeks)
            rounds = [digest_s(store) for _ in range(ROUNDS)]
            store.close()
        took[weeks] = median(seconds for seconds, _ in rounds)
        sys.stdout.write(
            f"{args.clients} clients, {weeks:4d} weeks: {took[weeks]:.3f} s (first {rounds[0][0]:.3f} s), "
            f"{rounds[0][1]} characters\n"
        )
    ratio = took[args.weeks] / took[4]
    sys.stdout.write(f"{args.weeks} weeks against 4: {ratio:.2f}; goal {GOAL_S} s\n")
    return 0 if took[args.weeks] <= GOAL_S else 1
