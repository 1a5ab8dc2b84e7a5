"""Station assembly: what the last work inside left behind."""
