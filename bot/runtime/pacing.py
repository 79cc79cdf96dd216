"""How fast messages may go out: so many a second in all, and per chat one a second with a short burst.

The platform allows about 30 a second in all and one a second in a private chat (Bot API FAQ); ours is lower. Over all
there is no burst: messages go out at least 40 ms apart, so that on a quick line one is known to have arrived
before the next begins, and a killed process leaves at most about one in doubt.
"""

from collections.abc import Callable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Pace:
    """`per_s` messages a second in all; `per_chat_s` in one chat, after a burst of `burst`."""

    per_s: float = 25.0
    per_chat_s: float = 1.0
    burst: int = 3


class Bucket:
    """Fills with `per_s` tokens a second up to `size`; a message takes one."""

    def __init__(self, *, per_s: float, size: float, now_s: float) -> None:
        self._per_s, self._size = per_s, size
        self._tokens, self._at_s = size, now_s

    def level(self, now_s: float) -> float:
        """How many tokens there are; at most `size`."""
        self._tokens = min(self._size, self._tokens + max(0.0, now_s - self._at_s) * self._per_s)
        self._at_s = now_s
        return self._tokens

    def take(self, now_s: float) -> None:
        """One token less; may go below nothing, which the next has to wait out."""
        self.level(now_s)
        self._tokens -= 1.0

    def wait_s(self, now_s: float) -> float:
        """Seconds until there is a whole token; zero where there is one."""
        missing = 1.0 - self.level(now_s)
        return max(0.0, missing / self._per_s)

    def is_full(self, now_s: float) -> bool:
        """Whether it holds all it can: it need not be remembered then."""
        return self.level(now_s) >= self._size


class Pacer:
    """The buckets of all chats and of everything together. `monotonic` gives seconds that only go forward."""

    def __init__(self, pace: Pace, *, monotonic: Callable[[], float]) -> None:
        self._pace, self._monotonic = pace, monotonic
        self._all = Bucket(per_s=pace.per_s, size=max(1.0, pace.per_s / 25), now_s=monotonic())
        self._chats: dict[int, Bucket] = {}
        self._paused_until_s = 0.0

    def room(self) -> int:
        """How many messages may go out at this moment."""
        now_s = self._monotonic()
        return 0 if now_s < self._paused_until_s else max(0, int(self._all.level(now_s) + 1e-6))

    def room_after_s(self) -> float:
        """Seconds until one may go out."""
        now_s = self._monotonic()
        return max(self._paused_until_s - now_s, self._all.wait_s(now_s))

    def chat_wait_s(self, chat: int) -> float:
        """Seconds until this chat may get its next; zero: now."""
        bucket = self._chats.get(chat)
        return 0.0 if bucket is None else bucket.wait_s(self._monotonic())

    def take(self, chat: int) -> None:
        """A message goes out to this chat."""
        now_s = self._monotonic()
        self._all.take(now_s)
        bucket = self._chats.get(chat)
        if bucket is None:
            self._forget_full(now_s)
            bucket = Bucket(per_s=self._pace.per_chat_s, size=self._pace.burst, now_s=now_s)
            self._chats[chat] = bucket
        bucket.take(now_s)

    def pause(self, seconds: float) -> None:
        """Nothing goes out for so long: the platform asked for it."""
        self._paused_until_s = max(self._paused_until_s, self._monotonic() + seconds)

    def _forget_full(self, now_s: float) -> None:
        if len(self._chats) >= 1000:
            self._chats = {chat: b for chat, b in self._chats.items() if not b.is_full(now_s)}
