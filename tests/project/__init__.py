"""The project itself: imports, guides, README, public API, wheel, mutants."""
