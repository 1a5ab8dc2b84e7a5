"""Station oil: its level, grade and condition."""
