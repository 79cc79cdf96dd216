"""Trying the bot out without the chat platform: a stand-in of the Bot API, a chat page, and an invented practice.

`standin` and `page` import nothing else of this project, so what they accept or refuse cannot be bent to suit the bot.
"""
