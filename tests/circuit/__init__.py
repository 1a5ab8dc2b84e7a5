"""One engine's circuit: survey, budget, forecast, fixes, sizing, law of its pressure."""
