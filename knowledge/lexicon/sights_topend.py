"""What is seen or known of the top end, in phrases of more than the book's own ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS_TOPEND: dict[str, tuple[str, ...]] = {
    "turbo_shrieks": ("turbo whine|whines|whining|howls|screaming|shriek|noisy|screams|howling",),
    "timing_cover_rattles": (
        "chain|timing rattle|rattles|rattling|noise",
        "timing cover|chain rattles|rattle|rattling|noise",
    ),
    "no_oil_at_rockers": (
        "no oil to|at|on|up|reaching|getting|coming .. top|rockers|head|rocker|valve|heads|lifters|cam",
        "rockers|top|head dry|starved",
    ),
}
