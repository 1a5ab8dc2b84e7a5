"""Station suction: sump, pickup and everything before the pump."""
