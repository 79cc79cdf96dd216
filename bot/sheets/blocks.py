"""A row of the sheet Programme as a block of like sets."""

from dataclasses import dataclass
from functools import partial

from bot.sheets.cells import read_percent, read_percents, read_text, read_whole
from bot.sheets.prescriptions import (
    read_effort,
    read_load,
    read_reps,
    read_seconds,
    read_seconds_span,
    read_tempo,
    unit_of,
)
from bot.sheets.problems import Fault, Problem
from bot.sheets.table import Row
from bot.sheets.taking import Taking
from bot.training.plan import Drop, Finish, Measure, Mini, PlannedSet
from bot.training.units import Unit

MOST_SETS = 20
"""Sets of a row."""
LONGEST_SET_CUE = 200
MOST_DROPS = 5
MOST_MINI_REPS = 20


@dataclass(frozen=True, slots=True)
class Block:
    """Like sets, how many, and what their repetitions count where the row says so."""

    planned: PlannedSet
    times: int
    measure: Measure | None


def read_block(taking: Taking, row: Row, unit: Unit | None) -> Block | None:
    """The block; `None` where something is wrong, which is noted. Every cell is looked at in any case."""
    before = sum(problem.stops for problem in taking.problems)
    heading = taking.headed.heading
    times = taking.need(row, "sets", partial(read_whole, low=1, high=MOST_SETS, example="3"), "3")
    counted = taking.need(row, "reps", read_reps, "8-10")
    rir = taking.take(row, "effort", partial(read_effort, heading=heading("effort")))
    load = taking.take(row, "load", partial(read_load, unit=unit_of(heading("load")) or unit))
    rest_s = taking.take(row, "rest", partial(read_seconds, heading=heading("rest")))
    percent = taking.take(row, "percent", partial(read_percent, low=1, high=100, example="85 %"))
    tempo = taking.take(row, "tempo", read_tempo)
    cue = taking.take(row, "set_cue", partial(read_text, most=LONGEST_SET_CUE))
    finish = _finish(taking, row)
    is_sound = sum(problem.stops for problem in taking.problems) == before
    if times is None or counted is None or not is_sound:
        return None
    planned = PlannedSet(counted.reps, rir, load, rest_s, finish, percent, tempo, cue or "")
    return Block(planned, times, counted.measure)


def _finish(taking: Taking, row: Row) -> Finish | None:
    drops = taking.take(row, "drops", partial(read_whole, low=1, high=MOST_DROPS, example="2"))
    by = taking.take(row, "drop_by", partial(read_percents, low=1, high=90, example="20-30 %"))
    reps = taking.take(row, "mini_reps", partial(read_whole, low=1, high=MOST_MINI_REPS, example="4"))
    rest = taking.take(row, "mini_rest", partial(read_seconds_span, heading="s", least_bare=1))
    has_drop, has_mini = (not all(taking.is_blank(row, key) for key in keys) for keys in (_DROP, _MINI))
    if has_drop and has_mini:
        taking.wrong(Problem(Fault.BOTH_FINISHES), row, "drops")
    elif has_drop and any(taking.is_blank(row, key) for key in _DROP):
        taking.wrong(Problem(Fault.HALF_A_DROP, "", "Drops 2, Drop by 20-30 %"), row, _blank_of(taking, row, _DROP))
    elif has_mini and any(taking.is_blank(row, key) for key in _MINI):
        taking.wrong(
            Problem(Fault.HALF_MINIS, "", "Mini sets of 4, Mini rest 3-5 s"), row, _blank_of(taking, row, _MINI)
        )
    elif by is not None and any(n != n.to_integral_value() for n in by):
        taking.wrong(Problem(Fault.NOT_A_PERCENT, f"{by[0]}-{by[1]} %", "20-30 %"), row, "drop_by")
    elif drops is not None and by is not None:
        return Drop(drops, (int(by[0]), int(by[1])))
    elif reps is not None and rest is not None:
        return Mini(reps, rest)
    return None


_DROP, _MINI = ("drops", "drop_by"), ("mini_reps", "mini_rest")


def _blank_of(taking: Taking, row: Row, keys: tuple[str, str]) -> str:
    return keys[0] if taking.is_blank(row, keys[0]) else keys[1]
