"""Which exercise a name means: shortened, misspelt, by alias or by a gym's abbreviation.

Every word of a said name must be explained by the exercise: by a word of its name or of one alias, by an expansion, by
a synonym, by a near spelling (for words that are no word of the trade), or by what goes without saying (`barbell` on a
bar). A name that fits several is returned with all of them; one that fits none, with none.
"""

from bot.notation.names.finding import Hit, read_names
from bot.notation.names.fitting import is_misspelt, links, looser_fits, turned
from bot.notation.names.index import Index, session_index
from bot.notation.names.said import is_near_name

__all__ = [
    "Hit",
    "Index",
    "is_misspelt",
    "is_near_name",
    "links",
    "looser_fits",
    "read_names",
    "session_index",
    "turned",
]
