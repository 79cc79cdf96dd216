"""Trouble ordered over HTTP: `{"trouble": "cut_after", "method": "sendMessage", "times": 1, "chance": 1.0, ...}`.

Names: delay and slow_answer {seconds}, too_many {retry_after_s}, server_error {code, after}, cut_before, cut_after,
twice, shuffled.
"""

from bot.tryout.standin.faults import (
    CallTrouble,
    CutAfter,
    CutBefore,
    Delay,
    Fault,
    ServerError,
    Shuffled,
    SlowAnswer,
    TooMany,
    Twice,
    UpdateTrouble,
)
from bot.tryout.standin.values import JsonObject, JsonValue


def read_faults(given: JsonValue) -> tuple[Fault, ...]:
    """One order or a list of them; ValueError for one that means nothing."""
    orders = given if isinstance(given, list) else [given]
    return tuple(_read_fault(order) for order in orders)


def _read_fault(order: JsonValue) -> Fault:
    if not isinstance(order, dict):
        raise ValueError("an order for trouble is a JSON object")
    times, chat_id = order.get("times"), order.get("chat_id", 0)
    return Fault(
        _read_trouble(order),
        method=str(order.get("method") or ""),
        chat_id=chat_id if isinstance(chat_id, int) else 0,
        times=times if isinstance(times, int) else None,
        chance=_seconds(order, "chance", 1.0),
    )


def _read_trouble(order: JsonObject) -> CallTrouble | UpdateTrouble:
    match order.get("trouble"):
        case "delay":
            return Delay(_seconds(order, "seconds", 1.0))
        case "slow_answer":
            return SlowAnswer(None if order.get("seconds") is None else _seconds(order, "seconds", 1.0))
        case "too_many":
            return TooMany(int(_seconds(order, "retry_after_s", 1)))
        case "server_error":
            return ServerError(int(_seconds(order, "code", 500)), after=bool(order.get("after")))
        case "cut_before":
            return CutBefore()
        case "cut_after":
            return CutAfter()
        case "twice":
            return Twice()
        case "shuffled":
            return Shuffled()
        case name:
            raise ValueError(f"there is no trouble called {name!r}")


def _seconds(order: JsonObject, name: str, default: float) -> float:
    value = order.get(name)
    return float(value) if isinstance(value, int | float) else default
