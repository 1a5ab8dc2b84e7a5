"""A case's bearings judged: clearances against limits, shells to order, pressure each choice gives."""
