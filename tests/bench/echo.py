"""The client library's own way to echo: its stock application, nothing kept. `python -m tests.bench.echo URL`."""

import sys
from typing import Any

from telegram import Update
from telegram.ext import Application, ContextTypes, MessageHandler, filters

from tests.bench.traffic import TOKEN


async def echo(update: Update, _: ContextTypes.DEFAULT_TYPE) -> None:
    """Says it back."""
    if update.message is not None and update.message.text is not None:
        await update.message.reply_text(update.message.text)


def main(url: str, *, at_once: int) -> None:
    """Until it is ended."""
    builder = Application.builder().token(TOKEN).base_url(f"{url}/bot")
    app: Application[Any, Any, Any, Any, Any, Any] = builder.concurrent_updates(at_once).build()  # Any: its own
    app.add_handler(MessageHandler(filters.TEXT, echo))
    app.run_polling(poll_interval=0, timeout=10)


if __name__ == "__main__":
    main(sys.argv[1], at_once=int(sys.argv[2]))
