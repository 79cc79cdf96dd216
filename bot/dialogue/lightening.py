"""A light week offered to the coach, where three signs agree; the coach makes it, or doesn't want it now."""

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import CoachDesk, Desk, DigestEntry
from bot.dialogue.incoming import Tapped
from bot.dialogue.phrases import joined
from bot.dialogue.turn import Turn
from bot.saying import Button, Line, Rows, Toast, line
from bot.training.facts import LightWeekDeclined

MOST_OFFERS = 4
"""In one digest."""


def offer_lines(entries: tuple[DigestEntry, ...]) -> list[Line]:
    """Who, and what speaks for it."""
    return [
        line("light-entry", name=e.name, signs=joined([line(f"light-sign-{s.value}") for s in e.signs]))
        for e in entries
        if e.signs
    ][:MOST_OFFERS]


def offer_rows(entries: tuple[DigestEntry, ...]) -> Rows:
    """For each a button that makes it, and one that doesn't."""
    return tuple(
        (
            Button(
                line("light-make", name=e.name, monday=e.next_monday),
                show_press("c.light", e.client, e.next_monday.isoformat(), 1),
            ),
            Button(line("light-not", name=e.name), show_press("c.nolight", e.client)),
        )
        for e in [e for e in entries if e.signs][:MOST_OFFERS]
        if e.next_monday is not None
    )


def decline(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """Not now: it is not offered again for some weeks."""
    del desk, press
    if coach.about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    fact = LightWeekDeclined(coach.about.profile.id)
    return Turn((fact,), (Toast(tap.query, line("toast-light-not", name=coach.about.profile.name)),))
