"""Bearing readings, fits and counts."""
