"""Random and hostile files, answers and command lines."""
