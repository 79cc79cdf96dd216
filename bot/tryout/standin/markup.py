"""Words with entities as safe HTML, for the chat page. Everything is escaped; links lead to web addresses only."""

from html import escape
from itertools import pairwise

from bot.tryout.standin.entities import Entity, Words
from bot.tryout.standin.units import utf16_cut, utf16_length

_TAGS = {
    "bold": "b",
    "italic": "i",
    "underline": "u",
    "strikethrough": "s",
    "code": "code",
    "pre": "pre",
    "blockquote": "blockquote",
}
_WEB = ("http://", "https://", "mailto:")


def show_html(words: Words) -> str:
    """The words as HTML; entities that overlap only in part are closed and opened again."""
    edges = sorted({0, utf16_length(words.text), *(at for one in words.entities for at in (one.offset, one.end))})
    out: list[str] = []
    stack: list[Entity] = []
    for begin, end in pairwise(edges):
        wanted = [one for one in words.entities if one.offset <= begin and end <= one.end]
        keep = 0
        while keep < min(len(stack), len(wanted)) and stack[keep] is wanted[keep]:
            keep += 1
        out.extend(_tags(one, words)[1] for one in reversed(stack[keep:]))
        out.extend(_tags(one, words)[0] for one in wanted[keep:])
        stack = wanted
        out.append(escape(utf16_cut(words.text, begin, end - begin), quote=False))
    out.extend(_tags(one, words)[1] for one in reversed(stack))
    return "".join(out)


def _tags(entity: Entity, words: Words) -> tuple[str, str]:
    match entity.kind:
        case "text_link":
            return _link(entity.detail)
        case "url":
            covered = utf16_cut(words.text, entity.offset, entity.length)
            return _link(covered if "://" in covered else f"https://{covered}")
        case "email":
            return _link(f"mailto:{utf16_cut(words.text, entity.offset, entity.length)}")
        case "expandable_blockquote":
            return '<blockquote class="folded">', "</blockquote>"
        case "spoiler":
            return '<span class="spoiler" tabindex="0">', "</span>"
        case "date_time":
            layout = escape(entity.detail, quote=True)
            return f'<time data-unix="{entity.unix}" data-format="{layout}">', "</time>"
        case "bot_command":
            return '<span class="command">', "</span>"
        case kind if kind in _TAGS:
            return f"<{_TAGS[kind]}>", f"</{_TAGS[kind]}>"
        case _:
            return "<span>", "</span>"


def _link(address: str) -> tuple[str, str]:
    if not address.startswith(_WEB):
        return "<span>", "</span>"
    return f'<a href="{escape(address, quote=True)}" rel="noreferrer noopener" target="_blank">', "</a>"
