"""How the pressure behaves and what noises there are, with when and since when."""
