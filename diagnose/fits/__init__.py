"""Arithmetic of one bearing: clearance, form, undersizes. Metres; knows no case and no screen."""
