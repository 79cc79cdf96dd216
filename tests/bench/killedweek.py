"""`python -m tests.bench killedweek --kills 500`: the demo week again and again, its bot killed all the while."""

import argparse
import asyncio
import os
import sys
import tempfile
import time
from pathlib import Path

from tests.crash.living import Lived, live, undisturbed

KILLS_A_WEEK = 50


def main(argv: list[str]) -> int:
    """Plays weeks until there were so many kills; 1 where a week was not like the undisturbed one."""
    wanted = argparse.ArgumentParser(prog="killedweek")
    wanted.add_argument("--kills", type=int, default=50)
    wanted.add_argument("--seed", type=int, default=1)
    given = wanted.parse_args(argv)
    return asyncio.run(_weeks(given.kills, given.seed))


async def _weeks(kills: int, seed: int) -> int:
    calm = await undisturbed(_folder())
    done = repeated = wrong = 0
    began = time.monotonic()
    while done < kills:
        week = await live(_folder(), dict(os.environ), kills=min(KILLS_A_WEEK, kills - done), seed=seed + done)  # noqa: TID251
        done, repeated, wrong = done + week.kills, repeated + _more(week, calm), wrong + _unlike(week, calm)
        sys.stdout.write(f"{done} kills: {repeated} messages repeated, {wrong} weeks not like the undisturbed one\n")
        if not week.kills:
            break
    sys.stdout.write(f"{time.monotonic() - began:.0f} s\n")
    return int(bool(wrong) or repeated > done)


def _more(week: Lived, calm: Lived) -> int:
    return (week.sent - calm.sent).total()


def _unlike(week: Lived, calm: Lived) -> bool:
    return week.sets != calm.sets or bool(calm.sent - week.sent)


def _folder() -> Path:
    return Path(tempfile.mkdtemp(prefix="killed-week-"))
