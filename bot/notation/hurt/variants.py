"""Spellings that mean the same word: contractions without their apostrophe, chat shorthand, homophones of dictation."""

_ROWS = """
can't: cant cannot can'not couldn't couldnt
don't: dont
doesn't: doesnt
didn't: didnt
won't: wont
isn't: isnt
wasn't: wasnt
aren't: arent
weren't: werent
hasn't: hasnt
haven't: havent
hadn't: hadnt
ain't: aint
wouldn't: wouldnt
shouldn't: shouldnt
i'm: im
i've: ive
it's: its
that's: thats
there's: theres
without: w/o w/out witout withot
because: cause cos coz cuz bcos bc becos
though: tho
with: wth
something: smth sth summat sumthin somethin
right: rt rite righ rigth rihgt rght rigt
left: lft lef letf elft lt
lower: lwr
nearly: nearlly
and: n
nothing: nuthin nowt
felt: feeled
hurt: hurted
weed: wee'd
peed: pee'd
"""


def _canon() -> dict[str, str]:
    table: dict[str, str] = {}
    for row in _ROWS.strip().splitlines():
        word, others = row.split(":")
        table.update(dict.fromkeys(others.split(), word))
    return table


CANON = _canon()
"""From a spelling to the word it stands for."""

UNABLE = frozenset(
    {
        *(("can", w) for w in ("not", "barely", "hardly", "scarcely")),
        *(("could", w) for w in ("not", "barely", "hardly", "scarcely")),
        *(("can't", w) for w in ("even", "really", "properly", "hardly", "actually", "fully", "seem", "quite")),
        *((w, "to") for w in ("unable", "struggle", "struggled", "struggling", "impossible", "failing", "failed")),
        ("not", "able"),
        ("isn't", "able"),
        ("can't", "to"),
        ("can", "no"),
    }
)
"""Pairs of words that say `can't`; `not able to` by two of them."""
NEGATED = {
    ("does", "not"): "doesn't",
    ("do", "not"): "don't",
    ("did", "not"): "didn't",
    ("will", "not"): "won't",
    ("has", "not"): "hasn't",
    ("have", "not"): "haven't",
    ("would", "not"): "wouldn't",
    ("was", "not"): "wasn't",
    ("were", "not"): "weren't",
    ("is", "not"): "isn't",
    ("are", "not"): "aren't",
    ("had", "not"): "hadn't",
    ("should", "not"): "shouldn't",
}
"""Pairs of words that are one word in haste."""
