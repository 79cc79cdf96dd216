"""A client's own pace, learnt from the times between reports: how their seconds relate to those of the prescription.

Two factors: `within` an exercise (sets and the rests between them) and `between` exercises (changing stations, setting
up, warming up). Each is believed as a normal distribution of its ln, and moved once a session by what the session
showed (a filter of one number: Kalman 1960, J Basic Eng 82:35-45, with a step of its own between sessions).

What a session showed is the weighted mean of its intervals, the far ones drawn near to their median, so that a pause or
a set typed late moves it little (Huber 1964, Ann Math Stat 35:73-101). An interval counts where two reports of one work
set each follow each other as planned. Reports of several sets at once, of corrections and of other sets than the next
say nothing of pace. Where a set was typed far too soon after the one before it, that one was typed late, so neither
interval counts; nor does one so long that there was a pause.
"""

import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from itertools import pairwise
from math import exp, log, sqrt

from bot.training.facts import Reported
from bot.training.plan import PlannedExercise
from bot.training.report import SetKey, Stage
from bot.training.timing import SessionTime, Step, session_time

VERSION = 1
"""Of the kept text; another one is refused."""
WITHIN_SD, BETWEEN_SD = 0.25, 0.40
"""How far people's ln pace lies from the prescription's before anything is seen: two in three within 25 and 40 %. Ours,
no source, as are the other numbers here."""
DRIFT_SD = 0.04
"""How far a pace wanders from session to session."""
DAY_SD = 0.08
"""How far a day's pace lies from the client's own: a full room, a day in a hurry."""
INTERVAL_SD = 0.30
"""Of a single interval about the day's pace. Half of its square stands between the mean of such seconds, which a whole
session adds up, and the mean of their ln."""
NEAR = 0.4
"""Intervals farther (in ln) from their median are taken for this far."""
FEWEST_WITHIN, FEWEST_BETWEEN = 3, 2
"""Intervals that a session must have to say anything."""
SOON, LATE = 0.40, 2.5
"""Shares of what is believed: below, a set was typed late; above, there was a pause."""


@dataclass(frozen=True, slots=True)
class Told:
    """When a report was made (aware UTC; of an edited message, when it was first sent) and the work sets in it."""

    at: datetime
    sets: tuple[SetKey, ...]

    @classmethod
    def of(cls, report: Reported, at: datetime) -> "Told":
        """What a report says of pace: both sides of a set are one; a correction says nothing."""
        if report.replaces:
            return cls(at, ())
        work = (p for p in report.sets if p.stage is Stage.WORK and p.set is not None)
        return cls(at, tuple(dict.fromkeys((p.exercise, p.set or 0) for p in work)))


@dataclass(frozen=True, slots=True)
class Trait:
    """A factor on seconds: mean and standard deviation of its ln."""

    mean: float
    sd: float

    @property
    def factor(self) -> float:
        """How many seconds they take for one that is prescribed."""
        return exp(self.mean)


@dataclass(frozen=True, slots=True)
class Pace:
    """What is kept of a client's pace: the two factors, and how many sessions showed something of it."""

    within: Trait = Trait(0.0, WITHIN_SD)
    between: Trait = Trait(0.0, BETWEEN_SD)
    sessions: int = 0

    @property
    def is_known(self) -> bool:
        """Whether anything of it was seen, so that minutes may be called theirs."""
        return self.sessions > 0

    def seconds(self, steps: Iterable[Step]) -> float:
        """These steps at this pace."""
        return sum(_within(s) * self.within.factor + _between(s) * self.between.factor for s in steps)

    def minutes(self, time: SessionTime) -> int:
        """A session at this pace, in whole minutes, halves up; the general warm-up takes what it takes."""
        return int((time.general_s + self.seconds(time.steps)) / 60 + 0.5)

    def to_json(self) -> str:
        """The pace as text, for keeping; `from_json` gives it back to the last bit."""
        flat = (self.within.mean, self.within.sd, self.between.mean, self.between.sd)
        return json.dumps({"v": VERSION, "pace": flat, "n": self.sessions}, separators=(",", ":"))

    @classmethod
    def from_json(cls, text: str) -> "Pace":
        """The pace kept as text. `ValueError` where the text is none."""
        try:
            kept = json.loads(text)
            if kept["v"] != VERSION:
                raise ValueError(f"kept pace of version {kept['v']}")
            a, b, c, d = map(float, kept["pace"])
            return cls(Trait(a, b), Trait(c, d), int(kept["n"]))
        except (KeyError, TypeError) as error:
            raise ValueError("no kept pace") from error


def pace_after(before: Pace, exercises: Sequence[PlannedExercise], told: Iterable[Told]) -> Pace:
    """The pace after a session of these exercises and these reports, in the order in which they were made."""
    seen = _intervals(session_time(exercises), _paired(exercises), told, before)
    drifted = replace(before, within=_wandered(before.within), between=_wandered(before.between))
    within = _moved(drifted.within, [i for i in seen if not i.is_between], FEWEST_WITHIN)
    at_pace = within.factor
    changes = [i.without_sets(at_pace) for i in seen if i.is_between]
    between = _moved(drifted.between, [i for i in changes if i.took_s > 0], FEWEST_BETWEEN)
    if (within, between) == (drifted.within, drifted.between):
        return before
    return Pace(within, between, before.sessions + 1)


@dataclass(frozen=True, slots=True)
class _Interval:
    """Seconds from one report to the next, and those prescribed within an exercise and between two."""

    took_s: float
    within_s: int
    between_s: int = 0
    counts: bool = True

    @property
    def is_between(self) -> bool:
        return self.between_s > 0

    def ratio(self, pace: Pace) -> float:
        """What it took as a share of what it would at this pace."""
        return self.took_s / (self.within_s * pace.within.factor + self.between_s * pace.between.factor)

    def without_sets(self, factor: float) -> "_Interval":
        """The part of it between the exercises."""
        return _Interval(self.took_s - self.within_s * factor, 0, self.between_s)


def _intervals(time: SessionTime, paired: frozenset[str], told: Iterable[Told], pace: Pace) -> list[_Interval]:
    spans = _spans(time, paired)
    ordered = sorted(told, key=lambda t: t.at)
    found = [_between_reports(spans, one, other) for one, other in pairwise(ordered)]
    ratios = [None if interval is None else interval.ratio(pace) for interval in found]
    typed_late = {n + gone for n, ratio in enumerate(ratios) if ratio is not None and ratio < SOON for gone in (-1, 0)}
    return [
        interval
        for n, (interval, ratio) in enumerate(zip(found, ratios, strict=True))
        if interval is not None and interval.counts and ratio is not None and n not in typed_late and ratio <= LATE
    ]


def _between_reports(spans: Mapping[tuple[SetKey, SetKey], _Interval], one: Told, other: Told) -> _Interval | None:
    if len(one.sets) != 1 or len(other.sets) != 1 or (one.sets[0], other.sets[0]) not in spans:
        return None
    return replace(spans[one.sets[0], other.sets[0]], took_s=(other.at - one.at).total_seconds())


def _spans(time: SessionTime, paired: frozenset[str]) -> dict[tuple[SetKey, SetKey], _Interval]:
    """What is prescribed from each set to the next.

    Into the first sets of a pair only the set itself is sure, since either half may be set up before both: such an
    interval doesn't count, but it can be too short.
    """
    spans: dict[tuple[SetKey, SetKey], _Interval] = {}
    for one, other in pairwise(time.steps):
        unsure = bool(_between(other)) and other.exercise in paired
        spans[(one.exercise, one.set), (other.exercise, other.set)] = (
            _Interval(0.0, other.work_s, counts=False) if unsure else _Interval(0.0, _within(other), _between(other))
        )
    return spans


def _moved(trait: Trait, seen: list[_Interval], fewest: int) -> Trait:
    """The trait after a session's intervals of its kind; as it was where there are too few."""
    if len(seen) < fewest:
        return trait
    logs = sorted((log(i.took_s / (i.within_s + i.between_s)), i.within_s + i.between_s) for i in seen)
    middle = _median(logs)
    whole = sum(weight for _, weight in logs)
    shown = sum(min(max(value, middle - NEAR), middle + NEAR) * weight for value, weight in logs) / whole
    alike = whole**2 / sum(weight**2 for _, weight in logs)
    variance = DAY_SD**2 + INTERVAL_SD**2 / alike
    gain = trait.sd**2 / (trait.sd**2 + variance)
    return Trait(trait.mean + gain * (shown + INTERVAL_SD**2 / 2 - trait.mean), trait.sd * sqrt(1 - gain))


def _median(weighted: list[tuple[float, int]]) -> float:
    """The value at which half of the weight is reached."""
    half, sum_to = sum(weight for _, weight in weighted) / 2, 0
    for value, weight in weighted:
        sum_to += weight
        if sum_to >= half:
            return value
    return weighted[-1][0]


def _wandered(trait: Trait) -> Trait:
    return replace(trait, sd=sqrt(trait.sd**2 + DRIFT_SD**2))


def _within(step: Step) -> int:
    return step.rest_s + step.work_s + step.finish_s + step.change_s


def _between(step: Step) -> int:
    return step.setup_s + step.warmup_s


def _paired(exercises: Sequence[PlannedExercise]) -> frozenset[str]:
    """Exercises done in turn with others: when they are set up is not known."""
    pairs = [e.pair for e in exercises if e.pair]
    return frozenset(e.name for e in exercises if pairs.count(e.pair) > 1)
