"""The whole behind a choice in numbers and in words, for `chalkpost next --explain`."""

from decimal import Decimal

from bot.cli.shapes import show_number
from bot.training.explain import Explained
from bot.training.progress import NextLoads
from bot.training.tracked import Weighed
from bot.training.units import KG_PER_LB, Load, Unit
from bot.wording import show


def show_explained(whole: Explained, found: NextLoads, unit: Unit) -> dict[str, object]:
    """`band` (95 %) in the unit, `chances` of the loads around the chosen one, `aside`, and `text` for reading."""
    return {
        "band": None
        if whole.least_kg is None or whole.most_kg is None
        else [_round(whole.least_kg, unit), _round(whole.most_kg, unit)],
        "chances": [
            {
                "load": show_number(w.load.amount),
                "lands": round(w.chances.lands, 3),
                "over": round(w.chances.over, 3),
                "easy": round(w.chances.easy, 3),
            }
            for w in whole.rows
        ],
        "aside": None
        if whole.aside is None
        else {"date": whole.aside.day.isoformat(), "load": _round(whole.aside.load_kg, unit), "reps": whole.aside.reps},
        "text": _text(whole, found, unit),
    }


def _text(whole: Explained, found: NextLoads, unit: Unit) -> list[str]:
    if whole.estimate is None or whole.least_kg is None or whole.most_kg is None:
        return [show("loads-explain-none")]
    lines = [
        show(
            "loads-explain-estimate",
            mean=_decimal(whole.estimate.mean_kg, unit),
            least=_decimal(whole.least_kg, unit),
            most=_decimal(whole.most_kg, unit),
            unit=unit.value,
        )
    ]
    if whole.rows and whole.plan is not None and whole.place is not None:
        span = f"{whole.plan.reps.low}-{whole.plan.reps.high}"
        target = whole.plan.rir if whole.plan.rir is not None else Decimal(2)
        lines.append(show("loads-explain-set", set=whole.place + 1, range=span, left=target))
        lines += [_chance(w, chosen=w.load == found.sets[0].load) for w in whole.rows]
    if whole.aside is not None:
        load = Load.of(_decimal(whole.aside.load_kg, unit), unit)
        lines.append(show("loads-explain-aside", reps=whole.aside.reps, load=load, day=whole.aside.day))
    return lines


def _chance(weighed: Weighed, *, chosen: bool) -> str:
    chance = weighed.chances
    return show(
        "loads-explain-chosen" if chosen else "loads-explain-chance",
        load=weighed.load,
        lands=round(100 * chance.lands),
        over=round(100 * chance.over),
        easy=round(100 * chance.easy),
    )


def _round(kg: float, unit: Unit) -> float:
    return round(kg if unit is Unit.KG else kg / float(KG_PER_LB), 2)


def _decimal(kg: float, unit: Unit) -> Decimal:
    return Decimal(repr(_round(kg, unit)))
