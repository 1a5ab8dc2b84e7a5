"""Checks of the knowledge as a whole."""
