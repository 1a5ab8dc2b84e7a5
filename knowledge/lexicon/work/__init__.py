"""Work, trials, and what came of them."""
