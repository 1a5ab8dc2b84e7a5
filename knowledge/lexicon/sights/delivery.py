"""What is seen or known of the filter, cooler and galleries, in phrases of more than the book's own ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS_DELIVERY: dict[str, tuple[str, ...]] = {
    "crank_feed_seal_reused": (
        "seal .. feeds|feed the? crank|crankshaft end? was|were|is|got? re-used|reused|kept",
        "seal .. feeds|feed the? crank|crankshaft end? was|went|put|used? again|back|back-in",
        "reused|re-used|kept the|its? old|original? crank|crankshaft|timing-cover end? oil? feed? seal",
        "old|original crank|crankshaft end? oil? feed seal was|went|got? reused|re-used|back|again",
    ),
    "filter_burst": (
        "filter burst|blew|exploded|split|blown|popped|bursts|blows",
        "blew .. filter",
        "burst .. filter",
        "filter can|canister|body|seam? came|come|comes apart",
        "filter can|canister|body|seam|case|casing ruptured|burst|split|exploded|failed|cracked",
        "filter .. ruptured|burst|exploded|split",
        "canister|filter can|seam|gasket|seal|housing|o-ring|oring? =split|=burst|=exploded|=ruptured|blew|blown at|along|open|apart|out|off|in|on",
        "filter gasket|seal|o-ring|oring|ring let|lets|has|had? go|let|blown|blew|pushed|squeezed|extruded out?",
        "canister|filter gasket|seal? lets|let go",
        "shot|blew|blown|blasted right|clean|straight|itself? off the? engine|block|housing|mount",
    ),
    "filter_misfitted": (
        "old|previous|first|original filter? gasket|seal|o-ring|oring|ring .. stuck|sticking|left|still|behind|stayed|remained",
        "@not get|got|take|took|taken|remove|removed|clean|cleaned|peel the|its? old|previous|original|first filter? gasket|seal|o-ring|oring|ring off",
        "two|double|both|second|extra|doubled filter? gaskets|seals|gasket|seal|o-rings|orings .. filter|head|mount|housing",
        "filter .. two|double|both|second gaskets|seals|gasket|seal|o-rings",
        "double gasketed|stacked|sealed",
        "filter was|is|had|been|found? cross threaded",
        "cross-threaded|crossthreaded filter?",
    ),
    "filter_bulged": ("filter .. bulged|swollen|ballooned|bloated",),
    "filter_empty_after_standing": (
        "filter was|is|came|found|also|completely|bone|totally? dry|empty when|inside|as|after|once i|we|it|he|they|the|taken|removed|unscrewed|took|off?",
        "took|pulled|unscrewed|removed|spun|had|undid the|that|my|new|oil? filter|filter-housing|housing off|again|out? ,|and|it|was|is|bone|off|completely|"
        "to-find-it? ,|and|it|was|is|bone|completely? dry|empty",
        "filter housing|off|out|again|off-again? , bone|completely|totally? dry|empty",
        "no|not|hardly|barely|any a? oil|drop|drops|trace in|inside the|it? filter|housing|filter-housing",
        "filter off|out|down and|,|, and|it|was|to-find? it? was|is|were|came|found? it? bone? dry|empty",
        "filter was|is|came off|out|found? completely|bone|almost|nearly? dry|empty inside|when|after|of-oil",
        "no|not|hardly|barely any|a|drop|much? oil in the? old|new? filter",
    ),
}
