"""Words that say that a part on the engine came from another one."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set

#: the part, and the finding that it is another engine's
BORROWED_PARTS = dict.fromkeys(("dipstick", "stick", "dip-stick"), "dipstick_not_its_own")
#: from where a part comes
FROM = _set("from off of")
#: between that and the engine
WHOSE = _set("a an the my our his her their its some someone's brother's mate's neighbour's")
ANOTHER = _set("another other different old donor second previous wrong spare")
#: what the part came from
ENGINES = _set(
    "engine motor tractor car truck boat bike lorry van model machine one make block generator digger"
)
#: between the part and that: it was put on, or it simply is from there
PUT = _set(
    "is was are were came comes that which has have been got , i we he dad put fitted used in"
)
#: before it in its clause: it is not so, or not yet
NOT_SO = _set("not isn't wasn't if should could would need try check checked compare compared like")
