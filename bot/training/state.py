"""What is kept of a client's history on one exercise, and its text."""

import json
from dataclasses import dataclass
from datetime import date
from typing import Any

import numpy as np

from bot.training.belief import TRAITS, Belief
from bot.training.exposure import Exposure, LiftedSet, Mark
from bot.training.lifter import BODY_KG, LEVELS, REGIONS, Level, LevelFacts, RegionFacts
from bot.training.plan import LoadStyle, Region
from bot.training.report import Stage
from bot.training.sets import Feel

VERSION = 1
"""Of the kept text; another one is refused."""
SHORT, PUSHED = 0.5, 1.5
"""How sets that feel hard enough are taken to end before anything was seen: three in four are pushed on into the range;
ours, no source."""
LIGHTEST_KG = 0.5
"""Below this the whole load is treated as this: the model thinks in shares, and nothing has a share of nothing."""


@dataclass(frozen=True, slots=True)
class Estimate:
    """The 1RM of the day's mean strength, without the day's luck: mean and standard deviation in kg."""

    mean_kg: float
    sd_kg: float


@dataclass(frozen=True, slots=True)
class Doubt:
    """A set that could not be believed: ln of the strength that it would take (kg), and the day it was said.

    `open` until a later set is as expected again: while it is, a second one like it is believed.
    """

    strength: float
    day: date
    load_kg: float
    reps: int
    open: bool = True


@dataclass(frozen=True, slots=True)
class State:
    """All that is kept of a client's history on one exercise. `belief` is `None` before the first set.

    `since` is the first day, `day` the last; `lost` the ln share of strength that time off took and training has not
    brought back; `short` and `pushed` count how often a set that felt hard enough was stopped below its range, and how
    often it was pushed on into it (the first values: most push on); `last` the last two sessions; `doubt` the last set
    that was set aside; `marks` the best sets of the last six sessions.
    """

    level: Level | None
    region: Region | None
    load_style: LoadStyle
    belief: Belief | None = None
    guess: Estimate | None = None
    since: date | None = None
    day: date | None = None
    off_weeks: float = 0.0
    lost: float = 0.0
    exposures: int = 0
    short: float = SHORT
    pushed: float = PUSHED
    last: tuple[Exposure, ...] = ()
    doubt: Doubt | None = None
    marks: tuple[Mark, ...] = ()

    @property
    def facts(self) -> tuple[LevelFacts, RegionFacts]:
        """What level and region say."""
        return LEVELS[self.level], REGIONS[self.region]

    @property
    def feel(self) -> Feel:
        """How this lifter is taken to feel what is left."""
        return Feel.of(*self.facts)

    @property
    def stops_short(self) -> float:
        """The chance that a set which feels hard enough ends below its range rather than being pushed on."""
        return self.short / (self.short + self.pushed)

    @property
    def body_kg(self) -> float:
        """What of the body counts with the load."""
        return BODY_KG if self.load_style is LoadStyle.BODYWEIGHT else 0.0

    def whole_kg(self, load_kg: float) -> float:
        """The whole weight moved, never below half a kilogram."""
        return max(load_kg + self.body_kg, LIGHTEST_KG)

    def to_json(self) -> str:
        """The state as text, for keeping; `from_json` gives it back to the last bit."""
        return json.dumps(_plain(self), separators=(",", ":"))

    @classmethod
    def from_json(cls, text: str) -> "State":
        """The state kept as text. `ValueError` where the text is no state of this kind."""
        try:
            return _state(json.loads(text))
        except (KeyError, TypeError, IndexError, AttributeError) as error:
            raise ValueError("no kept strength") from error


def _plain(state: State) -> dict[str, object]:
    return {
        "v": VERSION,
        "level": state.level,
        "region": state.region,
        "style": state.load_style,
        "belief": None if state.belief is None else _flat(state.belief),
        "guess": None if state.guess is None else (state.guess.mean_kg, state.guess.sd_kg),
        "since": _show_day(state.since),
        "day": _show_day(state.day),
        "off": state.off_weeks,
        "lost": state.lost,
        "n": state.exposures,
        "ends": (state.short, state.pushed),
        "last": [
            (e.day.isoformat(), e.pain, [(s.load_kg, s.reps, s.rir, s.stage, s.set) for s in e.sets])
            for e in state.last
        ],
        "doubt": None
        if state.doubt is None
        else (
            state.doubt.strength,
            state.doubt.day.isoformat(),
            state.doubt.load_kg,
            state.doubt.reps,
            state.doubt.open,
        ),
        "marks": [(m.day.isoformat(), m.load_kg, m.reps, m.rir) for m in state.marks],
    }


def _state(kept: Any) -> State:  # the shape is checked by building it: what doesn't fit raises
    if kept["v"] != VERSION:
        raise ValueError(f"kept strength of version {kept['v']}")
    return State(
        level=None if kept["level"] is None else Level(kept["level"]),
        region=None if kept["region"] is None else Region(kept["region"]),
        load_style=LoadStyle(kept["style"]),
        belief=None if kept["belief"] is None else _belief(kept["belief"]),
        guess=None if kept["guess"] is None else Estimate(*kept["guess"]),
        since=_read_day(kept["since"]),
        day=_read_day(kept["day"]),
        off_weeks=float(kept["off"]),
        lost=float(kept["lost"]),
        exposures=int(kept["n"]),
        short=float(kept["ends"][0]),
        pushed=float(kept["ends"][1]),
        last=tuple(
            Exposure(
                date.fromisoformat(day),
                tuple(LiftedSet(load, reps, rir, Stage(stage), place) for load, reps, rir, stage, place in sets),
                pain,
            )
            for day, pain, sets in kept["last"]
        ),
        doubt=None if kept["doubt"] is None else _doubt(*kept["doubt"]),
        marks=tuple(_mark(*mark) for mark in kept.get("marks", ())),
    )


def _mark(day: str, load_kg: float, reps: int, rir: float | None) -> Mark:
    return Mark(date.fromisoformat(day), load_kg, reps, rir)


def _doubt(strength: float, day: str, load_kg: float, reps: int, still: bool) -> Doubt:
    return Doubt(strength, date.fromisoformat(day), load_kg, reps, still)


def _belief(flat: list[float]) -> Belief:
    mean = np.array(flat[:TRAITS], dtype=np.float64)
    rows, columns = np.tril_indices(TRAITS)
    cov = np.zeros((TRAITS, TRAITS))
    cov[rows, columns] = flat[TRAITS:]
    cov[columns, rows] = flat[TRAITS:]
    return Belief(mean, cov)


def _show_day(day: date | None) -> str | None:
    return None if day is None else day.isoformat()


def _read_day(text: str | None) -> date | None:
    return None if text is None else date.fromisoformat(text)


def _flat(belief: Belief) -> tuple[float, ...]:
    """Mean, then the lower triangle of the covariance row by row."""
    rows, columns = np.tril_indices(TRAITS)
    return (*map(float, belief.mean), *map(float, belief.cov[rows, columns]))
