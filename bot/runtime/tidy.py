"""What need not be kept for good is forgotten: the machinery's own rows, never a fact."""

from datetime import datetime, timedelta

import storage.inbox
import storage.outbox
import storage.relays
import storage.schedule
import storage.slots
from storage.work import Work

INBOX_KEPT = timedelta(days=3)
"""The platform brings an update again for at most a day (Bot API, getUpdates)."""
OUTBOX_KEPT = timedelta(days=30)
"""Keys that stop a message from being put twice; nothing comes due twice after so long."""
SLOTS_KEPT = timedelta(days=60)
RELAYS_KEPT = timedelta(days=90)
"""So long a reply to a message finds whom it is about."""
RULES_KEPT = timedelta(days=30)


def tidy(work: Work, *, now: datetime) -> int:
    """Forgets what is older; how many rows that were."""
    return (
        storage.inbox.purge(work, before=now - INBOX_KEPT)
        + storage.outbox.purge(work, before=now - OUTBOX_KEPT)
        + storage.slots.purge(work, before=now - SLOTS_KEPT)
        + storage.relays.purge(work, before=now - RELAYS_KEPT)
        + storage.schedule.purge(work, before=now - RULES_KEPT)
    )
