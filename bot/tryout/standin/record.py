"""Every call a bot made, what it got, and whether it took effect: for tests, and for the audit after a kill."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime

from bot.tryout.standin.refusals import Refusal
from bot.tryout.standin.values import JsonObject, JsonValue


@dataclass(frozen=True, slots=True)
class Call:
    """One call. `took_effect` tells what the bot may not know: a cut connection can come before or after."""

    number: int
    bot_id: int
    method: str
    chat_id: int
    at: datetime
    monotonic_s: float
    params: JsonObject
    result: JsonValue = None
    refusal: Refusal | None = None
    fault: str = ""

    @property
    def took_effect(self) -> bool:
        """Whether it was carried out, whatever the bot heard."""
        return self.refusal is None and self.fault != "cut before"


class Record:
    """The calls in order. getUpdates is left out unless `polls` is asked for: it would drown the rest."""

    def __init__(self, *, polls: bool = False) -> None:
        self.calls: list[Call] = []
        self.polls = polls
        self._followers: list[Callable[[Call], None]] = []

    def keep(self, call: Call) -> None:
        """Adds a call and tells the followers."""
        if call.method == "getUpdates" and not self.polls:
            return
        self.calls.append(call)
        for follower in tuple(self._followers):
            follower(call)

    def of(self, method: str, *, chat_id: int = 0) -> tuple[Call, ...]:
        """The calls of one method, of one chat if given."""
        return tuple(call for call in self.calls if call.method == method and chat_id in {0, call.chat_id})

    @contextmanager
    def following(self, follower: Callable[[Call], None]) -> Iterator[None]:
        """Hands every new call to `follower` at once, while the block lasts. It must be quick and not raise."""
        self._followers.append(follower)
        try:
            yield
        finally:
            self._followers.remove(follower)
