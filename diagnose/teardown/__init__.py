"""The teardown plan of one case, and what must be seen to before the engine is closed again."""
