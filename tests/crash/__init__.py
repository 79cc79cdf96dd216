"""Processes killed at work, and an audit of what is left."""
