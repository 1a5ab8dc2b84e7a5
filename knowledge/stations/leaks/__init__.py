"""Station leaks: oil leaving the engine."""
