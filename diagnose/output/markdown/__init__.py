"""Documents as Markdown sheets to fill in."""
