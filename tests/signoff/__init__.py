"""Reassembly: tasks, verdicts, parts, first start, closing."""
