"""The shape of JSON values, as the platform sends and takes them."""

from collections.abc import Mapping, Sequence
from typing import TypeAlias

JsonValue: TypeAlias = "bool | int | float | str | Sequence[JsonValue] | Mapping[str, JsonValue] | None"
JsonObject: TypeAlias = dict[str, JsonValue]
