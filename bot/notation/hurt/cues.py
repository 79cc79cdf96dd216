"""What the words of a message mean to the pain reader: the kinds of cue."""

from __future__ import annotations

from typing import ClassVar

from bot.notation.named import Named


class Cue(Named):
    """One kind of meaning that a word or a phrase can carry. The phrases stand in `bot.notation.hurt.phrases`."""

    __slots__ = ()

    # Hurt
    PAIN: ClassVar[Cue]
    HURT: ClassVar[Cue]
    PAINFUL: ClassVar[Cue]
    SHARP: ClassVar[Cue]  # a sharp, pinching, shooting or tearing hurt
    QUALITY: ClassVar[Cue]  # a quality that is a hurt only in a place
    SORE: ClassVar[Cue]  # soreness
    BURN: ClassVar[Cue]  # burning
    WHISPER: ClassVar[Cue]  # something wrong in a place
    STRAIN: ClassVar[Cue]  # an injury to a place
    INJURED: ClassVar[Cue]  # an injury, named as such
    MARK: ClassVar[Cue]  # cramp, tingling, torn skin, swelling
    JOINT_NOISE: ClassVar[Cue]  # clicking, grinding, giving way
    OUCH: ClassVar[Cue]  # a cry
    CONDITION: ClassVar[Cue]  # a named complaint
    KILLING: ClassVar[Cue]  # killing me
    WRECKED: ClassVar[Cue]  # wrecked, shot
    BECAUSE: ClassVar[Cue]  # held back by a place
    # Urgent
    TIGHT: ClassVar[Cue]  # tightness
    PRESSURE: ClassVar[Cue]  # pressure, squeezing
    FAINT: ClassVar[Cue]  # fainting or near it
    PALE: ClassVar[Cue]  # pale, ringing ears, cold sweat
    LAID_DOWN: ClassVar[Cue]  # had to lie down
    BREATHLESS: ClassVar[Cue]  # breath that does not come
    WINDED: ClassVar[Cue]  # out of breath
    HEADACHE: ClassVar[Cue]
    SEVERE: ClassVar[Cue]
    SUDDEN: ClassVar[Cue]
    NUMB: ClassVar[Cue]  # numbness
    NO_FEELING: ClassVar[Cue]  # can't feel a place
    DEAD: ClassVar[Cue]
    WEAK: ClassVar[Cue]  # weakness
    NO_STRENGTH: ClassVar[Cue]  # loss of strength
    LIMP: ClassVar[Cue]  # a limb that hangs, drags, lets go
    DROPS: ClassVar[Cue]  # things dropped
    DROOP: ClassVar[Cue]  # drooping, slurring
    CONTROL: ClassVar[Cue]  # loss of bladder or bowel control
    WET: ClassVar[Cue]  # wet clothes
    UNNOTICED: ClassVar[Cue]  # without noticing
    SADDLE: ClassVar[Cue]  # saddle region
    POP: ClassVar[Cue]  # a pop
    NO_FUNCTION: ClassVar[Cue]  # loss of function
    GAVE_WAY: ClassVar[Cue]
    SWOLLEN: ClassVar[Cue]  # swelling
    THICK: ClassVar[Cue]  # thicker than it was
    HOT: ClassVar[Cue]  # heat, redness
    URINE: ClassVar[Cue]
    DARK: ClassVar[Cue]  # dark colour
    LOOKS: ClassVar[Cue]  # looks like
    HEART_RACE: ClassVar[Cue]  # heart racing
    PALPITATION: ClassVar[Cue]  # palpitations
    SETTLE: ClassVar[Cue]  # does not settle
    BLOOD: ClassVar[Cue]  # blood from within
    GRAVE: ClassVar[Cue]  # grave by itself
    VISION: ClassVar[Cue]  # loss of sight
    SWEAT: ClassVar[Cue]  # sweat, nausea
    PREGNANT: ClassVar[Cue]  # pregnancy
    BLEED: ClassVar[Cue]  # bleeding, contractions
    BOTH_LEGS: ClassVar[Cue]
    # Scopes
    NOT: ClassVar[Cue]  # negation
    CONTRAST: ClassVar[Cue]
    NEUTRAL: ClassVar[Cue]  # everyday talk
    GONE: ClassVar[Cue]
    FINE: ClassVar[Cue]  # fine now
    PAST: ClassVar[Cue]  # before today
    LONG_AGO: ClassVar[Cue]
    NOW: ClassVar[Cue]  # today, now, in the session
    IF: ClassVar[Cue]  # hypothetical
    FUTURE: ClassVar[Cue]  # to come
    OTHER: ClassVar[Cue]  # somebody else
    SELF: ClassVar[Cue]  # the client
    LAUGH: ClassVar[Cue]  # laughter
    EFFORT: ClassVar[Cue]  # effort talk
    TRAINED: ClassVar[Cue]  # after training
    STOPPED: ClassVar[Cue]  # had to stop
    GOOD: ClassVar[Cue]  # fine
    LITTLE: ClassVar[Cue]  # a little
    GOVERNS: ClassVar[Cue]  # what another score is of
    ABOUT: ClassVar[Cue]  # about (a number)


Cue.fill()
