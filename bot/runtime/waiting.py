"""Waiting on something that happens, or on time."""

import asyncio


async def wait_for(event: asyncio.Event, seconds: float) -> None:
    """Returns when the event is set, or after so many seconds."""
    try:
        async with asyncio.timeout(seconds):
            await event.wait()
    except TimeoutError:
        return
