"""Files up and down. Source: "Sending files", "getFile", "sendPhoto", "sendDocument", "InputMedia" of the docs."""

from collections.abc import Callable
from dataclasses import replace

import aiohttp
import pytest
from PIL import Image
from telegram import Bot, InputMediaDocument, InputMediaPhoto
from telegram.error import BadRequest, NetworkError

from bot.tryout.standin import Limits, Seat, StandIn
from bot.tryout.standin.pictures import picture_size
from tests.tryout.conftest import MINA
from tests.tryout.drawings import png


@pytest.fixture
def limits() -> Limits:
    """Small ones: the rule is the same, the test is quick. The real numbers are in `test_the_platforms_numbers`."""
    return replace(Limits(pace=None), upload_bytes=20_000, photo_bytes=5_000, download_bytes=10_000)


def test_the_platforms_numbers() -> None:
    """ "Sending files": 50 MB a file, 10 MB a photo, sides of 10000 together, ratio 20; getFile: 20 MB."""
    limits, megabyte = Limits(), 1024 * 1024
    assert (limits.upload_bytes, limits.photo_bytes, limits.download_bytes) == (
        50 * megabyte,
        10 * megabyte,
        20 * megabyte,
    )
    assert (limits.photo_sides, limits.photo_ratio) == (10_000, 20)


async def test_a_document_up_and_down(bot: Bot, mina: Seat) -> None:
    """sendDocument, getFile: the same bytes and name on both sides; again by file_id without uploading."""
    sent = await bot.send_document(
        MINA, b"week;day\n1;1\n", filename="plan é.csv", caption="<b>Plan</b>", parse_mode="HTML"
    )
    assert sent.document is not None
    assert (sent.document.file_name, sent.document.file_size, sent.caption) == ("plan é.csv", 13, "Plan")
    kept = mina.last().media
    assert kept is not None
    assert kept.data == b"week;day\n1;1\n"
    again = await bot.send_document(MINA, sent.document.file_id)
    assert again.document is not None
    assert again.document.file_unique_id == sent.document.file_unique_id
    mina.send("document", b"from mina", name="up.csv")
    (update,) = await bot.get_updates()
    assert update.message is not None
    assert update.message.document is not None
    handle = await bot.get_file(update.message.document.file_id)
    assert bytes(await handle.download_as_bytearray()) == b"from mina"


async def test_a_photo_and_another_in_its_place(bot: Bot, mina: Seat) -> None:
    """sendPhoto, editMessageMedia: upload or file_id, with caption; a text may become a picture."""
    sent = await bot.send_photo(MINA, png(64, 48), caption="Squat, last 8 weeks")
    assert (sent.photo[-1].width, sent.photo[-1].height) == (64, 48)
    edited = await bot.edit_message_media(InputMediaPhoto(png(50, 50), caption="12 weeks"), MINA, sent.message_id)
    assert not isinstance(edited, bool)
    assert (edited.photo[-1].width, edited.caption) == (50, "12 weeks")
    media = InputMediaPhoto(edited.photo[-1].file_id, caption="12 weeks")
    with pytest.raises(BadRequest, match="Message is not modified"):
        await bot.edit_message_media(media, MINA, sent.message_id)
    text = await bot.send_message(MINA, "x")
    pictured = await bot.edit_message_media(InputMediaDocument(b"a;b", filename="x.csv"), MINA, text.message_id)
    assert not isinstance(pictured, bool)
    assert pictured.document is not None
    assert mina.last().edited is not None


@pytest.mark.parametrize(
    ("data", "said"),
    [
        (b"no picture", "image_process_failed"),
        (png(9_999, 2), "photo_invalid_dimensions"),
        (png(210, 10), "photo_invalid_dimensions"),
        (png(10, 10) + b"x" * 5_000, "is too big for a photo; the maximum size is 5000 bytes"),
        (b"", "file must be non-empty"),
    ],
)
async def test_photos_it_refuses(bot: Bot, mina: Seat, data: bytes, said: str) -> None:
    """sendPhoto: size, sides and ratio."""
    with pytest.raises(BadRequest, match=f"(?i){said}"):
        await bot.send_photo(mina.person.id, data)


async def test_files_too_large(bot: Bot, mina: Seat) -> None:
    """ "Sending files": an upload beyond the limit is 413; getFile refuses what is too big to fetch, not to send on."""
    with pytest.raises(NetworkError, match="Request Entity Too Large"):
        await bot.send_document(MINA, b"x" * 20_001, filename="big.bin")
    mina.send("document", b"x" * 10_001, name="big.bin")
    (update,) = await bot.get_updates()
    assert update.message is not None
    assert update.message.document is not None
    with pytest.raises(BadRequest, match="File is too big"):
        await bot.get_file(update.message.document.file_id)
    passed_on = await bot.send_document(MINA, update.message.document.file_id)
    assert passed_on.document is not None


async def test_ids_that_mean_nothing(bot: Bot, mina: Seat, standin: StandIn, new_bot: Callable[..., Bot]) -> None:
    """ "Sending by file_id": not another bot's, not another kind's."""
    sent = await bot.send_document(MINA, b"x", filename="x.bin")
    assert sent.document is not None
    standin.add_bot("43:SECOND")
    standin.seat(MINA, 43).start()
    other = new_bot("43:SECOND")
    with pytest.raises(BadRequest, match=r"(?i)wrong file identifier"):
        await other.send_document(MINA, sent.document.file_id)
    with pytest.raises(BadRequest, match=r"(?i)invalid file_id"):
        await other.get_file(sent.document.file_id)
    with pytest.raises(BadRequest, match=r"(?i)can't use file of type Document as Photo"):
        await bot.send_photo(mina.person.id, sent.document.file_id)


async def test_the_file_server_wants_the_token(bot: Bot, mina: Seat, standin: StandIn) -> None:
    """getFile: `file/bot<token>/<file_path>`; another token gets nothing."""
    sent = await bot.send_document(mina.person.id, b"x", filename="x.bin")
    assert sent.document is not None
    handle = await bot.get_file(sent.document.file_id)
    assert handle.file_path is not None
    async with aiohttp.ClientSession() as http:
        async with http.get(handle.file_path) as reply:
            assert await reply.read() == b"x"
        async with http.get(handle.file_path.replace("42:TEST", "42:WRONG")) as reply:
            assert reply.status == 401
        async with http.get(f"{standin.base_file_url}42:TEST-TOKEN/documents/none.bin") as reply:
            assert reply.status == 404


@pytest.mark.parametrize("layout", ["PNG", "JPEG", "GIF"])
def test_sizes_of_pictures(layout: str, tmp_path: object) -> None:
    """Width and height as a picture library of its own writes them."""
    path = f"{tmp_path}/x.{layout.lower()}"
    Image.new("RGB", (123, 45), "white").save(path, layout)
    with open(path, "rb") as file:
        assert picture_size(file.read()) == (123, 45)
