"""Findings whose part people describe by what it does instead of naming it."""
