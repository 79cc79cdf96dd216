"""For every test: which browser drives the pages stands in the log."""

from typing import Protocol

from hypothesis import settings

from tests.tryout.browser import show_browser

settings.register_profile("here", deadline=None)
settings.load_profile("here")


class Terminal(Protocol):
    """What is used of pytest's reporter."""

    def write_line(self, line: str) -> None:
        """A line of the summary."""
        ...


def pytest_terminal_summary(terminalreporter: Terminal) -> None:
    """Says which browser was used."""
    terminalreporter.write_line(show_browser())
