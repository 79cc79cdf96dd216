"""That a bot was blocked, let in again, put into a group or thrown out. Source: "ChatMemberUpdated" of the docs."""

from bot.tryout.standin.house import Bot, House
from bot.tryout.standin.model import Chat, Person
from bot.tryout.standin.values import JsonObject


def tell_membership(house: House, bot: Bot, chat: Chat, by: Person, statuses: tuple[str, str]) -> None:
    """Pushes the update, with the status before and after."""
    old, new = (member(bot, status) for status in statuses)
    now = int(house.clock.now().timestamp())
    body: JsonObject = {"chat": chat.api(), "from": by.api(), "date": now, "old_chat_member": old}
    house.news.tell(bot.id, chat.id, "person")
    bot.updates.push("my_chat_member", {**body, "new_chat_member": new}, chat_id=chat.id)


def member(bot: Bot, status: str) -> JsonObject:
    """The bot as a member of a chat."""
    shown: JsonObject = {"user": bot.user.api(), "status": status}
    return {**shown, "until_date": 0} if status == "kicked" else shown
