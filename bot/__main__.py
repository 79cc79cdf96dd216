"""`python -m bot` and `chalkpost`: the command line. Each command's module is loaded only when it is called."""

import sys

from bot.cli import chalkpost
from bot.faults import ChalkpostFault


def main() -> None:
    """Runs the command; a fault ends with one plain sentence and exit code 2."""
    try:
        chalkpost(prog_name="chalkpost")
    except ChalkpostFault as fault:
        sys.stderr.write(f"{fault}\n")
        sys.exit(2)


if __name__ == "__main__":
    main()
