"""Commands by the user's words: the only place that prints, prompts and exits."""
