"""Station pump: the pump and its drive."""
