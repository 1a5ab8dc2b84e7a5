"""How people name an engine and its kind."""
