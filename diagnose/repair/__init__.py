"""What each finding costs in pressure, and what a planned repair would give back."""
