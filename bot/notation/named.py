"""Closed sets of names that are looked up a hundred thousand times a message, as cheaply as can be."""


class Named(str):
    """One of a closed set of names, told apart with `is`: a subclass names its own as `ClassVar` annotations of itself.

    It is no `Enum`: to look up a member of one costs four times as much before Python 3.12, and every mark of a message
    is asked some hundred times what it is.
    """

    __slots__ = ()

    @classmethod
    def fill(cls) -> tuple["Named", ...]:
        """Makes the names that the class announces, once, and gives them in that order."""
        made = tuple(cls(name) for name in cls.__annotations__)
        for one in made:
            setattr(cls, one, one)
        return made
