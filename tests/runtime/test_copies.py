"""Copies of what is kept: the workbook as other people's tools read it, parts of a large practice, beside the bot."""

import io
import re
import threading
import zipfile
from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from openpyxl import load_workbook

from bot.runtime.copies import tables
from bot.runtime.copies.book import MOST_ROWS, Cell, Sheet, write_book
from bot.runtime.copies.pack import copier, pack
from bot.saying import Copy, Wanted
from bot.training.facts import ConsentWithdrawn, QuestionAsked
from bot.wording.bundle import words
from storage.copies import scope_of
from storage.engine import Store
from tests.store import practice
from tests.store.practice import NOW, keep
from tests.store.test_erasure import fill
from tests.talks.opened import Opened

# --- the workbook (ECMA-376), read by openpyxl

TEXTS = st.text(st.characters(exclude_categories=["Cs"]), max_size=40)
NUMBERS = st.integers(-(10**12), 10**12) | st.decimals(-(10**6), 10**6, places=3)
CELLS = st.none() | TEXTS | NUMBERS


def read_back(content: bytes) -> dict[str, list[tuple[object, ...]]]:
    """Every sheet's rows, formulas as formulas."""
    loaded = load_workbook(io.BytesIO(content))
    return {sheet.title: [tuple(row) for row in sheet.iter_rows(values_only=True)] for sheet in loaded.worksheets}


def as_read(value: Cell) -> object:
    """What a reader gives for a cell: no control characters (XML 1.0, section 2.2), one kind of line end (2.11)."""
    if isinstance(value, str):
        clean = re.sub("[^\t\n\r\x20-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]", "\ufffd", value)
        return re.sub("\r\n?", "\n", clean) or None
    return None if value is None else float(value)


@settings(max_examples=60, deadline=None)
@given(st.lists(st.tuples(CELLS, CELLS, CELLS), max_size=8))
def test_whatever_is_written_is_read_back_and_nothing_is_a_formula(rows: list[tuple[Cell, ...]]) -> None:
    out = io.BytesIO()
    assert write_book(out, [Sheet("One & <two>", ("a", "b", "c"), rows)]) == len(rows)
    ((heading, *found),) = read_back(out.getvalue()).values()
    assert heading == ("a", "b", "c")
    assert len(found) == len(rows)
    for row, back in zip(rows, found, strict=True):
        for value, cell in zip(row, back, strict=True):
            shown = float(cell) if isinstance(cell, int | float) else cell
            assert shown == as_read(value) or (isinstance(value, str) and value.strip() == "")
    with zipfile.ZipFile(out) as packed:
        assert not any(b"<f>" in packed.read(name) for name in packed.namelist())


@pytest.mark.parametrize("sign", ["=", "+", "-", "@", "\t", "\r"])
def test_what_begins_like_a_formula_is_a_quoted_text(sign: str) -> None:
    """Also where somebody edits the cell."""
    out = io.BytesIO()
    write_book(out, [Sheet("S", ("a", "b"), [(f"{sign}1+1", "1+1")])])
    quoted, plain = load_workbook(io.BytesIO(out.getvalue()))["S"][2]
    assert (quoted.data_type, plain.data_type) == ("s", "s")
    assert (bool(quoted.quotePrefix), bool(plain.quotePrefix)) == (True, False)


def test_more_rows_than_a_sheet_takes_go_on_in_another() -> None:
    """The number is smaller here; the real one is below what readers take."""
    assert MOST_ROWS < 1_048_576
    out = io.BytesIO()
    sheets = [Sheet("S", ("n",), [(n,) for n in range(7)]), Sheet("T", ("n",), [])]
    assert write_book(out, sheets, most_rows=3) == 7
    found = read_back(out.getvalue())
    assert {name: len(rows) - 1 for name, rows in found.items()} == {"S": 3, "S 2": 3, "S 3": 1, "T": 0}
    assert [row[0] for rows in list(found.values())[:3] for row in rows[1:]] == list(range(7))


def test_a_long_text_is_cut_where_readers_cut() -> None:
    out = io.BytesIO()
    write_book(out, [Sheet("S", ("a",), [("x" * 40_000,)])])
    assert len(str(read_back(out.getvalue())["S"][1][0])) <= 32_767


def test_every_heading_has_its_words() -> None:
    """All those that a sheet may have."""
    keys = {name for name in words()._messages if name.startswith("copy-col-")}
    used = " ".join((tables.PEOPLE, tables.SESSIONS, tables.SETS, tables.PAINS, tables.WORDS, tables.NOTES))
    used += f" id name {tables.PROGRAMMES} {tables.STRENGTH}"
    assert {f"copy-col-{name}" for name in used.split()} == keys


# --- a practice


def a_practice(store: Store, clients: int) -> list[str]:
    """A coach with so many clients, one of whom has withdrawn."""
    with store.begin() as work:
        practice.coach(work)
        practice.coach(work, id="coach-two", chat=78, name="Coach Wilhelmina")
        ids = fill(work, clients)
        fill(work, 2, of="coach-two", first=900)
        keep(work, ConsentWithdrawn(ids[0]))
    return ids


def test_a_large_practice_comes_in_parts_that_hold_everybody_once(store: Store) -> None:
    ids = a_practice(store, 6)
    make = copier(store, lambda: NOW, facts_a_part=60)
    wanted: Wanted | None = Wanted(Copy.PRACTICE, "coach-one")
    seen: list[str] = []
    parts = 0
    while wanted is not None:
        made = make(wanted)
        assert made is not None
        copy = Opened(made.content)
        parts += 1
        told = copy.json("about")
        assert (told["part"], told["is_last"]) == (parts, made.following is None)
        assert ("json/coach.json" in copy.names()) == (parts == 1)
        assert f"part {parts}" in copy.read("README.txt").decode()
        mine = [row["Client"] for row in copy.sheet("People")]
        assert {row["Client"] for row in copy.sheet("Sets")} == set(mine)
        assert len(copy.clients()) == len(mine)
        seen += mine
        wanted = made.following
    assert parts > 2
    assert seen == ids[1:], "and not who has withdrawn"


def test_each_done_set_stands_once_beside_what_was_asked(store: Store) -> None:
    a_practice(store, 2)
    made = copier(store, lambda: NOW)(Wanted(Copy.OWN, "client-001"))
    assert made is not None
    copy = Opened(made.content)
    rows = copy.sheet("Sets")
    kept = copy.json("client-1")["sets"]
    assert len(rows) == len(kept) == 6 * 6
    assert {(r["Planned load"], r["Load"], r["Unit"], r["Done"], r["Rest (s)"]) for r in rows} == {
        (100, 100, "kg", 5, 180)
    }
    sessions = copy.sheet("Sessions")
    assert [(s["Sets planned"], s["Work sets done"], s["Ended"]) for s in sessions] == [(6, 6, "finished")] * 6
    assert sessions[0]["First report"].endswith("+01:00")
    assert Decimal(str(rows[0]["Load"])) == 100


def test_nobody_is_made_a_copy_of(store: Store) -> None:
    make = copier(store, lambda: NOW)
    assert make(Wanted(Copy.OWN, "nobody")) is None
    assert make(Wanted(Copy.PRACTICE, "nobody")) is None


def test_the_bot_goes_on_while_a_copy_is_made(store: Store) -> None:
    """Each write during it is committed before the copy is done, and is not in it."""
    a_practice(store, 2)
    written = threading.Event()

    def write() -> None:
        with store.begin() as work:
            keep(work, QuestionAsked("client-001", "m-late", "in the middle of it"))
        written.set()

    with store.reading() as reader:
        scope = scope_of(reader, Wanted(Copy.OWN, "client-001"))
        assert scope is not None
        thread = threading.Thread(target=write)
        thread.start()
        assert written.wait(20), "a writer was held up by a reader"
        thread.join()
        assert "in the middle of it" not in Opened(pack(reader, scope, part=1, now=NOW)).everything()
    made = copier(store, lambda: NOW)(Wanted(Copy.OWN, "client-001"))
    assert made is not None
    assert "in the middle of it" in Opened(made.content).everything()
