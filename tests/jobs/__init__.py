"""Whole jobs from first flicker to closed case, and what closed ones teach."""
