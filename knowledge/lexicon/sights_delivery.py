"""What is seen or known of the filter, cooler and galleries, in phrases of more than the book's own ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS_DELIVERY: dict[str, tuple[str, ...]] = {
    "filter_burst": (
        "filter burst|blew|exploded|split|blown|popped|off|bursts|blows",
        "blew .. filter",
        "burst .. filter",
        "filter can|canister|body|seam? came|come|comes apart",
        "filter can|canister|body|seam|case|casing ruptured|burst|split|exploded|failed|cracked",
        "filter .. ruptured|burst|exploded|split",
    ),
    "filter_bulged": ("filter .. bulged|swollen|ballooned|bloated",),
}
