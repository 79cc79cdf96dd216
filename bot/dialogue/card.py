"""The session as one message that keeps itself up to date: what is done, what comes, and buttons for it."""

from bot.dialogue.cardkeys import card_rows, drops_from, effort_open, reported_sets
from bot.dialogue.pacing import minutes_at_pace
from bot.dialogue.phrases import count_line, done_line, joined, load_line, planned_line
from bot.dialogue.underway import UnderWay
from bot.saying import BLANK, Line, Rows, Say, Urgency, line
from bot.training.people import Standing
from bot.training.plan import Drop, LoadStyle, Mini, PlannedExercise, PlannedSet
from bot.training.report import Performed, Stage
from bot.training.shown import show_tempo
from bot.training.units import Load


def card_slot(session: str) -> str:
    """The slot of a session's card."""
    return f"card:{session}"


def card(at: UnderWay, *, fresh: bool = False, load: Load | None = None, urgency: Urgency = Urgency.REFRESH) -> Say:
    """The card as it stands; `load` opens the choice of another load for the set that comes."""
    session = at.session
    exercise = None if session.ended else session.current
    live = at.live(exercise) if exercise else None
    chosen = [] if live is None or load is None else [BLANK, line("card-load", load=load_line(live, load))]
    lines = (*_head(at), *_without_doubled_blanks([*_body(at, live), *chosen]))
    stopped = session.ended is not None or at.client.profile.standing is Standing.PAUSED
    rows: Rows = () if stopped else card_rows(at, live, load)
    return Say(at.client.profile.chat, lines, rows, slot=card_slot(session.id), fresh=fresh, urgency=urgency)


# --- words


def _head(at: UnderWay) -> tuple[Line, ...]:
    session = at.session
    done = sum(session.sets_reported(e) for e in session.plan.exercises)
    own = None if session.ended else minutes_at_pace(at.client, session.plan.exercises)
    title = line("card-title", title=session.plan.title, day=session.day, minutes=session.plan.minutes)
    if own is not None:
        title = line("card-title-pace", title=session.plan.title, day=session.day, minutes=own)
    if session.ended:
        return title, line(f"card-{session.ended.value}", done=done, sets=session.plan.set_count)
    return title, line("card-progress", done=done, sets=session.plan.set_count)


def _body(at: UnderWay, live: PlannedExercise | None) -> list[Line]:
    lines: list[Line] = [BLANK]
    for exercise in at.session.plan.exercises:
        if live is not None and exercise.name == live.name:
            lines += [BLANK, *_expanded(at, live), BLANK]
        elif at.session.is_complete(exercise) or at.session.ended:
            lines.append(_finished_line(at, exercise))
        else:
            lines.append(_coming_line(at, exercise))
    asked = None if at.session.ended else effort_open(at)
    if asked is not None and asked.set is not None:
        lines += [BLANK, line("card-effort", name=asked.exercise, number=asked.set)]
    return _without_doubled_blanks(lines)


def _expanded(at: UnderWay, exercise: PlannedExercise) -> list[Line]:
    lines = [line("card-exercise", name=exercise.name)]
    partner = _partner(at, exercise)
    if partner:
        lines.append(line("card-pair", name=partner))
    if at.is_held(exercise.name):
        lines.append(line("card-held"))
    done = at.session.work_done(exercise.name)
    if exercise.warmup and not done:
        steps = [line("card-warmup-step", load=s.load, reps=s.reps) for s in exercise.warmup]
        lines.append(line("card-warmup", steps=joined(steps)))
    upcoming = at.session.next_set(exercise)
    for number, planned in enumerate(exercise.sets, 1):
        reported = reported_sets(at, exercise, number)
        if reported:
            shown = joined([done_line(exercise, p) for p in reported], "sets-then")
            lines.append(line("card-set-done", number=number, set=shown))
        else:
            key = "card-set-next" if number == upcoming else "card-set-later"
            lines.append(line(key, number=number, set=planned_line(exercise, planned)))
            if number == upcoming and planned.finish:
                lines.append(_finish_line(at, exercise, planned))
    if _wants_a_load(exercise, upcoming):
        reps, near = count_line(exercise, exercise.sets[(upcoming or 1) - 1].reps), at.near(exercise)
        if near is None:
            lines.append(line("card-find", reps=reps))
        else:
            lines.append(line("card-find-near", load=load_line(exercise, near), reps=reps))
    coming = exercise.sets[(upcoming or 1) - 1]
    if coming.rest_s:
        lines.append(line("card-rest", minutes=coming.rest_s // 60, seconds=coming.rest_s % 60))
    return [*lines, *_told_by_the_coach(exercise, coming)]


def _told_by_the_coach(exercise: PlannedExercise, coming: PlannedSet) -> list[Line]:
    """How to do it: tempo and cue of the set that comes, the exercise's own cue, note and link."""
    lines: list[Line] = []
    if coming.tempo is not None:
        lines.append(line("card-tempo", tempo=show_tempo(coming.tempo)))
    lines += [line("card-cue", cue=cue) for cue in (coming.cue, exercise.cue) if cue]
    if exercise.note:
        lines.append(line("card-note", note=exercise.note))
    if exercise.link:
        lines.append(line("card-link", link=exercise.link))
    return lines


def _told(at: UnderWay, exercise: PlannedExercise) -> list[Performed]:
    """What is done of an exercise but warm-ups, set by set: one put right later keeps its place."""
    done = [p for p in at.session.done if p.exercise == exercise.name and p.stage is not Stage.WARMUP]
    return sorted(done, key=lambda p: p.set or 0)


def _finished_line(at: UnderWay, exercise: PlannedExercise) -> Line:
    done = _told(at, exercise)
    if not done:
        return line("card-left-out", name=exercise.name)
    return line("card-done", name=exercise.name, sets=joined([done_line(exercise, p) for p in done], "sets-then"))


def _coming_line(at: UnderWay, exercise: PlannedExercise) -> Line:
    done = _told(at, exercise)
    number = at.session.next_set(exercise)
    if done and number is not None:
        shown = joined([done_line(exercise, p) for p in done], "sets-then")
        left = planned_line(exercise, at.live(exercise).sets[number - 1])
        return line("card-begun", name=exercise.name, done=shown, number=number, set=left)
    planned = exercise.sets[0]
    sets = [planned_line(exercise, planned)]
    different = [s for s in exercise.sets[1:] if (s.reps, s.load, s.rir) != (planned.reps, planned.load, planned.rir)]
    if different:
        sets = [planned_line(exercise, s) for s in exercise.sets]
        return line("card-coming-each", name=exercise.name, sets=joined(sets, "sets-then"))
    partner = _partner(at, exercise)
    key = "card-coming-pair" if partner else "card-coming"
    extra: dict[str, str] = {"partner": partner} if partner else {}
    return line(key, name=exercise.name, count=len(exercise.sets), set=sets[0], **extra)


def _finish_line(at: UnderWay, exercise: PlannedExercise, planned: PlannedSet) -> Line:
    match planned.finish:
        case Drop(times=times, percent=(low, high)):
            loads = drops_from(at, exercise, planned.load)
            if loads:
                shown = joined([load_line(exercise, load) for load in loads], "sets-then")
                return line("finish-drop", loads=shown)
            return line("finish-drop-percent", times=times, low=low, high=high)
        case Mini(reps=reps, rest_s=(low, high)):
            return line("finish-mini", reps=reps, low=low, high=high)
        case None:
            raise ValueError("a set without a finish has no finish to show")


def _partner(at: UnderWay, exercise: PlannedExercise) -> str:
    if not exercise.pair:
        return ""
    return next((e.name for e in at.session.plan.exercises if e.pair == exercise.pair and e.name != exercise.name), "")


def _wants_a_load(exercise: PlannedExercise, upcoming: int | None) -> bool:
    if upcoming is None or exercise.load_style is LoadStyle.NONE:
        return False
    return exercise.sets[upcoming - 1].load is None


def _without_doubled_blanks(lines: list[Line]) -> list[Line]:
    kept: list[Line] = []
    for item in lines:
        if item == BLANK and (not kept or kept[-1] == BLANK):
            continue
        kept.append(item)
    return [BLANK, *kept]
