"""What a person does, by name, as it is ordered over HTTP."""

from bot.tryout.standin.files import FOLDERS, FileKind
from bot.tryout.standin.seat import Seat
from bot.tryout.standin.sight import CantDo, Place
from bot.tryout.standin.values import JsonObject, JsonValue


def act(seat: Seat, name: str, given: JsonObject) -> JsonValue:
    """One act of a person, by name."""
    text, message = str(given.get("text") or ""), _number(given, "message")
    match name:
        case "say":
            return {"message": seat.say(text, reply_to=_number(given, "reply_to"))}
        case "start":
            return {"message": seat.start(str(given.get("payload") or ""))}
        case "edit":
            seat.edit(message, text)
        case "delete":
            seat.delete(message)
        case "tap":
            return {"query": seat.tap(message, _place(given.get("button")))}
        case "sticker":
            return {"message": seat.sticker(str(given.get("emoji") or "👍"))}
        case "forward":
            return {"message": seat.forward(text)}
        case "block":
            seat.block()
        case "unblock":
            seat.unblock()
        case _:
            raise CantDo(f"a person can't do «{name}» here")
    return {}


def _number(given: JsonObject, name: str) -> int:
    value = given.get(name)
    return value if isinstance(value, int) else 0


def _place(given: JsonValue) -> Place:
    match given:
        case str() | int():
            return given
        case [int(row), int(column)]:
            return row, column
        case _:
            raise CantDo("a button is a label, a number, or [row, column]")


def read_kind(name: str) -> FileKind:
    """What a file is sent as."""
    for kind in FOLDERS:
        if kind == name and kind != "sticker":
            return kind
    raise CantDo(f"a file can't be sent as «{name}»")
