"""Whatever a bot sends, the stand-in answers or refuses; whatever people send, the bot gets valid JSON."""

import json

import aiohttp
from hypothesis import given, settings
from hypothesis import strategies as st
from telegram import Bot

from bot.tryout.standin import Limits, Seat, StandIn
from bot.tryout.standin.ask import Ask, Upload
from bot.tryout.standin.methods import METHODS
from bot.tryout.standin.refusals import Refusal
from tests.tryout.conftest import MINA, TOKEN, HandClock
from tests.tryout.drawings import png

NAMES = (
    "chat_id", "from_chat_id", "message_id", "message_ids", "text", "caption", "parse_mode", "entities", "reply_markup",
    "reply_parameters", "photo", "document", "media", "reaction", "action", "commands", "scope", "language_code",
    "callback_query_id", "file_id", "description", "show_alert", "allowed_updates", "offset", "limit",
)  # fmt: skip
LEAVES = st.one_of(
    st.none(),
    st.booleans(),
    st.integers(-(2**60), 2**60),
    st.floats(allow_nan=False, allow_infinity=False),
    st.sampled_from(
        ["", "HTML", "7", "<b>x", "<b>x</b>", "[[", '{"inline_keyboard":[[1]]}', "attach://photo", "typing"]
    ),
    st.text(st.characters(exclude_categories=["Cs"]), max_size=8),
)
KEYS = st.sampled_from(["text", "type", "inline_keyboard", "keyboard", "callback_data", "message_id", "media", "emoji"])
VALUES = st.recursive(
    LEAVES, lambda inner: st.lists(inner, max_size=3) | st.dictionaries(KEYS, inner, max_size=3), max_leaves=6
)
PARAMS = st.dictionaries(st.sampled_from(NAMES), VALUES, max_size=6)


@settings(max_examples=250, deadline=None)
@given(st.sampled_from(sorted(set(METHODS) - {"setWebhook", "deleteWebhook"})), PARAMS, st.booleans())
def test_any_call_is_answered_or_refused(method: str, params: dict[str, object], as_text: bool) -> None:
    """Each method with any parameters, as JSON or as text of a form: a result that is JSON, or a refusal."""
    standin = StandIn(HandClock(), Limits(pace=None))
    bot = standin.add_bot(TOKEN)
    standin.add_person(MINA, "Mina")
    standin.seat(MINA).start()
    fields = {"chat_id": MINA, "message_id": 1, **params}
    if as_text:
        fields = {name: value if isinstance(value, str) else json.dumps(value) for name, value in fields.items()}
    ask = Ask(fields, {"photo": Upload("x.png", "image/png", png(2, 2))})  # type: ignore[arg-type]
    try:
        result = METHODS[method](standin.house, bot, ask)
    except Refusal as refusal:
        result = refusal.answer()
    json.dumps(result, ensure_ascii=False).encode()


async def test_half_a_character(bot: Bot, mina: Seat, standin: StandIn) -> None:
    """Half of a surrogate pair is no text: a bot's is refused, a person's is replaced, a pushed one stays JSON."""
    async with aiohttp.ClientSession() as http:
        for body in (
            '{"chat_id": 7, "text": "a\\ud800"}',
            '{"chat_id": 7, "text": "a", "reply_markup": "[\\"\\\\ud800\\"]"}',
        ):
            async with http.post(f"{standin.base_url}{TOKEN}/sendMessage", data=body, headers=JSON) as reply:
                assert (await reply.json())["description"] == "Bad Request: strings must be encoded in UTF-8"
    mina.say("a\ud800b")
    mina.bot.updates.push_raw({"odd": "\ud800"})
    said, odd = await bot.get_updates()
    assert said.message is not None
    assert said.message.text == "a\ufffdb"
    assert odd.effective_message is None


JSON = {"Content-Type": "application/json"}
