"""The chat page: two sheets of a log side by side, a client and the coach, over the stand-in. In a plain browser.

    standin = StandIn(clock)
    await standin.start(port=8765, wings=[serve_page(control, coaches=(1,))])   # then open standin.url

`control` (a `ClockControl`, or None) gives the clock shown and its steps. The files in `sheet/` are plain HTML, CSS and
JavaScript modules; nothing is built and nothing is fetched from elsewhere. Person ids in `coaches` go on the right.
"""

from bot.tryout.page.control import ClockControl
from bot.tryout.page.wing import serve_page

__all__ = ["ClockControl", "serve_page"]
