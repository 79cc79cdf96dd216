"""Less time today: what remains of a session, cut to fit the minutes in the order in which a coach would cut.

The order. Each step begins only when the one before has given all that it has:

1. Sets of optional work (priority 3, where something matters more) are left out: as few as will do.
2. With all of them gone, opposite exercises are paired and second sets turned into a drop or mini sets: the fewest
   turned, then the fewest pairs.
3. Sets of the lower priorities are left out: as few as will do, then the fewest turned and paired beside them.
4. With all of these gone, sets of the highest priority are left out: the fewest heavy first sets (of exercises that
   have none behind them; heavy is what rests for three minutes), then the fewest other first sets, then the fewest of
   the others, then the fewest turned and paired.

Among equal ways the sets that stand later in the plan go first. So no set of a higher priority is lost while one of a
lower stays, and more minutes never keep less, counted in this order. Of the first step that holds the minutes the best
way is found, and proven, by a solver (`week_solver`): an option for each exercise or pair, one row for the time.
"""

from collections.abc import Collection, Sequence
from dataclasses import replace
from decimal import Decimal

from bot.training.pace import Pace
from bot.training.session import Session
from bot.training.shorten_options import Choice, Keep, Option, Stage, option_of, options_of
from bot.training.shorten_plan import told
from bot.training.shorten_values import OPTIONAL, Allowed, Rest, Shortened, what_remains
from bot.training.timing import GENERAL_WARMUP_S
from bot.training.week_solver import Impossible, Programme, Term, Unknown, least

TIME_LIMIT_S = 1.0
"""Seconds that the solver may take for a question; it takes a few hundredths."""


def shorten(
    session: Session,
    minutes: Decimal,
    *,
    allowed: Allowed | None = None,
    pace: Pace | None = None,
    limit_s: float = TIME_LIMIT_S,
) -> Shortened:
    """What remains of the session, cut to at most these minutes at the client's pace (nobody's where none is given).

    Where not even one first set of what matters most fits, the first one stays alone and `fits` is false.
    """
    allowed, pace = allowed or Allowed(), pace or Pace()
    remaining = what_remains(session)
    begun = frozenset(p.exercise for p in session.done)
    general_s = GENERAL_WARMUP_S if remaining and not begun else 0
    room_s, proven = int(minutes * 60) - general_s, True
    chosen: list[Option] = []
    for stage in _stages(remaining):
        options = list(options_of(remaining, stage, allowed=allowed, pace=pace, begun=begun))
        match _best(remaining, options, room_s, limit_s=limit_s):
            case Impossible():
                continue
            case Unknown():
                proven, chosen = False, _plain(options, room_s)
            case found:
                chosen = found
                break
    fits = not remaining or any(choice.exercise.sets for option in chosen for choice in option.choices)
    if not fits:
        chosen = [_first_set(remaining, pace=pace, begun=begun)]
    return replace(told(session, remaining, chosen, general_s=general_s), fits=fits, proven=proven)


def _stages(remaining: Sequence[Rest]) -> list[Stage]:
    """The steps of the order, from everything kept."""
    priorities = sorted({rest.exercise.priority for rest in remaining})
    if not priorities:
        return []
    top, lower = priorities[0], [p for p in priorities[1:] if p < OPTIONAL]
    optional = [p for p in priorities[1:] if p >= OPTIONAL]

    def stage(of_top: Keep, of_lower: Keep, of_optional: Keep, *, trades: bool) -> Stage:
        keep = [(top, of_top), *((p, of_lower) for p in lower), *((p, of_optional) for p in optional)]
        return Stage(tuple(keep), trades)

    return [
        stage(Keep.ALL, Keep.ALL, Keep.SOME, trades=False),
        stage(Keep.ALL, Keep.ALL, Keep.NONE, trades=True),
        *([stage(Keep.ALL, Keep.SOME, Keep.NONE, trades=True)] if lower else []),
        stage(Keep.SOME, Keep.NONE, Keep.NONE, trades=True),
    ]


def _best(
    remaining: Sequence[Rest], options: Sequence[Option], room_s: int, *, limit_s: float
) -> list[Option] | Impossible | Unknown:
    """The best options, one for each exercise, within these seconds."""
    programme = Programme()
    columns = [programme.column(0, 1) for _ in options]
    for rest in remaining:
        programme.row(
            [(c, 1) for c, o in zip(columns, options, strict=True) if rest.place in o.places], least=1, most=1
        )
    programme.row(_terms(columns, [option.seconds for option in options]), most=room_s)
    lost = _terms(columns, _losses(remaining, options))
    values = least(programme, lost, limit_s=limit_s)
    if isinstance(values, Impossible | Unknown):
        return values
    programme.row(lost, most=sum(round(float(values[column])) * factor for column, factor in lost))
    better = least(programme, _terms(columns, _changes(remaining, options)), limit_s=limit_s)
    if isinstance(better, Impossible | Unknown):
        return Unknown()
    return [option for option, column in zip(options, columns, strict=True) if better[column] > 0.5]


def _losses(remaining: Sequence[Rest], options: Sequence[Option]) -> list[int]:
    """Sets lost; heavy first sets of the highest priority count more than all other first sets, and these than all."""
    top = min(rest.exercise.priority for rest in remaining)
    weight = 1 + sum(len(rest.exercise.sets) for rest in remaining)

    def lost(choice: Choice) -> int:
        if not choice.loses_top or choice.rest.exercise.priority != top:
            return choice.lost
        return choice.lost + (weight * weight if choice.rest.is_heavy else weight)

    return [sum(map(lost, option.choices)) for option in options]


def _changes(remaining: Sequence[Rest], options: Sequence[Option]) -> list[int]:
    """Sets turned, then pairs, then how early in the plan the lost sets stand."""
    places = 1 + max(rest.place for rest in remaining)
    paired = 1 + sum(len(rest.exercise.sets) * places for rest in remaining)
    turned = paired * (1 + len(remaining))
    return [
        turned * option.turned
        + paired * option.paired
        + sum(choice.lost * (places - choice.rest.place) for choice in option.choices)
        for option in options
    ]


def _terms(columns: Sequence[int], factors: Sequence[int]) -> list[Term]:
    return [(column, factor) for column, factor in zip(columns, factors, strict=True) if factor]


def _plain(options: Sequence[Option], room_s: int) -> list[Option]:
    """Where the solver had no time: exercise by exercise, what matters most first, as much of each as still fits."""
    kept: list[Option] = []
    alone = [o for o in options if len(o.choices) == 1 and not o.turned]
    for place in sorted({o.choices[0].rest.place for o in alone}, key=lambda p: (_priority(alone, p), p)):
        left_s = room_s - sum(o.seconds for o in kept)
        fitting = [o for o in alone if o.choices[0].rest.place == place and o.seconds <= left_s]
        kept += sorted(fitting, key=lambda o: o.choices[0].lost)[:1]
    return kept


def _priority(options: Sequence[Option], place: int) -> int:
    return next(o.choices[0].rest.exercise.priority for o in options if o.choices[0].rest.place == place)


def _first_set(remaining: Sequence[Rest], *, pace: Pace, begun: Collection[str]) -> Option:
    """The first set of what matters most, alone."""
    rest = min(remaining, key=lambda r: (r.exercise.priority, r.place))
    alone = replace(rest.exercise, sets=rest.exercise.sets[:1])
    return option_of((Choice(rest, alone, len(rest.exercise.sets) - 1, False),), pace=pace, begun=begun)
