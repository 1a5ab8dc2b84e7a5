"""Work and trials: what was done to which part, and what came of it."""
