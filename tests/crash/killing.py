"""A bot killed with -9 while people talk and reminders come due, again and again; then every row is audited.

Kills come at random moments, and at the worst ones: as a message reaches the platform, before the bot can hear of it.
"""

import asyncio
import random
import time
from collections import Counter
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from datetime import time as hour
from pathlib import Path

from bot.dialogue.incoming import RuleKind
from bot.dialogue.turn import RuleSet
from bot.runtime.clock import SetClock
from bot.runtime.waiting import wait_for
from bot.training.facts import QuestionAsked
from bot.tryout.standin import Call, Limits, Seat, StandIn
from storage.engine import Store
from storage.record import facts_of
from storage.schedule import keep_rule
from tests.crash.nest import Nest, Victim, nest
from tests.runtime.known import NOON, TOKEN
from tests.store import practice

PEOPLE = 12
DUE = hour(12, 30)
FILES = 0.25
"""The share of what people say that they send as a file: it is fetched, and comes back as one."""


@dataclass(frozen=True, slots=True)
class Plan:
    """How often and how fast. `every_s`: seconds between two messages, over all people, while fewer than `at_once`
    wait for their answer. `senders`: calls to the platform at once: so many may be in doubt after a kill."""

    kills: int
    seed: int
    every_s: float = 0.06
    at_once: int = 40
    senders: int = 1
    patience_s: float = 60.0


@dataclass(slots=True)
class Audit:
    """What was found. `lost`, `twice` and `disorder` must be empty; `repeated` at most one a kill."""

    kills: int = 0
    messages: int = 0
    files: int = 0
    """So many of the messages were files."""
    reminders: int = 0
    lost: list[str] = field(default_factory=list)
    twice: list[str] = field(default_factory=list)
    disorder: list[str] = field(default_factory=list)
    repeated: int = 0
    most_repeated_in_a_chat: int = 0


class Killing:
    """One run: a stand-in and people here, the bot in processes that die."""

    def __init__(self, plan: Plan, url: str, folder: Path, environment: dict[str, str]) -> None:
        self.plan, self.url, self.folder = plan, url, folder
        self.chance = random.Random(plan.seed)
        self.standin = StandIn(SetClock(NOON, runs=True), Limits(pace=None), seed=plan.seed, polls=True)
        self.clock_file = folder / "clock"
        self.environment = environment
        self.said: dict[int, list[tuple[int, str]]] = {}
        self.files: set[str] = set()
        self.days = 0
        self.answered = 0
        self.polled = asyncio.Event()
        self.heard: set[str] = set()
        self.something = asyncio.Event()
        self.kill_at_send: int | None = None
        self.nest: Nest | None = None
        self.victim: Victim | None = None

    async def run(self, store: Store) -> Audit:
        """All of it."""
        self._set_up(store)
        await self.standin.start()
        try:
            async with nest(self._settings()) as self.nest:
                with self.standin.record.following(self._follow):
                    await self._live()
        finally:
            await self.standin.stop()
        return self._audit(store)

    def _set_up(self, store: Store) -> None:
        """A practice of clients with a daily rule each, and a clock an hour before it."""
        self.standin.add_bot(TOKEN, username="chalk_bot")
        with store.begin() as work:
            practice.coach(work)
            for n in range(PEOPLE):
                chat, name = 1_000 + n, f"client-{n}"
                self.standin.add_person(chat, f"P{n}")
                practice.client(work, id=name, chat=chat, name=f"P{n}")
                rule = RuleSet(name, RuleKind.SESSION, "UTC", at=DUE, days=tuple(range(7)))
                keep_rule(work, rule, now=NOON)
        self._set_clock(NOON)
        for n in range(PEOPLE):  # nobody can be written to who has not opened the chat
            self._say(self.standin.seat(1_000 + n), f"message {n}")

    def _set_clock(self, at: datetime) -> None:
        new = self.clock_file.with_suffix(".new")
        new.write_text(at.isoformat())
        new.replace(self.clock_file)

    async def _live(self) -> None:
        talking = asyncio.create_task(self._talk())
        passing = asyncio.create_task(self._pass_days())
        for _ in range(self.plan.kills):
            async with self._bot():
                await self._wait(self.polled)
                await self._until_the_moment()
                self._kill()
        talking.cancel()
        passing.cancel()
        await asyncio.wait({talking, passing})
        async with self._bot() as victim:
            await self._until_all_is_heard()
            victim.stop()
            await self._wait(victim.ended)

    @asynccontextmanager
    async def _bot(self) -> AsyncIterator[Victim]:
        self.polled.clear()
        assert self.nest is not None
        self.victim = await self.nest.hatch()
        try:
            yield self.victim
        finally:
            self.victim.kill()
            await self.victim.ended.wait()

    def _settings(self) -> dict[str, str]:
        named = {
            "TOKEN": TOKEN,
            "API_URL": self.standin.url,
            "DATABASE_URL": self.url,
            "DATA_DIR": str(self.folder),
            "CLOCK_FILE": str(self.clock_file),
            "PACE_PER_CHAT_S": "1000",
            "PACE_BURST": "1000",
            "SENDERS": str(self.plan.senders),
            "TICK_S": "0.1",
            "WAKE_S": "0.1",
        }
        return {**self.environment, **{f"CHALKPOST_{name}": value for name, value in named.items()}}

    # --- what happens

    async def _talk(self) -> None:
        """People say something at random moments; each message is one of its kind."""
        seats = [self.standin.seat(1_000 + n) for n in range(PEOPLE)]
        number = PEOPLE
        while True:
            while number - self.answered >= self.plan.at_once:
                self.something.clear()
                await self.something.wait()
            seat = self.chance.choice(seats)
            self._say(seat, f"message {number}")
            number += 1
            await asyncio.sleep(self.chance.expovariate(1 / self.plan.every_s))

    def _say(self, seat: Seat, text: str) -> None:
        """Typed, or now and then sent as a sheet of this name."""
        if self.chance.random() < FILES:
            self.files.add(text)
            number = seat.send("document", text.encode(), name=f"{text}.csv")
        else:
            number = seat.say(text)
        self.said.setdefault(seat.chat.id, []).append((number, text))

    async def _pass_days(self) -> None:
        """When everyone has had their reminder, it is the next day's half past twelve."""
        while True:
            self.days += 1
            self._set_clock(NOON + timedelta(days=self.days - 1, minutes=31))
            expected = {name for name in self._reminders() if name.endswith(self._day(self.days))}
            while not expected <= self.heard:
                self.something.clear()
                await self.something.wait()

    def _day(self, number: int) -> str:
        return f"{datetime.combine(NOON.date() + timedelta(days=number - 1), DUE):%d %H:%M}"

    def _reminders(self) -> list[str]:
        """Every reminder that was to come, by its words."""
        return [f"due client-{n} {self._day(day)}" for n in range(PEOPLE) for day in range(1, self.days + 1)]

    async def _until_the_moment(self) -> None:
        """A random moment, or the next time that a message arrives."""
        if self.chance.random() < 0.5:
            await asyncio.sleep(self.chance.uniform(0.0, 0.4))
            return
        self.kill_at_send = self.chance.randint(1, 6)
        assert self.victim is not None
        await wait_for(self.victim.ended, 5.0)
        self.kill_at_send = None

    def _follow(self, call: Call) -> None:
        if call.method == "getUpdates":
            self.polled.set()
        elif call.method in ("sendMessage", "sendDocument") and call.took_effect:
            text = str(call.params["text" if call.method == "sendMessage" else "caption"])
            self.answered += text.startswith("message") and text not in self.heard
            self.heard.add(text)
            self.something.set()
            if self.kill_at_send is not None:
                self.kill_at_send -= 1
                if self.kill_at_send <= 0:
                    self._kill()

    def _kill(self) -> None:
        if self.victim is not None:
            self.victim.kill()

    async def _until_all_is_heard(self) -> None:
        wanted = {text for said in self.said.values() for _, text in said} | set(self._reminders())
        until = time.monotonic() + self.plan.patience_s
        while not wanted <= self.heard and time.monotonic() < until:
            self.something.clear()
            await self._wait(self.something)

    async def _wait(self, event: asyncio.Event) -> None:
        await wait_for(event, self.plan.patience_s)  # where it takes too long, the audit tells what is missing

    # --- what is left

    def _audit(self, store: Store) -> Audit:
        audit = Audit(self.plan.kills, files=len(self.files), reminders=len(self._reminders()))
        for n in range(PEOPLE):
            self._audit_facts(audit, store, f"client-{n}", 1_000 + n)
            self._audit_answers(audit, n, 1_000 + n)
        return audit

    def _audit_facts(self, audit: Audit, store: Store, client: str, chat: int) -> None:
        """Each message and each reminder is kept once."""
        with store.begin() as work:
            kept = [r.fact.words for r in facts_of(work, client) if isinstance(r.fact, QuestionAsked)]
        wanted = [text for _, text in self.said.get(chat, [])]
        audit.messages += len(wanted)
        wanted += [words for words in self._reminders() if f" {client} " in words]
        counted = Counter(kept)
        audit.lost += [f"fact: {words}" for words in wanted if not counted[words]]
        audit.twice += [f"fact: {words}" for words, times in counted.items() if times > 1]
        audit.twice += [f"fact from nowhere: {words}" for words in counted.keys() - set(wanted)]

    def _audit_answers(self, audit: Audit, number: int, chat: int) -> None:
        """Each message is answered, those typed in order (a file takes its time); what came twice came at once after
        itself."""
        said = [text for _, text in self.said.get(chat, [])]
        messages = self.standin.seat(chat).messages()
        told = [m.words.text for m in messages if m.by_bot and m.words.text.startswith("message")]
        first = [text for text in dict.fromkeys(told) if text not in self.files]
        if first != [text for text in said if text in set(told) - self.files]:
            audit.disorder.append(f"chat {chat}")
        reminders = [m.words.text for m in messages if m.by_bot and m.words.text.startswith("due")]
        wanted = set(said) | {w for w in self._reminders() if f" client-{number} " in w}
        audit.lost += [f"answer: {words}" for words in sorted(wanted - set(told) - set(reminders))]
        again = len(told) + len(reminders) - len(set(told)) - len(set(reminders))
        audit.repeated += again
        audit.most_repeated_in_a_chat = max(audit.most_repeated_in_a_chat, again)
