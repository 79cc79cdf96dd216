"""`python -m tests.bench NAME ...`: runs a measurement; without a name, lists them."""

import sys
from importlib import import_module
from pathlib import Path

HERE = Path(__file__).parent


def names() -> list[str]:
    """The modules here that have a `main(argv)`."""
    files = sorted(HERE.glob("*.py"))
    return [f.stem for f in files if not f.stem.startswith("_") and "\ndef main(" in f.read_text(encoding="utf-8")]


def run(argv: list[str]) -> int:
    """Runs the measurement named first; its exit code."""
    if not argv or argv[0] not in names():
        sys.stderr.write(f"Measurements: {', '.join(names())}.\n")
        return 2
    code = import_module(f"tests.bench.{argv[0]}").main(argv[1:])
    return code if isinstance(code, int) else 0


if __name__ == "__main__":
    sys.exit(run(sys.argv[1:]))
