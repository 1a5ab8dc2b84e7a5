"""Alarms, cautions, and engines that the tool refuses."""
