"""Finds the word of the knowledge a person means."""
