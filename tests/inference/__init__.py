"""From findings to a ranking: rules, evidence, exact inference, trials, contradictions."""
