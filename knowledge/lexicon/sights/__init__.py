"""Words of findings, a file for each subject; ``tables`` puts them together, the rest says how they are read."""
