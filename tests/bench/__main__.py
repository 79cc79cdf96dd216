"""`python -m tests.bench NAME [...]`: speed and memory, each beside a plain baseline in the same run, with ratios."""

import sys
from importlib import import_module
from importlib.util import find_spec
from pathlib import Path

FOLDER = Path(__file__).parent


def names() -> list[str]:
    """The benches there are: the modules here that have a `main(argv)`."""
    return sorted(
        p.stem for p in FOLDER.glob("*.py") if "def main(" in p.read_text(encoding="utf-8") and p.stem[0] != "_"
    )


def run(argv: list[str]) -> int:
    """Runs the bench of that name."""
    if not argv or argv[0] not in names() or find_spec(f"tests.bench.{argv[0]}") is None:
        sys.stderr.write(f"usage: python -m tests.bench NAME [...]; NAME is one of: {', '.join(names())}\n")
        return 2
    module = import_module(f"tests.bench.{argv[0]}")
    return int(module.main(argv[1:]) or 0)


if __name__ == "__main__":
    sys.exit(run(sys.argv[1:]))
