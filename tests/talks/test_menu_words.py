"""The pages of the menu asked for in plain words, as somebody types who never saw a slash."""

import pytest

from bot.dialogue.menuwords import asked_page
from bot.wording.menu import COMMANDS
from tests.talks.wireless import ADA, COACH, Wired

MONDAY = "2027-01-11 18:05"


@pytest.mark.parametrize(
    ("said", "command"),
    [
        ("today", "/today"),
        ("Today?", "/today"),
        ("What\u2019s today", "/today"),
        ("whats on today??", "/today"),
        ("This week", "/week"),
        ("undo!", "/undo"),
        ("Settings", "/settings"),
        ("export my data", "/export"),
        ("privacy", "/privacy"),
        ("help", "/help"),
        ("  today  \n", "/today"),
        ("", None),
        ("today 60x8", None),
        ("today 8", None),
        ("\u0668 today", None),
        ("today \u00bd", None),
        ("nicht today \u00fc", None),
        ("today \U0001f4aa", "/today"),
        ("today was hard", None),
        ("not today", None),
        ("skip today", None),
        ("week off", None),
        ("help me with squats", None),
        ("pain", None),
        ("today" * 40, None),
    ],
)
def test_which_words_ask_for_a_page(said: str, command: str | None) -> None:
    """The whole message, whatever its case and marks; words about anything else are none."""
    assert asked_page(said) == command
    assert command is None or command[1:] in COMMANDS["client"]


@pytest.mark.parametrize("said", ["today", "this week", "settings", "privacy", "export"])
def test_a_page_comes_by_its_plain_word_as_by_its_command(wired: Wired, said: str) -> None:
    """The same page by either."""
    command = asked_page(said)
    assert command is not None
    pages = []
    for words in (said, command):
        with wired.bot(MONDAY) as bot:
            bot.say(ADA, words)
            pages.append([s.text for s in bot.screen(ADA)])
    assert pages[0] == pages[1]
    assert not any("no set in that" in text for text in pages[0])


def test_undo_takes_back_what_was_kept_and_says_where_nothing_was(wired: Wired) -> None:
    """Typed as a word it is never without an answer."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "undo")
        assert "no set in that" not in bot.text(ADA)
        bot.say(ADA, "/today")
        bot.say(ADA, "60x5")
        assert any("1. done: 60 kg × 5" in s.text for s in bot.screen(ADA))
        bot.say(ADA, "undo")
        assert not any("1. done: 60 kg × 5" in s.text for s in bot.screen(ADA))


def test_who_asks_for_help_gets_the_page_and_the_coach_hears_of_it(wired: Wired) -> None:
    """A word that may mean the bot or the bar: both are answered."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "help")
        assert any("help" in s.text for s in bot.screen(COACH)[-1:])
        bot.say(ADA, "/help")
        pages = [s.text for s in bot.screen(ADA)]
        assert pages[-1] in pages[:-1]
