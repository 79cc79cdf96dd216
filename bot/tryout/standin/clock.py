"""The two clocks the stand-in is given.

`Clock` says what the date is: it stamps messages and decides how old an update is. It may be a played clock that
leaps. How fast calls arrive is measured with a monotonic clock of its own (`Seconds`), which does not leap.
"""

from collections.abc import Callable
from datetime import datetime
from typing import Protocol, TypeAlias

Seconds: TypeAlias = Callable[[], float]


class Clock(Protocol):
    """What time it is, as an aware datetime."""

    def now(self) -> datetime: ...
