"""How the platform says no: `{"ok": false, "error_code": ..., "description": ..., "parameters": ...}`.

The wording is that of the platform's own public server, as a client library sees it.
"""

from bot.tryout.standin.values import JsonObject


class Refusal(Exception):
    """An answer that refuses. `retry_after_s` in whole seconds, only with 429."""

    def __init__(self, code: int, description: str, *, retry_after_s: int | None = None) -> None:
        super().__init__(description)
        self.code = code
        self.description = description
        self.retry_after_s = retry_after_s

    def answer(self) -> JsonObject:
        """The body of the refusal."""
        body: JsonObject = {"ok": False, "error_code": self.code, "description": self.description}
        if self.retry_after_s is not None:
            body["parameters"] = {"retry_after": self.retry_after_s}
        return body


def bad_request(what: str) -> Refusal:
    """400: the call can't be done as it stands."""
    return Refusal(400, f"Bad Request: {what}")


def forbidden(what: str) -> Refusal:
    """403: the bot may not speak there."""
    return Refusal(403, f"Forbidden: {what}")


def conflict(what: str) -> Refusal:
    """409: two ways of receiving updates at once."""
    return Refusal(409, f"Conflict: {what}")


def too_many(retry_after_s: int) -> Refusal:
    """429: too fast; wait so many seconds."""
    return Refusal(429, f"Too Many Requests: retry after {retry_after_s}", retry_after_s=retry_after_s)


UNAUTHORIZED = Refusal(401, "Unauthorized")
NOT_FOUND = Refusal(404, "Not Found")
NO_SUCH_METHOD = Refusal(404, "Not Found: method not found")
TOO_LARGE = Refusal(413, "Request Entity Too Large")
