"""One thread writes: what waits at the same moment is committed together, each job under its own savepoint.

A job is a function of an open transaction. Its result comes back only after the commit; a job that raises is undone
alone, and its error comes back to whoever asked.
"""

import asyncio
import queue
import threading
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, TypeVar

from storage.engine import Store
from storage.work import Work

T = TypeVar("T")

TOGETHER = 64
"""At most so many jobs share a transaction."""


@dataclass(slots=True)
class _Job:
    """A job with whoever waits for it."""

    run: Callable[[Work], Any]
    waiting: "asyncio.Future[Any]"
    loop: asyncio.AbstractEventLoop
    result: Any = None
    error: BaseException | None = None


class Writer:
    """The only writer of a process. Start it by making it; end it with `close`."""

    def __init__(self, store: Store) -> None:
        self.store = store
        self._jobs: queue.SimpleQueue[_Job | None] = queue.SimpleQueue()
        self._thread = threading.Thread(target=self._work, name="writer", daemon=True)
        self._thread.start()

    async def run(self, job: Callable[[Work], T]) -> T:
        """The job's result, once it is committed; or its error, with nothing of it kept."""
        loop = asyncio.get_running_loop()
        waiting: asyncio.Future[T] = loop.create_future()
        self._jobs.put(_Job(job, waiting, loop))
        return await waiting

    def close(self) -> None:
        """Ends the thread after what is queued."""
        self._jobs.put(None)
        self._thread.join()

    def _work(self) -> None:
        while True:
            batch, last = self._take()
            if batch:
                self._commit(batch)
                _hand_back(batch)
            if last:
                return

    def _take(self) -> tuple[list[_Job], bool]:
        """What waits, at least one; and whether this is the end."""
        first = self._jobs.get()
        if first is None:
            return [], True
        batch = [first]
        while len(batch) < TOGETHER:
            try:
                job = self._jobs.get_nowait()
            except queue.Empty:
                break
            if job is None:
                return batch, True
            batch.append(job)
        return batch, False

    def _commit(self, batch: list[_Job]) -> None:
        try:
            with self.store.begin() as work:
                if len(batch) == 1:
                    batch[0].result = batch[0].run(work)
                else:
                    for job in batch:
                        _run_apart(job, work)
        except Exception as error:  # the whole transaction is undone
            for job in batch:
                job.error = job.error or error


def _run_apart(job: _Job, work: Work) -> None:
    """The job under a savepoint: its error is its own."""
    try:
        with work.savepoint():
            job.result = job.run(work)
    except Exception as error:  # given to whoever asked
        job.error = error


def _hand_back(batch: list[_Job]) -> None:
    for loop in {id(job.loop): job.loop for job in batch}.values():
        mine = [job for job in batch if job.loop is loop]
        if not loop.is_closed():
            loop.call_soon_threadsafe(_answer_all, mine)


def _answer_all(jobs: list[_Job]) -> None:
    for job in jobs:
        if job.waiting.done():
            continue
        if job.error is not None:
            job.waiting.set_exception(job.error)
        else:
            job.waiting.set_result(job.result)
