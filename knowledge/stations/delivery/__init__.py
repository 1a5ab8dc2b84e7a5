"""Station delivery: filter, cooler and galleries."""
