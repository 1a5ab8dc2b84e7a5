"""Words that say of a fault that it was put right."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set

#: behind a fault: it is no longer there
MENDED = _set("fixed cured mended repaired sorted rectified resealed remedied healed welded brazed")
#: before a fault: somebody put it right
CURES = _set("fixed cured mended repaired sorted rectified remedied")
#: between a fault and that
BETWEEN = _set(
    "is was were are has have had been now since already all got then being which that i we he "
    "they properly"
)
#: before "for a gasket leak": that is why it was opened, and was put right then
OPENED = _set("opened off out apart down dropped removed stripped in")
#: lead to the reason why a part was renewed
WHY = _set("because as since")
#: after that: the part that was renewed
PRONOUNS = _set("it they one")
