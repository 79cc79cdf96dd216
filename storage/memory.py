"""What a process keeps in memory of what can't change any more: plans, programmes, sessions under their revision.

Nothing here may go stale: a programme is named by its content, and a session's revision is random and new at every
change, so a change by another process, or one that was rolled back, is never mistaken for the kept one.
"""

from collections import OrderedDict
from collections.abc import Callable
from threading import Lock
from typing import TYPE_CHECKING, Generic, TypeVar

from bot.training.people import ClientId, Programme, SessionId

if TYPE_CHECKING:
    from storage.sessions import Kept

K = TypeVar("K")
V = TypeVar("V")


class Shelf(Generic[K, V]):
    """The last `size` things used."""

    def __init__(self, size: int) -> None:
        self._size = size
        self._things: OrderedDict[K, V] = OrderedDict()
        self._lock = Lock()

    def get(self, key: K) -> V | None:
        """The thing, or `None` where it isn't kept."""
        with self._lock:
            thing = self._things.get(key)
            if thing is not None:
                self._things.move_to_end(key)
            return thing

    def put(self, key: K, thing: V) -> None:
        """Keeps the thing in place of the one used longest ago."""
        with self._lock:
            self._things[key] = thing
            self._things.move_to_end(key)
            if len(self._things) > self._size:
                self._things.popitem(last=False)

    def drop(self, is_gone: Callable[[V], bool]) -> None:
        """Forgets those of which this holds."""
        with self._lock:
            for key in [key for key, thing in self._things.items() if is_gone(thing)]:
                del self._things[key]


class Memory:
    """A store's memory."""

    def __init__(self) -> None:
        self.sessions: Shelf[tuple[SessionId, int], Kept] = Shelf(512)
        self.programmes: Shelf[str, Programme] = Shelf(128)

    def forget(self, client: ClientId) -> None:
        """Nothing of this client stays in memory."""
        self.sessions.drop(lambda kept: kept.session.client == client)
