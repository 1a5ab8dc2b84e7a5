"""How words are meant: denied, feared, asked, of another engine or time."""
