"""How much of a file is looked at. A programme is a few hundred rows; what is far beyond that is no programme.

With these, the worst file that is let in costs about a second and some tens of megabytes (`tests/bench/sheets.py`).
"""

MOST_FILE_BYTES = 5_000_000
"""A file as it comes. A programme of two hundred rows is some 30 kB."""
MOST_PARTS = 500
"""Files within a workbook's zip."""
MOST_DIRECTORY_BYTES = 200_000
"""The zip's directory."""
MOST_UNPACKED_BYTES = 24_000_000
"""All parts of a workbook together, unpacked, as its directory says (it is not believed: see the next)."""
MOST_READ_BYTES = 8_000_000
"""Unpacked bytes of the parts that are read."""
MOST_ELEMENTS = 400_000
"""XML elements in all parts that are read."""
MOST_DEPTH = 40
"""XML elements within one another; a worksheet needs seven."""
MOST_ROWS = 2_000
"""The last row that may hold something."""
MOST_COLUMNS = 100
"""The last column that may hold something."""
MOST_CELLS = 60_000
"""Cells that hold something, all sheets together."""
MOST_TEXT = 2_000_000
"""Characters in all cells together."""
LONGEST_CELL = 32_767
"""Characters that a cell can hold in the spreadsheet programs themselves (common practice, no source)."""
MOST_SHEETS = 100
MOST_LINES = 20_000
"""Line breaks in a text file, those within cells counted."""
