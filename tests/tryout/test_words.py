"""HTML is read into entities as the platform's client library understands them, and shown again without harm."""

import html
import re

import pytest
from hypothesis import given
from hypothesis import strategies as st
from telegram import Bot, MessageEntity

from bot.tryout.standin import Seat
from bot.tryout.standin.entities import Entity, Words, find_entities, tidy
from bot.tryout.standin.hypertext import read_html
from bot.tryout.standin.markup import show_html
from bot.tryout.standin.refusals import Refusal
from bot.tryout.standin.units import utf16_cut, utf16_length
from tests.tryout.conftest import MINA

TEXTS = st.text(st.characters(exclude_categories=["Cs"]), max_size=60)


@pytest.mark.parametrize(
    ("written", "text", "entities"),
    [
        ("<b>x</b>", "x", [("bold", 0, 1)]),
        ("<B>x</ b></b>"[:-4], None, None),
        ("a <i>b <u>c</u></i>", "a b c", [("italic", 2, 3), ("underline", 4, 1)]),
        ("<s>x</s><del>y</del>", "xy", [("strikethrough", 0, 1), ("strikethrough", 1, 1)]),
        ("<tg-spoiler>x</tg-spoiler>", "x", [("spoiler", 0, 1)]),
        ('<span class="tg-spoiler">x</span>', "x", [("spoiler", 0, 1)]),
        ("<code>x</code>", "x", [("code", 0, 1)]),
        ("<pre>x</pre>", "x", [("pre", 0, 1)]),
        ('<pre><code class="language-python">x</code></pre>', "x", [("pre", 0, 1)]),
        ("<blockquote>x</blockquote>", "x", [("blockquote", 0, 1)]),
        ("<blockquote expandable>x</blockquote>", "x", [("expandable_blockquote", 0, 1)]),
        ('<tg-time unix="1800000000" format="r">soon</tg-time>', "soon", [("date_time", 0, 4)]),
        ("👨‍👩‍👧 <b>x</b>", "👨‍👩‍👧 x", [("bold", 9, 1)]),
        ("1 &lt; 2 &amp; 3 &gt; 2 &quot;&#33;&#x21;&copy;", '1 < 2 & 3 > 2 "!!&copy;', []),
        ("<b></b>x", "x", []),
        ("<a href='https://x.org/?a=1&amp;b=2'>x</a>", "x", [("text_link", 0, 1)]),
        ("<a href='nonsense'>x</a>", "x", []),
        ("<pre>a <b>b</b></pre>", "a b", [("pre", 0, 3)]),
        ("<blockquote>a <blockquote>b</blockquote></blockquote>", "a b", [("blockquote", 0, 3)]),
        ("  <b> x </b>  ", "x", [("bold", 0, 1)]),
    ],
)
def test_reading(written: str, text: str | None, entities: list[tuple[str, int, int]] | None) -> None:
    """ "HTML style" and "MessageEntity": tags, nesting rules, escapes, UTF-16 offsets, trimming."""
    if text is None:
        with pytest.raises(Refusal, match="can't parse entities"):
            read_html(written)
        return
    words = tidy(read_html(written), most=100)
    assert words.text == text
    assert [(one.kind, one.offset, one.length) for one in words.entities] == entities


async def test_the_client_library_reads_the_same(bot: Bot, mina: Seat) -> None:
    """The entities sent back, read by the client library, are the HTML that was sent (its `text_html_urled`)."""
    written = (
        '<b>Squat</b> <i>5 × <u>100</u></i> 👨‍👩‍👧 <s>old</s> <span class="tg-spoiler">x</span> <code>a &lt; b</code>\n'
        '<pre><code class="python">x</code></pre>\n<a href="https://example.org/?a=1">link</a>\n'
        "<blockquote>quoted</blockquote>\n<blockquote expandable>folded</blockquote>"
    )
    sent = await bot.send_message(MINA, written.replace('"python"', '"language-python"'), parse_mode="HTML")
    assert sent.text_html == written
    assert mina.last().words.text == sent.text


async def test_times_keep_their_fallback(bot: Bot, mina: Seat) -> None:
    """ "date-time entity": the text inside is what clients without it show; unix time and format go along."""
    sent = await bot.send_message(MINA, 'Rest until <tg-time unix="1803888000" format="T">18:42</tg-time>', "HTML")
    (entity,) = sent.entities
    assert entity.type == MessageEntity.DATE_TIME
    assert entity.date_time_format == "T"
    assert sent.parse_entity(entity) == "18:42"
    assert mina.last().words.text == "Rest until 18:42"


@pytest.mark.parametrize("bad", ['<tg-time unix="soon">x</tg-time>', '<tg-time unix="1" format="z">x</tg-time>'])
def test_times_that_are_none(bad: str) -> None:
    """ "date-time entity": unix seconds, and a format of r or w, d, t."""
    with pytest.raises(Refusal, match="can't parse entities"):
        read_html(bad)


@pytest.mark.parametrize(
    ("said", "kinds"),
    [
        ("/start c_x", ["bot_command"]),
        ("see https://t.me/chalk_bot?start=c_x.", ["url"]),
        ("t.me/chalk_bot?start=c_x", ["url"]),
        ("mail me@example.org or @chalk_bot #legs", ["email", "mention", "hashtag"]),
        ("100/5 and 8/10, 3x5@8", []),
        ("plain words", []),
    ],
)
def test_what_is_found_unasked(said: str, kinds: list[str]) -> None:
    """ "MessageEntity": commands, links, addresses, mentions and hashtags are found by the platform itself."""
    assert [one.kind for one in find_entities(Words(said)).entities] == kinds


def test_a_link_at_the_end_of_a_sentence_ends_before_the_stop() -> None:
    """ "MessageEntity": a link's full stop is not part of it (common practice of the clients, no source)."""
    (entity,) = find_entities(Words("see https://t.me/x.")).entities
    assert utf16_cut("see https://t.me/x.", entity.offset, entity.length) == "https://t.me/x"


@given(TEXTS)
def test_escaped_text_comes_back(text: str) -> None:
    """ "HTML style": what is escaped is read as it was, with no entities."""
    words = read_html(html.escape(text))
    # `html.escape` writes an apostrophe as a numeric reference; the platform reads those.
    assert words == Words(text)


@given(st.text(alphabet="<>/&;=\"' abipre#x1", max_size=40))
def test_any_markup_is_read_or_refused(written: str) -> None:
    """ "HTML style": never another error, and every entity lies within the text."""
    words = read_or_refuse(written)
    if isinstance(words, str):
        assert words.startswith("Bad Request: can't parse entities: ")
        return
    assert all(0 <= one.offset < one.end <= utf16_length(words.text) for one in words.entities)


def read_or_refuse(written: str) -> Words | str:
    try:
        return tidy(read_html(written), most=100)
    except Refusal as refusal:
        return refusal.description


@given(TEXTS)
def test_units_are_those_of_the_client_library(text: str) -> None:
    """ "MessageEntity": offsets in UTF-16 code units, as the client library's own conversion counts them."""
    whole = MessageEntity(MessageEntity.BOLD, 0, len(text))
    (counted,) = MessageEntity.adjust_message_entities_to_utf_16(text, [whole])
    assert utf16_length(text) == counted.length


SPANS = st.builds(
    Entity,
    st.sampled_from(["bold", "italic", "code", "pre", "blockquote", "spoiler", "text_link", "date_time"]),
    st.integers(0, 30),
    st.integers(1, 30),
    st.sampled_from(['https://x.org/"><script>', "javascript:x", ""]),
)


@given(TEXTS, st.lists(SPANS, max_size=5))
def test_shown_html_is_harmless(text: str, spans: list[Entity]) -> None:
    """The page's HTML has balanced tags, no script, and says exactly the text."""
    words = tidy(Words(text, tuple(spans)), most=100)
    shown = show_html(words)
    stack: list[str] = []
    for closing, name in re.findall(r"<(/?)(\w+)[^>]*>", shown):
        if closing:
            assert stack.pop() == name
        else:
            stack.append(name)
    assert not stack
    assert "<script" not in shown
    assert 'href="javascript' not in shown
    whole = all(_on_a_character(words.text, at) for one in words.entities for at in (one.offset, one.end))
    if whole:
        assert html.unescape(re.sub(r"<[^>]*>", "", shown)) == html.unescape(html.escape(words.text, quote=False))


def _on_a_character(text: str, at: int) -> bool:
    return utf16_length(utf16_cut(text, 0, at)) == at and "�" not in utf16_cut(text, 0, at)
