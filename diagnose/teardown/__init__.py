"""The teardown plan of one case, and what must be done before the engine is closed again."""
