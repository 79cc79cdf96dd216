"""Trouble on request: slow, too many, broken, cut off before or after the call took effect, updates twice or shuffled.

standin.faults.add(Fault(CutAfter(), method="sendMessage", times=1))
standin.faults.add(Fault(ServerError(), chance=0.05))          # five in a hundred calls, from the seed
standin.faults.add(Fault(Twice(), times=3))                    # the next three updates come again
"""

import random
from dataclasses import dataclass
from typing import TypeAlias


@dataclass(frozen=True, slots=True)
class Delay:
    """The call waits so long before it is looked at."""

    seconds: float


@dataclass(frozen=True, slots=True)
class SlowAnswer:
    """The call takes effect at once, its answer comes so much later; None: only when the client has gone."""

    seconds: float | None = None


@dataclass(frozen=True, slots=True)
class TooMany:
    """429, without effect."""

    retry_after_s: int = 1


@dataclass(frozen=True, slots=True)
class ServerError:
    """500 (or 502 and so on); `after` the call took effect, or without."""

    code: int = 500
    after: bool = False


@dataclass(frozen=True, slots=True)
class CutBefore:
    """The connection breaks, nothing took effect."""


@dataclass(frozen=True, slots=True)
class CutAfter:
    """The connection breaks, the call took effect."""


@dataclass(frozen=True, slots=True)
class Twice:
    """An update comes a second time, with the same id, after it was confirmed."""


@dataclass(frozen=True, slots=True)
class Shuffled:
    """The updates of one batch come out of order."""


CallTrouble: TypeAlias = Delay | SlowAnswer | TooMany | ServerError | CutBefore | CutAfter
UpdateTrouble: TypeAlias = Twice | Shuffled


@dataclass(frozen=True, slots=True)
class Fault:
    """Trouble for calls of one method or chat (or any), so many times (or always), with a chance each time."""

    trouble: CallTrouble | UpdateTrouble
    method: str = ""
    chat_id: int = 0
    times: int | None = None
    chance: float = 1.0


@dataclass(slots=True)
class _Running:
    fault: Fault
    left: int | None


class Faults:
    """The faults in force, first come first served; chance from one seed."""

    def __init__(self, seed: int = 0) -> None:
        self._running: list[_Running] = []
        self._chance = random.Random(seed)

    def add(self, *faults: Fault) -> None:
        """Puts faults in force."""
        self._running.extend(_Running(fault, fault.times) for fault in faults)

    def clear(self) -> None:
        """Takes them all away."""
        self._running.clear()

    def listed(self) -> tuple[Fault, ...]:
        """What is in force."""
        return tuple(one.fault for one in self._running)

    def for_call(self, method: str, chat_id: int) -> CallTrouble | None:
        """The trouble this call has, if any; counts it. A fault for no method in particular spares getUpdates."""
        for one in self._running:
            fault = one.fault
            named = fault.method.lower() == method.lower() if fault.method else method != "getUpdates"
            if isinstance(fault.trouble, Twice | Shuffled) or not named or fault.chat_id not in {0, chat_id}:
                continue
            if self._strikes(one):
                return fault.trouble
        return None

    def for_update(self, kind: type[Twice] | type[Shuffled], chat_id: int) -> bool:
        """Whether this update (or batch) has that trouble; counts it."""
        return any(
            self._strikes(one)
            for one in tuple(self._running)
            if isinstance(one.fault.trouble, kind) and one.fault.chat_id in {0, chat_id}
        )

    def shuffle(self, batch: list[int]) -> list[int]:
        """The numbers in another order than they came, if there is one."""
        mixed = self._chance.sample(batch, len(batch))
        return mixed if mixed != batch else batch[::-1]

    def _strikes(self, one: _Running) -> bool:
        if self._chance.random() >= one.fault.chance:
            return False
        if one.left is not None:
            one.left -= 1
            if one.left <= 0:
                self._running.remove(one)
        return True
