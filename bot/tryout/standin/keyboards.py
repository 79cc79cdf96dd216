"""Reply markup: inline keyboards, reply keyboards, their removal, and a forced reply; and the limits they must keep.

Source: "InlineKeyboardMarkup", "ReplyKeyboardMarkup" and their kin in the public Bot API documentation.
"""

import json
from dataclasses import dataclass
from typing import TypeAlias

from bot.tryout.standin.limits import Limits
from bot.tryout.standin.refusals import Refusal, bad_request
from bot.tryout.standin.values import JsonObject, JsonValue

ACTIONS = (
    "callback_data", "url", "copy_text", "web_app", "login_url", "switch_inline_query",
    "switch_inline_query_current_chat", "switch_inline_query_chosen_chat", "callback_game", "pay",
)  # fmt: skip
SCHEMES = ("http://", "https://", "tg://")


@dataclass(frozen=True, slots=True)
class Button:
    """One inline button: what it says, which action it has, and that action's text (callback data, address, ...)."""

    label: str
    action: str
    detail: str
    style: str = ""

    def api(self) -> JsonObject:
        """As the platform writes it."""
        detail: JsonValue = self.detail
        match self.action:
            case "copy_text":
                detail = {"text": self.detail}
            case "web_app" | "login_url":
                detail = {"url": self.detail}
            case _:
                pass
        shown: JsonObject = {"text": self.label, self.action: detail}
        if self.style:
            shown["style"] = self.style
        return shown


@dataclass(frozen=True, slots=True)
class Inline:
    """Buttons under a message."""

    rows: tuple[tuple[Button, ...], ...]

    def api(self) -> JsonObject:
        """As the platform writes it."""
        return {"inline_keyboard": [[button.api() for button in row] for row in self.rows]}


@dataclass(frozen=True, slots=True)
class ReplyKeyboard:
    """Buttons in place of the person's own keyboard; a tap says the label."""

    rows: tuple[tuple[str, ...], ...]
    placeholder: str = ""
    once: bool = False


@dataclass(frozen=True, slots=True)
class RemoveKeyboard:
    """Takes the reply keyboard away."""


@dataclass(frozen=True, slots=True)
class ForceReply:
    """Opens the answer field as though the person had chosen to reply."""

    placeholder: str = ""


Markup: TypeAlias = Inline | ReplyKeyboard | RemoveKeyboard | ForceReply


def read_markup(given: JsonValue, limits: Limits) -> Markup | None:
    """What a bot passes as `reply_markup`; None for nothing, or an inline keyboard without buttons."""
    if given is None or given == "":
        return None
    if not isinstance(given, dict):
        raise bad_request("object expected as reply markup")
    if len(json.dumps(given, ensure_ascii=False).encode()) > limits.markup_bytes:
        raise bad_request("reply markup is too long")
    if "inline_keyboard" in given:
        return _read_inline(given["inline_keyboard"], limits)
    if "keyboard" in given:
        return _read_reply_keyboard(given, limits)
    if given.get("remove_keyboard"):
        return RemoveKeyboard()
    if given.get("force_reply"):
        return ForceReply(_placeholder(given, limits))
    return None


def _read_inline(given: JsonValue, limits: Limits) -> Inline | None:
    rows = tuple(row for row in (_read_row(one, limits) for one in _rows(given, "inline_keyboard")) if row)
    if sum(map(len, rows)) > limits.buttons:
        raise bad_request("reply markup is too long")
    return Inline(rows) if rows else None


def _rows(given: JsonValue, name: str) -> list[list[JsonValue]]:
    if not isinstance(given, list):
        raise bad_request(f'field "{name}" of the reply markup must be an Array of Arrays')
    for row in given:
        if not isinstance(row, list):
            raise bad_request(f'field "{name}" must be an Array of Arrays')
    return given


def _read_row(given: list[JsonValue], limits: Limits) -> tuple[Button, ...]:
    # The platform documents no limit; the client library states eight. Refused here, so that no bot relies on more.
    if len(given) > limits.buttons_in_row:
        raise bad_request("reply markup is too long")
    return tuple(button for button in (_read_button(one, limits) for one in given) if button.label)


def _unreadable(why: str) -> Refusal:
    return bad_request(f"can't parse inline keyboard button: {why}")


def _read_button(given: JsonValue, limits: Limits) -> Button:
    if not isinstance(given, dict):
        raise _unreadable("InlineKeyboardButton must be an Object")
    label = given.get("text")
    if label is None:
        raise _unreadable('Can\'t find field "text"')
    if not isinstance(label, str):
        raise _unreadable('Field "text" must be of type String')
    action = next((name for name in ACTIONS if name in given), None)
    if action is None:
        raise _unreadable("Text buttons are unallowed in the inline keyboard")
    button = Button(label.strip(), action, _detail(given[action]), str(given.get("style") or ""))
    _check_button(button, limits)
    return button


def _detail(given: JsonValue) -> str:
    if isinstance(given, dict):
        return str(given.get("text") or given.get("url") or "")
    return given if isinstance(given, str) else json.dumps(given)


def _check_button(button: Button, limits: Limits) -> None:
    match button.action:
        case "callback_data":
            if not 1 <= len(button.detail.encode()) <= limits.callback_bytes:
                raise bad_request("BUTTON_DATA_INVALID")
        case "url" | "web_app" | "login_url":
            if not button.detail.startswith(SCHEMES) or len(button.detail.split("://", 1)[1]) == 0:
                why = "Wrong HTTP URL"
                raise bad_request(f"inline keyboard button URL '{button.detail}' is invalid: {why}")
        case "copy_text":
            if not 1 <= len(button.detail) <= limits.copy_text_chars:
                raise bad_request("BUTTON_COPY_TEXT_INVALID")
        case _:
            pass
    if button.style not in {"", "primary", "success", "danger"}:
        raise _unreadable("Invalid button style specified")


def _read_reply_keyboard(given: JsonObject, limits: Limits) -> ReplyKeyboard:
    rows = tuple(tuple(filter(None, map(_reply_label, row))) for row in _rows(given["keyboard"], "keyboard"))
    return ReplyKeyboard(tuple(filter(None, rows)), _placeholder(given, limits), bool(given.get("one_time_keyboard")))


def _reply_label(given: JsonValue) -> str:
    label = given.get("text") if isinstance(given, dict) else given
    if not isinstance(label, str):
        raise bad_request("can't parse keyboard button: KeyboardButton must be a String or an Object")
    return label.strip()


def _placeholder(given: JsonObject, limits: Limits) -> str:
    words = given.get("input_field_placeholder")
    if words is None:
        return ""
    if not isinstance(words, str) or not 1 <= len(words) <= limits.placeholder_chars:
        raise bad_request("REPLY_MARKUP_PLACEHOLDER_INVALID")
    return words
