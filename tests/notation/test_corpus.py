"""Labelled messages: every one of the shared sample and of the hands that may be looked at comes out as labelled."""

import json

import pytest

from bot.cli.read import answer
from tests.notation.judging import CORPUS, Row, differences, rows_of, stored

UNLIKE = {
    "c-296": "`curls` is the alias of one exercise; the label takes it for a name of two",
    "c-203": "taken back in half a sentence (`no, set 2 was`): asked about, where the label reads it",
    "f-173": "sets told by `the first three were`, `the fourth was`: asked about, where the label reads them",
    "j-223": "a question about the bar: asked back for its load as well",
    "i-181": "`left it at two sets` before its sets: asked about, where the label reads it",
    "k-040": "a report broken off and told again from notes: asked about, where the label reads it",
    "l-004": "`70 for… 4? yeah 4`: asked about, where the label reads it",
    "l-275": "minutes `total for everything` are not taken for the time there is",
    "m-035": "`can't make the last chest press` skips nothing, where the label skips it",
    "m-214": "`that's three inclines then`: how many sets there are now, asked about, where the label reads the set",
    "n-047": "a skip beside a load that is asked about is left to the answer (rule 21), where the label keeps it",
    "n-107": "minis of two sets told behind each other, the set's number last: asked about, where the label reads them",
    "n-128": "`i thought 70` as what was stored: asked about, where the label corrects",
    "n-151": "a dictated session, loads named against others: asked about, where the label reads it",
    "n-194": "a plate held and told again as what is added: asked about, where the label reads it",
    "o-094": "`2 x 28 kg for 40 metres` in both hands: one walk or two, asked about, where the label reads one",
    "p-026": "`so far, wont do pullovers` skips nothing, where the label skips it",
    "p-076": "`had to set it down after three`: nothing is stored, where the label keeps the set that was broken off",
    "q-043": "`belt off for the last two, just me`: which sets, asked about, where the label reads them",
    "q-118": "`first two were the full 20` behind the third: asked about, where the label reads them",
    "X-031": "the bar and its plates counted before the load: asked about, where the label reads it",
    "X-053": "`35 min` in a sentence of its own behind a skip is not taken for the time there is",
    "X-155": "`push ups made` on a range stores nothing and is not asked about, where the label asks",
    "Y-026": "`who hurt you coach` is taken for pain (in doubt it is)",
    "Z-044": "`hurts just hanging there` is taken for urgent, where the label has pain",
    "Z-193": "a story with sets, a skip and pain: the pain is kept, the sets asked about, where the label reads them",
    "AB-100": "`lunch break only, 30 mins` beside a skip is not taken for the time there is",
    "AB-137": "the score behind `breathe in` is not heard; the chest is urgent all the same",
    "AC-097": "`18 every push, four pushes at 90`: asked about, where the label reads it",
    "AE-157": "a load and repetitions behind a story: asked about, where the label reads them",
    "AE-196": "an apology for what was typed before new sets: asked about, where the label reads them",
    "AF-112": "`first set` behind its numbers and a question: asked about, where the label reads it",
    "AH-152": "`three quarters of an hour, then school run` is not taken for the time there is",
    "AI-008": "`275 for all 5` on a plan of one set of five stores nothing, where the label keeps the set",
    "AJ-053": "`5 and 5 on the back offs`: asked about, where the label reads it",
    "AJ-163": "two sets corrected against two: asked about, where the label corrects both",
    "AH-085": "`the 10 plate walked off` behind sets of body weight: asked about, where the label reads them",
    "AE-114": "`fifty two and a half` behind `now for today`: asked about, where the label reads it",
    "AE-219": "`skipping the last skipping`: the exercise's name is the verb as well, and skips nothing",
    "AI-015": "a thumb with `on to the third` stores nothing, where the label keeps the set as planned",
    "AI-195": "`no sled here` with another machine: the sled is skipped, where the label asks",
    "AM-150": "`the first set`, `the second` behind dictated numbers: asked about, where the label reads them",
    "AM-171": "`40 metres, 40, and 32`: asked about, where the label reads three carries",
    "BB-070": "three loads alone where the plan fixes the repetitions: asked about, where the label reads them",
    "BB-126": "`plates are kilos at the hotel` is not taken for the unit of all",
    "BD-167": "`only has 10 or 30` in a question is asked back",
    "BK-113": "`dumbbell ones` for the other row: asked about, where the label reads it",
    "BK-194": "`85 like it says`: asked about, where the label reads it",
    "BK-200": "`assisted pulls` for `Assisted Pull-Up`: asked about, where the label reads it",
    "BL-020": "`ditto, twice more`: asked about, where the label reads two sets",
    "BL-061": "`same again but 90` on metres: asked about, where the label reads the load",
    "BL-167": "`20lb of assist on set three`: asked about, where the label reads it",
    "BL-169": "two sets corrected by what they were: asked about, where the label corrects both",
    "BL-176": "`jumps from 38 to 43 so i took 43`: asked about, where the label reads it",
    "BL-192": "`abd` for `and` between sets: asked about, where the label reads them",
    "BM-132": "`bin the third curl set` skips nothing, where the label skips it",
    "BP-057": "`Do you want me to go up`: a question, where the label has none",
    "BP-070": "`stopped there` beside a stated skip ends the session as well",
    "BP-120": "`2 sets finished` is not taken for the end of the session",
    "BP-176": "`do i stay there?`: a question, where the label has none",
    "BP-189": "`no more of those` behind a hurt skips nothing, where the label skips it",
    "BP-193": "`are we still on for the call?`: a question, where the label has none",
    "BP-196": "`i typed 2 but i got 3 on the 260`: asked about, where the label corrects",
    "n-237": "`two eighty five five reps` dictated: asked about, where the label reads it",
    "o-006": "`ill do side raises first 7x12` stores nothing, where the label keeps the set",
    "s-186": "`skip kickbacks + assisted`: the second name is a word of the lexicon, and is not skipped",
    "AW-046": "`and after this 9 times, have still 2 in reserve`: asked about, where the label reads it",
    "AW-194": "`the one I've just done` beside a correction: asked about, where the label reads it",
    "AW-202": "`make that 210, and 210 again for 8`: asked about, where the label reads it",
    "AY-046": "four sets by their ordinals, dictated with their efforts: asked about, where the label reads it",
    "BV-210": "`first two extension the same`, and `without rest i drop to`: asked about, where the label reads it",
    "BW-201": "`so 55 next, got 11` and a third set `with the same 55`: asked about, where the label reads it",
    "BY-079": "`200x20 x20`, then another load for `the other two`: asked about, where the label reads it",
    "CD-108": "left and right of a carry in a sentence of its own: asked about, where the label reads it",
    "CD-124": "`stopped after two rounds, 15 and 11`: asked about, where the label reads it",
    "CD-168": "each side and its drop, joined by `then`: asked about, where the label reads it",
    "BV-181": "of sternum and chest the first is named; the label names the chest",
    "BW-193": "`can i take 105 for the next?`: a question, where the label has none",
    "BY-149": "`Faces I skip` skips nothing, where the label takes it for the face pulls",
    "CM-001": "a name spelled aloud (`are dee els`): asked about, where the label reads it",
    "CM-145": "`24 kg 15 x2` beside a torn palm: asked about, where the label reads two sets",
    "CM-190": "`i had to drop the last set of those` skips nothing; a score heard as `for` is lost",
    "CN-197": "`should the next be 135?`: a question, where the label has none",
    "CP-079": "`minis after the 35x10 were 3 and 3`: asked about, where the label reads them",
    "CR-104": "`bodyweight only today, 8 8 7`, where load is planned: asked about, where the label reads it",
    "CR-117": "`then drop, 9 n 7`: a drop or two, asked about, where the label reads two",
    "CR-161": "two places whose scores stand together behind them: the first number is asked about",
    "CT-182": "a set and its drop put right at once: asked about, where the label reads it",
    "CT-189": "loads of the first two and of the last, then the counts: asked about, where the label reads it",
    "CT-205": "a second drop more than planned: asked about, where the label reads it",
    "CX-032": "`had the 15s on one side` behind a set taken back: asked about, where the label takes it back",
    "CX-038": "`sunday's bits between shifts -` is not taken for the day",
    "CX-046": "`w a 5kg plate on my back, +5 x 8`: asked about, where the label reads it",
    "CX-049": "`patient with chest pain` is taken for the client's (in doubt it is)",
    "CX-050": "`ward was a pain in the neck` is taken for pain (in doubt it is)",
    "CY-017": "`22,5 each side 12, then 11`: asked about, where the label reads it",
    "CY-042": "`pullups. 7. 6.`: asked about, where the label reads it",
    "CY-068": "`for four three sets` dictated: asked about, where the label reads it",
    "CY-074": "a set behind a question without a mark between is not kept",
    "CY-075": "`same again but at eight and a half`: asked about, where the label reads an effort",
    "CY-088": "`2 sets of 12 with 45 and 1 of 10`: asked about, where the label reads it",
    "CY-090": "a load with a full stop before its minis: asked about, where the label reads it",
    "CY-091": "`incline curls bin em` skips nothing, where the label skips it",
    "CZ-015": "`275 5, 2 left. wife texted me 14 times`: asked about, where the label reads the set",
    "CZ-017": "`that was all she wrote, nothing left` is not taken for the end",
    "CZ-029": "`loadin up 155 for the incline now`: a load to come is asked about",
    "CZ-047": "`carried the sixteen for thirty metres … then twenty five` is asked about",
    "CZ-053": "`two more lots of fifteen done` beside talk: asked about, where the label reads the sets",
    "CZ-063": "`dude next to me repping 315 for 12` is asked about",
    "CZ-086": "`have to go at 19:00 for the train` gives no minutes",
    "CZ-093": "`42..5x5`: asked about, where the label reads 42.5",
    "DA-017": "`so i stop there w these` skips nothing",
    "DA-034": "`Planned 70. Machine goes 65, then 80. Used 65: 15 and 15.` is asked about",
    "DA-042": "`the big sled machine with 60 on it 12 times`: asked about, where the label reads the leg press",
    "DA-053": "`i feel it in my back muscles is that correct` is taken for pain (in doubt it is), not for a question",
    "DA-085": "sides of three rows told in a sentence: asked about, where the label reads them",
    "DA-086": "sides told by the good arm and `same way round`: asked about, where the label reads them",
    "DA-087": "`i meant to say my elbow was at me … maybe a 2`: asked about, and its score is lost",
    "DA-098": "`the 35 is pounds love` beside fifteen swings: asked about, where the label reads the set",
    "DA-099": "`the third I'd have got 12 only the fire alarm went at 7`: asked about, where the label reads the sets",
    "CZ-083": "`no 1,25 plates anymore so 40 instead of 42,5. 5 reps`: asked about, where the label reads the set",
    "DD-032": "a thumb before talk is no set: nothing is asked, where the label asks for its repetitions",
}
"""Where a reading is not as labelled, and why that is let stand: none of them stores a set that the label does not."""
MISREAD = {
    "AZ-164": "`the last was 250` is a new set where one is open, and a correction by the label",
    "BY-141": "`the bench hammers` behind a skip: the second exercise is lost",
    "f-160": "`two times bulgarian fourteen ten per leg` is one set",
    "AL-148": "the side told once more behind the place (`the knee was whining, left knee i mean`) is lost",
    "AR-110": "a bare list whose first number is the planned load (`15 14 13`) is kept where two sets are open",
    "V-106": "`the last sumo rep that was eighty for four` beside pain replaces the set before it",
    "Y-124": "another's count (`my roomie counted 13 on the second`) takes the set's own",
    "AC-115": "`all as planned` is read of the exercise, where the label reads it of the session",
    "AC-139": "`rest as planned` is read of the exercise, where the label reads it of the session",
    "AG-026": "`on the other` behind `my weak side which is the right` is a set of its own",
    "AI-131": "`three minis after it, 4 4 3` is four minis",
    "AJ-094": "drops of two sets without a comma before the next exercise's name",
    "AC-090": "`dropped it to dont know what` is taken for a hurt, and the drop is lost",
    "AL-072": "a load put on `by mistake` before its repetitions is lost",
    "BD-049": "`i counted 4` behind a question is a set",
    "BK-099": "`right side first` replaces the set before",
    "BL-193": "`a nine and a half` behind a dictated session is lost",
    "BM-126": "`one set of calves, 15 reps` goes to the next of two",
    "BM-148": "a number in another language, told again, replaces the set before",
    "X-136": "`the 2 set is 170 no 180` is taken for two sets",
    "CM-096": "`15x12 each arm`, whose order the plan leaves open, is not asked about",
    "CR-044": "`dumbels` is taken for the dumbbell row",
    "CR-172": "`hold 24s 38s`: the load is taken for seconds",
    "CT-206": "`some landmine thing 45x8` behind another exercise is a set of that one",
    "CX-067": "`and then eight kids are yelling`: the eight repetitions are lost",
    "CY-011": "`warmed up … 20x10. then 40x5`: the second warm-up is lost",
    "CZ-032": "`12,5 not 12 sorry!! in the two sets` corrects one",
    "CZ-040": "`the abductor is broken so I did the adductor` is taken for pain",
    "CZ-048": "`someone has walked off with the fourteen ten reps each time three sets` dictated: one set",
    "DB-095": "`split squats 9x10 each` on a plan of 8 for 8 to 10: stored as 9 for 10, where the label asks",
    "DA-084": "`Eleven, let's say eleven! So 12, 11, 11` tells a set too many",
    "DD-086": "`last i do tomorrow no just kidding 85x5`: the set before it is lost",
}
"""What is still read wrongly without asking: known, and to be mended."""
NOTHING = stored({"performed": [], "replaces": []})
FILES = ("shared", *sorted(path.stem for path in CORPUS.glob("hand_*.jsonl")))
KNOWN = {**UNLIKE, **MISREAD}


def known(which: dict[str, str]) -> list[Row]:
    """The messages of a list of known differences."""
    return [row for name in FILES for row in rows_of(name) if row["request"]["id"] in which]


@pytest.mark.parametrize("name", FILES)
def test_as_labelled(name: str) -> None:
    """Every field is as the label has it; where the message is asked about, nothing of it is stored."""
    wrong = []
    for row in (r for r in rows_of(name) if r["request"]["id"] not in KNOWN):
        got = answer(json.dumps(row["request"]))
        if differences(row["answer"], got) or not (got["ask"] is None or stored(got) == NOTHING):
            wrong.append((row["request"]["id"], row["request"]["text"], got))
    assert not wrong


def test_what_is_unlike_its_label_stores_nothing_else() -> None:
    """The known differences are there still, and none of them stores a set that the label does not."""
    rows = known(UNLIKE)
    assert {str(row["request"]["id"]) for row in rows} == set(UNLIKE)
    for row in rows:
        got = answer(json.dumps(row["request"]))
        assert differences(row["answer"], got)
        assert stored(got) == NOTHING or stored(got) == stored(row["answer"])


def test_what_is_misread_is_misread_still() -> None:
    """A message that is mended leaves the list."""
    rows = known(MISREAD)
    assert {str(row["request"]["id"]) for row in rows} == set(MISREAD)
    for row in rows:
        assert differences(row["answer"], answer(json.dumps(row["request"])))
