"""Rows of terms in whole numbers, and HiGHS to say whether they can all hold at once.

HiGHS: Huangfu and Hall 2018, Parallelizing the dual revised simplex method, Math. Prog. Comp. 10:119-142.
One thread and a fixed seed, so that the same rows are solved in the same way.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field

import highspy
import numpy as np
from numpy.typing import NDArray

Term = tuple[int, float]
"""A column and its factor."""
Values = NDArray[np.float64]
"""The columns' values."""


@dataclass(slots=True)
class Programme:
    """Columns with bounds, rows of terms with bounds. Filled by `column` and `row`."""

    low: list[float] = field(default_factory=list)
    high: list[float] = field(default_factory=list)
    whole: list[bool] = field(default_factory=list)
    row_low: list[float] = field(default_factory=list)
    row_high: list[float] = field(default_factory=list)
    terms: list[tuple[Term, ...]] = field(default_factory=list)

    def column(self, low: float, high: float, *, whole: bool = True) -> int:
        """A new column; its number."""
        self.low.append(low)
        self.high.append(high)
        self.whole.append(whole)
        return len(self.low) - 1

    def row(self, terms: Sequence[Term], *, least: float = -highspy.kHighsInf, most: float = highspy.kHighsInf) -> None:
        """The sum of the terms lies between `least` and `most`. Terms of the same column are added up."""
        total: dict[int, float] = {}
        for column, factor in terms:
            total[column] = total.get(column, 0.0) + factor
        self.row_low.append(least)
        self.row_high.append(most)
        self.terms.append(tuple(total.items()))


@dataclass(frozen=True, slots=True)
class Impossible:
    """It is proven that the rows can't all hold."""


@dataclass(frozen=True, slots=True)
class Unknown:
    """The time ran out."""


def satisfy(programme: Programme, *, limit_s: float) -> Values | Impossible | Unknown:
    """Values with which all rows hold.

    A no is asked for twice, the second time of the rows as they stand: simplifying them first, HiGHS 1.15.1 was seen to
    call rows impossible that hold (`tests/training/test_week_exact.py` has them).
    """
    found, seconds = _solve(programme, (), limit_s)
    if isinstance(found, Impossible):
        found, _ = _solve(programme, (), limit_s - seconds, simplify=False)
    return found


def least(programme: Programme, cost: Sequence[Term], *, limit_s: float) -> Values | Impossible | Unknown:
    """Values with which all rows hold and the sum of the cost's terms (whole numbers) is proven to be the least."""
    return _solve(programme, cost, limit_s)[0]


def _solve(
    programme: Programme, cost: Sequence[Term], limit_s: float, *, simplify: bool = True
) -> tuple[Values | Impossible | Unknown, float]:
    """What was found, and the seconds that it took."""
    solver = highspy.Highs()  # type: ignore[no-untyped-call]  # the library leaves it untyped
    solver.setOptionValue("output_flag", False)
    solver.setOptionValue("threads", 1)
    solver.setOptionValue("random_seed", 1)
    if not simplify:
        solver.setOptionValue("presolve", "off")
    solver.setOptionValue("time_limit", max(limit_s, 0.01))
    if cost:
        solver.setOptionValue("mip_rel_gap", 0.0)
        solver.setOptionValue("mip_abs_gap", 0.5)
    solver.passModel(_model(programme, cost))
    solver.run()
    match solver.getModelStatus():
        case highspy.HighsModelStatus.kInfeasible:
            return Impossible(), solver.getRunTime()
        case highspy.HighsModelStatus.kOptimal:
            return np.asarray(solver.getSolution().col_value, dtype=np.float64), solver.getRunTime()
        case _:
            return Unknown(), solver.getRunTime()


def _model(programme: Programme, cost: Sequence[Term]) -> highspy.HighsLp:
    model = highspy.HighsLp()
    model.num_col_, model.num_row_ = len(programme.low), len(programme.terms)
    costs = np.zeros(len(programme.low))
    for column, factor in cost:
        costs[column] += factor
    model.col_cost_ = costs
    model.col_lower_, model.col_upper_ = np.array(programme.low, float), np.array(programme.high, float)
    model.integrality_ = [
        highspy.HighsVarType.kInteger if whole else highspy.HighsVarType.kContinuous for whole in programme.whole
    ]
    model.row_lower_, model.row_upper_ = np.array(programme.row_low, float), np.array(programme.row_high, float)
    matrix = model.a_matrix_
    matrix.format_ = highspy.MatrixFormat.kRowwise
    lengths = [len(terms) for terms in programme.terms]
    matrix.start_ = np.concatenate(([0], np.cumsum(lengths, dtype=np.int64)))
    matrix.index_ = np.array([column for terms in programme.terms for column, _ in terms], dtype=np.int64)
    matrix.value_ = np.array([factor for terms in programme.terms for _, factor in terms], dtype=np.float64)
    return model
