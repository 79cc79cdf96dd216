"""Bots hatched quickly: one process loads everything once and then forks a bot each time that it is asked for one.

Each bot is a process of its own and dies as one; only the loading is saved. `python -m tests.crash.nest` is what forks.
"""

import asyncio
import contextlib
import os
import signal
import sys
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass, field


@dataclass(slots=True)
class Victim:
    """A bot's process."""

    pid: int
    ended: asyncio.Event = field(default_factory=asyncio.Event)

    def kill(self) -> None:
        """Signal 9, where it still lives."""
        self._signal(signal.SIGKILL)

    def stop(self) -> None:
        """Signal 15: it ends by itself."""
        self._signal(signal.SIGTERM)

    def _signal(self, which: signal.Signals) -> None:
        if not self.ended.is_set():
            with contextlib.suppress(ProcessLookupError):  # dead, and not yet known to be
                os.kill(self.pid, which)


@dataclass(slots=True)
class Nest:
    """The process that hatches."""

    process: asyncio.subprocess.Process
    watching: set["asyncio.Task[None]"] = field(default_factory=set)

    async def hatch(self) -> Victim:
        """A new bot, while none lives."""
        assert self.process.stdin is not None
        self.process.stdin.write(b"hatch\n")
        victim = Victim(int(await self._line()))
        task = asyncio.create_task(self._watch(victim))
        self.watching.add(task)
        task.add_done_callback(self.watching.discard)
        return victim

    async def _watch(self, victim: Victim) -> None:
        await self._line()
        victim.ended.set()

    async def _line(self) -> bytes:
        assert self.process.stdout is not None
        line = await self.process.stdout.readline()
        if not line:
            raise RuntimeError("the nest is gone")
        return line


@asynccontextmanager
async def nest(environment: dict[str, str]) -> AsyncIterator[Nest]:
    """A nest, while the block runs."""
    process = await asyncio.create_subprocess_exec(
        sys.executable,
        "-m",
        "tests.crash.nest",
        env=environment,
        stdin=asyncio.subprocess.PIPE,
        stdout=asyncio.subprocess.PIPE,
    )
    made = Nest(process)
    try:
        yield made
    finally:
        for task in made.watching:
            task.cancel()
        assert process.stdin is not None
        process.stdin.close()
        await process.wait()


def main() -> None:
    """Forks a bot for each line, tells its number, and tells when it has ended."""
    from tests.crash import victim  # noqa: PLC0415  loaded in this process only

    for _ in sys.stdin:
        pid = os.fork()
        if pid == 0:
            os.dup2(os.open(os.devnull, os.O_RDWR), 0)
            os.dup2(2, 1)
            code = victim.run()
            os._exit(code)
        sys.stdout.write(f"{pid}\n")
        sys.stdout.flush()
        _, status = os.waitpid(pid, 0)
        sys.stdout.write(f"ended {status}\n")
        sys.stdout.flush()


if __name__ == "__main__":
    main()
