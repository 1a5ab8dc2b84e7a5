"""Find words of the book from everyday or misspelt phrases."""
