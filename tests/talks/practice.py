"""A small practice to talk in: who is there, and how they got there."""

from dataclasses import dataclass

from bot.cli.tryout import Rehearsal
from bot.tryout.practice.people import ADA, COACH, Player
from bot.tryout.practice.stage import Stage
from bot.tryout.standin import Message

MONDAY = "2027-01-11"
TUESDAY = "2027-01-12"
THURSDAY = "2027-01-14"
FRIDAY = "2027-01-15"


@dataclass(slots=True)
class Practice:
    """The stage, with what a talk asks of it again and again."""

    held: Rehearsal
    stage: Stage

    async def coach_joins(self) -> None:
        """The operator's link, the clock, the digest's hour."""
        await self.stage.start(COACH, self.held.coach_payload)
        await self.stage.say(COACH, "Europe/Dublin")
        await self.stage.say(COACH, "07:00")

    async def invite(self) -> str:
        """The payload of a new invitation."""
        await self.stage.say(COACH, "/invite")
        return self.stage.link_payload(COACH)

    async def ada_joins(self) -> None:
        """Seven answers, typed."""
        await self.joins(ADA, "Ada", "kg", "Europe/Berlin", "mon thu 18:00")

    async def joins(self, who: Player, name: str, unit: str, zone: str, days: str) -> None:
        """Somebody joins with an ordinary gym and nothing that speaks for caution."""
        await self.stage.start(who, await self.invite())
        for answer in ("yes", name, unit, zone, days):
            await self.stage.say(who, answer)
        await self.stage.tap(who, "An ordinary gym")
        await self.stage.tap(who, "Nothing that I know of")

    async def given(self, name: str = "Ada") -> None:
        """The coach gives the sample programme."""
        await self.stage.tap(COACH, f"Sample programme for {name}")

    async def monday(self) -> None:
        """Until Ada's first session is there: squat and press, loads to be found."""
        await self.stage.until(ADA, f"{MONDAY} 18:00")

    def card(self, who: Player = ADA) -> Message:
        """The newest card: the message that counts sets."""
        cards = [m for m in self.stage.seat(who).messages() if m.by_bot and "· about" in m.words.text]
        return cards[-1]

    def text(self, who: Player = ADA) -> str:
        """The bot's newest message."""
        return self.stage.seat(who).last().words.text

    def labels(self, message: Message) -> list[str]:
        """The buttons under a message."""
        return [b.label for row in (message.inline.rows if message.inline else ()) for b in row]

    def reactions(self, message: int, who: Player = ADA) -> tuple[str, ...]:
        """The bot's reactions to a message."""
        return self.stage.seat(who).message(message).reactions
