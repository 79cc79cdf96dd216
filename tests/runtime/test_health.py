"""Signs of life: left whole, read by another process, and honest about silence."""

from dataclasses import replace
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
    file = tmp_path / "heartbeat-a.json"
    assert last_beat(tmp_path, NOON) is None
    keep_beat(file, beat())
    assert last_beat(tmp_path, NOON) == last_beat(tmp_path, NOON + timedelta(days=1)) == beat()
    file.write_text("{")
    assert last_beat(tmp_path, NOON) is None


def test_several_processes_are_seen_as_one(tmp_path: Path) -> None:
    """The live ones: the latest poll of any, everything counted; a dead one's file is left aside."""
    for name, one in (("a", beat(polled_s_ago=None)), ("b", beat(polled_s_ago=7))):
        keep_beat(tmp_path / f"heartbeat-{name}.json", one)
    keep_beat(tmp_path / "heartbeat-c.json", replace(beat(trouble="old"), at=NOON - timedelta(days=2)))
    seen = last_beat(tmp_path, NOON)
    assert seen is not None
    assert (seen.last_poll_at, seen.turns, seen.poll_trouble) == (NOON - timedelta(seconds=7), 4, "")
    assert seen.is_well(NOON)


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
