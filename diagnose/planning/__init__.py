"""What to look at next; knows probabilities, minutes and the tree of access, no screen."""
