"""What is seen of metal and dirt in filter, sump and oil."""

from __future__ import annotations

_BITS = (
    "metal|metallic|flakes|shavings|glitter|bits|chips|specks|filings|particles|swarf|pieces|slivers|sparkles|fragments|"
    "chunks"
)
#: the finding, by what is said when it is there
SIGHTS_DEBRIS: dict[str, tuple[str, ...]] = {
    "metal_in_filter": (
        f"cut|cutting|opened|split .. filter .. found|saw|full|had|see|revealed|show|shows .. {_BITS}",
        f"filter|pleats|element .. found|full|had|has|showed|of|contained|revealed|loaded|were|was .. {_BITS}",
        f"{_BITS}|stuff|copper|brass|bronze|bearing|babbitt|aluminium|aluminum in|inside|from|the|on the|my|oil|old|found|"
        "in? of|the|oil? oil? filter|pleats|element",
        f"filter .. {_BITS}",
        f"cut .. filter .. {_BITS}",
        f"{_BITS} .. cut|cutting|opened|sawed|split the|my|that? oil? filter",
    ),
    "metal_in_pan": (
        f"{_BITS}|bearing|material|copper|brass|bronze|babbitt in|inside|the|oil|bottom|my|material|on|at|from|of? in|of|the|"
        "bottom? of|the|oil? the|oil? sump|pan|drain|oil-pan",
        "pan|sump .. metal|shavings|flakes|filings|swarf|glitter",
    ),
    "magnetic_metal": (
        "magnet|magnetic .. picked|picks|pulled|grabbed|attracts|attracted up?",
        "sticks|stuck|stick|clings|cling to a|the|my? magnet",
        "ferrous|magnetic|steel|iron metal|flakes|slivers|particles|filings|chips|shavings|bits",
        "magnet|drain-plug .. metal|slivers|filings|shavings|chips|flakes|fuzzy|hairy",
    ),
    "bright_soft_metal": (
        "nonferrous|non-ferrous|nonmagnetic metal|flakes|particles|material|bits|shavings|chips?",
        "non ferrous|magnetic metal|flakes|particles|material|bits|shavings|chips?",
        "aluminium|aluminum|shiny|silver|silvery|bright flakes|bits|particles|shavings|swarf|specks|metal|chips|pieces",
        "flakes|bits|particles|shavings|metal|pieces are|were|of|is? nonferrous|non-ferrous|nonmagnetic|aluminium|aluminum",
        "flakes|bits|particles|shavings|metal|pieces non ferrous|magnetic",
    ),
    "copper_flakes": (
        "copper|bronze|brass|coppery|gold|golden coloured|colored? flakes|flake|bits|particles|shavings|specks|glitter|metal|"
        "dust|pieces|chips|filings|material|stuff",
        "copper|bronze|brass in|inside the? oil? filter|oil|pan|sump|screen",
    ),
    "grey_soft_flakes": (
        "white|bearing metal flakes|bits|particles|pieces",
        "babbitt|babbit flakes|bits|particles|pieces",
        "babbitt|babbit|whitemetal in|on|among|everywhere|floating|lying|all|throughout|deposits",
        "soft|melted|lumps|beads|smears|bits|lots|traces of? babbitt|babbit|whitemetal",
        "grey|gray|lead soft|coloured|colored? flakes|bits",
        "bearing overlay",
    ),
    "lining_strip": (
        "pieces|bits|strips|slivers|chunks|foil|lumps|part of bearing|shell|bearings|shells|lining",
        "bearing foil|lining|strips",
    ),
    "carbon_flakes": (
        "carbon|coke|coked|charcoal flakes|chunks|bits|pieces|lumps|particles|deposits|grains",
        "black chunks|lumps|flakes|granules|bits",
    ),
    "hard_chips": (
        "casting|core|blast|blasting|honing|sand|machining grit|beads|swarf|media|chips",
        "casting|core|blast|blasting|honing|machining sand in|inside|on|from|at|left|found|out|was|came|under",
        "glass|shot bead|beads|blast|peen media|grit|residue|dust|in|inside|left|found|under|on|at|were",
        "machining|drill|drilling swarf|shavings|chips|debris",
        "wire|brush bristles|wires",
    ),
    "fine_dust_only": (
        "just|only|bit|little|slight|normal|usual|some a|bit|of|little|the|very|usual? fine|grey|gray|normal|usual|light "
        "grey|gray|fine|metallic|metal|wear? dust|paste|powder|fuzz|wear|metal",
        "fine grey|gray? dust|paste|powder only|in|nothing",
        "normal wear metal|metals|dust",
        "nothing|no but|more a|than|metal|flakes normal|fine|usual|bit|just .. dust|fuzz|paste",
    ),
    "plug_fur_only": (
        "fuzz|fur|whisker|whiskers|hairs on the|only|normal? the? magnet|plug|drain|magnetic",
        "paste|sludge|mush on the? magnet",
    ),
    "metal_throughout": (
        f"{_BITS} everywhere|throughout|all over|through the|it? engine|motor|place?",
        f"{_BITS} through|throughout the|whole|entire engine|system|motor",
        "metal contamination throughout|everywhere",
    ),
    "crank_trap_full": (
        "sludge|crank|crankshaft trap|traps|drillings|tubes .. full|packed|blocked|solid|choked|clogged",
    ),
    "crank_trap_metal": (
        "metal|debris|grit|swarf in|inside the? crank|crankshaft|sludge drillings|traps|trap|oilways",
    ),
    "gasket_shreds_found": (
        "gasket|cork|paper|fibre|fiber bits|pieces|shreds|material|scraps|fragments in|on|the|my? .. pan|sump|filter|oil",
        "bits|pieces|shreds|strips|fragments of gasket|cork|fibre|fiber|paper",
        "fibre|fibres|fiber|fibers|cork in|found the? oil? filter|sump|pan|screen",
    ),
    "debris_seen_before": (
        "fibre|fibres|fiber|metal|bits|debris|flakes|glitter|something in|found|seen .. last|earlier|previous|before|an "
        "oil? change|service|filter",
        "last|earlier|previous|before oil? change|service|filter|time .. had|found|showed|full .. bits|metal|debris|flakes|"
        "fibres|glitter",
    ),
}
#: the finding, by what is said when it is not there
SIGHTS_DEBRIS_ABSENT: dict[str, tuple[str, ...]] = {
    "magnetic_metal": (
        "magnet @not pick|picks|attract|touch|lift|stick .. up|it|them|any?",
        "flakes|bits|metal|particles|shavings are|were|is|of? nonferrous|non-ferrous|nonmagnetic",
        "nonferrous|non-ferrous|nonmagnetic metal|flakes|bits|particles|material",
        "non ferrous|magnetic metal|flakes|bits|particles|material",
        "@not stick|sticks|stick|attracted|magnetic|pick|picked to|by|up? a|the|with? magnet",
        "@not =magnetic",
        "magnet|magnetic plug? is|was|came|out|up|perfectly? =clean|clear",
        "drain|sump plug is|was|came|out|up|perfectly? =clean",
    ),
    "metal_in_filter": (
        "nothing|zero .. in|inside the? oil? filter|pleats",
        "filter .. spotless|metal-free",
        "cut|checked|opened|looked|examined|inspected|emptied|drained|sawed|sawn|split .. filter .. nothing",
        "filter|element was|is|looked|came|seemed|inside|out|quite|perfectly|very|and|had|still|all? =clean",
        "cut .. filter .. nothing|=clean",
    ),
    "metal_in_pan": (
        "nothing|zero in|inside|at the? bottom? of? the? pan|sump",
        "pan|sump was|is|looked|spotlessly|came|very|perfectly? =clean|spotless",
    ),
}
