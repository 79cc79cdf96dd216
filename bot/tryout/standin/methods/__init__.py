"""The Bot API methods the stand-in knows. Each takes the house, the calling bot and what it asks, and answers a value
or raises `Refusal`. Getting updates is in `receiving`, since only that waits."""

from collections.abc import Callable
from typing import TypeAlias

from bot.tryout.standin.ask import Ask
from bot.tryout.standin.house import Bot, House
from bot.tryout.standin.methods import answering, editing, menus, receiving, removing, sending
from bot.tryout.standin.values import JsonValue

Method: TypeAlias = Callable[[House, Bot, Ask], JsonValue]

METHODS: dict[str, Method] = {
    "getMe": answering.get_me,
    "sendMessage": sending.send_message,
    "sendPhoto": sending.send_photo,
    "sendDocument": sending.send_document,
    "copyMessage": sending.copy_message,
    "sendChatAction": answering.send_chat_action,
    "answerCallbackQuery": answering.answer_callback_query,
    "setMessageReaction": answering.set_message_reaction,
    "getFile": answering.get_file,
    "editMessageText": editing.edit_message_text,
    "editMessageCaption": editing.edit_message_caption,
    "editMessageMedia": editing.edit_message_media,
    "editMessageReplyMarkup": editing.edit_message_reply_markup,
    "deleteMessage": removing.delete_message,
    "deleteMessages": removing.delete_messages,
    "pinChatMessage": removing.pin_chat_message,
    "unpinChatMessage": removing.unpin_chat_message,
    "leaveChat": removing.leave_chat,
    "setMyCommands": menus.set_my_commands,
    "deleteMyCommands": menus.delete_my_commands,
    "getMyCommands": menus.get_my_commands,
    "setMyDescription": menus.set_my_description,
    "setMyShortDescription": menus.set_my_short_description,
    "setWebhook": receiving.set_webhook,
    "deleteWebhook": receiving.delete_webhook,
    "getWebhookInfo": receiving.get_webhook_info,
}
NAMES: dict[str, str] = {name.lower(): name for name in (*METHODS, "getUpdates")}
