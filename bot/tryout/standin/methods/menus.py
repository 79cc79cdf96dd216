"""What a bot says of itself: commands and descriptions."""

from bot.tryout.standin.ask import Ask
from bot.tryout.standin.house import Bot, House
from bot.tryout.standin.menu import read_commands, read_scope
from bot.tryout.standin.refusals import bad_request
from bot.tryout.standin.values import JsonValue


def set_my_commands(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """The commands of one scope and language."""
    key = (read_scope(ask.object("scope")), ask.text("language_code"))
    bot.menu.commands[key] = read_commands(ask.json("commands") or [], house.limits)
    house.news.tell(bot.id, 0, "keyboard")
    return True


def delete_my_commands(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """None of its own for one scope and language: a wider list shows again."""
    bot.menu.commands.pop((read_scope(ask.object("scope")), ask.text("language_code")), None)
    house.news.tell(bot.id, 0, "keyboard")
    return True


def get_my_commands(_house: House, bot: Bot, ask: Ask) -> JsonValue:
    """The commands of exactly that scope and language."""
    found = bot.menu.commands.get((read_scope(ask.object("scope")), ask.text("language_code")), ())
    return [{"command": one.command, "description": one.words} for one in found]


def set_my_description(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """What an empty chat shows."""
    words = ask.text("description")
    if len(words) > house.limits.description_chars:
        raise bad_request("description is too long")
    bot.menu.descriptions[ask.text("language_code")] = words
    return True


def set_my_short_description(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """What its profile shows."""
    words = ask.text("short_description")
    if len(words) > house.limits.short_description_chars:
        raise bad_request("short description is too long")
    bot.menu.short_descriptions[ask.text("language_code")] = words
    return True
