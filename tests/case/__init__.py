"""Case files and cards: read, checked, written whole or not at all."""
