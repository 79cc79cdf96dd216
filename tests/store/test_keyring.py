"""The key file: made once, for its owner only; and what is sealed is unreadable without it."""

import base64
import stat
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.faults import KeyFault
from storage.keyring import Keyring

OLD, NEW = bytes(32), bytes([1]) * 32


@given(st.text(st.characters(exclude_categories=["Cs"])))
def test_a_sealed_text_comes_back_and_shows_nothing(text: str) -> None:
    ring = Keyring.of(OLD)
    sealed = ring.seal(text)
    assert ring.unseal(sealed) == text
    assert len(text) < 3 or text.encode() not in sealed


def test_the_same_text_is_never_sealed_alike() -> None:
    """So nobody sees who said the same."""
    ring = Keyring.of(OLD)
    assert len({ring.seal("yes") for _ in range(100)}) == 100


def test_a_file_is_made_on_the_first_run_and_read_afterwards(tmp_path: Path) -> None:
    file = tmp_path / "deep" / "key"
    first = Keyring.from_file(file)
    assert first.made == file
    assert stat.S_IMODE(file.stat().st_mode) == 0o600
    again = Keyring.from_file(file)
    assert again.made is None
    assert again.unseal(first.seal("words")) == "words"


@pytest.mark.parametrize("mode", [0o640, 0o604, 0o660, 0o644])
def test_a_file_that_others_may_read_is_refused(tmp_path: Path, mode: int) -> None:
    file = tmp_path / "key"
    Keyring.from_file(file)
    file.chmod(mode)
    with pytest.raises(KeyFault, match="chmod 600"):
        Keyring.from_file(file)


def test_a_new_key_on_top_seals_and_the_old_one_still_reads(tmp_path: Path) -> None:
    file = tmp_path / "key"
    old = Keyring.of(OLD)
    lines = [base64.b64encode(key).decode() for key in (NEW, OLD)]
    file.write_text("# the second line is from before\n" + "\n".join(lines) + "\n")
    file.chmod(0o600)
    ring = Keyring.from_file(file)
    assert ring.unseal(old.seal("before")) == "before"
    assert Keyring.of(NEW).unseal(ring.seal("after")) == "after"
    with pytest.raises(KeyFault):
        old.unseal(ring.seal("after"))


@pytest.mark.parametrize(
    "content", ["", "# nothing\n", "not base64!\n", base64.b64encode(b"short").decode(), "ključ\n"]
)
def test_a_file_without_a_key_is_refused(tmp_path: Path, content: str) -> None:
    file = tmp_path / "key"
    file.write_bytes(content.encode())
    file.chmod(0o600)
    with pytest.raises(KeyFault, match=r"The key file .*key"):
        Keyring.from_file(file)


def test_a_folder_that_cannot_be_made_is_said_plainly(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("")
    with pytest.raises(KeyFault, match="can't be read or made"):
        Keyring.from_file(tmp_path / "file" / "key")


def test_another_key_or_a_changed_text_is_a_fault() -> None:
    sealed = Keyring.of(OLD).seal("words")
    with pytest.raises(KeyFault):
        Keyring.of(NEW).unseal(sealed)
    for place in range(len(sealed)):
        changed = sealed[:place] + bytes([sealed[place] ^ 1]) + sealed[place + 1 :]
        with pytest.raises(KeyFault):
            Keyring.of(OLD).unseal(changed)
    for short in (b"", b"\x01", sealed[:10]):
        with pytest.raises(KeyFault):
            Keyring.of(OLD).unseal(short)


def test_the_key_is_not_shown_by_accident() -> None:
    ring = Keyring.of(NEW)
    assert NEW.hex() not in repr(ring)
    assert "AESGCM" not in repr(ring)
