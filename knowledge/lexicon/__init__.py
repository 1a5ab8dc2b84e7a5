"""Trade words by role, as people type them; common practice. Imports closed lists and ids only.

A phrase is words with blanks between, compared by stem: ``a|b`` either word, ``word?`` optional,
``..`` up to three other words, ``@not`` any negation.
"""
