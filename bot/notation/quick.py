"""Values that are made by the thousand a message."""

from dataclasses import dataclass, field
from typing import TypeVar, dataclass_transform

Made = TypeVar("Made")


@dataclass_transform(frozen_default=True, field_specifiers=(field,))
def quick(made: type[Made]) -> type[Made]:
    """A frozen dataclass to the type check, and as such to be used; made in a seventh of the time.

    At run time nothing watches that it stays as it is: to set the fields of one that does takes a call for each.
    """
    return dataclass(slots=True, unsafe_hash="__hash__" not in vars(made))(made)
