"""Programmes by spreadsheet: uploads of a whole practice, and what hostile files cost, beside a plain library load.

    python -m tests.bench sheets            all files; slow where the baseline is
    python -m tests.bench sheets --ours     without the baseline
    python -m tests.bench sheets --no-goals no exit status for missed goals

Each file is read in a process of its own: seconds of it, and its highest megabytes above what was held before.
"""

import json
import subprocess
import sys
import tempfile
import time
from collections.abc import Sequence
from pathlib import Path

from bot.sheets.problems import Problem
from bot.sheets.reading import read_programme
from bot.sheets.remarks import with_remarks
from bot.sheets.writing import example, write_programme, write_programme_csv
from bot.training.changes import changes_between
from bot.training.review import review
from tests.sheets.books import csv_of, xlsx_of
from tests.sheets.hostile import FILES

CLIENTS = 40
MOST_UPLOAD_S = 5.0
MOST_S, MOST_MB = 2.0, 100.0
PATIENCE_S = 30
ROOT = Path(__file__).parents[2]

OURS = """
import sys
from bot.sheets.reading import read_programme
from tests.sheets.books import ROW, csv_of, xlsx_of
small = xlsx_of(ROW)
read_programme(small, "a.xlsx"); read_programme(csv_of(ROW), "a.csv")
def load(data, name): read_programme(data, name)
"""
PLAIN = """
import csv, io, sys
from openpyxl import load_workbook
from tests.sheets.books import ROW, xlsx_of
def load(data, name):
    if name.endswith(".csv"):
        list(csv.reader(io.StringIO(data.decode("utf-8", "replace"))))
    else:
        book = load_workbook(io.BytesIO(data))
        [[cell.value for cell in row] for sheet in book for row in sheet]
load(xlsx_of(ROW), "a.xlsx")
"""
MEASURE = """
import gc, json, resource, time, warnings
from tests.sheets.peak import forget_peak, peak_kb
warnings.simplefilter("ignore")
data = open(sys.argv[2], "rb").read()
gc.collect()
before, start, ended = forget_peak(), time.perf_counter(), "read"
resource.setrlimit(resource.RLIMIT_AS, (6 * 2**30, 6 * 2**30))
try:
    load(data, sys.argv[1])
except BaseException as error:
    ended = type(error).__name__
print(json.dumps([time.perf_counter() - start, (peak_kb() - before) / 1024, ended]))
"""


_SLIP = ("W", "Unknown lift of many words", "x", "8-", "hard", "60", "3")
SLIPS = {
    "two thousand rows of slips": (
        "a.xlsx",
        lambda: xlsx_of(*[(f"W{n}", f"Unknown lift {n} of many words", *_SLIP[2:]) for n in range(1_990)]),
    ),
    "two thousand rows of slips in a text file": ("a.csv", lambda: csv_of(*[_SLIP] * 1_990)),
    "sixty thousand cells of thirty letters": ("a.xlsx", lambda: xlsx_of(*[["y" * 30] * 30] * 1_990)),
    "a thousand sound rows": (
        "a.csv",
        lambda: csv_of(*[(f"W{n // 80}", "Back squat", 1, "8-10", "RIR 2", "60 kg", "90 s") for n in range(1_000)]),
    ),
}
"""Files that are let in and read to the end: the dearest of them."""


def _measured(code: str, name: str, file: Path) -> tuple[float, float, str]:
    """Seconds, megabytes, how it ended; more seconds than there is patience for are told as those."""
    command = [sys.executable, "-c", code + MEASURE, name, str(file)]
    try:
        ran = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False, timeout=PATIENCE_S)
        seconds, megabytes, ended = json.loads(ran.stdout)
    except subprocess.TimeoutExpired:
        return float(PATIENCE_S), float("nan"), "stopped"
    except ValueError:
        return float("nan"), float("nan"), "died"
    return seconds, megabytes, ended


def _uploads() -> tuple[float, float]:
    """Seconds for a practice's uploads: read, compared with what the client has, looked over. Workbooks, text files."""
    before = example()
    files = [(write_programme(before), "a.xlsx"), (write_programme_csv(before), "a.csv")]
    took = []
    for data, name in files:
        start = time.perf_counter()
        for _ in range(CLIENTS):
            after, problems = read_programme(data, name)
            if after is None:
                raise ValueError(f"the example has problems: {problems}")
            changes_between(before, after)
            review(after)
        took.append(time.perf_counter() - start)
    return took[0], took[1]


def _out() -> tuple[float, float]:
    """Seconds to write a practice's programmes, and to give forty files back with remarks."""
    programme = example()
    start = time.perf_counter()
    for _ in range(CLIENTS):
        data = write_programme(programme)
    written = time.perf_counter() - start
    said = [(problem, "look at this") for problem in _some_problems()]
    start = time.perf_counter()
    for _ in range(CLIENTS):
        with_remarks(data, "a.xlsx", said)
    return written, time.perf_counter() - start


def _some_problems() -> list[Problem]:
    _, problems = read_programme(b"Exercise,Sets,Reps\nPlank,x,8-\nPlank,y,8-\n", "a.csv")
    return list(problems)


def main(argv: Sequence[str]) -> int:
    """Prints the tables; 1 where a goal is missed."""
    workbooks, texts = _uploads()
    written, remarked = _out()
    lines = [
        f"{CLIENTS} uploads read, compared and looked over: .xlsx {workbooks:.2f} s, .csv {texts:.2f} s",
        f"{CLIENTS} programmes written: {written:.2f} s; {CLIENTS} files given back with remarks: {remarked:.2f} s",
        "",
        f"{'file':60} {'kB':>6} {'s':>6} {'MB':>6}   {'plain s':>7} {'MB':>6}  plain ended",
    ]
    worst_s = worst_mb = 0.0
    files = {**FILES, **{what: (name, make, None) for what, (name, make) in SLIPS.items()}}
    with tempfile.TemporaryDirectory() as folder:
        for what, (name, make, _) in files.items():
            file = Path(folder) / "file"
            file.write_bytes(make())
            seconds, megabytes, _ = _measured(OURS, name, file)
            worst_s, worst_mb = max(worst_s, seconds), max(worst_mb, megabytes)
            row = f"{what:60} {file.stat().st_size / 1000:6.0f} {seconds:6.2f} {megabytes:6.1f}"
            if "--ours" not in argv:
                plain_s, plain_mb, ended = _measured(PLAIN, name, file)
                row += f"   {plain_s:7.2f} {plain_mb:6.0f}  {ended}"
            lines.append(row)
    lines.append(f"worst: {worst_s:.2f} s, {worst_mb:.1f} MB (goals {MOST_S:.0f} s, {MOST_MB:.0f} MB)")
    sys.stdout.write("\n".join(lines) + "\n")
    met = max(workbooks, texts) <= MOST_UPLOAD_S and worst_s <= MOST_S and worst_mb <= MOST_MB
    return 0 if met or "--no-goals" in argv else 1
