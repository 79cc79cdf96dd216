"""Signs of life: left whole, read by another process, and honest about silence."""

from datetime import UTC, datetime, timedelta
from pathlib import Path

from bot.runtime.health import STALE_S, Beat, Pulse, beat_of, keep_beat, last_beat

NOON = datetime(2027, 3, 1, 12, 0, tzinfo=UTC)


def beat(*, polled_s_ago: int | None = 5, trouble: str = "") -> Beat:
    """A beat at noon."""
    polled = None if polled_s_ago is None else NOON - timedelta(seconds=polled_s_ago)
    pulse = Pulse(NOON - timedelta(hours=1), polled, trouble, 3, 2)
    return beat_of(pulse, sent=4, now=NOON)


def test_a_beat_is_left_and_found(tmp_path: Path) -> None:
    """All of it; none where none was left, or where it is broken."""
    file = tmp_path / "beat.json"
    assert last_beat(file) is None
    keep_beat(file, beat())
    assert last_beat(file) == beat()
    file.write_text("{")
    assert last_beat(file) is None


def test_all_is_well_while_the_platform_answers() -> None:
    """And not after a minute and a half of silence, with trouble told, or when the process is gone."""
    assert beat().is_well(NOON)
    assert not beat(polled_s_ago=STALE_S + 1).is_well(NOON)
    assert not beat(polled_s_ago=None).is_well(NOON)
    assert not beat(trouble="another process polls").is_well(NOON)
    assert not beat().is_well(NOON + timedelta(seconds=STALE_S + 1))
    assert beat(polled_s_ago=None).is_well(NOON, polls=False)


def test_a_poll_clears_the_trouble() -> None:
    """The last word counts."""
    pulse = Pulse(NOON, poll_trouble="another process polls")
    pulse.polled(NOON, 2)
    assert (pulse.poll_trouble, pulse.updates, pulse.last_poll_at) == ("", 2, NOON)
