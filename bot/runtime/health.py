"""How the bot is: the last good poll, what waits, what was set aside. For `chalkpost status` and a health probe."""

import json
import os
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

STALE_S = 90
"""No good poll for so long: something is wrong (a long poll takes at most 30 s)."""


@dataclass(slots=True)
class Pulse:
    """What the loops note about themselves."""

    started_at: datetime
    last_poll_at: datetime | None = None
    poll_trouble: str = ""
    updates: int = 0
    turns: int = 0
    last_tick_at: datetime | None = None

    def polled(self, now: datetime, updates: int) -> None:
        """The platform answered."""
        self.last_poll_at, self.poll_trouble = now, ""
        self.updates += updates


@dataclass(frozen=True, slots=True)
class Beat:
    """A pulse as another process reads it."""

    at: datetime
    started_at: datetime
    last_poll_at: datetime | None
    poll_trouble: str
    updates: int
    turns: int
    sent: int

    def is_well(self, now: datetime, *, polls: bool = True) -> bool:
        """Whether the process lives and, where it polls, the platform answers."""
        if (now - self.at).total_seconds() > STALE_S:
            return False
        if not polls:
            return True
        seen = self.last_poll_at or self.started_at
        return (now - seen).total_seconds() <= STALE_S and not self.poll_trouble


def beat_of(pulse: Pulse, *, sent: int, now: datetime) -> Beat:
    """The pulse at this moment."""
    return Beat(now, pulse.started_at, pulse.last_poll_at, pulse.poll_trouble, pulse.updates, pulse.turns, sent)


def show_beat(beat: Beat) -> str:
    """The beat as JSON."""
    return json.dumps(
        {
            "at": beat.at.isoformat(),
            "started_at": beat.started_at.isoformat(),
            "last_poll_at": beat.last_poll_at.isoformat() if beat.last_poll_at else None,
            "poll_trouble": beat.poll_trouble,
            "updates": beat.updates,
            "turns": beat.turns,
            "sent": beat.sent,
        }
    )


def read_beat(text: str) -> Beat:
    """A beat from its JSON; `ValueError` or `KeyError` where it is none."""
    data = json.loads(text)
    polled = data["last_poll_at"]
    return Beat(
        at=datetime.fromisoformat(data["at"]),
        started_at=datetime.fromisoformat(data["started_at"]),
        last_poll_at=datetime.fromisoformat(polled) if polled else None,
        poll_trouble=data["poll_trouble"],
        updates=data["updates"],
        turns=data["turns"],
        sent=data["sent"],
    )


def keep_beat(path: Path, beat: Beat) -> None:
    """Writes the beat beside the data, whole or not at all."""
    new = path.with_suffix(".new")
    new.write_text(show_beat(beat), encoding="utf-8")
    os.replace(new, path)


def last_beat(folder: Path, now: datetime) -> Beat | None:
    """The last sign of life in this folder: of several live processes all together; `None` where there is none."""
    beats = [beat for path in folder.glob("heartbeat-*.json") if (beat := _found(path)) is not None]
    alive = [beat for beat in beats if (now - beat.at).total_seconds() <= STALE_S]
    if not alive:
        return max(beats, key=lambda beat: beat.at, default=None)
    return Beat(
        at=max(beat.at for beat in alive),
        started_at=min(beat.started_at for beat in alive),
        last_poll_at=max((beat.last_poll_at for beat in alive if beat.last_poll_at is not None), default=None),
        poll_trouble=next((beat.poll_trouble for beat in alive if beat.poll_trouble), ""),
        updates=sum(beat.updates for beat in alive),
        turns=sum(beat.turns for beat in alive),
        sent=sum(beat.sent for beat in alive),
    )


def _found(path: Path) -> Beat | None:
    try:
        return read_beat(path.read_text(encoding="utf-8"))
    except (OSError, ValueError, KeyError):
        return None
