"""The catalogue's file read: what a row leaves out comes from its pattern and its equipment."""

import tomllib
from importlib.resources import files

from bot.training.catalogue_exercise import Exercise
from bot.training.catalogue_terms import Equipment, Joint, Muscle, Pattern, WarmUp
from bot.training.plan import LoadStyle, Measure

_Table = dict[str, object]

ROW_KEYS = frozenset(
    {
        *("name", "aliases", "equipment", "also", "style", "sides", "measure", "muscles", "muscles_indirect"),
        *("joints_also", "setup_s", "warmup", "stretch", "common", "demanding", "share"),
    }
)
GROUP_KEYS = frozenset({"muscles", "muscles_indirect", "joints", "small", "sides", "measure", "exercises"})


def read_exercises() -> tuple[Exercise, ...]:
    """Every exercise of `catalogue.toml`, in its order. `ValueError` on a word that is none of its terms."""
    data: _Table = tomllib.loads(files("bot.training").joinpath("catalogue.toml").read_text(encoding="utf-8"))
    return tuple(
        _exercise(data, Pattern(pattern), _table(group, pattern), _table(row, pattern))
        for pattern, group in _table(data["patterns"], "patterns").items()
        for row in _list(_table(group, pattern), "exercises")
    )


def _exercise(data: _Table, pattern: Pattern, group: _Table, row: _Table) -> Exercise:
    unknown = (row.keys() - ROW_KEYS) | (group.keys() - GROUP_KEYS)
    if unknown:
        raise ValueError(f"{row.get('name')}: unknown {', '.join(sorted(unknown))}")
    equipment = Equipment(str(row["equipment"]))
    size = "_small" if group.get("small") else ""
    by_equipment = {key: _table(data[key], key).get(equipment) for key in ("style", "joints")}
    both = {**group, **row}
    joints = (*_texts(group, "joints"), *_texts(by_equipment, "joints"), *_texts(row, "joints_also"))
    share = row.get("share")
    return Exercise(
        name=str(row["name"]),
        aliases=_texts(row, "aliases"),
        pattern=pattern,
        equipment=equipment,
        also=tuple(Equipment(word) for word in _texts(row, "also")),
        load_style=LoadStyle(str(row.get("style", by_equipment["style"]))),
        sides=_number(both.get("sides", 1)),
        measure=Measure(str(both.get("measure", Measure.REPS))),
        muscles=tuple(Muscle(word) for word in _texts(both, "muscles")),
        muscles_indirect=tuple(Muscle(word) for word in _texts(both, "muscles_indirect")),
        joints=frozenset(Joint(word) for word in joints),
        setup_s=_number(row.get("setup_s", _table(data[f"setup{size}"], "setup")[equipment])),
        warmup=WarmUp(str(row.get("warmup", _table(data[f"warmup{size}"], "warmup")[equipment]))),
        stretches=bool(row.get("stretch", False)),
        common=bool(row.get("common", False)),
        demanding=bool(row.get("demanding", False)),
        share=float(share) if isinstance(share, (int, float)) else None,
    )


def _table(value: object, where: str) -> _Table:
    if not isinstance(value, dict):
        raise ValueError(f"{where}: a table is expected")
    return value


def _list(table: _Table, key: str) -> list[object]:
    value = table.get(key) or []
    if not isinstance(value, list):
        raise ValueError(f"{key}: a list is expected")
    return value


def _texts(table: _Table, key: str) -> tuple[str, ...]:
    return tuple(str(word) for word in _list(table, key))


def _number(value: object) -> int:
    if not isinstance(value, int):
        raise ValueError(f"{value!r}: a whole number is expected")
    return value
