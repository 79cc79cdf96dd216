"""Whole conversations through the real bot: poller, inbox, dialogues, outbox and sender, over HTTP to the stand-in."""
