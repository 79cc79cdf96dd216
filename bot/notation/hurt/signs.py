"""Urgent signs: what no coach should wait on, whether it hurts or not.

The kinds of sign follow published lists. Chest pain or pressure, fainting and dizziness, breathlessness and
palpitations: the table of major signs and symptoms in the ACSM Guidelines, and Thompson et al. 2007 (MSSE
39:886-897).
Saddle numbness, loss of bladder or bowel control, weakness of the legs: British Association of Spine Surgeons
2018. The
sudden worst headache, the drooping face, the hot swollen calf and dark urine: public health campaigns, from
memory. The
clients' words for them are our own gathering.
"""

from collections.abc import Callable, Iterator

from bot.notation.hurt.passage import Passage
from bot.notation.hurt.sign import Sign
from bot.notation.hurt.signs_faint import fainting
from bot.notation.hurt.signs_feeling import dead_limb, no_feeling, numbness
from bot.notation.hurt.signs_heart import chest, heart, spread, winded
from bot.notation.hurt.signs_injury import bears_nothing, blood_and_urine, calf, grave, loss_of_function, popped
from bot.notation.hurt.signs_limb import hanging, unable
from bot.notation.hurt.signs_nerve import control, headache, stroke
from bot.notation.hurt.signs_strength import no_strength, weakness
from bot.notation.hurt.signs_told import told_signs

_RULES: tuple[Callable[[Passage], Iterator[Sign]], ...] = (
    chest,
    fainting,
    winded,
    heart,
    spread,
    headache,
    numbness,
    no_feeling,
    dead_limb,
    weakness,
    no_strength,
    hanging,
    unable,
    stroke,
    control,
    popped,
    loss_of_function,
    bears_nothing,
    calf,
    blood_and_urine,
    grave,
    told_signs,
)


def find_signs(scene: Passage) -> list[Sign]:
    """Every urgent sign that stands; of those that hang on a doubted word only the well supported."""
    return [s for rule in _RULES for s in rule(scene) if s.doubts == 0 or (s.doubts == 1 and s.solid)]
