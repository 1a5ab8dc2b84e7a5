"""Station instrument: gauge, sender, lamp and wiring."""
