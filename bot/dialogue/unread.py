"""`/inbox`: what clients asked and the coach has not answered, the oldest first, and reports that nobody could read."""

from bot.dialogue.buttons import show_press
from bot.dialogue.desk import CoachDesk, Desk, DigestEntry
from bot.dialogue.phrases import shortened
from bot.dialogue.turn import Turn
from bot.saying import Button, Line, Rows, Say, line
from bot.training.calendar import local_time

MOST_SHOWN = 12
LONGEST = 200
"""Characters of a message that are shown."""


def show(desk: Desk, coach: CoachDesk) -> Turn:
    """It stays until it is answered, or marked as answered."""
    me = coach.profile
    waiting = sorted((e for e in coach.waiting if e.questions or e.doubts), key=_oldest)
    if not waiting:
        return Turn(says=(Say(me.chat, (line("inbox-empty"),), slot="inbox", fresh=True),))
    lines: list[Line] = [line("inbox-title", count=sum(len(e.questions) + len(e.doubts) for e in waiting))]
    rows: list[tuple[Button, ...]] = []
    for entry in waiting[:MOST_SHOWN]:
        lines += [
            line(
                "inbox-entry",
                name=entry.name,
                day=local_time(q.at, me.zone).date(),
                time=local_time(q.at, me.zone),
                words=shortened(q.words, LONGEST) if q.words else line("a-message"),
            )
            for q in entry.questions
        ]
        lines += [line("inbox-doubt", name=entry.name, words=shortened(d.words, LONGEST)) for d in entry.doubts]
        rows.append(
            (
                Button(line("reply-to", name=entry.name), show_press("c.reply", entry.client)),
                Button(line("inbox-answered", name=entry.name), show_press("c.answered", entry.client)),
            )
        )
    if len(waiting) > MOST_SHOWN:
        lines.append(line("inbox-more", count=len(waiting) - MOST_SHOWN))
    del desk
    buttons: Rows = tuple(rows)
    return Turn(says=(Say(me.chat, tuple(lines), buttons, slot="inbox", fresh=True),))


def _oldest(entry: DigestEntry) -> tuple[bool, object]:
    """Questions go before unclear reports."""
    return (not entry.questions, min((q.at for q in entry.questions), default=entry.name))
