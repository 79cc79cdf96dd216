"""Logs: one line a turn, send and tick, as JSON or plain, on standard error. Numbers and kinds, never people's words.

The bot's token is taken out of every line, wherever it comes from (the client library's own lines too).
"""

import logging
import re
import sys
from collections.abc import MutableMapping
from typing import Any, TextIO

import structlog

TOKEN = re.compile(r"\d{3,}:[A-Za-z0-9_-]{20,}")
"""The shape of a bot token."""

REDACTED = "<token>"

_NOISY = ("apscheduler", "telegram", "aiohttp.access", "httpx", "httpcore", "asyncio", "alembic", "matplotlib")


def set_up_logs(*, as_json: bool, level: str = "info", stream: TextIO | None = None) -> None:
    """Call once, at the start."""
    out = stream if stream is not None else sys.stderr
    shared: list[structlog.typing.Processor] = [
        structlog.contextvars.merge_contextvars,
        structlog.stdlib.add_log_level,
        structlog.stdlib.add_logger_name,
        structlog.processors.TimeStamper(fmt="iso", utc=True),
        structlog.processors.format_exc_info,
        _drop_empty,
        redact,
    ]
    structlog.configure(
        processors=[*shared, structlog.stdlib.ProcessorFormatter.wrap_for_formatter],
        logger_factory=structlog.stdlib.LoggerFactory(),
        wrapper_class=structlog.make_filtering_bound_logger(logging.getLevelNamesMapping()[level.upper()]),
        cache_logger_on_first_use=False,
    )
    shown: structlog.typing.Processor = (
        structlog.processors.JSONRenderer(ensure_ascii=False)
        if as_json
        else structlog.dev.ConsoleRenderer(colors=False, pad_event_to=12)
    )
    handler = logging.StreamHandler(out)
    handler.setFormatter(
        structlog.stdlib.ProcessorFormatter(
            foreign_pre_chain=shared,
            processors=[structlog.stdlib.ProcessorFormatter.remove_processors_meta, shown],
        )
    )
    root = logging.getLogger()
    root.handlers = [handler]
    root.setLevel(level.upper())
    for name in _NOISY:
        logging.getLogger(name).setLevel(logging.WARNING)
    logging.getLogger("apscheduler").setLevel(logging.ERROR)  # a tick that waits for the last one is no trouble
    logging.getLogger("telegram").setLevel(logging.CRITICAL)  # it would log answers whole, with people's words in them


def redact(_logger: Any, _method: str, event: MutableMapping[str, Any]) -> MutableMapping[str, Any]:  # Any: structlog
    """Takes the token out of every text in the line."""
    for key, value in event.items():
        if isinstance(value, str) and ":" in value:
            event[key] = TOKEN.sub(REDACTED, value)
        elif isinstance(value, BaseException):
            event[key] = TOKEN.sub(REDACTED, repr(value))
    return event


def _drop_empty(_logger: Any, _method: str, event: MutableMapping[str, Any]) -> MutableMapping[str, Any]:  # Any: same
    for key in [key for key, value in event.items() if value is None]:
        del event[key]
    return event
