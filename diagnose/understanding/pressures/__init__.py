"""Pressures as people give them: which figures are one, read when, on which gauge."""
