"""Weeks off: what they cost, and how it comes back."""

GRACE_WEEKS = 2.0
"""Weeks off without loss: McMaster et al. 2013 (Sports Med 43:367-384), Bosquet et al. 2013 (Scand J Med Sci Sports
23:e140-e149): clear from about the third week."""
LOSS_A_WEEK = 0.0075
"""Share of strength lost a week from then to the eighth, half of it later, won back twice as fast: our reading of the
same two reviews, no published rate."""


def loss_of(off_weeks: float) -> float:
    """The ln share of strength that so many weeks beyond the grace take; after a year more nothing more."""
    first = min(off_weeks, 6.0)
    return LOSS_A_WEEK * (first + 0.5 * (min(off_weeks, 58.0) - first))


def won_back(lost: float, weeks: float) -> float:
    """How much of what was lost comes back in so many weeks."""
    return min(lost, 2 * LOSS_A_WEEK * min(weeks, GRACE_WEEKS))
