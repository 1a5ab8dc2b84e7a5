"""What is seen or known of metal and dirt, in phrases of more than the book's own ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS_DEBRIS: dict[str, tuple[str, ...]] = {
    "metal_in_filter": (
        "cut .. filter .. found|saw|full .. metal|shavings|flakes|glitter|filings|bits",
        "filter .. found|full .. metal|shavings|flakes|glitter|filings",
        "metal|flakes|shavings|glitter|bits|chips|specks|filings|particles|swarf|pieces|stuff in|inside the|my|oil|old|of? oil? filter",
        "filter .. metal|glitter|shavings|flakes|filings|sparkles",
        "cut .. filter .. metal|shavings|flakes|glitter",
    ),
    "metal_in_pan": (
        "metal|flakes|shavings|glitter|bits|chips|filings|bearing|swarf|particles|pieces|slivers in|inside the|oil|bottom|my|material? of? the|oil? oil? sump|pan|drain|oil-pan",
        "pan|sump .. metal|shavings|flakes|filings|swarf",
    ),
}
