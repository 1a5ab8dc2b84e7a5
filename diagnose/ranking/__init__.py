"""Posterior of root causes, exactly; knows networks and evidence, no rule and no engine."""
