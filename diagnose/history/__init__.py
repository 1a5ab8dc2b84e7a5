"""The shop's memory: its closed jobs, and what they say of how common each cause is there."""
