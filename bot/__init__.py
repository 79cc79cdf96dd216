"""Chalkpost: strength training with remote clients, through a chat."""
