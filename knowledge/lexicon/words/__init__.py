"""Small words: joints, fillers, beginnings, answers."""
