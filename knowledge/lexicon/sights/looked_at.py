"""What people say after a list of things they looked at: "and found nothing", "all fine"."""

from __future__ import annotations

_FINE = "fine|good|ok|okay|normal|sound|perfect|healthy|correct|alright|well"
#: all that was looked at is as it should be
ALL_FINE = (
    "found|finding|revealed|showed nothing wrong|amiss|untoward|unusual|obvious|suspicious?",
    "nothing found|seen|noted",
    "nothing wrong|amiss|untoward|unusual|obvious found|there|anywhere|visible|seen?",
    "no|zero fault|faults|problem|problems|issue|issues|defects found|there|anywhere|seen?",
    f"all|everything|both|each|they|these|and looked|looks|look|seem|seemed|was|were|is|are|appear|appears? {_FINE}",
    f"all|everything|both|they checked|checks|check|came|turned out {_FINE}",
)
#: what was done to each thing of the list
LOOKED = frozenset(
    [
        "checked",
        "stripped",
        "dismantled",
        "checking",
        "inspected",
        "examined",
        "tested",
        "verified",
        "measured",
        "looked",
        "look",
        "check",
        "been",
        "gone",
        "went",
        "through",
    ]
)
#: the same, where these follow
LOOKED_AT = {
    "looked": frozenset(["at", "over", "through"]),
    "look": frozenset(["at", "over", "through"]),
    "been": frozenset(["through", "over"]),
    "gone": frozenset(["over", "through"]),
    "went": frozenset(["over", "through"]),
    "through": frozenset(),
}
#: after the words for the outcome: it is not of all of them
NOT_ALL = frozenset(
    ["but", "except", "apart", "until", "in", "on", "besides", "other", "with", "so", "if"]
)
#: what is no part but is looked for or at, and the finding where nothing was wrong with it
ALSO_LOOKED_AT: dict[str, tuple[str, bool]] = {
    "leaks": ("oil_seen_outside", False),
    "leak": ("oil_seen_outside", False),
    "level": ("level_correct", True),
    "dipstick": ("level_correct", True),
    "connectors": ("sender_connector_loose", False),
    "connections": ("sender_connector_loose", False),
    "connector": ("sender_connector_loose", False),
}
#: in such a list they are what was looked for
LEAKS = frozenset(["leak", "leaks"])
