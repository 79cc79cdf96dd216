"""What is wrong with a file, a row or a cell: a key of the words, what was found and what to write instead."""

from dataclasses import dataclass, replace
from enum import StrEnum

from bot.saying import Line, line

LONGEST_FOUND = 60
"""Characters of a cell that a problem shows."""
LONGEST_WRITE = 200
"""Characters of what to write instead."""


class Fault(StrEnum):
    """What can be wrong. The words of each are `sheets-<its value>` with `found` and `write` as arguments."""

    # the file
    EMPTY = "empty"
    TOO_LARGE = "too-large"
    WRONG_NAME = "wrong-name"
    NOT_AS_NAMED = "not-as-named"
    NO_SHEET = "no-sheet"
    OLD_FORM = "old-form"
    OTHER_FORM = "other-form"
    LOCKED = "locked"
    MACROS = "macros"
    PICTURES = "pictures"
    OBJECTS = "objects"
    DAMAGED = "damaged"
    SWOLLEN = "swollen"
    ENTITIES = "entities"
    TOO_DEEP = "too-deep"
    TOO_MANY_ROWS = "too-many-rows"
    TOO_MANY_COLUMNS = "too-many-columns"
    TOO_MANY_CELLS = "too-many-cells"
    TOO_MUCH_TEXT = "too-much-text"
    CELL_TOO_LONG = "cell-too-long"
    ENCODING = "encoding"
    QUOTES = "quotes"
    # the layout
    NO_HEADINGS = "no-headings"
    NO_COLUMN = "no-column"
    COLUMN_TWICE = "column-twice"
    COLUMN_UNKNOWN = "column-unknown"
    SHEET_UNKNOWN = "sheet-unknown"
    SHEET_TWICE = "sheet-twice"
    HIDDEN = "hidden"
    NO_ROWS = "no-rows"
    # any cell
    FORMULA = "formula"
    ERROR_VALUE = "error-value"
    TOO_LONG = "too-long"
    BLANK = "blank"
    DATE = "date"
    CLOCK = "clock"
    NOT_A_CHOICE = "not-a-choice"
    NOT_A_NUMBER = "not-a-number"
    OUT_OF_RANGE = "out-of-range"
    NOT_A_RANGE = "not-a-range"
    BACKWARDS = "backwards"
    NOT_EFFORT = "not-effort"
    BARE_EFFORT = "bare-effort"
    NOT_A_LOAD = "not-a-load"
    NO_UNIT = "no-unit"
    NOT_A_REST = "not-a-rest"
    BARE_REST = "bare-rest"
    NOT_A_PERCENT = "not-a-percent"
    BARE_SHARE = "bare-share"
    NOT_A_TEMPO = "not-a-tempo"
    NOT_A_LINK = "not-a-link"
    NOT_WEEKS = "not-weeks"
    # rows and what they make together
    NO_WORKOUT_YET = "no-workout-yet"
    NO_EXERCISE_YET = "no-exercise-yet"
    EXERCISE_UNKNOWN = "exercise-unknown"
    EXERCISE_STRANGE = "exercise-strange"
    EXERCISE_MISSING = "exercise-missing"
    EXERCISE_APART = "exercise-apart"
    WORKOUT_APART = "workout-apart"
    DIFFERS = "differs"
    MEASURES_DIFFER = "measures-differ"
    NOTHING_TO_LOAD = "nothing-to-load"
    HALF_A_DROP = "half-a-drop"
    HALF_MINIS = "half-minis"
    BOTH_FINISHES = "both-finishes"
    WORKOUT_NOT_HERE = "workout-not-here"
    EXERCISE_NOT_HERE = "exercise-not-here"
    NO_CHANGE = "no-change"
    NAMED_TWICE = "named-twice"
    MUSCLE_UNKNOWN = "muscle-unknown"
    MUSCLE_IDLE = "muscle-idle"
    TOO_MANY = "too-many"
    AND_MORE = "and-more"


@dataclass(frozen=True, slots=True)
class Problem:
    """One thing that is wrong, and where. `row` is the number that a spreadsheet program shows; `sheet` is empty where
    it is the programme's own.

    `found` is what stands there (shortened), `write` what would be right, or names to choose from. Where it does not
    stop, the programme can be taken all the same, and the coach should know.
    """

    fault: Fault
    found: str = ""
    write: str = ""
    sheet: str = ""
    row: int | None = None
    column: str = ""
    stops: bool = True

    def at(self, sheet: str, row: int | None = None, column: str = "") -> "Problem":
        """The same, standing there."""
        return replace(self, sheet=sheet, row=row, column=column)

    @property
    def what(self) -> Line:
        """What is wrong, without where."""
        found, write = _short(self.found, LONGEST_FOUND), _short(self.write, LONGEST_WRITE)
        return line(f"sheets-{self.fault.value}", found=found, write=write)

    def line(self) -> Line:
        """What is wrong with its place before it."""
        match bool(self.sheet), self.row, bool(self.column):
            case _, None, _:
                return line("sheets-at-sheet", sheet=self.sheet, what=self.what) if self.sheet else self.what
            case False, row, False:
                return line("sheets-at-row", row=str(row), what=self.what)
            case True, row, False:
                return line("sheets-at-sheet-row", sheet=self.sheet, row=str(row), what=self.what)
            case False, row, _:
                return line("sheets-at-cell", row=str(row), column=self.column, what=self.what)
            case _, row, _:
                place = {"sheet": self.sheet, "row": str(row), "column": self.column}
                return line("sheets-at-sheet-cell", what=self.what, **place)


def _short(text: str, most: int) -> str:
    return text if len(text) <= most else text[:most] + "…"


class Refused(Exception):
    """Within this room only: reading stops here, and `open_book` answers with the problem."""

    def __init__(self, fault: Fault, found: str = "", write: str = "") -> None:
        super().__init__(fault.value)
        self.problem = Problem(fault, found, write)
