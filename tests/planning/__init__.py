"""Which check comes next, and the teardown plan."""
