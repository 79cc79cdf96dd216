"""Errors that an operator must hear. What people do wrong is never an exception: it is a value with an answer.

ChalkpostFault
+-- SettingsFault      a setting is missing or wrong
+-- StoreFault         the database can't be opened, or is of another version
+-- KeyFault           the key file is missing, unreadable, or not the one that sealed the data
+-- ChatFault          the chat platform refuses us for good (token, second poller)
"""


class ChalkpostFault(Exception):
    """Base of all; its text is a plain sentence for the operator."""


class SettingsFault(ChalkpostFault):
    """A setting is missing or wrong."""


class StoreFault(ChalkpostFault):
    """The database can't be opened, or is of another version."""


class KeyFault(ChalkpostFault):
    """The key file is missing, unreadable, or not the one that sealed the data."""


class ChatFault(ChalkpostFault):
    """The chat platform refuses us for good."""
