"""A client's own pace: learnt from the times between reports, shown on the card once it is known."""

import re
from datetime import timedelta

from bot.training.samples import sample_programme
from bot.training.timing import session_time
from tests.talks.wireless import ADA, Wired, Wireless


def card(bot: Wireless) -> str:
    """The newest card."""
    return next(s.text for s in reversed(bot.screen(ADA)) if re.search(r"· about \d+ min", s.text))


def train(bot: Wireless, place: int, pace: float) -> None:
    """Every set of a workout, reported one by one, each after its prescribed seconds times the pace."""
    workout = sample_programme().workouts[place]
    for step in session_time(workout.exercises).steps:
        bot.until(bot.now + timedelta(seconds=step.seconds * pace))
        exercise = next(e for e in workout.exercises if e.name == step.exercise)
        reps = exercise.sets[step.set - 1].reps.low
        load = "" if exercise.load_style.value in ("none", "bodyweight") else "20"
        bot.say(ADA, f"{step.exercise} {load}x{reps}" if load else f"{step.exercise} {reps}")
    bot.say(ADA, "that's me done")


def test_the_card_says_minutes_at_their_own_pace_once_known(wired: Wired) -> None:
    """Half as slow again as prescribed: after a session the minutes are called theirs, and are more than planned."""
    with wired.bot("2027-01-11 18:00") as bot:
        assert "at your pace" not in card(bot)
        train(bot, 0, 1.5)
        bot.until(bot.wall("Europe/Berlin", "2027-01-14 18:00"))
        found = re.search(r"about (\d+) min at your pace", card(bot))
        assert found
        assert int(found[1]) > session_time(sample_programme().workouts[1].exercises).minutes
        bot.no_turn_failed()


def test_a_batch_teaches_nothing(wired: Wired) -> None:
    """All sets in one message at the end."""
    with wired.bot("2027-01-11 18:00") as bot:
        bot.wait(40)
        bot.say(ADA, "60x5, 50x9, 50x9, bench 18x10, row 40x10, bench 18x10, row 40x10")
        bot.say(ADA, "that's me done")
        bot.until(bot.wall("Europe/Berlin", "2027-01-14 18:00"))
        assert "at your pace" not in card(bot)


def test_a_session_taken_up_again_counts_once(wired: Wired) -> None:
    """The same end twice gives the same pace."""
    with wired.bot("2027-01-11 18:00") as bot:
        train(bot, 0, 1.4)
        bot.say(ADA, "/undo")
        bot.say(ADA, "that's me done")
        bot.until(bot.wall("Europe/Berlin", "2027-01-14 18:00"))
        twice = re.findall(r"about (\d+) min at your pace", card(bot))
    with wired.bot("2027-01-11 18:00") as bot:
        train(bot, 0, 1.4)
        bot.until(bot.wall("Europe/Berlin", "2027-01-14 18:00"))
        once = re.findall(r"about (\d+) min at your pace", card(bot))
    assert len(once) == len(twice) == 1
    assert abs(int(once[0]) - int(twice[0])) <= 1
