"""The bot as a process to be killed (see `tests.crash.nest`): settings as ever, and turns that can be audited.

Each message typed leaves a fact (a client's question, its words and its message) and one answer with the same words;
each sheet sent is fetched and read, leaves a fact of its name, and a file comes back with the same words beside it;
each rule that comes due leaves a fact and a reminder. So every effect has one name.
"""

import asyncio
import signal

from bot.app import running
from bot.dialogue.desk import Desk
from bot.dialogue.incoming import Due, Incoming, MediaSent, SheetRead, Typed
from bot.dialogue.turn import NOTHING, Turn
from bot.runtime.logs import set_up_logs
from bot.saying import Fetch, Say, SayFile, line
from bot.settings import read_settings
from bot.training.facts import QuestionAsked


def answer(desk: Desk, incoming: Incoming) -> Turn:
    """The turn for it."""
    client = desk.client
    match incoming:
        case Typed() if client is not None:
            fact = QuestionAsked(client.profile.id, f"m{incoming.message}", incoming.text)
            return Turn((fact,), (Say(incoming.chat, (line("invite-link", link=incoming.text),)),))
        case MediaSent() if client is not None:
            fetch = Fetch(incoming.chat, incoming.file, incoming.message, incoming.file_name, "test", 1_000)
            return Turn(says=(fetch,))
        case SheetRead(chat, message, _, name) if client is not None:
            words = name.removesuffix(".csv")
            fact = QuestionAsked(client.profile.id, f"m{message}", words)
            return Turn((fact,), (SayFile(chat, name, b"read", (line("invite-link", link=words),)),))
        case Due() if client is not None:
            name = f"due {incoming.whose} {incoming.due_at:%d %H:%M}"
            fact = QuestionAsked(client.profile.id, f"t{incoming.due_at:%d%H%M}", name)
            return Turn((fact,), (Say(client.profile.chat, (line("invite-link", link=name),)),))
        case _:
            return NOTHING


async def main() -> None:
    """Until it is told to stop, or killed."""
    async with running(read_settings(), answer=answer) as bot:
        for sign in (signal.SIGTERM, signal.SIGINT):
            asyncio.get_running_loop().add_signal_handler(sign, bot.stop)
        await bot.wait()


def run() -> int:
    """Runs it; the exit code."""
    set_up_logs(as_json=True, level="error")
    asyncio.run(main())
    return 0
