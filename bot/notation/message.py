"""The reading of one message, from its text to what it stores or why it is asked about."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date

from bot.notation.answer import Ask, AskKind, Choice, Meaning, Reading, Request, Source, Span
from bot.notation.beside_sets import Beside, read_beside
from bot.notation.brackets import without_last_brackets
from bot.notation.courtesies import without_courtesies
from bot.notation.days import DaySaid
from bot.notation.draft import Draft
from bot.notation.evidence import evidence_of_pain, evidence_of_sets
from bot.notation.hurt_apart import hurts_apart
from bot.notation.hurt_parts import without_words
from bot.notation.keeping import keep_sets
from bot.notation.kinds import Kind
from bot.notation.leaving import keep_few, keep_skips, open_names, read_bare_done, read_done_behind, read_stop
from bot.notation.left_out import without_left_out
from bot.notation.named_hurts import pain_beside_names
from bot.notation.names import session_index
from bot.notation.order.other_side import with_hurt_side
from bot.notation.pain import PainReading
from bot.notation.preparing import MOST_MARKS, MOST_NUMBERS, Kinds, kinds_beside_hurts
from bot.notation.printer import show_sets
from bot.notation.said import Doubt
from bot.notation.script import Folded, read_script
from bot.notation.seams import with_seams
from bot.notation.segments.edges import NUMBERS
from bot.notation.sentences import joined
from bot.notation.separators import with_commas
from bot.notation.strays import with_others
from bot.notation.strays.replaced import replaced
from bot.notation.tagging.once import Tagger
from bot.notation.tokens import Mark, read_marks
from bot.notation.unmarked import Seams, with_lines

MOST_CHOOSING = 120
"""Marks of a message whose choices are read to the end: of a longer one each would cost as much as the message."""
_COUNTED = (Kind.NUM, Kind.CLOCK, Kind.BAD, Kind.ORD)
_REPORTING = frozenset(
    (*_COUNTED, Kind.SAME, Kind.AGAIN, Kind.SAMELOAD, Kind.SAMEREPS, Kind.PLANNED, Kind.DONE, Kind.FINISH, Kind.SKIP)
)
"""What may report a set, a skip or an end."""


@dataclass(frozen=True, slots=True)
class Prepared:
    """What every reading of one request begins with: its plain letters, what it tells of pain, and its marks."""

    folded: Folded
    hurt: PainReading
    kinds: Kinds


def prepared(request: Request) -> Prepared:
    """What is the same in every reading of the request."""
    text = joined(with_commas(request.text))
    folded, typed, tagger, hurt = _beside_hurts(request, text)
    apart = text if len(typed) > MOST_MARKS else hurts_apart(text, hurt.spans)
    if apart != text:
        folded, typed, tagger, hurt = _beside_hurts(request, apart)
    return Prepared(folded, hurt, kinds_beside_hurts(folded, typed, request, hurt.spans, tagger))


def _beside_hurts(request: Request, text: str) -> tuple[Folded, Sequence[Mark], Tagger, PainReading]:
    """The plain letters and marks of a text, and what it tells of pain."""
    folded = read_script(text)
    typed = without_last_brackets(without_courtesies(read_marks(folded.text)))
    tagger = Tagger(session_index(request.exercises))
    return folded, typed, tagger, pain_beside_names(replace(request, text=text), folded, lambda: tagger.read(typed))


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
        marks = with_others(without_words(with_hurt_side(self._short_enough(beside.marks)), kinds.hurts))
        left = without_left_out(draft, marks, kinds.hurt_names, wants_other=beside.question.wants_other)
        said, skips, finish = left.marks, left.skips, left.finish
        finished = None if finish is None else (finish.start, finish.end)
        in_place = None if draft.is_decided or not marks else replaced(kinds.marks, self.request.exercises)
        if in_place is not None:
            draft.doubt(Doubt(AskKind.UNKNOWN_EXERCISE, in_place.start, in_place.end))
        draft.given_up = frozenset(m.names[0] for m in skips.names if len(m.names) == 1)
        marks = keep_sets(draft, said, hurts=hurt.pain is not None)
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
        if draft.ask is None and not reported and beside.question.at is None and _tells_of_before(marks, left.before):
            draft.doubt(self._of_all(AskKind.DAY))
        chosen = self._day(beside.day)
        reading = self._finished(hurt, beside, finished, chosen)
        return self._with_choices(reading, draft.ask) if offers else reading

    def _few_enough(self, marks: list[Mark]) -> list[Mark]:
        """The marks; none where there are more numbers than a session has, which is asked about."""
        if sum(max(1, len(m.parts)) for m in marks if m.kind in _COUNTED) <= MOST_NUMBERS:
            return marks
        self.draft.doubt(self._of_all(AskKind.TOO_LONG))
        return []

    def _short_enough(self, marks: list[Mark]) -> list[Mark]:
        """The marks; none of a letter, which is asked about where it may report anything."""
        if not self.start.kinds.is_letter:
            return marks
        if not _REPORTING.isdisjoint(m.kind for m in marks):
            self.draft.doubt(self._of_all(AskKind.TOO_LONG))
        return []

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
        put_right = () if asks else tuple(f"{exercise} {number}" for exercise, number in record.replaces)
        of_rest = [e for e in draft.evidence if e.meaning is not Meaning.CORRECTION or e.value in put_right]
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
        choices: dict[str, Choice] = {}
        few = len(self.start.kinds.marks) <= MOST_CHOOSING
        for index in range(self.draft.alternatives if few else 0):
            made = Reader(self.request, self.start, (index,), self.seams).read(offers=False)
            if ask.kind is not AskKind.UNSURE or (made.performed and made.ask is None):
                label = self._label(made, ask)
                choices.setdefault(label, Choice(label, made))
        offered = tuple(choices.values())
        if ask.kind is AskKind.LOAD and offered:
            return replace(reading, ask=replace(ask, unfinished=offered[0].reading))
        return replace(reading, ask=replace(ask, choices=offered))

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
