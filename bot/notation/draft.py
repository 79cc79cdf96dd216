"""A reading in the making: the record, what is asked, and which words gave what. The rooms of `message` share it."""

from collections.abc import Sequence

from bot.notation.answer import Ask, Evidence, Meaning, Request, Source, Span
from bot.notation.atoms import Atom
from bot.notation.binding import Bound
from bot.notation.context import Context
from bot.notation.grounds import Ground, Told
from bot.notation.quick import replace
from bot.notation.ranking import Ranked, rank
from bot.notation.record import Record
from bot.notation.said import Doubt
from bot.notation.script import Folded
from bot.notation.tokens import Mark
from bot.training.report import Performed, SetKey
from bot.training.units import Unit


class Draft:
    """What has been made of a request so far. `decisions`: the readings taken where an earlier one asked, in order."""

    def __init__(self, request: Request, folded: Folded, decisions: tuple[int, ...]) -> None:
        self.request = request
        self.folded = folded
        self.record = Record(request.exercises, request.unit, list(request.done))
        self.unit: Unit = request.unit
        """Of numbers that name none."""
        self.unit_at: Span | None = None
        self.ask: Ask | None = None
        self.alternatives = 0
        """How many readings the question offers."""
        self.skipped: list[str] = []
        self.given_up: frozenset[int] = frozenset()
        """The exercises whose name is told to be skipped: none of what `everything as planned` is."""
        self.evidence: list[Evidence] = []
        """Of what is of no set; that of the sets is with them."""
        self.mentions: list[tuple[Mark, int]] = []
        """The names of one exercise in the message, with sets or without, and which it is."""
        self._decisions = decisions
        self._decided = 0
        self._named_at: Span | None = None
        self._replaced: set[SetKey] = set()
        self._under: tuple[tuple[tuple[Performed, ...], tuple[Told, ...]], int | None] | None = None
        """The sets, stored and said, when it was asked last which exercise is under way, and the answer."""

    @property
    def reports(self) -> bool:
        """Whether the message gives or takes back a set."""
        return bool(self.record.told or self.record.replaces)

    @property
    def is_decided(self) -> bool:
        """Whether this is a reading that a question offers."""
        return bool(self._decisions)

    # --- which exercise ---------------------------------------------------------------------------------------------

    def under_way(self) -> int | None:
        """The exercise that a set without a name belongs to."""
        if self.record.last_exercise is not None:
            return self.record.last_exercise
        sets = tuple(self.record.stored), tuple(self.record.told)
        if self._under is None or self._under[0] != sets:
            self._under = sets, self._first_open()
        return self._under[1]

    def _first_open(self) -> int | None:
        """The exercise that the chat is on, the first with a set that waits, or the one told last."""
        request = self.request
        if request.current is not None:
            place = self.record.place_of(request.current)
            if place is not None:
                return place
        for place in range(len(request.exercises)):
            if self.record.context(place).open_sets:
                return place
        last = self.record.last()
        return self.record.place_of(last.exercise) if last is not None else None

    @property
    def has_named(self) -> bool:
        """Whether the message has told of an exercise already."""
        return self.record.last_exercise is not None

    def rank(self, atoms: Sequence[Atom], context: Context) -> Ranked:
        """The readings of a stretch for one exercise."""
        return rank(atoms, context, self.unit, self.unit_at)

    # --- keeping ----------------------------------------------------------------------------------------------------

    def keep(self, bound: Bound, place: int, name: Mark | None = None, source: Source = Source.SAID) -> None:
        """Keeps sets of the exercise at `place`, which `name` (or, where `source` is not `SAID`, no word) named."""
        if name is not None:
            self._named_at = (name.start, name.end)
        elif place != self.record.last_exercise or source is not Source.SAID:
            self._named_at = None
        self.record.add(replace(bound, told=tuple(self._named(told, source) for told in bound.told)))
        self.record.last_exercise = place
        for said in bound.said:
            self.note_replaced(said.words.number or (said.start, said.end))

    def _named(self, told: Told, source: Source) -> Told:
        if self._named_at is not None:
            ground = Ground(source, self._named_at)
        else:
            unsaid = Source.UNDER_WAY if source is Source.SAID else source
            ground = replace(told.grounds.exercise, source=unsaid)
        return replace(told, grounds=replace(told.grounds, exercise=ground))

    # --- asking and explaining --------------------------------------------------------------------------------------

    def doubt(self, doubt: Doubt, alternatives: int = 0, exercise: str | None = None) -> int | None:
        """The alternative decided on, or `None` and the message is asked about."""
        if self._decided < len(self._decisions) and alternatives:
            chosen = self._decisions[self._decided]
            self._decided += 1
            if chosen < alternatives:
                return chosen
        if self.ask is None:
            self.ask = Ask(doubt.kind, self.folded.span(doubt.start, doubt.end), exercise=exercise)
            self.alternatives = alternatives
        return None

    def note(self, at: Span, meaning: Meaning, value: str, source: Source = Source.SAID) -> None:
        """Notes which words (folded text) gave a value that is of no set."""
        self.evidence.append(Evidence(meaning, value, self.folded.span(*at), source))

    def note_replaced(self, at: Span) -> None:
        """Notes the words that replaced what is replaced since the last note."""
        for key in self.record.replaces:
            if key not in self._replaced:
                self._replaced.add(key)
                self.note(at, Meaning.CORRECTION, f"{key[0]} {key[1]}")
