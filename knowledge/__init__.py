"""What the trade knows of oil pressure; ``book`` holds all of it as one value."""
