"""Findings that repeat what gauge or lamp was said to show, and when: it says them by itself."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set

_SINCE = ("since", frozenset(["*"]))
_UNSTEADY = ("shows", frozenset(["unsteady"]))
#: by finding: the field of a behaviour, and the words in it; "*" is any word
SAID_BY_BEHAVIOUR: dict[str, tuple[tuple[str, frozenset[str]], ...]] = {
    **dict.fromkeys(
        (
            *("changed_with_oil_change", "changed_with_new_pump", "changed_after_other_work"),
            *("changed_with_grade", "changed_after_knock", "instrument_just_changed"),
            *("none_from_first_start", "low_from_first_start"),
        ),
        (_SINCE,),
    ),
    "fell_suddenly": (("onset", frozenset(["sudden"])),),
    "declined_over_months": (("onset", frozenset(["gradual"])),),
    "falls_with_clutch": (("during", frozenset(["clutch pressed"])),),
    "needle_flickers": (_UNSTEADY,),
    "lamp_comes_on": (("shows", _set("lamp")),),
    "gauge_reads_zero": (("shows", _set("none lost")),),
    "gauge_reads_high": (("shows", _set("high")),),
}
