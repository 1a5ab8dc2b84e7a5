"""Measured values and the grade of the oil, as people write them."""
