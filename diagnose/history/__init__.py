"""A shop's closed jobs, and how common each cause is there."""
