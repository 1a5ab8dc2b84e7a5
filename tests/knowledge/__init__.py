"""The book: its words, rules, figures, limits, access and sources."""
