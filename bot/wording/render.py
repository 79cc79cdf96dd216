"""A `Say` as the chat takes it: HTML, a keyboard, and plain words for where the markup is refused.

Limits are the platform's (Bot API): 4,096 UTF-16 units after parsing for a text, 1,024 for a caption; ours are lower
by a margin. What is longer is split between lines, never inside one (`render_parts`), or clipped where a message has
to stay one.
"""

from dataclasses import dataclass

from bot.saying import Button, Line, Rows, Say
from bot.wording.bundle import plain, show_html, show_plain

TEXT_LIMIT = 3_800
CAPTION_LIMIT = 1_000
LABEL_LIMIT = 40
"""Characters of a button's label: what a phone shows without cutting. Common practice, no source."""
CLIPPED = "…"


@dataclass(frozen=True, slots=True)
class Rendered:
    """A message ready to send. `keyboard` rows hold the platform's button objects; `None` is no keyboard."""

    html: str
    plain: str
    keyboard: tuple[tuple[dict[str, object], ...], ...] | None


def render_say(say: Say) -> Rendered:
    """The message as one: what goes over the limit is clipped at a line's end, with a mark."""
    return render_one(say.lines, say.buttons, CAPTION_LIMIT if say.picture else TEXT_LIMIT)


def render_one(lines: tuple[Line, ...], buttons: Rows, limit: int) -> Rendered:
    """These lines as one message of at most `limit` UTF-16 units."""
    shown = [show_html(line) for line in lines]
    kept = list(shown)
    while len(kept) > 1 and _length(kept) > limit:
        kept.pop()
    if len(kept) < len(shown):
        kept.append(CLIPPED)
    return _rendered(kept, _keyboard(buttons), limit)


def render_parts(say: Say) -> tuple[Rendered, ...]:
    """The message in as many parts as it takes; the buttons stand under the last."""
    if say.picture or say.slot:
        return (render_say(say),)
    parts: list[list[str]] = [[]]
    for text in _lines(say):
        if parts[-1] and _length([*parts[-1], text]) > TEXT_LIMIT:
            parts.append([])
        parts[-1].append(text)
    keyboard = _keyboard(say.buttons)
    last = len(parts) - 1
    return tuple(_rendered(p, keyboard if n == last else None, TEXT_LIMIT) for n, p in enumerate(parts))


def render_caption(lines: tuple[Line, ...], buttons: Rows) -> Rendered:
    """The words beside a file, as one message."""
    return render_one(lines, buttons, CAPTION_LIMIT)


def _lines(say: Say) -> list[str]:
    return [show_html(line) for line in say.lines]


def _length(lines: list[str]) -> int:
    return sum(len(plain(text).encode("utf-16-le")) // 2 + 1 for text in lines)


def _rendered(lines: list[str], keyboard: tuple[tuple[dict[str, object], ...], ...] | None, limit: int) -> Rendered:
    markup = "\n".join(lines).strip("\n")
    words = plain(markup)
    if len(words.encode("utf-16-le")) // 2 > limit:
        words = words[:limit].rstrip() + CLIPPED
        markup = words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
    return Rendered(markup, words, keyboard)


def _keyboard(rows: Rows) -> tuple[tuple[dict[str, object], ...], ...] | None:
    shown = tuple(tuple(_button(b) for b in row) for row in rows if row)
    return shown or None


def _button(button: Button) -> dict[str, object]:
    label = " ".join(show_plain(button.label).split())
    text = label if len(label) <= LABEL_LIMIT else label[: LABEL_LIMIT - 1].rstrip() + CLIPPED
    if button.url:
        return {"text": text, "url": button.url}
    if button.copy:
        return {"text": text, "copy_text": {"text": button.copy}}
    return {"text": text, "callback_data": button.data}
