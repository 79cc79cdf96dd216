"""Our bot as a process of its own: everything durable. `python -m tests.bench.ours URL DATABASE_URL DATA_DIR TURN`.

TURN is `echo` (a turn that says the words back) or `real` (the talks).
"""

import asyncio
import signal
import sys
from pathlib import Path

from pydantic import SecretStr

from bot.app import running
from bot.dialogue.desk import Desk
from bot.dialogue.incoming import Incoming, Typed
from bot.dialogue.turn import NOTHING, Turn
from bot.runtime.logs import set_up_logs
from bot.saying import Say, line
from bot.settings import Settings
from tests.bench.traffic import TOKEN


def echo(_: Desk, incoming: Incoming) -> Turn:
    """Says it back."""
    if isinstance(incoming, Typed):
        return Turn(says=(Say(incoming.chat, (line("invite-link", link=incoming.text),)),))
    return NOTHING


async def run(url: str, database: str, data: Path, turn: str) -> None:
    """Until it is ended."""
    settings = Settings(
        token=SecretStr(TOKEN),
        api_url=url,
        database_url=database,
        data_dir=data,
        pace_per_s=1_000_000,
        pace_per_chat_s=1_000_000,
        pace_burst=1_000,
    )
    async with running(settings, answer=echo if turn == "echo" else None) as bot:
        for sign in (signal.SIGTERM, signal.SIGINT):
            asyncio.get_running_loop().add_signal_handler(sign, bot.stop)
        await bot.wait()


if __name__ == "__main__":
    set_up_logs(as_json=True, level="warning")
    asyncio.run(run(sys.argv[1], sys.argv[2], Path(sys.argv[3]), sys.argv[4]))
