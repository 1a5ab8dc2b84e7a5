"""Station bearings: the crank bearings."""
