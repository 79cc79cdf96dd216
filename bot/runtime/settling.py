"""What is claimed from the outbox, and what becomes of it: each in one transaction."""

import random
from dataclasses import dataclass
from datetime import datetime, timedelta

import storage.facts
import storage.outbox
import storage.people
import storage.relays
import storage.slots
from bot.dialogue.incoming import FileTrouble
from bot.runtime.bodies import StripBody, read_relay, show_body
from bot.runtime.files import come_in, part_after
from bot.runtime.settlements import Claimed, Delivered, Fetched, Given, Postponed, Settlement, Unreachable
from bot.saying import Repeat, Urgency
from bot.training.facts import ReachChanged
from storage.facts import Origin
from storage.outbox import NewParcel, Parcel, ParcelKind
from storage.work import Work

LEAVING = "gone:"
"""How the keys of messages begin that are the last to somebody: their rows go as soon as they are closed."""

LONGEST_WAIT_S = 300.0
"""The longest pause between two tries."""


@dataclass(frozen=True, slots=True)
class Carried:
    """A parcel that came back."""

    claimed: Claimed
    settlement: Settlement


def backoff_s(tries: int, *, chance: float) -> float:
    """Seconds to the next try after so many (from 1): 1, 2, 4 ... 300, moved by up to an eighth (`chance` 0 to 1)."""
    return float(min(LONGEST_WAIT_S, 2.0 ** min(tries - 1, 10)) * (0.875 + 0.25 * chance))


def claim(work: Work, *, worker: str, now: datetime, limit: int) -> tuple[Claimed, ...]:
    """What may go out now, marked as being sent, each with what its slot shows."""
    if limit <= 0:
        return ()
    parcels = storage.outbox.claim_due(work, worker=worker, now=now, limit=limit)
    return tuple(_in_hand(work, parcel) for parcel in parcels)


def _in_hand(work: Work, parcel: Parcel) -> Claimed:
    slot = storage.slots.slot_of(work, parcel.chat, parcel.slot) if parcel.slot else None
    return Claimed(parcel, slot, parcel.maybe_sent)


def settle(work: Work, carried: Carried, *, now: datetime) -> None:
    """Writes down what became of a parcel."""
    parcel, settlement = carried.claimed.parcel, carried.settlement
    match settlement:
        case Delivered():
            _keep_delivered(work, parcel, settlement, now)
        case Fetched(brought):
            if storage.outbox.keep_sent(work, parcel, message=None, body_hash="", now=now):
                come_in(work, parcel, brought, now=now)
        case Postponed(error, after_s, maybe_sent):
            wait_s = backoff_s(parcel.tries, chance=random.random()) if after_s is None else after_s
            until = now + timedelta(seconds=wait_s)
            if maybe_sent:
                storage.outbox.keep_unknown(work, parcel, until=until, error=error, now=now)
            else:
                storage.outbox.keep_later(work, parcel, until=until, error=error, counts=after_s is None)
        case Given(error):
            if storage.outbox.keep_dead(work, parcel, error=error, now=now) and parcel.kind is ParcelKind.FETCH:
                come_in(work, parcel, FileTrouble.FAILED, now=now)
        case Unreachable(error):
            storage.outbox.keep_dead(work, parcel, error=error, now=now)
            storage.outbox.drop_chat(work, parcel.chat, error=error, now=now)
            _keep_unreachable(work, parcel.chat, now)

    if parcel.key.startswith(LEAVING):
        storage.outbox.drop_closed(work, LEAVING)


def _keep_delivered(work: Work, parcel: Parcel, done: Delivered, now: datetime) -> None:
    if not storage.outbox.keep_sent(work, parcel, message=done.message, body_hash=done.shown, now=now):
        return  # deleted with all that was kept of its chat while it was on its way: nothing of it is kept
    if parcel.kind is ParcelKind.STRIP and parcel.slot:
        storage.slots.drop_slot(work, parcel.chat, parcel.slot)
    if parcel.kind is ParcelKind.SEND and parcel.slot and done.message is not None:
        storage.slots.keep_slot(work, parcel.chat, parcel.slot, message=done.message, body_hash=done.shown, now=now)
    if parcel.about and done.message is not None:
        other = read_relay(parcel.body).source_message if parcel.kind is ParcelKind.RELAY else None
        storage.relays.keep_about(
            work, chat=parcel.chat, message=done.message, about=parcel.about, other_message=other, now=now
        )
    if done.following is not None:
        storage.outbox.put(work, (part_after(parcel, done.following),), now=now)
    if done.strip is not None and done.strip != done.message:
        storage.outbox.put(work, (_strip(parcel, done.strip),), now=now)


def _strip(parcel: Parcel, message: int) -> NewParcel:
    """The older message of a slot loses its buttons once the new one stands."""
    return NewParcel(
        key=f"strip:{parcel.key}",
        chat=parcel.chat,
        kind=ParcelKind.STRIP,
        body=show_body(StripBody(message)),
        urgency=int(Urgency.REFRESH),
        repeat=Repeat.RESEND.value,
    )


def _keep_unreachable(work: Work, chat: int, now: datetime) -> None:
    """The client of this chat can't be reached: a fact that the coach hears of."""
    client = storage.people.client_at(work, chat)
    if client is not None and client.reachable:
        origin = Origin(by="platform", at=now, source=f"c{chat}")
        storage.facts.keep(work, ReachChanged(client.id, reachable=False), origin)
