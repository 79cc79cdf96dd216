"""A stand-in of the Bot API on loopback, with the people who talk to the bot. Imports nothing else of the project.

From a test, in ten lines:

    standin = StandIn(clock, Limits(pace=None))        # clock: anything with now() -> aware datetime
    standin.add_bot("42:TESTTOKEN", username="chalk_bot")
    standin.add_person(7, "Mina", language="en", zone="Europe/Berlin")
    await standin.start()                              # a free port; gives .base_url and .base_file_url
    mina = standin.seat(7)
    mina.start("c_payload")                            # the bot gets /start c_payload
    hello = await mina.wait_for("Welcome")             # the bot's first message with that in it, edits included
    query = mina.tap(hello.id, "Yes, go on")           # a button by label, number or (row, column)
    assert await mina.wait_answer(query) == ""         # what the bot answered to the tap
    standin.faults.add(Fault(CutAfter(), method="sendMessage", times=1))
    await standin.stop()

`standin.record.calls` holds every call the bots made, `standin.news` what happened to wait for it, and the same people
can be driven over HTTP under `/people` and `/control` (see `control`). A bot in another process only needs the address.
`seat.bot.updates.push_raw({...})` gives the bot any update, however hostile.
"""

from bot.tryout.standin.clock import Clock
from bot.tryout.standin.faults import (
    CutAfter,
    CutBefore,
    Delay,
    Fault,
    Faults,
    ServerError,
    Shuffled,
    SlowAnswer,
    TooMany,
    Twice,
)
from bot.tryout.standin.house import Bot, House
from bot.tryout.standin.limits import Limits, PaceLimits
from bot.tryout.standin.model import Chat, Message, Person
from bot.tryout.standin.record import Call, Record
from bot.tryout.standin.seat import Seat
from bot.tryout.standin.server import StandIn, Wing
from bot.tryout.standin.sight import CantDo, show_line

__all__ = [
    "Bot", "Call", "CantDo", "Chat", "Clock", "CutAfter", "CutBefore", "Delay", "Fault", "Faults", "House", "Limits",
    "Message", "PaceLimits", "Person", "Record", "Seat", "ServerError", "Shuffled", "SlowAnswer", "StandIn", "TooMany",
    "Twice", "Wing", "show_line",
]  # fmt: skip
