"""A bot's commands and descriptions, by scope and language. Source: "setMyCommands", "BotCommandScope" of the docs."""

import re
from dataclasses import dataclass, field

from bot.tryout.standin.limits import Limits
from bot.tryout.standin.refusals import bad_request
from bot.tryout.standin.values import JsonObject, JsonValue

SCOPES = frozenset(
    {"default", "all_private_chats", "all_group_chats", "all_chat_administrators", "chat", "chat_administrators",
     "chat_member"}
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Command:
    """A command and what the menu says of it."""

    command: str
    words: str


@dataclass(slots=True)
class Menu:
    """Commands by (scope, language), and the two descriptions by language."""

    commands: dict[tuple[str, str], tuple[Command, ...]] = field(default_factory=dict)
    descriptions: dict[str, str] = field(default_factory=dict)
    short_descriptions: dict[str, str] = field(default_factory=dict)

    def shown_in(self, chat_id: int, language: str) -> tuple[Command, ...]:
        """What a person sees in a private chat: the first list found, narrowest first, wins whole."""
        for scope in (f"chat:{chat_id}", "all_private_chats", "default"):
            for spoken in (language, ""):
                found = self.commands.get((scope, spoken))
                if found:
                    return found
        return ()


def read_scope(given: JsonObject) -> str:
    """The scope as a key; the default one when none is given."""
    kind = given.get("type", "default")
    if not isinstance(kind, str) or kind not in SCOPES:
        raise bad_request("can't parse BotCommandScope: Unsupported type specified")
    if kind not in {"chat", "chat_administrators", "chat_member"}:
        return kind
    if not given.get("chat_id"):
        raise bad_request("can't parse BotCommandScope: Empty chat_id specified")
    return f"{kind}:{given['chat_id']}"


def read_commands(given: JsonValue, limits: Limits) -> tuple[Command, ...]:
    """A list of commands, each checked."""
    if not isinstance(given, list):
        raise bad_request("expected an Array of BotCommand")
    if len(given) > limits.commands:
        raise bad_request("BOT_COMMANDS_TOO_MUCH")
    return tuple(_read_command(one, limits) for one in given)


def _read_command(given: JsonValue, limits: Limits) -> Command:
    if not isinstance(given, dict):
        raise bad_request("can't parse BotCommand: expected an Object")
    command, words = str(given.get("command", "")).removeprefix("/"), str(given.get("description", ""))
    if not re.fullmatch(rf"[a-z0-9_]{{1,{limits.command_chars}}}", command):
        raise bad_request("BOT_COMMAND_INVALID")
    if not 1 <= len(words) <= limits.command_words_chars:
        raise bad_request("BOT_COMMAND_DESCRIPTION_INVALID")
    return Command(command, words)
