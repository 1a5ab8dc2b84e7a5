"""What was seen, smelt or known, and what kind of engine it is."""
