"""`chalkpost read` as a terminal and a script see it: a line in, a line out, and `--explain`."""

import json
from pathlib import Path

from click.testing import CliRunner

from bot.cli.read import read
from tests.notation.judging import rows_of

ROW = rows_of("shared")[0]


def _run(*lines: str, args: tuple[str, ...] = ()) -> list[str]:
    result = CliRunner().invoke(read, list(args), input="\n".join(lines))
    assert result.exit_code == 0, result.output
    return result.output.splitlines()


def test_a_line_for_a_line() -> None:
    """Answers come in order, each with its id; what is wrong with a line is said, and the filter goes on."""
    good = json.dumps(ROW["request"])
    bad = [
        json.dumps({**ROW["request"], "colour": "red"}),
        json.dumps({**ROW["request"], "now": "2026-03-04T18:00:00"}),
        json.dumps({**ROW["request"], "current": "Snatch"}),
        "{",
        "[]",
        json.dumps({"id": 7}),
    ]
    answers = [json.loads(line) for line in _run(good, *bad, good)]
    assert [a["id"] for a in answers] == ["ex-001", "ex-001", "ex-001", "ex-001", None, None, 7, "ex-001"]
    assert all("error" in a for a in answers[1:7])
    assert answers[0] == answers[7] == ROW["answer"]
    assert "colour" in answers[1]["error"]
    assert "current" in answers[3]["error"]


def test_optional_keys_may_be_null() -> None:
    """`done`, `current`, `aliases`, `finish` and their like may be absent or `null`."""
    exercise = {
        "name": "Bench Press", "aliases": None, "load_style": "total", "sides": 1, "measure": None, "region": None,
        "sets": [{"reps": [4, 6], "rir": None, "load": 60, "rest_s": None, "finish": None}],
    }  # fmt: skip
    request = {
        "id": 1, "text": "60x5", "unit": "kg", "now": "2026-03-04T18:00:00Z", "exercises": [exercise],
        "done": None, "current": None,
    }  # fmt: skip
    (line,) = _run(json.dumps(request))
    assert json.loads(line)["performed"][0]["load"] == 60


def test_explain_says_what_gave_what() -> None:
    """The reading in words, with its evidence."""
    lines = _run(args=("--explain", "60x5@9, knee 3/10"))
    assert "Bench Press, set 1: 60 kg x 5 rir 1" in lines
    assert any("knee" in line for line in lines)
    assert "  “60” the load: 60 kg (kg: your unit)" in lines
    assert "  “@9” the effort: rir 1" in lines
    assert "  “knee 3/10” pain: knee" in lines
    assert any(line.startswith("  not said: Bench Press") for line in lines)


def test_explain_says_where_the_unsaid_came_from() -> None:
    """A unit said once for the message, time by its name, a set's number as the set before."""
    lines = _run(args=("--explain", "all in pounds: bench 135x5, plank 1 min 5 sec"))
    assert "  “135” the load: 135 lb (lb: “pounds”)" in lines
    assert "  “1 min 5 sec” the time: 65 sec" in lines
    lines = _run(args=("--explain", "pulldown 50x12 > 35x8"))
    assert "  not said: set 1 (as the set before)" in lines


def test_explain_shows_the_readings_of_a_question() -> None:
    """A doubtful message: the question, and each honest reading."""
    lines = _run(args=("--explain", "600x5"))
    assert any(line.startswith("Asks:") for line in lines)
    assert any("60 kg x 5" in line for line in lines)


def test_explain_beside_a_request(tmp_path: Path) -> None:
    """Another plan than the sample, from a file."""
    file = tmp_path / "request.json"
    file.write_text(json.dumps(rows_of("shared")[15]["request"]))
    assert any("Back Squat" in line for line in _run(args=("--explain", "225x5", "--request", str(file))))
    assert CliRunner().invoke(read, ["--request", str(file)]).exit_code == 2
