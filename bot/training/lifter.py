"""What is known of lifters before any set of theirs: the numbers of the strength model, with their sources.

The model of one lifter on one exercise (all shares are natural logarithms):

    max repetitions now = 30 · slope · (strength · form / load - 1) · fatigue left

which with slope = 1 is Epley's equation, and whose slope is the lifter's own. Strength follows training
(`growth`), form is the day's, fatigue that of today's sets. What the lifter *feels* is left is `feel` times what is
left, plus noise.
"""

from dataclasses import dataclass
from enum import StrEnum
from math import log

from bot.training.plan import Region

EPLEY_REPS = 30.0
"""Repetitions for which the load falls to half of the 1RM, less one set: Epley B 1985, Poundage chart."""


class Level(StrEnum):
    """How long somebody has trained: less than half a year, up to about two, longer."""

    NOVICE = "novice"
    INTERMEDIATE = "intermediate"
    TRAINED = "trained"


@dataclass(frozen=True, slots=True)
class LevelFacts:
    """What a level says about a lifter.

    `weeks_trained`: training behind them, for the log-shaped growth S = S0·(1 + a·ln(1 + weeks)) of Steele et al. 2022,
    Res Q Exerc Sport 93 (n = 14,690). `wander`: what growth leaves out, standard deviation per square root of a week.
    `form`: standard deviation of the day's form; Banyard et al. 2017 (JSCR 31:1897-1904) 2.1 % in trained lifters,
    Grgic et al. 2020 (Sports Med Open 6:31) median 4.2 % with the test's own error in it.
    `feel_short`: how much less of what is left beginners feel, as a share. Steele et al. 2017 (PeerJ 5:e4105) finds
    experience to help, Hackett 2017, Zourdos 2021 and Remmert 2023 do not: so it is kept small.
    """

    weeks_trained: float
    wander: float
    form: float
    feel_short: float
    feel_noise: float


LEVELS: dict[Level | None, LevelFacts] = {
    Level.NOVICE: LevelFacts(weeks_trained=1.0, wander=0.010, form=0.040, feel_short=0.08, feel_noise=1.3),
    Level.INTERMEDIATE: LevelFacts(weeks_trained=52.0, wander=0.008, form=0.030, feel_short=0.0, feel_noise=1.0),
    Level.TRAINED: LevelFacts(weeks_trained=156.0, wander=0.006, form=0.022, feel_short=0.0, feel_noise=1.0),
    None: LevelFacts(weeks_trained=20.0, wander=0.008, form=0.030, feel_short=0.03, feel_noise=1.1),
}

GROWTH, GROWTH_SD = log(0.085), 0.50
"""ln a of the growth: 0.068 (Ahtiainen et al. 2016, Age 38:10) to 0.126 (Steele et al. 2022); CV about 0.5."""


@dataclass(frozen=True, slots=True)
class RegionFacts:
    """What a region says: the prior of ln slope, and how fast feeling falls short per repetition beyond eight.

    Slopes: Hoeger et al. 1990 (JSCR 4:47-54), Shimano et al. 2006 (JSCR 20:819-823), Richens & Cleather 2014
    (Biol Sport 31:157-161): leg press and squat 1.3 to 1.5 of the bench press, leg curl 0.8.
    Feel: Zourdos et al. 2021 (JSCR 35 Suppl 2:S158-S165, squat), Hackett et al. 2017 (JSCR 31:2162-2168, both).
    """

    slope: float
    slope_sd: float
    feel_fall: float


REGIONS: dict[Region | None, RegionFacts] = {
    Region.UPPER: RegionFacts(slope=log(1.0), slope_sd=0.24, feel_fall=0.020),
    Region.LOWER: RegionFacts(slope=log(1.32), slope_sd=0.26, feel_fall=0.065),
    Region.TRUNK: RegionFacts(slope=log(1.1), slope_sd=0.25, feel_fall=0.03),
    None: RegionFacts(slope=log(1.1), slope_sd=0.25, feel_fall=0.035),
}

TIRING_SD = 0.30
"""Spread of ln(how much faster than usual a lifter tires from set to set); a suggestion of ours, no published value."""
FEEL_SD = 0.08
"""Spread of a lifter's lasting bias of feel; fitted to the spreads of Zourdos 2021 and Hackett 2017, not published."""
FORM_CARRY = 0.3
"""Share of a day's form still there in the next session; a suggestion of ours, no published value."""
FIRST_SD = 0.40
"""Spread of ln strength around what a first set says, before that set is weighed: nearly nothing is known."""

BODY_KG = 65.0
"""What of the body is lifted where its weight is part of the load and not known: about 0.9 of 72 kg; no source."""
