"""Pain as somebody reported it. Never a diagnosis."""

from dataclasses import dataclass

from bot.training.report import Side


@dataclass(frozen=True, slots=True)
class PainSaid:
    """Pain as a client said it.

    `where` is the plainest singular noun used, lower case, without the side; `None` where no place was said.
    `score` is out of ten, `None` where none was said. `urgent` marks what no coach should wait on.
    """

    where: str | None
    score: int | None
    side: Side | None
    urgent: bool
