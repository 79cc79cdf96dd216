"""How fast a bot may send: a bucket a chat and one over all. Source: the public Bot FAQ; see `PaceLimits`."""

import math
from dataclasses import dataclass

from bot.tryout.standin.clock import Seconds
from bot.tryout.standin.limits import PaceLimits
from bot.tryout.standin.refusals import too_many


@dataclass(slots=True)
class _Bucket:
    tokens: float
    at_s: float
    shut_until_s: float = 0.0


class Pace:
    """One bot's buckets. Who is refused stays refused until the seconds told are over."""

    def __init__(self, limits: PaceLimits, seconds: Seconds) -> None:
        self._limits = limits
        self._seconds = seconds
        self._overall = _Bucket(limits.overall_burst, seconds())
        self._chats: dict[int, _Bucket] = {}

    def take(self, chat_id: int) -> None:
        """Counts one message; raises `Refusal` 429 with the seconds to wait."""
        now, limits = self._seconds(), self._limits
        chat = self._chats.setdefault(chat_id, _Bucket(limits.chat_burst, now))
        _fill(chat, now, limits.chat_per_s, limits.chat_burst)
        _fill(self._overall, now, limits.overall_per_s, limits.overall_burst)
        _check(chat, now, limits.chat_per_s)
        _check(self._overall, now, limits.overall_per_s)
        chat.tokens -= 1
        self._overall.tokens -= 1


def _fill(bucket: _Bucket, now: float, per_s: float, burst: int) -> None:
    bucket.tokens = min(burst, bucket.tokens + (now - bucket.at_s) * per_s)
    bucket.at_s = now


def _check(bucket: _Bucket, now: float, per_s: float) -> None:
    if bucket.shut_until_s > now:
        raise too_many(math.ceil(bucket.shut_until_s - now))
    if bucket.tokens < 1:
        wait_s = max(1, math.ceil((1 - bucket.tokens) / per_s))
        bucket.shut_until_s = now + wait_s
        raise too_many(wait_s)
