"""How the words of a sentence are meant: stated, denied, asked, of another engine or time."""
