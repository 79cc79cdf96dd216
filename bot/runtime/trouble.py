"""Trouble with the database: told once each time, and waited out a little longer each time."""

import structlog

from bot.runtime.inbox import place_of

log = structlog.get_logger("loops")

LONGEST_WAIT_S = 30.0


class Trouble:
    """How often in a row it happened."""

    def __init__(self) -> None:
        self._times = 0

    def note(self, error: Exception) -> float:
        """Logs it; seconds to wait before the next try: 1, 2, 4 ... 30."""
        self._times += 1
        wait_s = min(LONGEST_WAIT_S, 2.0 ** min(self._times - 1, 5))
        log.error("trouble", error=place_of(error), wait_s=wait_s)
        return wait_s

    def over(self) -> None:
        """It worked again."""
        self._times = 0
