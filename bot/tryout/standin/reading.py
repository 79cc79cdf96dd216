"""Reads a bot's HTTP request into an `Ask`: query, form, multipart or JSON."""

import json
from urllib.parse import parse_qsl

from aiohttp import BodyPartReader, web

from bot.tryout.standin.ask import Ask, Upload, check_characters
from bot.tryout.standin.limits import MEGABYTE, Limits
from bot.tryout.standin.refusals import TOO_LARGE, bad_request
from bot.tryout.standin.values import JsonObject


def body_limit(limits: Limits) -> int:
    """Bytes of a request's body that are read at all."""
    return limits.upload_bytes + MEGABYTE


async def read_ask(request: web.Request, limits: Limits) -> Ask:
    """The parameters of a call; raises `Refusal`."""
    fields: JsonObject = dict(request.query) if request.query_string else {}
    if request.method == "GET" or not request.can_read_body:
        return Ask(fields)
    if request.content_type == "multipart/form-data":
        return await _read_multipart(request, fields, body_limit(limits))
    try:
        body = await request.read()
    except web.HTTPRequestEntityTooLarge as error:
        raise TOO_LARGE from error
    if request.content_type == "application/json":
        return Ask(fields | _read_json(body))
    pairs = parse_qsl(body.decode("utf-8", "replace"), keep_blank_values=True)
    return Ask(fields | dict(pairs))


def _read_json(body: bytes) -> JsonObject:
    try:
        given = json.loads(body) if body else {}
    except ValueError as error:
        raise bad_request("can't parse JSON object") from error
    if not isinstance(given, dict):
        raise bad_request("can't parse JSON object")
    check_characters(body.decode("utf-8", "replace"), given)
    return given


async def _read_multipart(request: web.Request, fields: JsonObject, most: int) -> Ask:
    uploads: dict[str, Upload] = {}
    read = 0
    async for part in await request.multipart():
        if not isinstance(part, BodyPartReader) or part.name is None:
            continue
        data = bytearray()
        while chunk := await part.read_chunk(256 * 1024):
            data.extend(chunk)
            read += len(chunk)
            if read > most:
                raise TOO_LARGE
        if part.filename is None:
            fields[part.name] = data.decode("utf-8", "replace")
        else:
            mime = part.headers.get("Content-Type", "application/octet-stream")
            uploads[part.name] = Upload(part.filename, mime, bytes(data))
    return Ask(fields, uploads)
