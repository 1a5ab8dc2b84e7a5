"""Rules to a fixpoint, the cause graph, exact posteriors and reasons."""
