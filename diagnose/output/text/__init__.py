"""Documents as lines for a terminal 80 columns wide."""
