"""A programme looked over, in lines: minutes of every session, hard sets by muscle, cautions, what it changes."""

from collections.abc import Iterable

from bot.saying import Line, line
from bot.training.cautions import Cautioned
from bot.training.changes import Change
from bot.training.people import Programme
from bot.training.review import MuscleWeek, SessionLength, review
from bot.training.shown import show_amount, show_span

MOST_CAUTIONS = 8
MOST_CHANGES = 15


def review_lines(programme: Programme) -> list[Line]:
    """All that can be told before anybody gets it."""
    looked = review(programme)
    lines = [line("lookover-title", title=programme.title)]
    lines += [length_line(one) for one in looked.lengths]
    if looked.muscles:
        days = ", ".join(str(n) for n, _ in looked.muscles[0].sets)
        width = max(len(one.muscle) for one in looked.muscles)
        lines.append(line("review-muscles", days=days))
        lines.append(table(muscle_line(one, width) for one in looked.muscles))
    lines += few([caution_line(one) for one in looked.cautions], MOST_CAUTIONS)
    return lines


def table(rows: Iterable[Line]) -> Line:
    """Rows as one block, a line each; there is one at least."""
    whole: Line | None = None
    for row in rows:
        whole = row if whole is None else line("lookover-rows", before=whole, row=row)
    assert whole is not None
    return line("lookover-table", rows=whole)


def few(lines: list[Line], most: int) -> list[Line]:
    """The first of them, and how many more there are."""
    return lines if len(lines) <= most else [*lines[:most], line("lookover-more", count=len(lines) - most)]


def length_line(one: SessionLength) -> Line:
    """A session's minutes."""
    if one.wanted is None:
        return line("review-session", title=one.workout, minutes=one.minutes)
    return line("review-session-wanted", title=one.workout, minutes=one.minutes, wanted=one.wanted)


def muscle_line(one: MuscleWeek, width: int) -> Line:
    """A muscle's hard sets, for each number of days, in columns."""
    sets = "".join(show_amount(sets).rjust(6) for _, sets in one.sets)
    muscle = one.muscle.ljust(width)
    if one.target is None:
        return line("review-muscle", muscle=muscle, sets=sets)
    return line("review-muscle-target", muscle=muscle, sets=sets, target=show_span(one.target.low, one.target.high))


def caution_line(one: Cautioned) -> Line:
    """A caution in words."""
    fields = ("workout", "exercise", "muscle", "found", "wanted")
    days = ", ".join(str(n) for n in one.days)
    return Line(f"caution-{one.what.value}", (*((name, str(getattr(one, name))) for name in fields), ("days", days)))


def change_line(one: Change) -> Line:
    """A change in words; what was not there is a dash."""
    fields = ("workout", "exercise", "before", "after")
    return Line(f"change-{one.what.value}", tuple((name, str(getattr(one, name)) or "–") for name in fields))


def change_lines(changes: Iterable[Change]) -> list[Line]:
    """What changes, or that nothing does."""
    lines = few([change_line(one) for one in changes], MOST_CHANGES)
    return lines or [line("change-none")]
