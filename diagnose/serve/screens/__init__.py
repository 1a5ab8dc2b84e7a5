"""The screens: each takes what was asked and returns an answer."""
