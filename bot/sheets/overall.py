"""What a row says of the whole exercise, beside its own block of sets."""

from dataclasses import dataclass, fields, replace
from functools import partial

from bot.sheets.cells import YES_NO_WORDS, read_choice, read_name, read_text, read_text_or_none, read_whole
from bot.sheets.own import LONGEST_CUE
from bot.sheets.prescriptions import read_link, read_load, unit_of
from bot.sheets.table import Row
from bot.sheets.taking import Taking
from bot.training.plan import LoadRule, PlannedExercise, PlannedSet
from bot.training.shown import RULES
from bot.training.units import Load, Unit

LONGEST_PAIR = 10
LONGEST_NOTE = 1_000
RULE_WORDS = {shown: rule for rule, shown in RULES.items()}


@dataclass(frozen=True, slots=True)
class Overall:
    """Of the whole exercise; `None` where the row doesn't say. The fields have the columns' keys."""

    pair: str | None
    sides: bool | None
    rule: LoadRule | None
    step: Load | None
    priority: int | None
    cue: str | None
    note: str | None
    link: str | None

    def against(self, first: "Overall") -> tuple[str, ...]:
        """The columns in which this row says something else than the first one."""
        keys = [field.name for field in fields(self)]
        return tuple(k for k in keys if getattr(self, k) is not None and getattr(self, k) != getattr(first, k))

    def onto(self, known: PlannedExercise, sets: tuple[PlannedSet, ...]) -> PlannedExercise:
        """The exercise as prescribed: its definition, these sets, and what is said of the whole. A percent of the top
        set makes that the rule where none is named."""
        has_percent = any(planned.percent is not None for planned in sets)
        return replace(
            known,
            sets=sets,
            sides=known.sides if self.sides is None else 2 if self.sides else 1,
            cue=known.cue if self.cue is None else self.cue,
            pair=self.pair or "",
            load_rule=self.rule or (LoadRule.PERCENT if has_percent else LoadRule.TRACKED),
            priority=self.priority or 2,
            step=self.step,
            note=self.note or "",
            link=self.link or "",
        )


def read_overall(taking: Taking, row: Row, unit: Unit | None) -> Overall:
    """What the row says; `unit` is meant where a step has none."""
    step_unit = unit_of(taking.headed.heading("step")) or unit
    return Overall(
        pair=taking.take(row, "pair", partial(read_name, most=LONGEST_PAIR)),
        sides=taking.take(row, "sides", partial(read_choice, choices=YES_NO_WORDS)),
        rule=taking.take(row, "rule", partial(read_choice, choices=RULE_WORDS)),
        step=taking.take(row, "step", partial(read_load, unit=step_unit)),
        priority=taking.take(row, "priority", partial(read_whole, low=1, high=3, example="2")),
        cue=taking.take(row, "cue", partial(read_text_or_none, most=LONGEST_CUE)),
        note=taking.take(row, "note", partial(read_text, most=LONGEST_NOTE)),
        link=taking.take(row, "link", read_link),
    )
