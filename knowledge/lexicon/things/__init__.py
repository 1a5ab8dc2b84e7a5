"""Parts and substances by name, the states they may be in, and what those say."""
