"""A text as words, numbers and phrases, and the facts that are made of them."""
