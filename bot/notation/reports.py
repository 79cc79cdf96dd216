"""A piece of a message that reports: its segments by exercise, each ranked beside the plan, kept or asked about."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.notation.alternatives import plan_ways
from bot.notation.answer import AskKind, Source
from bot.notation.atoms import Amount, Atom, Effort, Sign
from bot.notation.atoms.entries import read_atoms
from bot.notation.choosing import better_fit, by_measure, elsewhere, keep_one_of
from bot.notation.draft import Draft
from bot.notation.efforts_each import rate_in_turn
from bot.notation.grammar import read_items
from bot.notation.kinds import Kind
from bot.notation.late import load_late
from bot.notation.said import Doubt
from bot.notation.segments import Segment, read_segments, unshared
from bot.notation.shaping import shape_marks
from bot.notation.taking import fails_last, keep_as_planned, rate_last_set, take
from bot.notation.telling import continues, is_all, is_header, is_led, is_report, is_substitute, is_unknown
from bot.notation.tokens import Mark
from bot.training.plan import Drop

MOST_AMOUNTS = 36
"""More numbers for one exercise are no report of it: they are asked about."""


@dataclass
class Reporting:
    """The reports of one message, in order; what one piece says for the next is kept between them."""

    draft: Draft
    header: Mark | None = None
    """A name that stood alone on its line: its sets follow."""
    early: tuple[Atom, ...] = ()
    """Efforts said before the sets that they are of."""
    swapped: bool = False
    """Whether the piece at hand tells of a substitute."""
    heads: bool = False
    """Whether it is a name and nothing else that says something."""

    def read_piece(self, piece: Sequence[Mark]) -> None:
        """Keeps what the piece reports, exercise by exercise, until something is to be asked."""
        segments = read_segments(piece)
        self.swapped, self.heads = is_substitute(piece), is_header(piece)
        loose = unshared(segments)
        if loose is not None:
            self.draft.doubt(Doubt(AskKind.WHICH_EXERCISE, loose.start, piece[-1].end))
        for segment in segments:
            if self.draft.ask is None:
                self._segment(segment, piece)

    def _segment(self, segment: Segment, piece: Sequence[Mark]) -> None:
        draft = self.draft
        shaped = shape_marks(segment.marks, any(e.sides == 2 for e in draft.request.exercises))
        atoms = read_atoms(read_items(shaped))
        reports = any(isinstance(a, Amount) or is_report(a) for a in atoms)
        efforts = [a for a in atoms if isinstance(a, Effort)]
        odd = _unreadable(atoms)
        if odd is not None:
            draft.doubt(odd)
            return
        segment = self._under_header(segment, reports=reports, rates=bool(efforts))
        name = segment.name
        if name is not None and is_unknown(name, swapped=self.swapped, reports=reports, alone=len(piece) == 1):
            draft.doubt(Doubt(AskKind.UNKNOWN_EXERCISE, name.start, name.end))
            return
        if len(atoms) == 1 and name is None and efforts and fails_last(draft, efforts[0]):
            rate_last_set(draft, replace(efforts[0], failed=None), name, every=False)
        elif reports:
            atoms, self.early = (*self.early, *atoms), ()
            report(draft, segment, atoms)
        elif efforts and name is None and not draft.record.told and is_led(piece, efforts[-1]):
            self.early = tuple(a for a in atoms if isinstance(a, Effort | Sign))
        elif len(efforts) > 1 and rate_in_turn(draft, efforts, name):
            pass
        elif efforts:
            every = [a for a in atoms if isinstance(a, Sign) and is_all(a)]
            rate_last_set(draft, efforts[-1], name, bool(every), any(a.text == "both" for a in every))

    def _under_header(self, segment: Segment, *, reports: bool, rates: bool) -> Segment:
        """The segment under the name that stood alone on the line before, where it has none of its own."""
        if segment.name is not None:
            self.header = segment.name if not reports and not rates and self.heads else None
        elif self.header is not None and reports:
            segment = Segment(self.header, segment.marks)
            self.header = None
        return segment


def _unreadable(atoms: Sequence[Atom]) -> Doubt | None:
    """A number that can be written for several, or more numbers than any report of one exercise has."""
    bad = next((a for a in atoms if isinstance(a, Sign) and a.kind is Kind.BAD), None)
    if bad is not None:
        return Doubt(AskKind.NUMBER_FORMAT, bad.start, bad.end)
    if sum(max(1, len(a.parts)) for a in atoms if isinstance(a, Amount)) > MOST_AMOUNTS:
        return Doubt(AskKind.UNSURE, atoms[0].start, atoms[-1].end)
    return None


def _goes_lighter(draft: Draft, atoms: Sequence[Atom], last: str, place: int | None) -> bool:
    """`dropped it to 55 today: 5 5 4`: a lighter load for the exercise that the chat is on, where the one before it has
    no drop in the plan.
    """
    sign = next((a for a in atoms if isinstance(a, Sign)), None)
    exercises = draft.request.exercises
    on = place is not None and exercises[place].name == draft.request.current != last
    drops = any(isinstance(s.finish, Drop) for e in exercises if e.name == last for s in e.sets)
    return on and not drops and sign is not None and sign.kind is Kind.DROP and sign.text.endswith("to")


def report(draft: Draft, segment: Segment, atoms: Sequence[Atom]) -> None:
    """Keeps the sets of one segment where they are clear beside the plan; else asks."""
    name = segment.name
    if name is not None and len(name.names) > 1:
        keep_one_of(draft, name, atoms)
        return
    place = name.names[0] if name is not None else draft.under_way()
    if name is None and not draft.record.told and continues(atoms):
        last = draft.record.last()
        if last is not None and not _goes_lighter(draft, atoms, last.exercise, place):
            place = draft.record.place_of(last.exercise)
    if place is None:
        if any(isinstance(a, Amount) for a in atoms):
            draft.doubt(Doubt(AskKind.WHICH_EXERCISE, atoms[0].start, atoms[-1].end))
        return
    if name is None and not draft.has_named:
        place = by_measure(draft, atoms, place)
    fit = better_fit(draft, segment, atoms, place=place)
    ranked = fit.ranked
    if ranked.sets_only is not None and not ranked.bound.told:
        ranked = plan_ways(fit.context, ranked.sets_only, atoms[0].start, atoms[-1].end)
    planned = next((a for a in atoms if isinstance(a, Sign) and a.kind is Kind.PLANNED), None)
    if planned is not None and name is None and not any(isinstance(a, Amount) for a in atoms):
        keep_as_planned(draft, planned, atoms, fit.place)
        return
    if not ranked.bound.told and ranked.doubt is None:
        if sum(isinstance(a, Amount) for a in atoms) > 1:
            draft.doubt(Doubt(AskKind.UNSURE, atoms[0].start, atoms[-1].end))  # more sets than the plan has room for
        return
    if name is None and load_late(draft, ranked, segment, atoms, place=fit.place):
        return
    if name is None and not draft.has_named:
        others = elsewhere(draft, atoms, fit.place, ranked)
        if others:
            chosen = draft.doubt(Doubt(AskKind.WHICH_EXERCISE, atoms[0].start, atoms[-1].end), len(others))
            if chosen is not None:
                draft.keep(others[chosen][1], others[chosen][0], source=Source.ANSWERED)
            return
    take(draft, ranked, fit.place, fit.name)
