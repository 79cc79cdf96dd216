"""The pace: never more than the platform takes, and no slower than needed."""

from dataclasses import dataclass

from hypothesis import given
from hypothesis import strategies as st

from bot.runtime.pacing import Bucket, Pace, Pacer


@dataclass(slots=True)
class Seconds:
    """Monotonic seconds moved by hand."""

    at_s: float = 50.0

    def __call__(self) -> float:
        return self.at_s


def test_a_chat_gets_a_short_burst_then_one_a_second() -> None:
    """Three at once, the fourth a second later; other chats are not held up."""
    seconds = Seconds()
    pacer = Pacer(Pace(per_s=25, per_chat_s=1, burst=3), monotonic=seconds)
    for _ in range(3):
        assert pacer.chat_wait_s(7) == 0
        pacer.take(7)
    assert pacer.chat_wait_s(7) == 1
    assert pacer.chat_wait_s(8) == 0
    seconds.at_s += 0.5
    assert pacer.chat_wait_s(7) == 0.5
    seconds.at_s += 0.5
    assert pacer.chat_wait_s(7) == 0


def test_everything_together_keeps_the_pace() -> None:
    """In any second at most thirty go out (the platform's limit), and in ten seconds no fewer than 240."""
    seconds = Seconds()
    pacer = Pacer(Pace(), monotonic=seconds)
    sent_at: list[float] = []
    for _ in range(1_000):
        for _ in range(pacer.room()):
            pacer.take(len(sent_at))
            sent_at.append(seconds.at_s)
        seconds.at_s += 0.01
    assert max(sum(1 for b in sent_at if 0 <= b - a < 1) for a in sent_at) <= 30
    assert len(sent_at) >= 240


def test_a_pause_holds_everything_until_it_is_over() -> None:
    """And says how long that is."""
    seconds = Seconds()
    pacer = Pacer(Pace(), monotonic=seconds)
    pacer.pause(4)
    assert pacer.room() == 0
    assert pacer.room_after_s() == 4
    seconds.at_s += 4
    assert pacer.room() > 0


def test_chats_that_rested_are_forgotten() -> None:
    """A hundred thousand chats take no more memory than a thousand."""
    seconds = Seconds()
    pacer = Pacer(Pace(), monotonic=seconds)
    for chat in range(5_000):
        pacer.take(chat)
        seconds.at_s += 0.1
    assert len(pacer._chats) <= 1_001


@given(st.lists(st.floats(0, 5), max_size=60))
def test_a_bucket_never_gives_more_than_its_size_and_what_it_gained(pauses: list[float]) -> None:
    """Whatever the rhythm of asking: taken is at most the size plus the seconds passed."""
    now_s, taken = 0.0, 0
    bucket = Bucket(per_s=1, size=3, now_s=now_s)
    for pause in pauses:
        now_s += pause
        if bucket.wait_s(now_s) == 0:
            bucket.take(now_s)
            taken += 1
    assert taken <= 3 + now_s + 1e-6
