"""Bounds that many rules of the reader share: how many sets, how hard, how long. Ours, but for what names a source."""

SEVERAL = 2
"""From so many on, what is told is of several: sets, loads, names, lines."""
FEW_SETS = 6
"""Sets that are told as a count beside other numbers (`4 sets of 10`, `the last 2`): a greater number there is of
repetitions or kilograms. Short programmes prescribe at most so many of one exercise (common practice, no source)."""
MOST_SETS = 12
"""The highest number by which a set is called (`set 12`, `12. 60x5`), with those that were put in beside the plan."""
MOST_REPS = 30
"""Repetitions of a set in a list of counts, or in the plural (`all 12s`): a greater number there is a load (common
practice, no source)."""
MOST_LEFT = 5
"""Repetitions in reserve that people tell: up to 5 they guess to about one, farther from failure by more than two
(Hackett et al. 2017, J Strength Cond Res 31:2162-2168). A greater number beside `left` counts something else."""
EASIEST, HARDEST = 5, 10
"""Ratings of perceived exertion that are told of a set: 10 leaves no repetition, 5 to 6 leaves 4 to 6 (Zourdos et al.
2016, J Strength Cond Res 30:267-275)."""
MINUTE_S = 60
"""Seconds of a minute."""
EARLIEST_FAILED = 3
"""A repetition from which on `failed the 3rd` is of a repetition: an earlier one is of a set."""
