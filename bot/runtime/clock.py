"""The clock, passed to whoever needs it. `SystemClock` is the only place that reads the machine's."""

import time
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Protocol

from bot.faults import SettingsFault


class Clock(Protocol):
    """What tells the time: aware, in UTC."""

    def now(self) -> datetime:
        """The present moment."""
        ...


class SystemClock:
    """The machine's clock."""

    def now(self) -> datetime:
        """The present moment."""
        return datetime.now(UTC)  # noqa: TID251  the one place


class SetClock:
    """A clock that somebody else sets: for tests and the demo. With `runs`, time goes on from where it was set."""

    def __init__(self, at: datetime, *, runs: bool = False) -> None:
        self._at = _aware(at)
        self._runs = runs
        self._since = time.monotonic()

    def now(self) -> datetime:
        """The moment that was set, and what has passed since where the clock runs."""
        if not self._runs:
            return self._at
        return self._at + timedelta(seconds=time.monotonic() - self._since)

    def set(self, at: datetime) -> None:
        """From now on it is this moment."""
        self._at = _aware(at)
        self._since = time.monotonic()

    def advance(self, by: timedelta) -> None:
        """That much later."""
        self.set(self.now() + by)


class FileClock:
    """A clock for a process whose time another one sets: the file holds the moment (ISO 8601, with its offset) at
    which it was written; time runs on from there."""

    def __init__(self, path: Path) -> None:
        self._path = path
        self._read_at = -1
        self._moment = datetime.fromtimestamp(0, UTC)
        self.now()

    def now(self) -> datetime:
        """The file's moment and what has passed since the file was written."""
        try:
            written = self._path.stat().st_mtime_ns
            if written != self._read_at:
                self._moment = _aware(datetime.fromisoformat(self._path.read_text(encoding="ascii").strip()))
                self._read_at = written
        except (OSError, ValueError) as error:
            raise SettingsFault(f"The clock file {self._path} can't be read: {error}.") from error
        passed_ns = max(0, time.time_ns() - self._read_at)
        return self._moment + timedelta(microseconds=passed_ns // 1000)


def _aware(at: datetime) -> datetime:
    if at.tzinfo is None:
        raise ValueError(f"a moment without a zone: {at}")
    return at.astimezone(UTC)
