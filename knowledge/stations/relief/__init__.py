"""Station relief: the relief valve."""
