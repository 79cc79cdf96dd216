"""The reading of one message, from its text to what it stores or why it is asked about."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from bot.notation.alternatives import half_loads, in_reason, plan_ways, range_ways
from bot.notation.answer import Ask, AskKind, Choice, Evidence, Meaning, Reading, Request
from bot.notation.asides import with_asides
from bot.notation.atoms import Amount, Atom, Effort, Join, Sign, read_atoms
from bot.notation.beside_hurt import bare_after, counted_hurts
from bot.notation.binding import Bound
from bot.notation.clauses import other_times, talk_numbers
from bot.notation.context import Context
from bot.notation.corrections import apply_values, correct, is_correction, read_scrap, split_pieces
from bot.notation.days import DaySaid, read_day
from bot.notation.denials import without_denied_warmups
from bot.notation.grammar import read_items
from bot.notation.kinds import Kind
from bot.notation.leftovers import unread_number
from bot.notation.mentions import only_mentioned
from bot.notation.minutes import read_minutes
from bot.notation.names import looser_fits, session_index
from bot.notation.pain import read_pain
from bot.notation.printer import show_sets
from bot.notation.questions import read_question
from bot.notation.ranking import Ranked, rank
from bot.notation.record import Record
from bot.notation.relative import with_differences
from bot.notation.said import Doubt
from bot.notation.script import read_script
from bot.notation.segments import EDGES, NUMBERS, Segment, read_segments, shared_marks, unshared
from bot.notation.shaping import number_lines, shape_marks
from bot.notation.skips import SkipsSaid, read_done, read_finish, read_skips
from bot.notation.tagging import read_kinds
from bot.notation.thinning import thinned
from bot.notation.tokens import Mark, read_marks
from bot.notation.trade import with_lone_names
from bot.notation.twice_told import told_twice
from bot.notation.wordlist import words
from bot.training.plan import Measure
from bot.training.report import Performed, SetKey, Stage
from bot.training.units import Unit

LONGEST = 4096
"""Characters that are read: the chat's longest message."""
MOST_NUMBERS = 160
"""A message with more numbers is no report of a session: it is asked about."""
MOST_AMOUNTS = 36
"""More numbers for one exercise are no report of it: they are asked about."""
MOST_ELSEWHERE = 12
"""A report of more numbers is not tried on exercises that it does not name."""


class Reader:
    """Reads one request. `decisions` are the alternatives taken where an earlier reading asked, in order."""

    def __init__(self, request: Request, decisions: tuple[int, ...] = (), nested: bool = False) -> None:
        self.request = request
        self.decisions = decisions
        self.nested = nested
        self.decided = 0
        self.folded = read_script(request.text[:LONGEST])
        self.record = Record(request.exercises, request.unit, list(request.done))
        self.unit = request.unit
        self.ask: Ask | None = None
        self.evidence: list[Evidence] = []
        self.skipped: list[str] = []
        self.alternatives = 0
        self.hurt_names: set[int] = set()
        self.mentions: list[tuple[int, int]] = []
        """Where the message names which exercise, with sets or without."""
        self.header: Mark | None = None
        """A name that stood alone on its line: its sets follow."""
        self.swapped = False
        """Whether the piece under way tells of one exercise in place of another."""
        self.early: list[Atom] = []
        """Efforts said before the sets that they are of."""

    # --- the whole --------------------------------------------------------------------------------------------------

    def read(self) -> Reading:
        """The reading, with choices where it asks."""
        request = self.request
        hurt = read_pain(request.text)
        marks = self._kinds(hurt.spans)
        if sum(max(1, len(m.parts)) for m in marks if m.kind in (Kind.NUM, Kind.CLOCK, Kind.BAD)) > MOST_NUMBERS:
            self._doubt(Doubt(AskKind.UNSURE, 0, len(self.folded.text)), 0)
            marks = []
        hurt_names = self.hurt_names
        timed = self._counts(marks, Measure.SECONDS)
        metres = self._counts(marks, Measure.METRES)
        day = read_day(marks, request.now)
        marks = _masked(marks, day.places if day is not None else ())
        minutes = read_minutes(marks, request.now, timed, metres)
        marks = _masked(marks, minutes.places if minutes is not None else ())
        question, only_asks = read_question(marks)
        marks = _masked(marks, only_asks)
        self.mentions = [(m.start, m.names[0]) for m in marks if m.kind is Kind.NAME and len(m.names) == 1]
        told = told_twice(self._unit_for_all(marks))
        marks = list(told.marks)
        if told.differs is not None:
            self._doubt(Doubt(AskKind.UNIT, told.differs[0].start, told.differs[1].end), 0)
        skips = read_skips(marks)
        elsewhen = other_times(marks)
        finished = read_finish(_masked(marks, elsewhen))
        elsewhen_marks = [marks[i] for i in sorted(elsewhen)]
        marks = _masked(marks, elsewhen - skips.places)
        kept = {p for p in skips.places if marks[p].kind is Kind.NAME and _numbers_follow(marks, p)}
        marks = _masked(marks, (skips.places - kept) | hurt_names)
        marks, unread = self._of_sets(marks, hurt.pain is not None)
        for piece in split_pieces(marks):
            if self.ask is not None:
                break
            self._piece(piece)
        said = bool(self.record.said or self.record.replaces)
        if said and unread is not None and self.ask is None:
            self._doubt(Doubt(AskKind.UNSURE, unread.start, unread.end), 0)
        if self.ask is None and not said:
            finished = self._done(marks, finished)
        if self.ask is None:
            self._skips(skips)
        if self.ask is None and not said and not question and _tells_of_before(marks, elsewhen_marks):
            self._doubt(Doubt(AskKind.DAY, 0, len(self.folded.text)), 0)
        if self.ask is None and (self.record.said or self.record.replaces or self.skipped):
            self._day(day)
        reports = bool(self.record.said or self.record.replaces or self.skipped or self.ask is not None)
        chosen = day.day if day is not None else None
        if day is not None and day.day is None and self.decisions:
            chosen = self.day_chosen
        asks = self.ask
        reading = Reading(
            performed=() if asks is not None else tuple(self.record.said),
            replaces=() if asks is not None else tuple(self.record.replaces),
            skipped=tuple(dict.fromkeys(self.skipped)),
            finished=finished,
            pain=hurt.pain,
            minutes=minutes.minutes if minutes is not None else None,
            day=chosen if reports or finished else None,
            question=question,
            evidence=tuple(self.evidence),
        )
        return self._with_choices(reading, asks)

    def _of_sets(self, marks: list[Mark], hurts: bool) -> tuple[list[Mark], Mark | None]:
        """The marks with all that is no set's without bearing; and a number of talk that may be a set's after all."""
        mentioned = only_mentioned(marks)
        self.mentions = [m for m in self.mentions if m[0] not in {marks[i].start for i in mentioned}]
        marks = with_lone_names(without_denied_warmups(_masked(marks, mentioned)))
        marks = number_lines(_ratings_masked(_repeats(with_differences(with_asides(marks))), hurts))
        if not (self.record.stored or self.record.said):
            marks = _masked(marks, _was_meant(marks))
        talk = talk_numbers(marks)
        unread = unread_number(marks, talk)
        return _masked(marks, talk), unread

    day_chosen: date | None = None

    def _with_choices(self, reading: Reading, ask: Ask | None) -> Reading:
        if ask is None:
            return reading
        choices = []
        if not self.nested:
            for index in range(self.alternatives):
                nested = Reader(self.request, (*self.decisions, index), nested=True).read()
                choices.append(Choice(self._label(nested, ask), nested))
        return replace(reading, ask=replace(ask, choices=tuple(choices)))

    def _label(self, reading: Reading, ask: Ask) -> str:
        if ask.kind is AskKind.DAY and reading.day is not None:
            return reading.day.isoformat()
        if ask.kind is AskKind.WHICH_SKIP:
            return ", ".join(reading.skipped)
        if ask.kind is AskKind.WHICH_EXERCISE and reading.performed:
            return reading.performed[0].exercise
        return show_sets(reading.performed, self.request.exercises)

    # --- marks ------------------------------------------------------------------------------------------------------

    def _kinds(self, hurts: Sequence[tuple[int, int]]) -> list[Mark]:
        typed = read_marks(self.folded.text)
        few = thinned(typed, [None if m.kind in NUMBERS else m.text or m.kind.value for m in typed])
        marks = read_kinds(few, session_index(self.request.exercises))
        at = self.folded.at
        hurt = {
            place
            for place, mark in enumerate(marks)
            if any(start <= at[mark.start] < end for start, end in hurts) and mark.kind not in (Kind.LINE, Kind.STOP)
        }
        hurt |= {p for p in range(len(marks) - 1) if marks[p].kind in (Kind.LEFT, Kind.RIGHT) and p + 1 in hurt}
        hurt |= counted_hurts(marks, hurt)
        hurt |= bare_after(marks, hurt)
        self.hurt_names = {p for p in hurt if marks[p].kind is Kind.NAME}
        return _masked(marks, hurt - self.hurt_names)

    def _counts(self, marks: Sequence[Mark], measure: Measure) -> bool:
        """Whether an exercise that the message names, or the one under way, counts seconds or metres."""
        named = [i for m in marks if m.kind is Kind.NAME for i in m.names]
        under = self._under_way()
        places = named or ([] if under is None else [under])
        return any(self.request.exercises[p].measure is measure for p in places)

    def _unit_for_all(self, marks: list[Mark]) -> list[Mark]:
        """`all in pounds`: the unit of every number that names none."""
        for place, mark in enumerate(marks):
            if mark.kind not in (Kind.KG, Kind.LB) or mark.text in ("k", "#"):
                continue
            before = marks[place - 1] if place else None
            if before is not None and (
                before.kind in (Kind.NUM, Kind.CLOCK) or (before.kind is Kind.GAP and before.value)
            ):
                continue
            words = " ".join(m.text for m in marks[max(0, place - 3) : place]).split()
            if {"in", "all", "everything", "weights", "using", "units", "loads", "numbers"} & set(words) or (
                len(marks) > 1 and (place == 0 or place == len(marks) - 1)
            ):
                self.unit = Unit.KG if mark.kind is Kind.KG else Unit.LB
                self._note(mark.start, mark.end, Meaning.UNIT, self.unit.value)
                first = place
                while first > 0 and marks[first - 1].kind in (Kind.FILL, Kind.ALL, Kind.WITH, Kind.AT, Kind.WAS):
                    first -= 1
                return _masked(marks, range(first, place + 1))
        return marks

    # --- pieces -----------------------------------------------------------------------------------------------------

    def _piece(self, piece: list[Mark]) -> None:
        if read_scrap(piece) and not any(m.kind is Kind.GAP for m in piece):
            after = [m for m in piece if m.kind is not Kind.SCRAP]
            if is_correction(after, self.record, self._under_name()):
                self._correct(after, self._correction_place(after))
                return
            rest = self._scrap(piece)
            if rest and any(m.kind in NUMBERS for m in rest):
                self._piece(rest)
            return
        place = self._correction_place(piece)
        if self.record.replaces and _takes_back(piece):
            self._doubt(Doubt(AskKind.WHICH_SET, piece[0].start, piece[-1].end), 0)
            return
        if is_correction(piece, self.record, self._under_name()):
            self._correct(piece, place)
            return
        self.swapped = _is_substitute(piece)
        segments = shared_marks(read_segments(piece))
        loose = unshared(segments)
        if loose is not None:
            self._doubt(Doubt(AskKind.WHICH_EXERCISE, loose.start, piece[-1].end), 0)
        for segment in segments:
            if self.ask is None:
                self._segment(segment, piece)

    def _under_name(self) -> str | None:
        place = self._under_way()
        return None if place is None else self.request.exercises[place].name

    def _correction_place(self, piece: Sequence[Mark]) -> int | None:
        for mark in piece:
            if mark.kind is Kind.NAME and mark.names:
                done = [p for p in mark.names if self.record.last(p) is not None]
                if len(done) == 1:
                    return done[0]
        return self.record.last_exercise if self.record.said else None

    def _correct(self, piece: list[Mark], place: int | None) -> None:
        before = len(self.record.replaces)
        corrected = correct(piece, self.record, self.unit, place)
        if corrected.doubt is None:
            last = self.record.last(self.record.last_exercise)
            if last is not None:
                self._note(piece[0].start, piece[-1].end, Meaning.CORRECTION, f"{last.exercise} {last.set}")
            return
        chosen = self._doubt(corrected.doubt, len(corrected.choices))
        if chosen is not None:
            key, values = corrected.choices[chosen]
            self.record.change(key, lambda rows: apply_values(rows, values))
        assert before <= len(self.record.replaces)

    def _scrap(self, piece: list[Mark]) -> list[Mark]:
        """Takes a set back; what follows in the piece is read as new."""
        place = self._correction_place(piece)
        at = next(i for i, m in enumerate(piece) if m.kind is Kind.SCRAP)
        shaped = shape_marks(piece[at + 1 : at + 4], False)
        label = next((int(m.value) for m in shaped if m.kind is Kind.LABEL and m.value is not None), None)
        last = self.record.last(place)
        if last is None or last.set is None:
            return []
        key: SetKey = (last.exercise, label if label is not None else last.set)
        if not self.record.rows(key):
            self._doubt(Doubt(AskKind.WHICH_SET, piece[0].start, piece[-1].end), 0)
            return []
        self.record.drop(key)
        self._note(piece[0].start, piece[at].end, Meaning.CORRECTION, f"{key[0]} {key[1]}")
        self.record.last_exercise = self.record.place_of(key[0])
        return piece[at + (3 if label is not None else 1) :]

    # --- segments ---------------------------------------------------------------------------------------------------

    def _segment(self, segment: Segment, piece: Sequence[Mark]) -> None:
        shaped = shape_marks(segment.marks, any(e.sides == 2 for e in self.request.exercises))
        atoms = read_atoms(read_items(shaped))
        reports = any(isinstance(a, Amount) or _is_report(a) for a in atoms)
        efforts = [a for a in atoms if isinstance(a, Effort)]
        bad = next((a for a in atoms if isinstance(a, Sign) and a.kind is Kind.BAD), None)
        if bad is not None:
            self._doubt(Doubt(AskKind.NUMBER_FORMAT, bad.start, bad.end), 0)
            return
        if sum(max(1, len(a.parts)) for a in atoms if isinstance(a, Amount)) > MOST_AMOUNTS:
            self._doubt(Doubt(AskKind.UNSURE, atoms[0].start, atoms[-1].end), 0)
            return
        name = segment.name
        if name is not None:
            self.header = name if not reports and not efforts and _is_header(piece) else None
        elif self.header is not None and reports:
            name = self.header
            self.header = None
            segment = Segment(name, segment.marks)
        if name is not None and (reports or efforts):
            self._note(name.start, name.end, Meaning.NAME, self._names_of(name))
        swapped = self.swapped
        if name is not None and not name.names and (reports or swapped):
            self._doubt(Doubt(AskKind.UNKNOWN_EXERCISE, name.start, name.end), 0)
            return
        if name is not None and swapped and (reports or len(piece) > 1):
            self._doubt(Doubt(AskKind.UNKNOWN_EXERCISE, name.start, name.end), 0)
            return
        if not reports:
            if efforts and name is None and not self.record.said and _is_led(piece, efforts[-1]):
                self.early = [a for a in atoms if isinstance(a, Effort | Sign)]
            elif efforts:
                self._rate(efforts[-1], name, any(isinstance(a, Sign) and _is_all(a) for a in atoms))
            return
        atoms = (*self.early, *atoms)
        self.early = []
        self._report(segment, atoms)

    def _names_of(self, name: Mark) -> str:
        return " / ".join(self.request.exercises[p].name for p in name.names) or name.text

    def _rate(self, effort: Effort, name: Mark | None, every: bool) -> None:
        """An effort with no set beside it: the last set's."""
        place = name.names[0] if name is not None and len(name.names) == 1 else None
        if place is None and self.record.said:
            place = self.record.last_exercise
        last = self.record.last(place)
        if last is None or last.set is None or effort.failed is not None:
            if effort.failed is None:
                return
            self._doubt(Doubt(AskKind.EFFORT, effort.start, effort.end), 0)
            return
        if effort.beyond:
            self._doubt(Doubt(AskKind.EFFORT, effort.start, effort.end), 0)
            return
        keys = [(last.exercise, last.set)]
        if every:
            worked = self.record.context(self.record.place_of(last.exercise) or 0).worked
            keys = list(dict.fromkeys((p.exercise, p.set) for p in worked if p.set is not None))
        for key in keys:
            self.record.change(
                key, lambda rows: [replace(r, rir=effort.rir) if r.stage is Stage.WORK else r for r in rows]
            )
        self._note(effort.start, effort.end, Meaning.EFFORT, f"rir {effort.rir}")

    def _report(self, segment: Segment, atoms: Sequence[Atom]) -> None:
        name = segment.name
        if name is not None and len(name.names) > 1:
            self._which(name, atoms)
            return
        place = name.names[0] if name is not None else self._under_way()
        if name is None and not self.record.said and _continues(atoms):
            last = self.record.last()
            place = self.record.place_of(last.exercise) if last is not None else place
        if place is None:
            if any(isinstance(a, Amount) for a in atoms):
                self._doubt(Doubt(AskKind.WHICH_EXERCISE, atoms[0].start, atoms[-1].end), 0)
            return
        context = self.record.context(place)
        ranked = rank(atoms, context, self.unit)
        place, context, ranked = self._better(segment, name, atoms, place=place, ranked=ranked)
        if ranked.sets_only is not None and not ranked.bound.performed:
            ranked = plan_ways(context, ranked.sets_only, atoms[0].start, atoms[-1].end)
        planned = next((a for a in atoms if isinstance(a, Sign) and a.kind is Kind.PLANNED), None)
        if planned is not None and name is None and not any(isinstance(a, Amount) for a in atoms):
            self._as_planned(planned, atoms, place)
            return
        if not ranked.bound.performed and ranked.doubt is None:
            return
        if name is None and not self._named_before():
            elsewhere = self._elsewhere(atoms, place, ranked)
            if elsewhere:
                doubt = Doubt(AskKind.WHICH_EXERCISE, atoms[0].start, atoms[-1].end)
                chosen = self._doubt(doubt, len(elsewhere))
                if chosen is not None:
                    self._keep(elsewhere[chosen][1], elsewhere[chosen][0])
                return
        self._take(ranked, place)

    def _better(
        self, segment: Segment, name: Mark | None, atoms: Sequence[Atom], *, place: int, ranked: Ranked
    ) -> tuple[int, Context, Ranked]:
        """Another exercise, where the first does not fit and one other that may be meant does."""
        context = self.record.context(place)
        mentioned = {p for start, p in self.mentions if start < atoms[0].start}
        if ranked.doubt is None and not (name is None and mentioned - {place} and not self._named_before()):
            return place, context, ranked
        others: list[int] = []
        if name is not None and ranked.doubt is not None and ranked.doubt.kind is AskKind.OUT_OF_REASON:
            under = self._under_way()
            if _stands_apart(segment) and under is not None:
                others = [under]
            else:
                others = list(looser_fits(name.text.split(), session_index(self.request.exercises)))
        elif name is None and len(mentioned) == 1 and not self._named_before():
            others = list(mentioned)
        found = []
        for other in others:
            beside = self.record.context(other)
            theirs = rank(atoms, beside, self.unit)
            if other != place and beside.open_sets and theirs.doubt is None and theirs.bound.performed:
                met = any(_meets(p, beside) for p in theirs.bound.performed)
                if met and (ranked.doubt is not None or not any(_exact(p, context) for p in ranked.bound.performed)):
                    found.append((other, beside, theirs))
        return found[0] if len(found) == 1 else (place, context, ranked)

    def _take(self, ranked: Ranked, place: int) -> None:
        """Keeps a clear reading, or asks with its alternatives."""
        if ranked.doubt is None:
            self._keep(ranked.bound, place)
            return
        ways = self._ways(ranked, place)
        chosen = self._doubt(ranked.doubt, len(ways), self.request.exercises[place].name)
        if chosen is not None:
            self._keep(ways[chosen], place)

    def _ways(self, ranked: Ranked, place: int) -> list[Bound]:
        assert ranked.doubt is not None
        context = self.record.context(place)
        match ranked.doubt.kind:
            case AskKind.RANGE:
                return range_ways(ranked.bound, context)
            case AskKind.OUT_OF_REASON:
                return in_reason(ranked.bound, context) or list(ranked.honest)
            case AskKind.PER_HAND:
                return half_loads(ranked.bound, context)
            case _:
                return list(ranked.honest)

    def _keep(self, bound: Bound, place: int) -> None:
        self.record.add(bound)
        self.record.last_exercise = place
        seen = set()
        for row, said in zip(bound.performed, bound.said, strict=True):
            if (said.start, said.end) not in seen:
                seen.add((said.start, said.end))
                meaning = Meaning.PLANNED if said.planned else Meaning.REPEAT if said.same else Meaning.SETS
                self._note(said.start, said.end, meaning, show_sets((row,), self.request.exercises))

    def _which(self, name: Mark, atoms: Sequence[Atom]) -> None:
        """A name that fits several: the one that is open and fits the load, else a question."""
        ranks = [(p, rank(atoms, self.record.context(p), self.unit)) for p in name.names]
        fits = [(p, r) for p, r in ranks if self.record.context(p).open_sets and r.doubt is None and r.bound.performed]
        if len(fits) == 1:
            self._keep(fits[0][1].bound, fits[0][0])
            return
        usable = [(p, r) for p, r in ranks if r.doubt is None and r.bound.performed]
        chosen = self._doubt(Doubt(AskKind.WHICH_EXERCISE, name.start, name.end), len(usable))
        if chosen is not None:
            self._keep(usable[chosen][1].bound, usable[chosen][0])

    def _elsewhere(self, atoms: Sequence[Atom], place: int, ranked: Ranked) -> list[tuple[int, Bound]]:
        """Other open exercises whose plan a set without a name meets exactly, where the one under way is not met."""
        context = self.record.context(place)
        if sum(isinstance(a, Amount) for a in atoms) > MOST_ELSEWHERE:
            return []
        if ranked.doubt is None and any(_meets(p, context) for p in ranked.bound.performed):
            return []
        found: list[tuple[int, Bound]] = []
        for other in range(len(self.request.exercises)):
            if other == place:
                continue
            beside = self.record.context(other)
            if not beside.open_sets:
                continue
            theirs = rank(atoms, beside, self.unit)
            rows = theirs.bound.performed
            said_load = any(s.load is not None for s in theirs.bound.said)
            if theirs.doubt is None and rows and said_load and all(_exact(p, beside) for p in rows):
                found.append((other, theirs.bound))
        if found and ranked.doubt is None:
            found.insert(0, (place, ranked.bound))
        return found

    def _as_planned(self, planned: Sign, atoms: Sequence[Atom], place: int) -> None:
        """`as planned` without a name: the set that is left, or the whole session where that is said."""
        context = self.record.context(place)
        words = self.folded.text.split()
        whole = any(w in words for w in ("everything", "session", "workout"))
        if whole:
            for other in range(len(self.request.exercises)):
                beside = self.record.context(other)
                if beside.open_sets and self.ask is None:
                    self._take(rank(atoms, beside, self.unit), other)
            return
        if len(context.open_sets) == 1 or any(isinstance(a, Sign) and a.kind is Kind.ALL for a in atoms):
            self._take(rank(atoms, context, self.unit), place)
            return
        ways = [plan_ways(context, n, planned.start, planned.end) for n in (1, len(context.open_sets))]
        bounds = [w.bound for w in ways if w.doubt is None]
        chosen = self._doubt(Doubt(AskKind.DONE, planned.start, planned.end), len(bounds))
        if chosen is not None:
            self._keep(bounds[chosen], place)

    # --- done, skips, day -------------------------------------------------------------------------------------------

    def _done(self, marks: Sequence[Mark], finished: bool) -> bool:
        """A bare `done`: the current set as planned, the end, or a question. Gives whether the session is over."""
        is_done, name, every = read_done(marks)
        if not is_done or finished or self.skipped:
            return finished
        if name is not None and len(name.names) != 1:
            return finished
        place = name.names[0] if name is not None else self._under_way()
        if place is None:
            return True
        context = self.record.context(place)
        if name is None and not any(self.record.context(p).open_sets for p in range(len(self.request.exercises))):
            return True
        span = next((m for m in marks if m.kind in (Kind.DONE, Kind.FINISH)), marks[0])
        if not context.open_sets:
            if name is None:
                self._doubt(Doubt(AskKind.DONE, span.start, span.end), 0)
            return finished
        if name is not None and len(context.open_sets) > 1:
            ways = [plan_ways(context, n, span.start, span.end) for n in (len(context.open_sets), 1)]
            bounds = [w.bound for w in ways if w.doubt is None]
            chosen = self._doubt(Doubt(AskKind.DONE, span.start, span.end), len(bounds), context.exercise.name)
            if chosen is not None:
                self._keep(bounds[chosen], place)
            return finished
        count = len(context.open_sets) if every else 1
        ranked = plan_ways(context, count, span.start, span.end, needs_load=True)
        self._take(ranked, place)
        return finished

    def _skips(self, skips: SkipsSaid) -> None:
        names = self.request.exercises
        for mark in skips.names:
            opens = [p for p in mark.names if self.record.context(p).open_sets]
            if not mark.names:
                if mark.kind is Kind.NAME and mark not in skips.denied:
                    self._doubt(Doubt(AskKind.UNKNOWN_EXERCISE, mark.start, mark.end), 0)
                continue
            if len(mark.names) > 1 and len(opens) != 1 and mark not in skips.every:
                if opens:
                    chosen = self._doubt(Doubt(AskKind.WHICH_SKIP, mark.start, mark.end), len(opens) + 1)
                    if chosen is not None:
                        self.skipped += [names[p].name for p in (opens if chosen == len(opens) else [opens[chosen]])]
                continue
            self.skipped += [names[p].name for p in opens]
            self._note(mark.start, mark.end, Meaning.SKIP, ", ".join(names[p].name for p in opens))
        if skips.current:
            place = self.record.last_exercise if self.record.last_exercise is not None else self._under_way()
            if place is not None and self.record.context(place).open_sets:
                self.skipped.append(names[place].name)
        if skips.rest:
            self.skipped += [e.name for p, e in enumerate(names) if self.record.context(p).open_sets]

    def _day(self, day: DaySaid | None) -> None:
        if day is None or day.day is not None:
            return
        start = 0
        chosen = self._doubt(Doubt(AskKind.DAY, start, len(self.folded.text)), len(day.candidates))
        if chosen is not None:
            self.day_chosen = day.candidates[chosen]

    # --- asking -----------------------------------------------------------------------------------------------------

    def _doubt(self, doubt: Doubt, alternatives: int, exercise: str | None = None) -> int | None:
        """The alternative decided on, or `None` and the message is asked about."""
        if self.decided < len(self.decisions) and alternatives:
            chosen = self.decisions[self.decided]
            self.decided += 1
            if chosen < alternatives:
                return chosen
        if self.ask is None:
            self.ask = Ask(doubt.kind, self.folded.span(doubt.start, doubt.end), exercise=exercise)
            self.alternatives = alternatives
        return None

    def _named_before(self) -> bool:
        return self.record.last_exercise is not None

    def _under_way(self) -> int | None:
        """The exercise that a set without a name belongs to."""
        if self.record.last_exercise is not None:
            return self.record.last_exercise
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

    def _note(self, start: int, end: int, meaning: Meaning, value: str) -> None:
        self.evidence.append(Evidence(self.folded.span(start, end), meaning, value))


def _masked(marks: Sequence[Mark], places: Sequence[int] | set[int] | frozenset[int] | range) -> list[Mark]:
    """The marks with those at these places without bearing on the sets."""
    gone = set(places)
    return [
        replace(m, kind=Kind.GAP, value=None, parts=()) if i in gone and m.kind is not Kind.LINE else m
        for i, m in enumerate(marks)
    ]


def _tells_of_before(marks: Sequence[Mark], masked: Sequence[Mark]) -> bool:
    """Whether all that the message tells is a set of `last week`, which may be a late report."""
    kinds = [m.kind for m in masked]
    pairs = any(kinds[i : i + 3] == [Kind.NUM, Kind.X, Kind.NUM] for i in range(len(kinds)))
    past = any(m.text in ("last week", "last session", "last month", "last time") for m in masked)
    return pairs and past and not any(m.kind in NUMBERS for m in marks)


def _was_meant(marks: Sequence[Mark]) -> set[int]:
    """`supposed to be 60, did 57.5`: before anything is done, what should have been is the plan's."""
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is Kind.MEANT and mark.text.split()[0] in ("supposed", "should", "was", "meant", "were"):
            at = place + 1
            while at < len(marks) and marks[at].kind not in EDGES:
                out.add(at)
                at += 1
    return out if any(m.kind is Kind.NUM for i, m in enumerate(marks) if i not in out) else set()


def _repeats(marks: Sequence[Mark]) -> list[Mark]:
    """`again` alone in its part is `same`."""
    edges = EDGES
    kept = [i for i, m in enumerate(marks) if m.kind is not Kind.FILL]
    out = list(marks)
    for at, place in enumerate(kept):
        if marks[place].kind is Kind.AGAIN:
            starts = at == 0 or marks[kept[at - 1]].kind in (*edges, Kind.NAME)
            ends = at == len(kept) - 1 or marks[kept[at + 1]].kind in edges
            if starts and ends:
                out[place] = replace(marks[place], kind=Kind.SAME)
    return out


_RATED = frozenset(
    words(
        "pain hurt hurts pains ache discomfort energy sleep mood stress motivation soreness sore tired",
    )
)


def _ratings_masked(marks: Sequence[Mark], hurts: bool) -> list[Mark]:
    """`pain 0/10`, `energy 7 out of 10`: a score of something else is no set."""
    gone: set[int] = set()
    for place, mark in enumerate(marks):
        ten = next((i for i in range(place + 2, min(place + 4, len(marks))) if marks[i].value == 10), None)
        if (
            mark.kind is Kind.NUM
            and ten is not None
            and (marks[place + 1].kind is Kind.SLASH or [m.text for m in marks[place + 1 : ten]] == ["out", "of"])
        ):
            near = [w for m in (*marks[max(0, place - 4) : place], *marks[ten + 1 : ten + 3]) for w in m.text.split()]
            told = hurts and mark.value is not None and mark.value < 10
            if set(near) & _RATED or marks[place + 1].kind is not Kind.SLASH or told:
                gone.update(range(place, ten + 1))
    return _masked(marks, gone)


def _numbers_follow(marks: Sequence[Mark], place: int) -> bool:
    """Whether sets of a name follow it in its part."""
    for mark in marks[place + 1 :]:
        if mark.kind in NUMBERS:
            return True
        if mark.kind in EDGES:
            return False
    return False


def _is_all(sign: Sign) -> bool:
    return sign.kind is Kind.ALL or (sign.kind is Kind.EACH and sign.text == "both")


def _is_report(atom: Atom) -> bool:
    if not isinstance(atom, Sign):
        return isinstance(atom, Effort) and atom.failed is not None and atom.failed > 0
    return atom.kind in (Kind.SAME, Kind.PLANNED)


def _stands_apart(segment: Segment) -> bool:
    """Whether a comma or more stands between a name and its first number."""
    for mark in segment.marks:
        if mark.kind in NUMBERS:
            return False
        if mark.kind in EDGES:
            return True
    return False


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


def _takes_back(piece: Sequence[Mark]) -> bool:
    """`no, set 2 was`: another set is meant by what was just corrected."""
    kinds = [m.kind for m in piece if m.kind not in (Kind.FILL, Kind.COMMA, Kind.STOP, Kind.LINE)]
    return (
        kinds[:1] in ([Kind.NO], [Kind.SORRY])
        and Kind.SET in kinds
        and kinds.count(Kind.NUM) == 1
        and kinds[-1] is Kind.WAS
    )


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


def _meets(row: Performed, context: Context) -> bool:
    """Whether a set is what the plan, or the set before, would have it: the load or the repetitions."""
    planned = context.planned_load(row.set)
    near = row.load is None or planned is None or (row.load.kg == planned.kg)
    last = context.worked[-1].load if context.worked else None
    near = near or (last is not None and row.load is not None and last.kg == row.load.kg)
    return near or row.reps in context.range_of(row.set) or row.stage is not Stage.WORK


def _exact(row: Performed, context: Context) -> bool:
    """Whether a set is exactly as planned."""
    planned = context.planned_load(row.set)
    return (
        row.stage is Stage.WORK
        and planned is not None
        and planned.thousandths != 0
        and row.load is not None
        and row.load.kg == planned.kg
        and row.reps in context.range_of(row.set)
    )
