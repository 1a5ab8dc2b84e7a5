"""The engine's history and circumstances: what they make more or less common."""
