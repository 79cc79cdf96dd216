"""Log lines: one JSON object each, never with the token in it, from our own loggers and from the libraries'."""

import io
import json
import logging
from collections.abc import Iterator

import pytest
import structlog

from bot.runtime.logs import set_up_logs

TOKEN = "123456789:AAHdqTcvCH1vGWJxfSeofSAs0K5PALDsaw"


@pytest.fixture
def out() -> Iterator[io.StringIO]:
    """A stream that takes the logs while the test runs."""
    root = logging.getLogger()
    handlers, level = root.handlers[:], root.level
    stream = io.StringIO()
    set_up_logs(as_json=True, stream=stream)
    yield stream
    root.handlers[:], root.level = handlers, level
    structlog.reset_defaults()


def test_a_line_is_an_object_with_what_is_known(out: io.StringIO) -> None:
    """Empty fields are left out."""
    structlog.get_logger("turn").info("turn", update=4, skipped=None)
    line = json.loads(out.getvalue())
    assert (line["event"], line["update"], line["level"], line["logger"]) == ("turn", 4, "info", "turn")
    assert "skipped" not in line
    assert line["timestamp"].endswith("Z")


def test_the_token_is_in_no_line(out: io.StringIO) -> None:
    """Neither in ours, nor in a library's, nor in an exception's."""
    structlog.get_logger("a").warning(f"POST /bot{TOKEN}/getMe", url=f"http://x/bot{TOKEN}/y", error=OSError(TOKEN))
    logging.getLogger("lib").error("GET /bot%s/getUpdates", TOKEN)
    try:
        raise ValueError(TOKEN)
    except ValueError:
        logging.getLogger("lib").exception("trouble")
    lines = [json.loads(line) for line in out.getvalue().splitlines()]
    assert len(lines) == 3
    assert TOKEN not in out.getvalue()
    assert "<token>" in lines[1]["event"]


def test_chatter_of_the_libraries_is_left_out(out: io.StringIO) -> None:
    """Only their warnings are of interest."""
    logging.getLogger("apscheduler.executors.default").info("Running job")
    logging.getLogger("httpx").info("HTTP Request")
    assert out.getvalue() == ""
