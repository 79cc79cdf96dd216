"""A piece of a message that reports: its segments by exercise, each ranked beside the plan, kept or asked about."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.notation.alternatives import half_loads, in_reason, plan_ways, range_ways
from bot.notation.answer import AskKind, Source
from bot.notation.atoms import Amount, Atom, Effort, Join, Sign, read_atoms
from bot.notation.binding import Bound
from bot.notation.choosing import better_fit, elsewhere, keep_one_of
from bot.notation.draft import Draft
from bot.notation.grammar import read_items
from bot.notation.grounds import Ground
from bot.notation.kinds import Kind
from bot.notation.ranking import Ranked
from bot.notation.said import Doubt
from bot.notation.segments import NUMBERS, Segment, read_segments, shared_marks, unshared
from bot.notation.shaping import shape_marks
from bot.notation.tokens import Mark
from bot.training.report import Stage

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

    def read_piece(self, piece: Sequence[Mark]) -> None:
        """Keeps what the piece reports, exercise by exercise, until something is to be asked."""
        segments = shared_marks(read_segments(piece))
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
        reports = any(isinstance(a, Amount) or _is_report(a) for a in atoms)
        efforts = [a for a in atoms if isinstance(a, Effort)]
        odd = _unreadable(atoms)
        if odd is not None:
            draft.doubt(odd)
            return
        segment = self._under_header(segment, piece, reports=reports, rates=bool(efforts))
        name = segment.name
        if name is not None and _is_unknown(name, piece, reports):
            draft.doubt(Doubt(AskKind.UNKNOWN_EXERCISE, name.start, name.end))
            return
        if reports:
            atoms, self.early = (*self.early, *atoms), ()
            report(draft, segment, atoms)
        elif efforts and name is None and not draft.record.told and _is_led(piece, efforts[-1]):
            self.early = tuple(a for a in atoms if isinstance(a, Effort | Sign))
        elif efforts:
            _rate(draft, efforts[-1], name, any(isinstance(a, Sign) and _is_all(a) for a in atoms))

    def _under_header(self, segment: Segment, piece: Sequence[Mark], *, reports: bool, rates: bool) -> Segment:
        """The segment under the name that stood alone on the line before, where it has none of its own."""
        if segment.name is not None:
            self.header = segment.name if not reports and not rates and _is_header(piece) else None
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


def _is_unknown(name: Mark, piece: Sequence[Mark], reports: bool) -> bool:
    """Whether sets are told of an exercise that the session lacks, or of one in place of another."""
    swapped = _is_substitute(piece)
    return (not name.names and (reports or swapped)) or (swapped and (reports or len(piece) > 1))


def report(draft: Draft, segment: Segment, atoms: Sequence[Atom]) -> None:
    """Keeps the sets of one segment where they are clear beside the plan; else asks."""
    name = segment.name
    if name is not None and len(name.names) > 1:
        keep_one_of(draft, name, atoms)
        return
    place = name.names[0] if name is not None else draft.under_way()
    if name is None and not draft.record.told and _continues(atoms):
        last = draft.record.last()
        place = draft.record.place_of(last.exercise) if last is not None else place
    if place is None:
        if any(isinstance(a, Amount) for a in atoms):
            draft.doubt(Doubt(AskKind.WHICH_EXERCISE, atoms[0].start, atoms[-1].end))
        return
    fit = better_fit(draft, segment, atoms, place=place)
    ranked = fit.ranked
    if ranked.sets_only is not None and not ranked.bound.told:
        ranked = plan_ways(fit.context, ranked.sets_only, atoms[0].start, atoms[-1].end)
    planned = next((a for a in atoms if isinstance(a, Sign) and a.kind is Kind.PLANNED), None)
    if planned is not None and name is None and not any(isinstance(a, Amount) for a in atoms):
        _as_planned(draft, planned, atoms, fit.place)
        return
    if not ranked.bound.told and ranked.doubt is None:
        return
    if name is None and not draft.has_named:
        others = elsewhere(draft, atoms, fit.place, ranked)
        if others:
            chosen = draft.doubt(Doubt(AskKind.WHICH_EXERCISE, atoms[0].start, atoms[-1].end), len(others))
            if chosen is not None:
                draft.keep(others[chosen][1], others[chosen][0], source=Source.ANSWERED)
            return
    take(draft, ranked, fit.place, fit.name)


def take(draft: Draft, ranked: Ranked, place: int, name: Mark | None = None) -> None:
    """Keeps a clear reading, or asks with its alternatives."""
    if ranked.doubt is None:
        draft.keep(ranked.bound, place, name)
        return
    ways = _ways(draft, ranked, place)
    chosen = draft.doubt(ranked.doubt, len(ways), draft.request.exercises[place].name)
    if chosen is not None:
        draft.keep(ways[chosen], place, name)


def _ways(draft: Draft, ranked: Ranked, place: int) -> list[Bound]:
    """The readings that a question about these sets offers."""
    assert ranked.doubt is not None
    context = draft.record.context(place)
    match ranked.doubt.kind:
        case AskKind.RANGE:
            return range_ways(ranked.bound, context)
        case AskKind.OUT_OF_REASON:
            return in_reason(ranked.bound, context) or list(ranked.honest)
        case AskKind.PER_HAND:
            return half_loads(ranked.bound, context)
        case _:
            return list(ranked.honest)


def _as_planned(draft: Draft, planned: Sign, atoms: Sequence[Atom], place: int) -> None:
    """`as planned` without a name: the set that is left, or the whole session where that is said."""
    context = draft.record.context(place)
    if {"everything", "session", "workout"} & set(draft.folded.text.split()):
        for other in range(len(draft.request.exercises)):
            beside = draft.record.context(other)
            if beside.open_sets and draft.ask is None:
                take(draft, draft.rank(atoms, beside), other)
        return
    if len(context.open_sets) == 1 or any(isinstance(a, Sign) and a.kind is Kind.ALL for a in atoms):
        take(draft, draft.rank(atoms, context), place)
        return
    ways = [plan_ways(context, n, planned.start, planned.end) for n in (1, len(context.open_sets))]
    bounds = [w.bound for w in ways if w.doubt is None]
    chosen = draft.doubt(Doubt(AskKind.DONE, planned.start, planned.end), len(bounds))
    if chosen is not None:
        draft.keep(bounds[chosen], place)


def _rate(draft: Draft, effort: Effort, name: Mark | None, every: bool) -> None:
    """An effort with no set beside it: the last set's."""
    record = draft.record
    place = name.names[0] if name is not None and len(name.names) == 1 else None
    if place is None and record.told:
        place = record.last_exercise
    last = record.last(place)
    if last is None or last.set is None or effort.failed is not None:
        if effort.failed is not None:
            draft.doubt(Doubt(AskKind.EFFORT, effort.start, effort.end))
        return
    if effort.beyond:
        draft.doubt(Doubt(AskKind.EFFORT, effort.start, effort.end))
        return
    keys = [(last.exercise, last.set)]
    if every:
        worked = record.context(record.place_of(last.exercise) or 0).worked
        keys = list(dict.fromkeys((p.exercise, p.set) for p in worked if p.set is not None))
    ground = Ground(Source.SAID, (effort.start, effort.end))
    for key in keys:
        record.change(
            key,
            lambda rows: [
                replace(t, row=replace(t.row, rir=effort.rir), grounds=replace(t.grounds, effort=ground))
                if t.row.stage is Stage.WORK
                else t
                for t in rows
            ],
        )
    draft.note_replaced((effort.start, effort.end))


def _is_all(sign: Sign) -> bool:
    return sign.kind is Kind.ALL or (sign.kind is Kind.EACH and sign.text == "both")


def _is_report(atom: Atom) -> bool:
    if not isinstance(atom, Sign):
        return isinstance(atom, Effort) and atom.failed is not None and atom.failed > 0
    return atom.kind in (Kind.SAME, Kind.PLANNED)


def _continues(atoms: Sequence[Atom]) -> bool:
    """Whether the sets start with a drop or a mini: they belong to the set said last, whatever the chat is on."""
    for atom in atoms:
        if isinstance(atom, Amount):
            return atom.join in (Join.PLUS, Join.ARROW)
        if isinstance(atom, Sign) and atom.kind in (Kind.DROP, Kind.MINI, Kind.ARROW, Kind.PLUS):
            return True
    return False


def _is_substitute(piece: Sequence[Mark]) -> bool:
    """Whether the piece tells of one exercise in place of another: `dips instead of bench`."""
    for place, mark in enumerate(piece):
        if mark.kind is Kind.INSTEAD:
            following = piece[place + 1].kind if place + 1 < len(piece) else None
            if following is not Kind.NUM:
                return any(m.kind is Kind.NAME for m in piece)
    return False


def _is_header(piece: Sequence[Mark]) -> bool:
    """Whether a piece is a name and nothing else that says something."""
    plain = (
        Kind.NAME,
        Kind.FILL,
        Kind.COLON,
        Kind.DASH,
        Kind.LINE,
        Kind.STOP,
        Kind.X,
        Kind.COMMA,
        Kind.OPEN,
        Kind.CLOSE,
        Kind.LABEL,
        Kind.DONE,
        Kind.GAP,
        Kind.THEN,
        Kind.AND,
    )
    shouted = any(m.kind is Kind.STOP and m.text == "!" for m in piece)
    return not shouted and all(m.kind in plain for m in piece) and sum(m.kind is Kind.NAME for m in piece) == 1


def _is_led(piece: Sequence[Mark], effort: Effort) -> bool:
    """Whether a name with sets follows an effort in its piece: `rpe 8 both, curls 8 and 8`."""
    names = [i for i, m in enumerate(piece) if m.kind is Kind.NAME and m.start >= effort.end]
    return bool(names) and any(m.kind in NUMBERS for m in piece[names[0] :])
