"""Makes `bot/notation/hurt/everyday.py` anew from plain word lists, one word a line, named as arguments.

    python -m tests.notation.everyday_words american-english british-english

The lists used are the SCOWL ones, size 60, as Debian's `wamerican` and `wbritish` install them.
"""

import re
import sys
from pathlib import Path
from textwrap import fill

from bot.notation.hurt import everyday
from bot.notation.hurt.mending import pieces_of
from bot.notation.hurt.patterns import SPELLER, VOCABULARY

GYM = """
reps rep kgs lbs rdl rdls ohp sldl amrap emom tris bis pb pr prs pbs db dbs kb kbs bb dl wod rir rpe ez gonna wanna
gotta dunno yep yup nope gym gyms cuz pls thx ty tbh fyi btw idk asap hiit cardio app apps wifi covid paused pausing
barbell dumbbell kettlebell squatted benched planked pullups pullup chinups pushups situps burpee deads romanian
bulgarian goblet hack sissy nordic nordics copenhagen landmine zercher smith incline decline preacher hammers hammer
spider prone superset dropset dropsets mins min secs sec hrs xmas physio creatine protein macros hiya heya yeah yea
yh aye wee lad okey okie yday tmrw tomoz thurs weds tues sat sun yeh bro dude sesh warmups hams hammering pump
pumped feeder myo cafe cafes cliche cliches decor facade fiance fiancee naive saute sauteed puree latte lattes
spain france paris rome leeds york scots scotch greek hungary iran laos lima oman thai tamil turin turks finnish
december hong kong wallis cals cal kcal kcals tib tibs avec fait pre
"""
"""Gym and chat shorthand, and names of places and peoples, that no plain word list has."""
HEAD = Path(everyday.__file__).read_text(encoding="utf-8").split("EVERYDAY =", maxsplit=1)[0]


def _parts(word: str) -> bool:
    return len(word) >= 7 and pieces_of(word) is not None


def main(lists: list[str]) -> None:
    """Write the module: words that are no word of ours and that a slip, or a blank, would turn into some."""
    words = set(GYM.split())
    for name in lists:
        lines = Path(name).read_text(encoding="utf-8").splitlines()
        words.update(w for w in lines if re.fullmatch("[a-z]{2,24}", w))
    kept = sorted(w for w in words - VOCABULARY if SPELLER.slips(w) or SPELLER.in_doubt(w) or _parts(w))
    body = fill(" ".join(kept), 116, initial_indent="    ", subsequent_indent="    ", break_on_hyphens=False)
    text = f'{HEAD}EVERYDAY = word_set(\n    """\n{body}\n    """\n)\n'
    Path(everyday.__file__).write_text(text, encoding="utf-8")


if __name__ == "__main__":
    main(sys.argv[1:])
