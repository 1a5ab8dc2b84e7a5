"""Phrases for what was seen, smelt or known, by finding."""
