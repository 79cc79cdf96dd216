"""The demo week, as `chalkpost try --play` plays it."""

from bot.cli.tryout import Rehearsal
from bot.tryout.practice.week import play


async def test_the_demo_week_plays_to_its_end(held: Rehearsal) -> None:
    """Every act answers as it should, the week's picture is there, and nothing is set aside or left waiting."""
    lines: list[str] = []
    stage = held.stage(lines.append)
    await play(stage, held.coach_payload)
    told = "\n".join(lines)
    for wanted in ("Corrected", "PAIN: Cleo", "MISSED: Ada", "next time", "<photo>", "Digest for Maren", "goes to Bo"):
        assert wanted in told
    assert "went wrong" not in told
