"""Files that people and bots pass along. A file_id holds for one bot only; the unique id is the same for everyone."""

import hashlib
from dataclasses import dataclass, field
from typing import Literal, TypeAlias

from bot.tryout.standin.pictures import Size
from bot.tryout.standin.refusals import bad_request
from bot.tryout.standin.values import JsonObject

FileKind: TypeAlias = Literal["photo", "document", "voice", "sticker", "video"]
FOLDERS: dict[FileKind, str] = {
    "photo": "photos", "document": "documents", "voice": "voice", "sticker": "stickers", "video": "videos",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Media:
    """A file in a message. `seconds` of a recording; `emoji` of a sticker."""

    kind: FileKind
    file_id: str
    unique_id: str
    data: bytes = field(repr=False)
    name: str = ""
    mime: str = ""
    size: Size | None = None
    seconds: int = 0
    emoji: str = ""

    @property
    def path(self) -> str:
        """Where the platform's file server keeps it."""
        ending = "jpg" if self.kind == "photo" else self.name.rsplit(".", 1)[-1] if "." in self.name else "bin"
        return f"{FOLDERS[self.kind]}/file_{self.unique_id}.{ending}"

    def api(self) -> JsonObject:
        """The fields every kind of file has."""
        return {"file_id": self.file_id, "file_unique_id": self.unique_id, "file_size": len(self.data)}

    def message_fields(self) -> JsonObject:
        """What a message says of it."""
        shown = self.api()
        if self.size is not None:
            shown |= {"width": self.size.width, "height": self.size.height}
        match self.kind:
            case "photo":
                return {"photo": [shown]}
            case "document":
                named = {"file_name": self.name} if self.name else {}
                return {"document": {**shown, **named, "mime_type": self.mime}}
            case "voice":
                return {"voice": {**shown, "duration": self.seconds, "mime_type": self.mime}}
            case "video":
                return {"video": {"width": 640, "height": 480, **shown, "duration": self.seconds}}
            case "sticker":
                flags: JsonObject = {"type": "regular", "is_animated": False, "is_video": False}
                return {"sticker": {"width": 512, "height": 512, **shown, **flags, "emoji": self.emoji}}


class Shelf:
    """The files one bot may name by id."""

    def __init__(self, bot_id: int) -> None:
        self._bot_id = bot_id
        self._by_id: dict[str, Media] = {}
        self._by_path: dict[str, Media] = {}

    def put(
        self,
        kind: FileKind,
        data: bytes,
        *,
        name: str = "",
        mime: str = "",
        size: Size | None = None,
        seconds: int = 0,
        emoji: str = "",
    ) -> Media:
        """Keeps a file; the same bytes of the same kind get the same id."""
        digest = hashlib.blake2b(kind.encode() + name.encode() + b"\0" + data, digest_size=12).hexdigest()
        file_id = f"{kind[0].upper()}gAC{self._bot_id}-{digest}"
        kept = self._by_id.get(file_id)
        if kept is not None:
            return kept
        media = Media(kind, file_id, f"Q{digest[:14]}", data, name, mime, size, seconds, emoji)
        self._by_id[file_id] = media
        self._by_path[media.path] = media
        return media

    def take(self, file_id: str) -> Media:
        """A file by its id; raises `Refusal` for another bot's id or none."""
        media = self._by_id.get(file_id)
        if media is None:
            raise bad_request("wrong file identifier/HTTP URL specified")
        return media

    def at(self, path: str) -> Media | None:
        """A file by its path on the file server."""
        return self._by_path.get(path)
