"""Documents and their forms: texts, reports, pages, pictures."""
