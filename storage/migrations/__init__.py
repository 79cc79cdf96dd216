"""The steps that bring a database from one version to the next, in order. Run in-process by `Store.migrate`."""

VERSIONS = ("0001", "0002", "0003", "0004", "0005", "0006")
"""Every version this code knows, oldest first; a database of another one is newer than the code."""

HEAD = VERSIONS[-1]
