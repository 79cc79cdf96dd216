"""Values of the trade to JSON and back, exactly: every frozen dataclass, from its own type hints.

A dataclass is an object of its fields, without those that have their default; a union of dataclasses carries the
class's name under `is`; a `Decimal` is text, so that it keeps every digit; a load is `"22500 kg"` (thousandths). Text
that is kept is `[version, value]`, so that later code can tell an older form and read it.
"""

import json
from collections.abc import Callable
from dataclasses import MISSING, dataclass, fields, is_dataclass
from datetime import date, datetime, time
from decimal import Decimal
from enum import Enum
from functools import lru_cache
from types import NoneType, UnionType
from typing import Any, Generic, TypeVar, Union, get_args, get_origin, get_type_hints

from bot.faults import StoreFault
from bot.training.units import Load, Unit

VERSION = 1
"""The form that this code writes."""

T = TypeVar("T")
Json = Any
"""What `json` gives; nothing else in this project is typed so loosely."""


@dataclass(frozen=True, slots=True)
class Codec(Generic[T]):
    """How values of a type become JSON, and come back equal."""

    encode: Callable[[Any], Json]
    decode: Callable[[Json], T]

    def show_kept(self, value: T) -> str:
        """The text to keep."""
        return json.dumps([VERSION, self.encode(value)], ensure_ascii=False, separators=(",", ":"))

    def read_kept(self, text: str) -> T:
        """The value again; `StoreFault` where a newer version wrote it, or it is none of ours."""
        try:
            version, body = json.loads(text)
            if version == VERSION:
                return self.decode(body)
        except (ValueError, TypeError, KeyError, ArithmeticError) as error:
            raise StoreFault("The database holds something that can't be read.") from error
        raise StoreFault(f"The database holds data of a newer Chalkpost (form {version}): install that one.")


def codec(kind: type[T]) -> Codec[T]:
    """The codec of this dataclass; `TypeError` at the first use where one of its fields has none."""
    return _of(kind)


def _same(value: Any) -> Any:
    return value


def _show_load(load: Load) -> str:
    return f"{load.thousandths} {load.unit.value}"


@lru_cache(4096)
def _read_load(text: str) -> Load:
    thousandths, unit = text.split(" ")
    return Load(int(thousandths), Unit(unit))


_PLAIN: dict[Any, Codec[Any]] = {
    str: Codec(_same, _same),
    int: Codec(_same, _same),
    bool: Codec(_same, _same),
    Decimal: Codec(str, Decimal),
    datetime: Codec(datetime.isoformat, datetime.fromisoformat),
    date: Codec(date.isoformat, date.fromisoformat),
    time: Codec(time.isoformat, time.fromisoformat),
    Load: Codec(_show_load, _read_load),
}


_MADE: dict[Any, Codec[Any]] = {}


def _of(hint: Any) -> Codec[Any]:
    if hint not in _MADE:
        _MADE[hint] = _make(hint)
    return _MADE[hint]


def _make(hint: Any) -> Codec[Any]:
    if hint in _PLAIN:
        return _PLAIN[hint]
    origin = get_origin(hint)
    if origin is tuple:
        return _tuple(get_args(hint))
    if origin in (Union, UnionType):
        return _union(get_args(hint))
    if isinstance(hint, type) and issubclass(hint, Enum):
        return Codec(lambda value: value.value, hint)
    if isinstance(hint, type) and is_dataclass(hint):
        return _record(hint)
    raise TypeError(f"{hint!r} can't be kept")


def _tuple(args: tuple[Any, ...]) -> Codec[Any]:
    if len(args) == 2 and args[1] is ...:
        one = _of(args[0])
        if one.encode is _same:
            return Codec(list, tuple)
        encode = one.encode
        return Codec(lambda value: [encode(v) for v in value], _sharing(one.decode))
    each = tuple(_of(arg) for arg in args)
    return Codec(
        lambda value: [c.encode(v) for c, v in zip(each, value, strict=True)],
        lambda body: tuple([c.decode(v) for c, v in zip(each, body, strict=True)]),
    )


def _sharing(decode: Callable[[Json], Any]) -> Callable[[Json], Any]:
    """Reads a list in which neighbours are often the same, as sets are: equal ones are read once, and shared."""

    def decode_all(body: Json) -> tuple[Any, ...]:
        read: list[Any] = []
        last = None
        for v in body:
            if read and v == last:
                read.append(read[-1])
            else:
                read.append(decode(v))
                last = v
        return tuple(read)

    return decode_all


def _union(args: tuple[Any, ...]) -> Codec[Any]:
    kinds = [arg for arg in args if arg is not NoneType]
    inner = _of(kinds[0]) if len(kinds) == 1 else _tagged(kinds)
    if len(kinds) == len(args):
        return inner
    encode, decode = inner.encode, inner.decode
    return Codec(
        lambda value: None if value is None else encode(value), lambda body: None if body is None else decode(body)
    )


def _tagged(kinds: list[Any]) -> Codec[Any]:
    by_kind = {kind: _record(kind) for kind in kinds}
    by_name = {kind.__name__: by_kind[kind] for kind in kinds}
    return Codec(
        lambda value: {"is": type(value).__name__, **by_kind[type(value)].encode(value)},
        lambda body: by_name[body["is"]].decode({k: v for k, v in body.items() if k != "is"}),
    )


def _record(kind: type[Any]) -> Codec[Any]:
    hints = get_type_hints(kind)
    parts = [(f.name, _of(hints[f.name]), _default(f)) for f in fields(kind)]
    decoders = {name: part.decode for name, part, _ in parts if part.decode is not _same}

    def encode(value: Any) -> Json:
        body = {}
        for name, part, default in parts:
            field = getattr(value, name)
            if default is MISSING or field != default:
                body[name] = part.encode(field)
        return body

    def decode(body: Json) -> Any:
        return kind(**{name: decoders[name](v) if name in decoders else v for name, v in body.items()})

    return Codec(encode, decode)


def _default(field: Any) -> Any:
    """The value that needs no writing; a default of another type that merely compares equal is none."""
    if field.default is not MISSING:
        return field.default
    return MISSING if field.default_factory is MISSING else field.default_factory()
