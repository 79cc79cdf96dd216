"""Everything tapped twice, or on two phones at once, happens once."""

from collections.abc import Callable

import pytest
import sqlalchemy as sa

from storage.tables import facts
from tests.talks.wireless import ADA, COACH, Wired, Wireless

MONDAY = "2027-01-11 18:05"
EVENING = "2027-01-11 21:00"

Before = Callable[[Wireless], None]


def _data(bot: Wireless, who: int, label: str) -> str:
    return next(d for shown in reversed(bot.screen(who)) for text, d in shown.data if text.startswith(label))


def _to_leg_curl(bot: Wireless) -> None:
    for text in ("60x5", "50x9", "50x9", "skip bench", "skip row", "leg curl 35x12"):
        bot.say(ADA, text)


def _hurt(bot: Wireless) -> None:
    bot.say(ADA, "left knee hurts 4/10")
    bot.until(bot.wall("Europe/Berlin", "2027-01-12 09:00"))


def _missed(bot: Wireless) -> None:
    bot.until(bot.wall("Europe/Berlin", EVENING))


def _said(*texts: str) -> Before:
    def say(bot: Wireless) -> None:
        for text in texts:
            bot.say(ADA, text)

    return say


def _swapped(bot: Wireless) -> None:
    bot.say(ADA, "swap rows")
    bot.tap(ADA, "Machine row")


def _asked_minutes(bot: Wireless) -> None:
    bot.tap(ADA, "Less time")


def _opened(*texts: str) -> Before:
    """Ada says something; the coach looks at her page."""

    def look(bot: Wireless) -> None:
        _said(*texts)(bot)
        bot.say(COACH, "/clients")
        bot.tap(COACH, "Open Ada")

    return look


TWICE: tuple[tuple[int, str, Before], ...] = (
    (ADA, "20 kg", _said()),
    (ADA, "Skip Back squat", _said()),
    (ADA, "9 reps", _said("60x5")),
    (ADA, "2 left", _said("60x5")),
    (ADA, "Undo", _said("60x5", "50x9")),
    (ADA, "End session", _said("60x5")),
    (ADA, "Drop 25 kg: 12", _to_leg_curl),
    (ADA, "7", _said("60x5", "that's me done")),
    (ADA, "Send it to Maren", _said("60x5", "gym is packed today, what a place")),
    (ADA, "None of these", _said("60x5", "600x9")),
    (ADA, "4", _said("my left knee hurts")),
    (ADA, "The same", _hurt),
    (ADA, "Worse", _hurt),
    (ADA, "Gone", _hurt),
    (ADA, "Front squat", _said("60x5", "can't do squats today")),
    (ADA, "Ask Maren", _said("no cable today")),
    (ADA, "In place of Back squat", _said("goblet squat 20x10")),
    (ADA, "Back to Seated cable row", _swapped),
    (ADA, "20 min", _asked_minutes),
    (ADA, "Do it all after all", _said("60x5", "10 min")),
    (ADA, "Leg curl, after all", _said("10 min", "leg curl 30x12")),
    (ADA, "Move to Tue 12 Jan", _missed),
    (ADA, "Move to Wed 13 Jan", _missed),
    (ADA, "Skip it", _missed),
    (COACH, "Handled: pain of Ada", _hurt),
    (COACH, "Lift hold: Back squat", _opened("60x5 left knee hurts 4/10", "bench 18x10 right shoulder hurts 2/10")),
    (COACH, "Answered: Ada", _opened("60x5", "should I use a belt?")),
    (COACH, "Sample programme anew for Ada", _opened()),
)
"""Whose tap, on which button, after what."""


@pytest.mark.parametrize(("who", "label", "before"), TWICE, ids=[label for _, label, _ in TWICE])
def test_a_second_tap_changes_nothing_more(wired: Wired, who: int, label: str, before: Before) -> None:
    """The same button pressed twice before the screen could change: both taps are answered, everybody reads what one
    tap would have made them read, and the sets, holds, days and matters are those of one tap."""
    with wired.bot(MONDAY) as bot:
        before(bot)
        data = _data(bot, who, label)
        assert bot.tap_data(who, data) != "(none)"
        once = _seen(bot)
        assert bot.tap_data(who, data) != "(none)"
        assert _seen(bot) == once
        bot.no_turn_failed()


def _seen(bot: Wireless) -> tuple[object, ...]:
    """What people read, and what is kept of them."""
    read = [(who, [(s.text, s.data) for s in bot.screen(who)]) for who in (ADA, COACH)]
    kept = [
        bot.work.all(sa.text(f"SELECT {columns} FROM {table} ORDER BY 1, 2, 3"))
        for table, columns in (
            ("sets", "session, place, exercise, set_number, reps, thousandths, rir"),
            ("sessions", "id, day, ended, effort"),
            ("matters", "id, kind, key, holds, closed_at IS NULL"),
            ("schedule", "whose, kind, ref, next_due_at"),
        )
    ]
    return (*read, *kept)


def test_a_picked_reading_counts_once(wired: Wired) -> None:
    """The question about a doubtful message answered on two phones: one set."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "60x5")
        bot.say(ADA, "50x9")
        bot.say(ADA, "600x9")
        shown = next(s for s in reversed(bot.screen(ADA)) if any(label == "None of these" for label, _ in s.data))
        data = shown.data[0][1]
        bot.tap_data(ADA, data)
        assert bot.tap_data(ADA, data) == "That is answered already"
        assert len(bot.work.all(sa.text("SELECT 1 FROM sets"))) == 3


def test_an_unaddressed_message_is_sent_once_and_with_the_ones_before_it(wired: Wired) -> None:
    """Three messages of the coach's to nobody: one question about all of them; a name tapped twice sends each once."""
    with wired.bot() as bot:
        numbers = [bot.say(COACH, text) for text in ("Remember to sleep.", "And to eat.", "See you.")]
        assert "these 3 messages" in bot.text(COACH)
        data = _data(bot, COACH, "Send to Ada")
        bot.tap_data(COACH, data)
        bot.tap_data(COACH, data)
        assert [s.relayed for s in bot.screen(ADA) if s.relayed] == numbers
        assert not any("Send to" in label for label, _ in bot.buttons(COACH))


def test_two_phones_at_one_card(wired: Wired) -> None:
    """Set 2 tapped on both, with other numbers: the first counts, the second hears that it is saved already."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "60x5")
        first, second = _data(bot, ADA, "9 reps"), _data(bot, ADA, "10 reps")
        bot.tap_data(ADA, first)
        assert "already" in bot.tap_data(ADA, second)
        rows = bot.work.all(sa.text("SELECT reps FROM sets WHERE set_number = 2"))
        assert [row.reps for row in rows] == [9]


def test_an_update_that_comes_again_is_answered_once(wired: Wired) -> None:
    """The platform may send an update again for a day: it is known by its number."""
    with wired.bot(MONDAY) as bot:
        body = {"message": {**bot.message(ADA, 90_001), "text": "60x5"}}
        for _ in range(3):
            bot.raw(dict(body), update=987_654_321)
        kept = sa.select(facts.c.id).where(facts.c.kind == "Reported")
        assert len(bot.work.all(kept)) == 1
