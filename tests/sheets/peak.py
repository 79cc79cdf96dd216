"""The highest memory that this process held since it was last asked to forget: Linux, proc(5).

`ru_maxrss` would not do: it outlives the start of another program, so that a child begins with its parent's peak.
"""

from pathlib import Path


def forget_peak() -> int:
    """Begin anew; kB held now."""
    Path("/proc/self/clear_refs").write_text("5", encoding="ascii")
    return _status("VmRSS")


def peak_kb() -> int:
    """The highest since, in kB."""
    return _status("VmHWM")


def _status(key: str) -> int:
    lines = Path("/proc/self/status").read_text(encoding="ascii", errors="replace").splitlines()
    return next(int(line.split()[1]) for line in lines if line.startswith(f"{key}:"))
