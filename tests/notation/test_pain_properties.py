"""What must never change a reading of pain, and that nothing raises."""

import random
from collections.abc import Callable
from functools import partial

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.notation.hurt.patterns import SPELLER
from bot.notation.pain import LONGEST, read_pain
from tests.growth import steps
from tests.notation.test_pain import CASES, Case

case = st.sampled_from(CASES)
SETS = ("60x5", "60x5@8", "60 x 5", "22.5kg x 10", "3x10", "bench 60x5, 60x5", "8 reps at 60", "rpe 8")


@given(st.text(max_size=400))
def test_no_text_raises(text: str) -> None:
    """Spans lie inside the text, in order and apart."""
    reading = read_pain(text)
    edges = [edge for span in reading.spans for edge in span]
    assert edges == sorted(edges)
    assert all(0 <= e <= len(text) for e in edges)


@given(
    st.lists(
        st.sampled_from([*"0123456789/@x.,-'’ \n", "pain", "knee", "no", "chest", "é", "½", "①", "４", "٣", "😅"]),
        max_size=60,
    )
)
def test_no_mixture_of_what_matters_raises(pieces: list[str]) -> None:
    """Digits of any script, marks and cue words in any order."""
    assert read_pain("".join(pieces)).spans is not None


@given(case, st.sampled_from([str.upper, str.lower, str.title, str.swapcase]))
def test_case_never_changes_it(row: Case, change: Callable[[str], str]) -> None:
    """Shouted or not."""
    assert read_pain(change(row.text)).pain == read_pain(row.text).pain


@given(case, st.sampled_from(["  ", "\t", "\u00a0", "\u2009 "]))
def test_spacing_never_changes_it(row: Case, blank: str) -> None:
    """Any blank, any number of them."""
    assert read_pain(row.text.replace(" ", blank)).pain == read_pain(row.text).pain


@given(case, st.sampled_from(["!", "...", " !!", ".", "…", ")"]))
def test_marks_at_the_end_never_change_it(row: Case, end: str) -> None:
    """Nor does a full stop."""
    assert read_pain(row.text + end).pain == read_pain(row.text).pain


@given(case, st.sampled_from(["😅", "💪🏼", "😂😂", "❤️", "👍"]), st.booleans())
def test_emoji_never_change_it(row: Case, emoji: str, first: bool) -> None:
    """At either end, or between words."""
    text = f"{emoji} {row.text}" if first else f"{row.text} {emoji}"
    assert read_pain(text).pain == read_pain(row.text).pain
    assert read_pain(row.text.replace(" ", f" {emoji} ", 1)).pain == read_pain(row.text).pain


@given(case, st.sampled_from(["’", "‘", "`", "´"]))
def test_any_apostrophe_is_one(row: Case, mark: str) -> None:
    """As phones type it."""
    assert read_pain(row.text.replace("'", mark)).pain == read_pain(row.text).pain


@given(case, st.sampled_from(SETS), st.sampled_from([", ", "\n", ". "]), st.booleans())
@settings(max_examples=300)
def test_a_set_report_beside_it_never_changes_it(row: Case, report: str, glue: str, first: bool) -> None:
    """Before it or after it; and the set stays outside the spans."""
    text = f"{report}{glue}{row.text}" if first else f"{row.text}{glue}{report}"
    reading = read_pain(text)
    assert reading.pain == read_pain(row.text).pain
    start = 0 if first else len(text) - len(report)
    assert all(end <= start or begin >= start + len(report) for begin, end in reading.spans)


LETTERS = "abcdefghijklmnopqrstuvwxyz"


def one_slip(word: str, chance: random.Random) -> str:
    """The word with one letter more, less, other, or two swapped."""
    i = chance.randrange(len(word))
    match chance.randrange(4):
        case 0:
            return word[:i] + word[i + 1 :]
        case 1:
            return word[:i] + chance.choice(LETTERS) + word[i:]
        case 2:
            return word[:i] + chance.choice(LETTERS) + word[i + 1 :]
        case _:
            j = min(i, len(word) - 2) if len(word) > 1 else 0
            return word[:j] + word[j + 1 : j + 2] + word[j : j + 1] + word[j + 2 :]


def slipped(text: str, chance: random.Random) -> list[str]:
    """The text once for each of its well-spelt words, with one slip in it that makes no other real word."""
    words = text.split(" ")
    out: list[str] = []
    if any(w.isalpha() and w.islower() and not SPELLER.is_known(w) for w in words):
        return out
    for i, word in enumerate(words):
        if len(word) < 3 or not word.isalpha() or not word.islower() or not SPELLER.is_known(word):
            continue
        other = one_slip(word, chance)
        if other != word and not SPELLER.is_known(other):
            out.append(" ".join([*words[:i], other, *words[i + 1 :]]))
    return out


@pytest.mark.parametrize("seed", range(4))
def test_an_urgent_sign_survives_a_slip_in_any_word(seed: int) -> None:
    """One slip of the thumb in any one word, wherever it makes no other real word: still urgent in 98.5 of 100.

    The few that are lost are words that became nearer to another word of ours than to themselves.
    """
    chance = random.Random(seed)
    typed = [t for c in CASES if c.pain and c.pain.urgent for t in slipped(c.text, chance)]
    lost = [t for t in typed if not ((got := read_pain(t).pain) and got.urgent)]
    assert len(typed) > 800
    assert len(lost) <= 0.015 * len(typed), lost


def test_pain_survives_a_slip_in_any_word() -> None:
    """Still pain in 96 of 100."""
    chance = random.Random(7)
    typed = [t for c in CASES if c.pain and not c.pain.urgent for t in slipped(c.text, chance)]
    lost = [t for t in typed if read_pain(t).pain is None]
    assert len(lost) <= 0.04 * len(typed), lost


def test_no_slip_makes_pain_of_talk() -> None:
    """A slip in a message that is no pain is no pain in 95 of 100: in doubt it is pain."""
    chance = random.Random(11)
    typed = [t for c in CASES if c.pain is None for t in slipped(c.text, chance)]
    made = [t for t in typed if read_pain(t).pain is not None]
    assert len(made) <= 0.05 * len(typed), made


def test_work_grows_with_length_and_no_faster() -> None:
    """The longest message, dense with pain, beside half of it; and what is longer than the longest costs no more."""
    dense = " ".join(c.text for c in random.Random(3).sample(CASES, 500))
    half, whole, over = (steps(partial(read_pain, t)) for t in (dense[: LONGEST // 2], dense[:LONGEST], dense * 20))
    assert whole < 3 * half
    assert over < 1.5 * whole
