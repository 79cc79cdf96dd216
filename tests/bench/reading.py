"""Time and memory of reading a message, beside one regular expression that only knows `LOADxREPS`."""

import gc
import json
import re
import statistics
import sys
import time
import tracemalloc
from collections.abc import Callable, Sequence
from dataclasses import replace

from bot.cli.read import ReadRequest
from bot.dialogue.timewords import read_time_wish
from bot.notation.pain import read_pain
from bot.notation.preparing import MOST_MARKS
from bot.notation.reading import Request, read_message
from bot.notation.tokens import read_marks
from tests.growth import LONG
from tests.notation.judging import rows_of

PLAIN = re.compile(r"(\d+(?:[.,]\d+)?)\s*[x×*]\s*(\d+)")
"""The baseline: it names no exercise, knows no plan, and asks nothing."""
ROUNDS = 5


def _times(call: Callable[[Request], object], requests: Sequence[Request]) -> list[float]:
    """Milliseconds of each message, the best of some rounds."""
    best = [float("inf")] * len(requests)
    for _ in range(ROUNDS):
        for place, request in enumerate(requests):
            start = time.perf_counter()
            call(request)
            best[place] = min(best[place], (time.perf_counter() - start) * 1000)
    return best


def _p99(times: Sequence[float]) -> float:
    return statistics.quantiles(times, n=100)[98]


def _longest(request: Request) -> dict[str, Request]:
    """Messages of up to 4,096 characters, of the kinds that were found to be the dearest."""
    texts = {
        "sets": "60x5, " * 683,
        "words": "the gym was full of people today and bench felt heavy ".ljust(60) * 69,
        "unknown words": "qwertyuiop asdfghjkl zxcvbnm " * 142,
        "one word": "a" * 4096,
        "digits": "9" * 4096,
        "list": "60 5 " * 820,
        "lines": "bench 60x5\n" * 373,
        "many entries": "bench 60x8, rows 50x10, " * 26,
        "bare numbers": "60 8 " * 58,
        "corrections": "change bench to 57.5 and " * 100,
        "put right": "that was 8 not 9 " * 58,
        "all but the last": "all 10s, 8 on the last, " * 58,
        "pain talk": "sharp pain in the left shoulder at set two. the knee hurts a bit and it felt tight " * 50,
        "questions": "what should i do for rows. is it too light for bench? can i swap lunges for squats " * 50,
        "set aside": "could not finish the last set - left out the last set of chins and didnt do bench " * 50,
        "talk of others": "the gym was full of people today / my sister is getting married in june " * 57,
        "dashes": "- 8\n" * 1024,
        "no seams": "press 95 for 6, 5, 8, 7 and 7 chins",
        "over and over": "same again.. The again.. same The " * 120,
        "denied": "no, it was 9 not 10. the db bench was 30 not 28? " * 29,
        "side hurts": "pinch in the front of my left hip on the last lunge. 14s x 10 each\n" * 60,
        "side corrections": "right was 8 not 9 on that last landmine and " * 59,
        "words between numbers": "as 8 foal - a wobbly - each, 8 newborn as - " * 59,
    }
    texts |= {f"only {piece!r}": piece * 4096 for piece in LONG}
    return {name: replace(request, text=text[:4096]) for name, text in texts.items()}


def _apart(requests: Sequence[Request]) -> list[str]:
    """Readers that the chat also calls by themselves: pain alone, and a wish for less time."""
    pains = statistics.median(_times(lambda r: read_pain(r.text), requests))
    wishes = [replace(requests[0], text=(piece * 80)[:80]) for piece in LONG]
    wish = max(_times(lambda r: read_time_wish(r.text), wishes))
    return [f"pain alone, median {pains:9.3f} ms", f"wish for less time, worst of 80 characters {wish:9.3f} ms"]


def _read_whole(request: Request) -> Request:
    """As much of a message as has its sets read: of a longer one they are asked for in a message of their own."""
    marks = read_marks(request.text)
    return replace(request, text=request.text[: marks[MOST_MARKS].start] if len(marks) > MOST_MARKS else request.text)


def main(argv: Sequence[str]) -> int:
    """Prints the table; 1 where a goal is missed (median under 5 ms, 4,096 characters under 100 ms, memory flat)."""
    rows = [row for name in ("shared", "hand_a", "hand_b", "hand_c") for row in rows_of(name)]
    requests = [ReadRequest.model_validate(json.loads(json.dumps(row["request"]))).request() for row in rows]
    for request in requests:
        read_message(request)
    ours = _times(read_message, requests)
    plain = _times(lambda r: PLAIN.findall(r.text), requests)
    out = [f"messages {len(requests)}"]
    for name, pick in (("median", statistics.median), ("p99", _p99)):
        mine, base = pick(ours), pick(plain)
        out.append(f"{name:8} {mine:9.3f} ms   baseline {base:7.4f} ms   ratio {mine / base:8.0f}")
    long = _longest(requests[0])
    worst = {name: _times(read_message, [request, _read_whole(request)]) for name, request in long.items()}
    out += [f"long message, {name:21} {ms:8.1f} ms, the part that is read whole {part:8.1f} ms"
            for name, (ms, part) in worst.items()]  # fmt: skip
    out += _apart(requests)
    growth = _growth(requests)
    out.append(f"memory after ten more rounds {growth / 1024:+.0f} KiB")
    sys.stdout.write("\n".join(out) + "\n")
    met = statistics.median(ours) < 5 and max(map(max, worst.values())) < 100 and growth < 512 * 1024
    return 0 if met or "--no-goals" in argv else 1


def _growth(requests: Sequence[Request]) -> int:
    """Bytes that ten more rounds of the same messages leave behind."""
    few = requests[:200]
    tracemalloc.start()
    for request in few:
        read_message(request)
    gc.collect()
    before = tracemalloc.get_traced_memory()[0]
    for _ in range(10):
        for request in few:
            read_message(request)
    gc.collect()
    after = tracemalloc.get_traced_memory()[0]
    tracemalloc.stop()
    return after - before
