"""Urgent signs told in any order: so many ideas within so many words of one sentence, whatever the phrase.

Where `phrases_urgent` and `phrases_effects` know turns of phrase, these rows know only what must be said: an organ,
what is wrong with it, how it is said; and the words beside which the same means something else. Gathered by us.
"""

from bot.notation.hurt.told import Told
from bot.notation.hurt.told_failing import FAILING
from bot.notation.hurt.told_faint import FAINT
from bot.notation.hurt.told_inside import INSIDE
from bot.notation.hurt.told_likened import LIKENED
from bot.notation.hurt.told_limbs import LIMBS
from bot.notation.hurt.told_passing import PASSING
from bot.notation.hurt.told_water import WATER

TOLD: tuple[Told, ...] = (*FAILING, *FAINT, *INSIDE, *LIKENED, *LIMBS, *PASSING, *WATER)
"""Every row."""
