"""A case's engine in figures: survey, budget, forecast."""
