"""Read what a person says in plain words, and turn it into entries of a case."""
