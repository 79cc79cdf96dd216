"""The browser that the page's tests drive: Chromium, found on the machine."""

import os
import shutil
import subprocess

NAMES = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable")
QUIET = [
    "--disable-gpu",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--no-first-run",
]


def find_browser() -> str:
    """The path in CHALKPOST_CHROMIUM, else /usr/bin/chromium, else the first of the known names on the PATH."""
    named = os.getenv("CHALKPOST_CHROMIUM")
    found = [path for path in (named, "/usr/bin/chromium", *map(shutil.which, NAMES)) if path and os.path.exists(path)]
    if not found:
        raise FileNotFoundError("no Chromium here: install it, or name its path in CHALKPOST_CHROMIUM")
    return found[0]


def browser_args() -> list[str]:
    """How it is started: quiet, and without its sandbox when run by root, which it would refuse."""
    return [*QUIET, *(["--no-sandbox"] if os.geteuid() == 0 else [])]


def show_browser() -> str:
    """One line for the test log: which browser, and its version."""
    try:
        path = find_browser()
    except FileNotFoundError as error:
        return f"browser for the page tests: {error}"
    told = subprocess.run([path, "--version"], capture_output=True, text=True, check=False, timeout=60)
    return f"browser for the page tests: {path}, {told.stdout.strip() or 'version not told'}"
