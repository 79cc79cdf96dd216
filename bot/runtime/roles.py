"""What a process does; a small house has one process with all four."""

from enum import StrEnum


class Role(StrEnum):
    """One of the four."""

    INTAKE = "intake"
    """Takes updates from the platform and keeps them."""
    WORK = "work"
    """Works through what was kept."""
    CLOCK = "clock"
    """Takes up what comes due."""
    SEND = "send"
    """Empties the outbox."""


ALL_ROLES = frozenset(Role)
