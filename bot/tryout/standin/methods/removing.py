"""Taking away, pinning, leaving. Source: "deleteMessage", "pinChatMessage", "leaveChat" of the docs."""

from bot.tryout.standin.ask import Ask
from bot.tryout.standin.house import Bot, House
from bot.tryout.standin.methods.asked import chat_asked, message_asked, open_chat
from bot.tryout.standin.model import Chat, Message, message_api
from bot.tryout.standin.refusals import bad_request, forbidden
from bot.tryout.standin.values import JsonValue


def delete_message(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """Takes a message away for both; within two days, in a private chat the person's too."""
    chat = chat_asked(house, bot, ask)
    message = message_asked(chat, ask, "message to delete")
    if house.clock.now() - message.date >= house.limits.delete_within:
        raise bad_request("message can't be deleted for everyone")
    remove(house, bot, chat, message)
    return True


def delete_messages(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """Takes several away; those that can't be found are passed over."""
    chat = chat_asked(house, bot, ask)
    numbers = ask.json("message_ids")
    if not isinstance(numbers, list) or not 1 <= len(numbers) <= 100:
        raise bad_request("message identifiers are not specified")
    for number in numbers:
        message = chat.messages.get(number) if isinstance(number, int) else None
        if message is not None and house.clock.now() - message.date < house.limits.delete_within:
            remove(house, bot, chat, message)
    return True


def remove(house: House, bot: Bot, chat: Chat, message: Message) -> None:
    """Takes one message out of its chat."""
    del chat.messages[message.id]
    if chat.pinned == message.id:
        chat.pinned = 0
    house.news.tell(bot.id, chat.id, "removed", message.id)


def pin_chat_message(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """Keeps a message at the top; the chat shows a notice of it."""
    chat = open_chat(house, bot, ask)
    message = message_asked(chat, ask, "message to pin")
    chat.pinned = message.id
    notice = Message(
        bot.next_message_id(),
        chat.id,
        bot.user,
        house.clock.now(),
        silent=True,
        more={"pinned_message": message_api(chat, message, nested=True)},
    )
    house.keep(bot, chat, notice)
    return True


def unpin_chat_message(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """Lets it go from the top."""
    chat = open_chat(house, bot, ask)
    if ask.has("message_id"):
        message_asked(chat, ask, "message to unpin")
    chat.pinned = 0
    return True


def leave_chat(house: House, bot: Bot, ask: Ask) -> JsonValue:
    """Goes out of a group."""
    chat = chat_asked(house, bot, ask)
    if chat.kind == "private":
        raise bad_request("chat member status can't be changed in private chats")
    if chat.shut:
        raise forbidden("bot is not a member of the group chat")
    chat.shut = "left"
    house.news.tell(bot.id, chat.id, "person")
    return True
