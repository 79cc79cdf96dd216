"""The stores of the storage tests, on both databases."""

from tests.store.conftest import keyring, open_store, postgres, template, template_file, url

__all__ = ["keyring", "open_store", "postgres", "template", "template_file", "url"]
