"""Engines: features, layouts, circuits in figures, limits."""
