"""The reading of one message, from its text to what it stores or why it is asked about."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date

from bot.notation.added_sets import with_added_sets
from bot.notation.announced import without_announced
from bot.notation.answer import Ask, AskKind, Choice, Meaning, Reading, Request, Source, Span
from bot.notation.beside_sets import Beside, read_beside
from bot.notation.by_exercise import by_exercise
from bot.notation.corrections.amends import all_targeted, amend, targeted
from bot.notation.corrections.contrasted import with_contrasts
from bot.notation.days import DaySaid
from bot.notation.draft import Draft
from bot.notation.efforts_each import rate_each, split_efforts
from bot.notation.efforts_named import split_named
from bot.notation.efforts_named.rating import rate_named
from bot.notation.efforts_of_all import split_of_all
from bot.notation.efforts_of_all.rating import rate_of_all
from bot.notation.evidence import evidence_of_pain, evidence_of_sets
from bot.notation.exceptions import with_exceptions
from bot.notation.gear import without_gear
from bot.notation.hurt_parts import begun, without_words
from bot.notation.kinds import Kind
from bot.notation.last_looks import Looked, last_look
from bot.notation.leaving import keep_few, keep_skips, open_names, read_bare_done, read_done_behind, read_stop
from bot.notation.leftovers import unread_number
from bot.notation.masking import masked
from bot.notation.mentions import only_mentioned
from bot.notation.named_entries import unclear_entry, with_named_entries
from bot.notation.named_hurts import pain_beside_names
from bot.notation.nameless import with_names_by_load
from bot.notation.names import session_index
from bot.notation.order.other_side import with_other_side
from bot.notation.other_times import other_times
from bot.notation.pain import PainReading
from bot.notation.paired import with_paired
from bot.notation.pieces import split_pieces
from bot.notation.preparing import MOST_NUMBERS, Kinds, kinds_beside_hurts, marks_of_sets
from bot.notation.printer import show_sets
from bot.notation.progress import read_progress
from bot.notation.reports import Reporting
from bot.notation.restated import taken_back
from bot.notation.said import Doubt
from bot.notation.same_times import with_same_times
from bot.notation.same_twice import with_same_twice
from bot.notation.script import Folded, read_script
from bot.notation.seams import with_seams
from bot.notation.segments.edges import EDGES, NUMBERS
from bot.notation.side_counts import with_side_counts
from bot.notation.side_efforts import with_side_efforts
from bot.notation.side_pairs import with_side_pairs
from bot.notation.skips import read_skips
from bot.notation.skips.endings import closing, read_finish
from bot.notation.skips.enough import with_enough
from bot.notation.skips.kept import heads_for_another
from bot.notation.skips.seams import headed_by_kept, with_skip_seams
from bot.notation.stepped import with_steps
from bot.notation.strays import nothing_to_drop, stray_numbers, with_others
from bot.notation.strays.replaced import replaced
from bot.notation.strays.substitutes import substituted
from bot.notation.tagging.once import Tagger
from bot.notation.talk import talk_numbers
from bot.notation.tokens import Mark, read_marks
from bot.notation.totals import without_totals
from bot.notation.unmarked import Seams, with_lines
from bot.notation.without_load import with_body_weight

LONGEST = 4096
"""Characters that are read: the chat's longest message."""

MOST_CHOOSING = 120
"""Marks of a message whose choices are read to the end: of a longer one each would cost as much as the message."""
_COUNTED = (Kind.NUM, Kind.CLOCK, Kind.BAD, Kind.ORD)


@dataclass(frozen=True, slots=True)
class Prepared:
    """What every reading of one request begins with: its plain letters, what it tells of pain, and its marks."""

    folded: Folded
    hurt: PainReading
    kinds: Kinds


def prepared(request: Request) -> Prepared:
    """What is the same in every reading of the request."""
    folded = read_script(request.text[:LONGEST])
    typed, tagger = read_marks(folded.text), Tagger(session_index(request.exercises))
    hurt = pain_beside_names(request, folded, lambda: tagger.read(typed))
    return Prepared(folded, hurt, kinds_beside_hurts(folded, typed, request, hurt.spans, tagger))


class Reader:
    """Reads one request. `decisions` are the alternatives taken where an earlier reading asked, in order."""

    def __init__(
        self, request: Request, start: Prepared, decisions: tuple[int, ...] = (), seams: Seams = frozenset()
    ) -> None:
        self.request = request
        self.start = start
        self.decisions = decisions
        self.seams = seams
        self.folded = start.folded
        self.draft = Draft(request, start.folded, decisions)

    def read(self, *, offers: bool = True) -> Reading:
        """The reading; with choices where it asks, if it `offers` any."""
        draft, hurt, kinds = self.draft, self.start.hurt, self.start.kinds
        beside = read_beside(draft, with_lines(with_seams(self._few_enough(kinds.marks)), self.seams))
        marks = with_others(without_words(beside.marks, kinds.hurts))
        marks = with_enough(marks, draft.record, draft.under_way())
        wanted = {i for i, m in enumerate(marks) if m.kind is Kind.NO} if beside.question.wants_other else set()
        skips = read_skips(masked(marks, wanted))
        strays = stray_numbers(marks, self._is_likely, is_first=not draft.record.stored)
        draft.mentions = [m for m in draft.mentions if m[0].start not in {marks[i].start for i in strays}]
        elsewhen = other_times(marks) | strays
        elsewhen |= nothing_to_drop(marks, elsewhen, is_begun=bool(draft.record.stored))
        finish = read_finish(masked(marks, elsewhen - closing(marks)))
        finished = None if finish is None else (finish.start, finish.end)
        before = [marks[i] for i in sorted(elsewhen)]
        marks = masked(marks, elsewhen - skips.places)
        names = (p for p in skips.places if marks[p].kind is Kind.NAME)
        kept = {p for p in names if _numbers_follow(marks, p) and not heads_for_another(marks, p)}
        denied = {p for p, m in enumerate(marks) if m.kind is Kind.NAME and heads_for_another(marks, p)}
        left_out = {marks[p].start for p in (skips.places - kept) | denied}
        draft.mentions = [m for m in draft.mentions if m[0].start not in left_out]
        marks = with_skip_seams(headed_by_kept(marks, skips.kept), skips.places, kept)
        marks = masked(marks, (skips.places - kept) | kinds.hurt_names | denied)
        in_place = None if draft.is_decided else replaced(kinds.marks, self.request.exercises)
        if in_place is not None:
            draft.doubt(Doubt(AskKind.UNKNOWN_EXERCISE, in_place.start, in_place.end))
        said = marks
        marks = self._sets(marks, hurts=hurt.pain is not None)
        reported = draft.reports
        if draft.ask is None and finish is not None:
            under = draft.under_way()
            own = any(m.names == (under,) for m in skips.names)
            leaves = own or bool(skips.partly) or skips.counted is not None
            finished = read_stop(draft, marks, finish, hurts=hurt.pain is not None, leaves=leaves)
        if draft.ask is None and (skips.names or skips.rest is not None):
            keep_skips(draft, skips)
        if draft.ask is None and not reported and finish is None:
            finished = read_bare_done(draft, marks, hurts=hurt.pain is not None)
        if draft.ask is None and reported and finish is None:
            finished = read_done_behind(draft, marks)
        if draft.ask is None:
            keep_skips(draft, skips)
            keep_few(draft, said if reported else ())
        if draft.ask is None and not reported and beside.question.at is None and _tells_of_before(marks, before):
            draft.doubt(self._of_all(AskKind.DAY))
        chosen = self._day(beside.day)
        reading = self._finished(hurt, beside, finished, chosen)
        return self._with_choices(reading, draft.ask) if offers else reading

    def _few_enough(self, marks: list[Mark]) -> list[Mark]:
        """The marks; none where there are more numbers than a session has, which is asked about."""
        if sum(max(1, len(m.parts)) for m in marks if m.kind in _COUNTED) <= MOST_NUMBERS:
            return marks
        self.draft.doubt(self._of_all(AskKind.UNSURE))
        return []

    def _is_likely(self, number: Mark) -> bool:
        """Whether a number may be a load or a count of an exercise that the message names, or of the one under way."""
        draft = self.draft
        under = draft.under_way()
        places = {place for _, place in draft.mentions} | ({under} if under is not None else set())
        return any(draft.record.context(place).is_likely(number.value, draft.unit) for place in places)

    def _sets(self, marks: list[Mark], *, hurts: bool) -> list[Mark]:
        """Keeps what the marks report and correct, piece by piece; gives the marks as they were read."""
        draft, record = self.draft, self.draft.record
        marks = with_paired(begun(marks), self.request.exercises)
        marks = with_other_side(with_names_by_load(marks, record, draft.unit), record.last())
        said = marks = with_side_pairs(marks, record, draft.under_way())
        mentioned = only_mentioned(marks)
        starts = {marks[i].start for i in mentioned}
        draft.mentions = [m for m in draft.mentions if m[0].start not in starts]
        marks = without_gear(masked(marks, mentioned), self.request.exercises, draft.under_way())
        marks = with_contrasts(marks, record, draft.under_way())
        progress = read_progress(marks, record, draft.under_way())
        counted = without_totals(without_announced(progress.marks), self.request.exercises)
        unclear = unclear_entry(counted, record)
        listed = with_named_entries(counted, record)
        steps = with_steps(all_targeted(draft, listed), record, draft.under_way())
        steps, named = split_named(steps)
        steps, of_all = split_of_all(steps, record, draft.under_way())
        steps = with_body_weight(with_added_sets(steps, record, draft.under_way()), record, draft.under_way())
        sided = with_side_efforts(with_side_counts(steps, record, draft.under_way()), record, draft.under_way())
        telling = with_same_times(with_same_twice(sided, record, draft.under_way()), record, draft.under_way())
        telling = by_exercise(with_exceptions(telling, record, draft.under_way()), record, draft.under_way())
        marks = marks_of_sets(telling, hurts, is_first=not record.stored)
        talk = talk_numbers(marks)
        unread = unread_number(marks, talk)
        marks = masked(marks, talk | taken_back(marks))
        reporting = Reporting(draft)
        told: list[Mark] = []
        for piece in split_pieces(marks):
            if draft.ask is not None:
                break
            piece, each = split_efforts(targeted(draft, piece))  # noqa: PLW2901
            left = amend(draft, piece)
            told += left
            if left and draft.ask is None:
                reporting.read_piece(left)
            if each is not None and draft.ask is None:
                rate_each(draft, each, piece)
        for one in named if draft.ask is None else ():
            rate_named(draft, one)
        for every in of_all if draft.ask is None else ():
            rate_of_all(draft, every)
        if draft.reports and not draft.is_decided:
            unread = unread or last_look(Looked(said, told, record, progress, unclear))
            other = substituted(said, self.request.exercises, frozenset(one.row.exercise for one in record.told))
            if other is not None:
                draft.doubt(Doubt(AskKind.UNKNOWN_EXERCISE, other.start, other.end))
        if draft.reports and unread is not None and draft.ask is None:
            draft.doubt(Doubt(AskKind.UNSURE, unread.start, unread.end), alternatives=1)
        return marks

    def _day(self, said: DaySaid | None) -> date | None:
        """The day that the report is for, if one is said; asked about where it may be several."""
        draft = self.draft
        if said is None or said.day is not None:
            return None if said is None or said.day == self.request.now.date() else said.day
        if draft.ask is None and (draft.reports or draft.skipped):
            chosen = draft.doubt(self._of_all(AskKind.DAY), len(said.candidates))
            return None if chosen is None else said.candidates[chosen]
        return None

    def _of_all(self, kind: AskKind) -> Doubt:
        """A doubt of the whole message."""
        return Doubt(kind, 0, len(self.folded.text))

    # --- the end ----------------------------------------------------------------------------------------------------

    def _finished(self, hurt: PainReading, beside: Beside, finished: Span | None, day: date | None) -> Reading:
        draft, record = self.draft, self.draft.record
        if finished is not None:
            draft.note(finished, Meaning.FINISH, "")
        if not (draft.reports or draft.skipped or draft.ask is not None or finished is not None):
            day = None
        if day is not None and beside.day is not None and beside.day_at is not None:
            source = Source.SAID if beside.day.day is not None else Source.ANSWERED
            draft.note(beside.day_at, Meaning.DAY, day.isoformat(), source)
        asks = draft.ask is not None
        told = () if asks else tuple(record.told)
        of_rest = [e for e in draft.evidence if not (asks and e.meaning is Meaning.CORRECTION)]
        return Reading(
            performed=tuple(t.row for t in told),
            replaces=() if asks else tuple(record.replaces),
            skipped=tuple(draft.skipped),
            finished=finished is not None,
            pain=hurt.pain,
            minutes=beside.minutes.minutes if beside.minutes is not None else None,
            day=day,
            question=beside.question.at is not None,
            evidence=(
                *evidence_of_sets(told, self.folded, self.request.exercises),
                *of_rest,
                *evidence_of_pain(hurt),
            ),
            ask=draft.ask,
        )

    def _with_choices(self, reading: Reading, ask: Ask | None) -> Reading:
        if ask is None or self.decisions:
            return reading
        choices = []
        few = len(self.start.kinds.marks) <= MOST_CHOOSING
        for index in range(self.draft.alternatives if few else 0):
            made = Reader(self.request, self.start, (index,), self.seams).read(offers=False)
            if ask.kind is not AskKind.UNSURE or (made.performed and made.ask is None):
                choices.append(Choice(self._label(made, ask), made))
        return replace(reading, ask=replace(ask, choices=tuple(choices)))

    def _label(self, reading: Reading, ask: Ask) -> str:
        """What the button of a choice says."""
        if ask.kind is AskKind.DAY and reading.day is not None:
            return reading.day.isoformat()
        if ask.kind is AskKind.STOP:
            return ", ".join(open_names(self.draft) if reading.finished else reading.skipped)
        if ask.kind is AskKind.WHICH_SKIP:
            return ", ".join(reading.skipped)
        if ask.kind is AskKind.WHICH_EXERCISE and reading.performed:
            return reading.performed[0].exercise
        return show_sets(reading.performed, self.request.exercises)


def _tells_of_before(marks: Sequence[Mark], masked: Sequence[Mark]) -> bool:
    """Whether all that the message tells is a set of `last week`, which may be a late report."""
    kinds = [m.kind for m in masked]
    pairs = any(kinds[i : i + 3] == [Kind.NUM, Kind.X, Kind.NUM] for i in range(len(kinds)))
    past = any(m.text in ("last week", "last session", "last month", "last time") for m in masked)
    return pairs and past and not any(m.kind in NUMBERS for m in marks)


def _numbers_follow(marks: Sequence[Mark], place: int) -> bool:
    """Whether sets of a name follow it in its part."""
    which = (Kind.ORD, Kind.LASTSET, Kind.LASTREP, Kind.SET, Kind.SETS, Kind.THEREST)
    one = any(m.kind in which for m in marks[max(0, place - 3) : place + 4])
    ends = (Kind.DASH, Kind.LINE, Kind.SKIP, Kind.SKIPPED)
    for mark in marks[place + 1 :]:
        if mark.kind in NUMBERS:
            return True
        if mark.kind in (*EDGES, Kind.OPEN) or (mark.kind in ends and not one):
            return False
    return False
