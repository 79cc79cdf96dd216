"""Under which name a process works, so that after a crash it finds what it left."""

import fcntl
import secrets
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from bot.faults import SettingsFault

MOST_PROCESSES = 64
"""That share one data folder."""


@contextmanager
def identity(folder: Path, *, several: bool) -> Iterator[str]:
    """The name under which this process claims work: the same after a crash, so that it finds what it left. The lock
    on its file is the proof that its earlier life is over.

    With `several`, processes that share the data folder get names of their own; else `SettingsFault` where one runs.
    """
    for number in range(MOST_PROCESSES if several else 1):
        with (folder / f"worker-{number}.lock").open("a+") as file:
            try:
                fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)
            except OSError:
                continue
            file.seek(0)
            name = file.read().strip()
            if not name:
                name = secrets.token_hex(8)
                file.write(name)
                file.flush()
            yield name
            return
    raise SettingsFault(f"The bot already runs with the data folder {folder}.")
