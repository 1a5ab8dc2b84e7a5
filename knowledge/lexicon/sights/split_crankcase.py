"""Words for a crankcase that is split by something, or only said to be split."""

from __future__ import annotations

#: findings that "the crankcase is split" may name, the words for it, and what follows where it broke
CASES = frozenset(["block_cracked", "sump_found_holed"])
CASE_WORDS = frozenset(["crankcase", "crankcases", "case", "cases"])
SPLIT_BY = frozenset(
    ["by", "along", "across", "open", "from", "where", "at", "through", "in", "right"]
)
