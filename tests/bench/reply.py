"""Replies a second, and how long one takes, beside a bare echo of the client library in the same run.

`python -m tests.bench.reply [--messages 3000] [--people 32] [--rounds 3] [--postgres URL]`

The people are at the stand-in in a process of their own, the bot under test in another; the bots take turns, so that a
slow minute of the machine meets all of them. Ratios are of medians over the rounds.
"""

import argparse
import json
import signal
import subprocess
import sys
import tempfile
from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path
from statistics import median

GOAL = 0.5
"""Our durable replies a second over the bare echo's."""


@dataclass(frozen=True, slots=True)
class Contender:
    """A bot under test: its name, and the arguments of its process after the stand-in's address."""

    name: str
    module: str
    arguments: tuple[str, ...] = ()


@dataclass(slots=True)
class Results:
    """What was measured of each contender, a value a round."""

    values: dict[str, dict[str, list[float]]] = field(default_factory=dict)

    def add(self, name: str, measured: dict[str, float]) -> None:
        """One round."""
        mine = self.values.setdefault(name, {})
        for what, value in measured.items():
            mine.setdefault(what, []).append(value)

    def middle(self, name: str, what: str) -> float:
        """The median over the rounds."""
        return median(self.values[name][what])


def measure(contender: Contender, asked: argparse.Namespace, database: str, data: Path) -> dict[str, float]:
    """One round of one contender."""
    talk = [sys.executable, "-m", "tests.bench.traffic", "--people", str(asked.people)]
    talk += ["--messages", str(asked.messages), "--steady", str(asked.steady)]
    with subprocess.Popen(talk, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True) as people:
        assert people.stdout is not None
        url = people.stdout.readline().strip()
        own = [database, str(data), *contender.arguments] if contender.module == "tests.bench.ours" else []
        bot = subprocess.Popen([sys.executable, "-m", contender.module, url, *(own or contender.arguments)])
        try:
            line = people.stdout.readline()
        finally:
            bot.send_signal(signal.SIGTERM)
            bot.wait(20)
            assert people.stdin is not None
            people.stdin.close()
    measured: dict[str, float] = json.loads(line)
    return measured


def contenders() -> tuple[Contender, ...]:
    """The bare echo, one update at a time and with several at once, and ours."""
    return (
        Contender("bare echo, the library's own", "tests.bench.echo", ("1",)),
        Contender("bare echo, 16 updates at once", "tests.bench.echo", ("16",)),
        Contender("ours, everything durable", "tests.bench.ours", ("echo",)),
    )


def main(argv: Sequence[str]) -> int:
    """Runs the rounds and prints the table; 1 where the goal is missed."""
    parser = argparse.ArgumentParser(prog="reply")
    parser.add_argument("--people", type=int, default=32)
    parser.add_argument("--messages", type=int, default=3_000)
    parser.add_argument("--steady", type=int, default=300)
    parser.add_argument("--rounds", type=int, default=3)
    parser.add_argument("--postgres", default="", help="an address; else SQLite in a temporary folder")
    parser.add_argument("--folder", type=Path, default=None, help="where the SQLite file lies (a real disk)")
    asked = parser.parse_args(argv)
    results = Results()
    for _ in range(asked.rounds):
        for contender in contenders():
            with tempfile.TemporaryDirectory(dir=asked.folder) as folder:
                data = Path(folder)
                database = asked.postgres or f"sqlite:///{data / 'bench.db'}"
                results.add(contender.name, measure(contender, asked, database, data))
    return show(results)


def show(results: Results) -> int:
    """The table, and the ratio to the bare echo."""
    base, ours = contenders()[0].name, contenders()[-1].name
    out = sys.stdout.write
    out(f"{'':32}{'replies/s':>10}{'ratio':>8}{'p50 ms':>9}{'p99 ms':>9}   (p50, p99 at 50 messages a second)\n")
    for one in contenders():
        per_s = results.middle(one.name, "per_s")
        ratio = per_s / results.middle(base, "per_s")
        p50, p99 = results.middle(one.name, "steady_p50_ms"), results.middle(one.name, "steady_p99_ms")
        out(f"{one.name:32}{per_s:10.0f}{ratio:8.2f}{p50:9.1f}{p99:9.1f}\n")
    reached = results.middle(ours, "per_s") / results.middle(base, "per_s")
    out(f"goal: ratio of ours at least {GOAL}: {'reached' if reached >= GOAL else 'missed'} ({reached:.2f})\n")
    return 0 if reached >= GOAL else 1
