"""Settings: read from a file as from the environment, and each mistake told in one sentence that names it."""

from pathlib import Path

import pytest

from bot.faults import SettingsFault
from bot.runtime.roles import Role
from bot.settings import Settings, read_address, read_settings


@pytest.fixture
def file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The file that `CHALKPOST_ENV_FILE` names."""
    path = tmp_path / "env"
    path.write_text("")
    monkeypatch.setenv("CHALKPOST_ENV_FILE", str(path))
    return path


def test_settings_come_from_the_environment_and_from_a_file(file: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """What is set in the environment goes before the file; empty is not set."""
    file.write_text("CHALKPOST_EMERGENCY_NUMBER=999\nCHALKPOST_SENDERS=4\nCHALKPOST_ROLES=intake, work\n")
    monkeypatch.setenv("CHALKPOST_SENDERS", "8")
    monkeypatch.setenv("CHALKPOST_LOG_FORMAT", "")
    settings = read_settings()
    assert (settings.emergency_number, settings.senders, settings.log_format) == ("999", 8, "json")
    assert settings.roles == {Role.INTAKE, Role.WORK}


def test_the_data_folder_holds_what_is_not_named(file: Path) -> None:
    """Database and key; the key in a folder of its own."""
    file.write_text("CHALKPOST_DATA_DIR=/some where/data\n")
    settings = read_settings()
    assert settings.store_url == "sqlite:////some where/data/chalkpost.db"
    assert settings.key_path == Path("/some where/data/key/chalkpost.key")


WRONG = (
    ("CHALKPOST_SENDERS=none", "CHALKPOST_SENDERS"),
    ("CHALKPOST_SENDERS=0", "CHALKPOST_SENDERS"),
    ("CHALKPOST_ROLES=cook", "CHALKPOST_ROLES"),
    ("CHALKPOST_ROLES=,", "CHALKPOST_ROLES"),
    ("CHALKPOST_MODE=carrier-pigeon", "CHALKPOST_MODE"),
    ("CHALKPOST_MODE=webhook", "webhook_url"),
    ("CHALKPOST_MODE=webhook\nCHALKPOST_WEBHOOK_URL=https://x/h\nCHALKPOST_WEBHOOK_SECRET=short", "webhook_secret"),
)


@pytest.mark.parametrize(("text", "named"), WRONG)
def test_a_wrong_setting_is_named(text: str, named: str, file: Path) -> None:
    """In one sentence."""
    file.write_text(text)
    with pytest.raises(SettingsFault, match=named) as fault:
        read_settings()
    assert "\n" not in str(fault.value)


def test_a_missing_file_is_told(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """By its name."""
    monkeypatch.setenv("CHALKPOST_ENV_FILE", str(tmp_path / "nowhere"))
    with pytest.raises(SettingsFault, match="nowhere"):
        read_settings()


@pytest.mark.parametrize("token", ["", "   ", "letters", "12", "x:y"])
def test_a_token_that_is_none_is_told(token: str) -> None:
    """Before anything is opened."""
    with pytest.raises(SettingsFault, match="CHALKPOST_TOKEN"):
        Settings(token=token).bot_token()  # type: ignore[arg-type]  # as the environment gives it


def test_the_token_is_not_shown() -> None:
    """Neither in a print of the settings."""
    settings = Settings(token="42:SECRET-SECRET")  # type: ignore[arg-type]  # as the environment gives it
    assert "SECRET" not in repr(settings)
    assert (settings.bot_token(), settings.bot_id()) == ("42:SECRET-SECRET", 42)


@pytest.mark.parametrize("text", ["", "8080", ":8080", "localhost:", "localhost:http", "localhost:99999"])
def test_an_address_that_is_none_is_told(text: str) -> None:
    """With the setting's name."""
    with pytest.raises(SettingsFault, match="CHALKPOST_HEALTH_LISTEN"):
        read_address(text, name="health_listen")


def test_addresses_are_read() -> None:
    """IPv6 too."""
    assert read_address("127.0.0.1:0", name="x") == ("127.0.0.1", 0)
    assert read_address("[::1]:8080", name="x") == ("::1", 8080)
