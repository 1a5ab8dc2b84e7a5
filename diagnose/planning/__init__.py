"""Choose the next check from probabilities, minutes and the access tree; prints nothing."""
