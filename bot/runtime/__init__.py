"""Transactions and loops: what came in is kept before it is acknowledged, each turn is committed whole, then sent."""
