"""A worker process to be killed: works through the inbox of one database until nothing waits.

    python -m tests.store.victim URL NAME FILE LIFE

Each update's turn is one transaction: claim, a fact, a parcel, done. Each parcel is claimed, written to a file in place
of a chat (the one thing that can't be undone), and settled. It ends by itself when all is done.
"""

import sys
from datetime import UTC, datetime, timedelta
from pathlib import Path

from bot.training.facts import QuestionAsked
from storage import facts, inbox, outbox
from storage.engine import Store
from storage.facts import Origin
from storage.keyring import Keyring
from storage.outbox import NewParcel, ParcelKind
from tests.store.conftest import KEY
from tests.store.practice import NOW


def work_once(store: Store, name: str, now: datetime) -> bool:
    """One turn of each waiting chat; whether there was any."""
    with store.begin() as work:
        chats = inbox.chats_waiting(work)
    for chat in chats:
        with store.begin() as work:
            row = inbox.claim(work, chat, worker=name, now=now)
            if row is None:
                continue
            facts.keep(work, QuestionAsked(f"k{chat}", f"m{row.update}", row.raw), Origin(name, now, f"t{row.update}"))
            parcel = NewParcel(f"reply:{row.update}", chat, ParcelKind.SEND, row.raw, 1, "resend")
            outbox.put(work, [parcel], now=now)
            inbox.keep_done(work, row, now=now)
    return bool(chats)


def send_once(store: Store, name: str, now: datetime, chat_file: Path) -> bool:
    """Sends what may be sent; whether there was anything."""
    with store.begin() as work:
        parcels = outbox.claim_due(work, worker=name, now=now, limit=4)
    for parcel in parcels:
        with chat_file.open("a") as chat:
            chat.write(f"{parcel.chat} {parcel.key} {int(parcel.maybe_sent)}\n")
        with store.begin() as work:
            outbox.keep_sent(work, parcel, message=1, body_hash="", now=now)
    return bool(parcels)


def main(url: str, name: str, chat_file: str, life: str) -> None:
    """Until nothing waits. Each `life` after the first takes up what earlier ones left, past their leases."""
    store = Store.open(url, Keyring.of(KEY))
    now = NOW.astimezone(UTC) + timedelta(hours=int(life))
    if int(life):
        with store.begin() as work:
            inbox.recover(work)
            outbox.recover(work, now=now)
    sys.stdout.write("ready\n")
    sys.stdout.flush()
    busy = True
    while busy:
        busy = work_once(store, name, now)
        busy = send_once(store, name, now, Path(chat_file)) or busy
    store.close()


if __name__ == "__main__":
    main(*sys.argv[1:])
