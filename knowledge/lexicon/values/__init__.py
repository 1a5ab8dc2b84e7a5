"""Measured values, numbers and their units."""
