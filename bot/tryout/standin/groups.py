"""A group someone puts the bot into: enough to see that it leaves."""

from bot.tryout.standin.entities import Words, find_entities
from bot.tryout.standin.house import Bot, House
from bot.tryout.standin.membership import tell_membership
from bot.tryout.standin.model import Chat, Message, Person, message_api


def invite(house: House, bot: Bot, by: Person, group_id: int, title: str) -> Chat:
    """Puts the bot into a group (a negative id); it is told so."""
    chat = Chat(group_id, "group", title, started=True)
    bot.chats[group_id] = chat
    tell_membership(house, bot, chat, by, ("left", "member"))
    return chat


def kick(house: House, bot: Bot, by: Person, chat: Chat) -> None:
    """Throws it out; it is told so."""
    chat.shut = "kicked"
    tell_membership(house, bot, chat, by, ("member", "kicked"))


def say_in_group(house: House, bot: Bot, by: Person, chat: Chat, text: str) -> int:
    """Says something that the bot gets to see."""
    words = find_entities(Words(text))
    message = Message(bot.next_message_id(), chat.id, by, house.clock.now(), words)
    house.keep(bot, chat, message)
    bot.updates.push("message", message_api(chat, message), chat_id=chat.id)
    return message.id
