"""What the runtime's tests agree on."""

from datetime import UTC, datetime

TOKEN = "42:TEST-TOKEN"
MINA = 7
NOON = datetime(2027, 3, 1, 12, 0, tzinfo=UTC)
