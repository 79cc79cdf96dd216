"""The writer: what waits together is committed together; a job that fails is undone alone."""

import asyncio
import threading

import pytest
import sqlalchemy as sa

from bot.runtime.writer import Writer
from storage.engine import Store
from storage.work import Work


@pytest.fixture
def writer(store: Store) -> Writer:
    with store.begin() as work:
        work.connection.execute(sa.text("CREATE TABLE kept (n INTEGER)"))
        work.connection.execute(sa.text("CREATE TABLE root (n INTEGER PRIMARY KEY)"))
        leaf = "CREATE TABLE leaf (n INTEGER REFERENCES root (n) DEFERRABLE INITIALLY DEFERRED)"
        work.connection.execute(sa.text(leaf))
    return Writer(store)


def put(work: Work, n: int, *, fails: bool = False) -> int:
    """Writes a number down; how many there are."""
    work.connection.execute(sa.text("INSERT INTO kept VALUES (:n)"), {"n": n})
    if fails:
        raise ValueError(n)
    return count(work)


def count(work: Work) -> int:
    """How many there are."""
    return int(work.connection.execute(sa.text("SELECT count(*) FROM kept")).scalar_one())


async def test_jobs_come_back_after_their_commit(writer: Writer, store: Store) -> None:
    """What another connection sees then."""
    assert await writer.run(lambda work: put(work, 1)) == 1
    with store.begin() as work:
        assert count(work) == 1
    writer.close()


async def test_jobs_that_wait_together_share_a_transaction_and_one_failure_is_its_own(writer: Writer) -> None:
    """The others are kept, in order."""
    hold, begun = threading.Event(), asyncio.Event()
    loop = asyncio.get_running_loop()

    def wait(_: Work) -> None:
        loop.call_soon_threadsafe(begun.set)
        hold.wait(5)

    transactions: list[int] = []

    def job(work: Work, n: int) -> int:
        transactions.append(id(work))
        return put(work, n, fails=n == 3)

    first = asyncio.create_task(writer.run(wait))
    await begun.wait()
    rest = [asyncio.create_task(writer.run(lambda work, n=n: job(work, n))) for n in range(6)]  # type: ignore[misc]
    await asyncio.sleep(0)
    hold.set()
    await first
    results = await asyncio.gather(*rest, return_exceptions=True)
    assert [r if isinstance(r, int) else type(r) for r in results] == [1, 2, 3, ValueError, 4, 5]
    assert len(set(transactions)) == 1
    writer.close()


async def test_a_failed_commit_fails_every_job_of_it(writer: Writer) -> None:
    """Nobody believes kept what isn't; the writer goes on."""

    def end(work: Work) -> None:
        put(work, 1)
        work.connection.execute(sa.text("INSERT INTO leaf VALUES (5)"))  # checked at the commit

    with pytest.raises(sa.exc.IntegrityError):
        await writer.run(end)
    assert await writer.run(count) == 0
    writer.close()


async def test_closing_ends_after_what_is_queued(writer: Writer) -> None:
    """Nothing accepted is dropped."""
    tasks = [asyncio.create_task(writer.run(lambda work: put(work, 1))) for _ in range(5)]
    await asyncio.sleep(0)
    await asyncio.to_thread(writer.close)
    await asyncio.gather(*tasks)
