"""People at the stand-in, as a process of its own: they say something, wait for the answer, and say the next.

`python -m tests.bench.traffic` writes its address on the first line, waits for a bot to ask for updates, lets the
people talk, and writes what it measured as JSON on the second; it stays until its input ends.
"""

import argparse
import asyncio
import json
import sys
import time
from dataclasses import dataclass, field
from datetime import UTC, datetime

from bot.tryout.standin import Call, Limits, Seat, StandIn

TOKEN = "42:BENCH-TOKEN"
ANSWERS = frozenset({"sendMessage", "editMessageText", "setMessageReaction"})


class WallClock:
    """The machine's clock."""

    def now(self) -> datetime:
        """The present moment."""
        return datetime.now(UTC)  # noqa: TID251  a bench measures the machine


@dataclass(slots=True)
class Talk:
    """Everyone's messages under way, and how long each took."""

    waiting: dict[int, "asyncio.Future[float]"] = field(default_factory=dict)
    took_s: list[float] = field(default_factory=list)

    def heard(self, call: Call) -> None:
        """A call of the bot: the answer to whoever waits in that chat."""
        if call.method in ANSWERS and call.took_effect and (waiting := self.waiting.pop(call.chat_id, None)):
            waiting.set_result(time.perf_counter())

    async def say(self, seat: Seat, text: str) -> None:
        """One message, until its answer."""
        answered: asyncio.Future[float] = asyncio.get_running_loop().create_future()
        self.waiting[seat.chat.id] = answered
        begun = time.perf_counter()
        seat.say(text)
        self.took_s.append(await answered - begun)


async def flood(standin: StandIn, seats: list[Seat], messages: int, texts: tuple[str, ...]) -> dict[str, float]:
    """Everyone talks at once, each as fast as the bot answers."""
    talk = Talk()

    async def person(seat: Seat, count: int) -> None:
        for n in range(count):
            await talk.say(seat, texts[n % len(texts)])

    with standin.record.following(talk.heard):
        begun = time.perf_counter()
        await asyncio.gather(*(person(seat, messages // len(seats)) for seat in seats))
        took_s = time.perf_counter() - begun
    return {"per_s": len(talk.took_s) / took_s, **spread("flood", talk.took_s)}


async def steady(
    standin: StandIn, seats: list[Seat], messages: int, texts: tuple[str, ...], per_s: float
) -> dict[str, float]:
    """So many messages a second, from one person after another."""
    talk = Talk()
    with standin.record.following(talk.heard):
        begun, tasks = time.perf_counter(), []
        for n in range(messages):
            await asyncio.sleep(max(0.0, begun + n / per_s - time.perf_counter()))
            seat = seats[n % len(seats)]
            if seat.chat.id not in talk.waiting:
                tasks.append(asyncio.create_task(talk.say(seat, texts[(n // len(seats)) % len(texts)])))
        await asyncio.gather(*tasks)
    return spread("steady", talk.took_s)


def spread(name: str, took_s: list[float]) -> dict[str, float]:
    """The 50th and 99th percentile in milliseconds."""
    ordered = sorted(took_s)
    return {f"{name}_p{p}_ms": ordered[min(len(ordered) - 1, len(ordered) * p // 100)] * 1000 for p in (50, 99)}


async def run(asked: argparse.Namespace) -> None:
    """The whole of it."""
    standin = StandIn(WallClock(), Limits(pace=None), polls=True)
    standin.add_bot(TOKEN, username="bench_bot")
    for number in range(asked.people):
        standin.add_person(1_000 + number, f"P{number}")
    polled = asyncio.Event()
    await standin.start()
    sys.stdout.write(f"{standin.url}\n")
    sys.stdout.flush()
    with standin.record.following(lambda call: polled.set() if call.method == "getUpdates" else None):
        # The first poll may be a long one that waits: a first message ends it.
        seats = [standin.seat(1_000 + number) for number in range(asked.people)]
        seats[0].say("hello")
        await polled.wait()
    texts = tuple(asked.texts.split("|"))
    warm = await flood(standin, seats, min(asked.messages, 400), texts)
    del warm
    standin.record.calls.clear()
    result = await steady(standin, seats, asked.steady, texts, per_s=50)
    standin.record.calls.clear()
    result |= await flood(standin, seats, asked.messages, texts)
    sys.stdout.write(json.dumps(result) + "\n")
    sys.stdout.flush()
    await asyncio.to_thread(sys.stdin.read)  # the bot is ended first
    await standin.stop()


if __name__ == "__main__":
    parser = argparse.ArgumentParser()
    parser.add_argument("--people", type=int, default=32)
    parser.add_argument("--messages", type=int, default=3_000)
    parser.add_argument("--steady", type=int, default=300)
    parser.add_argument("--texts", default="hello")
    asyncio.run(run(parser.parse_args()))
