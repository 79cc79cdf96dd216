"""Who plays in the demo week. All invented; the numbers are their chats."""

from dataclasses import dataclass
from datetime import UTC, datetime
from zoneinfo import ZoneInfo


@dataclass(frozen=True, slots=True)
class Player:
    """Somebody with the chat app in hand, and the zone of their wall clock."""

    id: int
    name: str
    zone: str

    def wall(self, at: datetime) -> datetime:
        """The moment on their clock."""
        return at.astimezone(ZoneInfo(self.zone))


COACH = Player(1001, "Maren", "Europe/Dublin")
ADA = Player(2001, "Ada", "Europe/Berlin")
BO = Player(2002, "Bo", "America/New_York")
CLEO = Player(2003, "Cleo", "Europe/Dublin")
CLIENTS = (ADA, BO, CLEO)
EVERYONE = (COACH, *CLIENTS)

BEGINS = datetime(2027, 1, 10, 17, 0, tzinfo=UTC)
"""A Sunday afternoon in Dublin."""
TOKEN = "4242:demo-practice-on-loopback-only"
"""Of no use anywhere but at the stand-in."""
BOT_NAME = "chalkpost_demo_bot"
