"""Words at the head of a line of a thread: names of who wrote it, and labels that are none."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set

#: the owner of the engine writes
OWNER = _set("me op owner poster i us myself")
#: names that are words of the trade or of English as well
NAMES = _set(
    "bob mike mark rod rich art bill frank jack dave john jim tom steve pete paul harry will grant max "
    "ray rob nick guy bud chuck pat sandy ed al joe sam ben dan ken ron don tim phil carl neil andy ian"
)
#: head what a shop or an owner notes, and are no names
LABELS = _set(
    "question answer edit reply re subject note notes ps btw ans update tldr summary result results "
    "problem symptom symptoms title model make year complaint cause correction concern machine vehicle "
    "customer date hours mileage odometer repair comment comments observation diagnosis technician tech "
    "findings finding history job unit serial conclusion action actions parts part quote situation "
    "background setup details info tried done checked status reason thread post topic location fix fixed "
    "garage shop dealer mechanic workshop engineer builder machinist owner's "
    "fyi nb warning remarks remark test tests day week month morning evening symptons"
)
