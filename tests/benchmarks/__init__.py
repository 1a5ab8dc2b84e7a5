"""How fast, how small, and how it grows: each figure a ratio to a named peer of the same run."""
