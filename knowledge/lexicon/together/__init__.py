"""Sets of words that name a finding wherever they stand in a clause."""
