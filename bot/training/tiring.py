"""How sets tire: the share of repetitions that a set costs the next one at the same load."""

from bot.training.plan import PlannedSet

REST_COST = ((30, 0.35), (60, 0.25), (90, 0.17), (120, 0.125), (180, 0.065), (300, 0.03))
"""Seconds of rest, and the share of repetitions that a set to failure costs the next: our reading of trials that keep
8 to 12 repetitions by cutting the load 5 to 10 % a set with short rest; no published table."""

USUAL_REST_S = 150

EASY_LEFT = 4.0
"""With this many repetitions left a set costs nothing; half of it costs half (the same reading)."""


def rest_cost(rest_s: int | None) -> float:
    """The cost after a set to failure, linear between the table's rows."""
    rest = USUAL_REST_S if rest_s is None else rest_s
    before = REST_COST[0]
    for row in REST_COST:
        if rest <= row[0]:
            span = row[0] - before[0]
            return row[1] if span == 0 else before[1] + (row[1] - before[1]) * (rest - before[0]) / span
        before = row
    return before[1]


def tired_by(plan: PlannedSet | None, *, left: float) -> float:
    """What a set with `left` repetitions left adds to the day's fatigue (about the share of repetitions lost)."""
    return rest_cost(plan.rest_s if plan is not None else None) * max(0.0, 1 - left / EASY_LEFT)
