"""Words for metal, sealer and other pieces found in oil, filter, sump and screen."""

from __future__ import annotations

_BRG = (
    "bearing|bearings|shell|shells|mains|big-ends|big-end|inserts|insert|rod-bearings|main-bearings"
)
_BITS = (
    "metal|metallic|flakes|shavings|glitter|bits|chips|specks|filings|particles|swarf|pieces|slivers|sparkles|fragments|"
    "chunks"
)
_FUZZ = "fuzz|fluff|fur|paste|dust"
_SCREEN = "screen|strainer|gauze|mesh|pickup|pick-up|=pick_=up"
_SUMP = "sump|pan|oilpan"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "piece_found_inside": (
        "found|a|loose|broken bolt|nut|washer|piece|pieces|chunk|chunks|screw|circlip|pin|spring|clip in|inside|at|lying|on the|bottom|of|in? the|bottom|of? oil? sump|pan|oil-pan|crankcase|engine",
        "bolt|nut|washer|circlip|broken|screw pieces? in|inside|lying the|bottom|of|in? oil? sump|pan|crankcase|oil-pan",
        "bits|pieces|chunks|parts of piston|rod|cam|chain|lifter|gear|ring|rings|guide|plastic in|inside|found|at",
    ),
    "bearing_pieces_in_pump": (
        f"pieces|bits|fragments|parts|chunks of a? {_BRG} in|inside|through the? oil? pump",
        f"{_BRG} pieces|bits|fragments|chunks|material|shrapnel in|inside|through the? oil? pump",
        f"opened|opening|stripped|stripping|dismantled|took up? the? oil? pump apart|down|up? ,|and|i|we? found|there? was|were? .. {_BRG} pieces|bits|fragments|chunks|material|shrapnel",
    ),
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
        "chunk|chunks|lump|lumps|piece|pieces|crescent|half-moon|big-flake of? metal|steel|iron|alloy|bearing|brass came|was|fell|dropped|like|a|half|moon? .. in|out|with|from of? the? old|drained|used|sump? oil|pan|sump|drain|bucket|tray",
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
        "glitter|flakes|flake|metal|bits|slivers|specks|shavings ,|and|but|, is|are|it? not|non|@not magnetic|magnet|stick|picked|attracted",
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
        "crank|crankshaft|sludge|crankpin traps|trap|drillings|oilways|ways is|are|was|were|all|completely? full|packed|plugged|blocked|solid|clogged",
        "crank|crankshaft is|was|were|all|full|packed|plugged|blocked =full|=packed|=plugged|=blocked|=with|=of|=solid sludge|muck|dirt|crud|of|with?",
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
        "fibre|fibres|fluff|bits|pieces|metal|rubber|debris|flakes|plastic|gasket|shreds|silicone .. screen|filter|pan|sump|magnet|strainer at|during|on|in an|the|my|a? earlier|previous|last|past oil? change|service|drain",
        "fibre|fibres|fluff|bits|pieces|metal|rubber|debris|flakes|plastic|gasket|shreds|silicone .. screen|filter|pan|sump|magnet|strainer =last =time",
    ),
    "glitter_in_oil": (
        "glitter|glittery|sparkle|sparkles|sparkly|shimmer|specks|flakes|glints in|the|with|on? oil|dipstick|stick",
        "metal|metallic|shavings|filings|particles|swarf|bits|flakes|copper|brass|gold|silver in|inside the|my|engine|old|"
        "drained? oil",
        "oil .. glitter|glittery|sparkles|metallic|sparkly|metal|shavings|sparkling|glistening|filings|shiny",
        "metallic|glittery|sparkly|silvery|glittering oil",
        "oil like|looked|looks like? metallic|metalflake|paint",
    ),
    "sealer_in_sump": (
        "silicone|rtv|sealant|sealer|goo|gasket-goo|hylomar hangs|hanging|hung|dangles|dangling inside|down|in|into in|like? curtains|strings|beads|icicles|worms|ribbons|shreds|sump|pan",
        "hangs|hanging|hung inside|down|in? in curtains|strings|beads|icicles|worms|ribbons",
        "curtains|strings|beads|icicles|worms|ribbons|sausages of silicone|rtv|sealant|sealer|goo inside|in|hanging|into|all",
        "bits|lumps|crumbs|strings|pieces|blobs of? blue|orange|black|red|grey|silver|clear|old? silicone|rtv|sealant|sealer in|inside|at the? drain|drained|old|sump|pan oil|pan?",
        "orange|blue|red|grey|gray|copper-coloured rubbery|little|tiny|small|stringy? worms|strings|snakes|ribbons|strands|threads|blobs|curls|crumbs|strips .. pan|sump|oil|drain",
        "worms|strings|snakes|ribbons|strands|threads|blobs|curls|crumbs|strips of? orange|blue|red|grey|gray|copper-coloured? silicone|rtv|sealant|sealer|goo|goop|instant-gasket|gasket-maker|gasket-goo|liquid-gasket .. pan|sump|oil|drain",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
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
        f"only|just|but|except|than the|a? usual|normal|ordinary bit|amount|touch|little? of? {_FUZZ}",
    ),
    "metal_in_pan": (
        "nothing|zero in|inside|at the? bottom? of? the? pan|sump",
        "pan|sump was|is|looked|spotlessly|came|very|perfectly? =clean|spotless",
    ),
    "crank_trap_full": (
        "sludge|crank trap|traps was|were|is|are|has-been|been|all? =cleaned|=cleared|=clean|=empty|=clear out?",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "sealer_in_sump": (
        f"silicone|rtv|sealant|sealer|gasket_goo|gasket_maker|instant_gasket|bead|beads + {_SUMP}|rail|inside|hanging|dangling + hanging|inside|loose|floating|dangling|bits|strings|worms|crumbs|lumps|blobs|shreds - no|not|resealed|sealed|with_silicone|with_rtv|with_sealant|with_sealer|refitted|glass|blast|shot|{_SCREEN}|leak|squeezed_out_outside",
    ),
    "metal_in_screen": (
        f"{_SCREEN} + metal|swarf|filings|flakes|shavings|slivers|glitter|bronze|brass|aluminium|aluminum - no|not|clean|free|hole",
    ),
    "gasket_shreds_found": (
        f"gasket|paper|fibre|cork + shreds|bits|pieces|scraps|strips|fibres + filter|{_SUMP}|element - pickup|strainer|screen|no|not|goo",
    ),
    "piece_found_inside": (
        "nut|bolt|washer|washers|clip|circlip|spring|key|stud|piece|screw|dowel|tooth|collet|pin + sump|pan|bottom|valley|crankcase|timing_case|timing_chest|oilpan + lying|found|in|dropped|fallen|loose|fell|floating|rattling - drain|plug|pan_bolts|sump_bolts|gasket|tightened|torqued|dropped_the|no|dropped_the_pan_bolts|piece_of_bearing|plastic|gudgeon",
        "bolt|nut|=washer|circlip|clip|pin|spring|piece|=bit|bits|chunk|lump|half|roller|needle_roller|valve_guide|tooth + lying|found|sitting|rolling|floating|rattling + sump|pan|oil_pan|crankcase|bottom_of_the_engine|inside|bottom - no|not|drain|plug|oil_pump|relief|pickup|screen|filter|screw_in",
    ),
    "magnetic_metal": (
        "magnet|magnetic + slivers|beard|hairy|fuzz_of|covered|filings|shavings|chunks|hedgehog|picked_up|picks_up|chips|bristling|furry|splinters|flakes|stuck_to|sticks_to - no|not|nothing|non|@not|fine_fuzz|thin|clean|light|just|fur|normal|none|plunger",
    ),
    "bright_soft_metal": (
        "flakes|slivers|bits|metal|shavings|flake & magnet & @not|nothing|none|ignored|ignores|leaves|no_interest - clean",
        "aluminium|aluminum|alloy|bright_soft|soft_bright + flakes|bits|slivers|shavings|specks|glitter|metal - no|not|sump|pan_is|head|block",
    ),
    "copper_flakes": (
        "copper + all_through|all_over|everywhere|lots_of|full_of + sump|pan|oil|filter|strainer - no|not|washer|pipe|line",
        "copper|bronze|brass|coppery|gold|golden|bronze_coloured|brass_coloured + grit|flakes|bits|glitter|specks|specs|slivers|shavings|flecks|particles|sparkle|filings|dust|tinge - no|not|washer|down|pipe|line|showing|backing",
    ),
    "lining_strip": (
        "bearing|lining|shell|white_metal|whitemetal|babbitt + strips|foil|slivers|sheets|ribbons|strip|flakes|pieces + filter|pan|sump|screen|pump|oil|found - no|not|cam_bearing_tool",
    ),
    "grey_soft_flakes": (
        "grey|gray|dull + flakes|soft|blobs|beads + soft|melted|metal|flakes|smear - no|not|dust|even",
    ),
    "metal_throughout": (
        "metal|debris|bearing_material|swarf|filings|glitter|shrapnel|bits + throughout|everywhere|all_through|all_over|every_oilway|whole_engine|entire|right_through|whole_oiling|through_the_whole - no|not",
    ),
    "crank_trap_full": (
        "trap|traps|sludge_traps|sludge_trap|crank_drillings|crank_plugs + solid|full|packed|choked|blocked|rammed - drain|trap_door|no|not|water",
    ),
    "hard_chips": (
        "=sand|=grit|casting_sand|glass_beads|bead_blast|bristle|shot_blast|steel_shot + filter|sump|pan|oilway|oilways|pump|screen|galleries|engine|found|passages|inside - no|not|sandwich|bead_of|sealant|silicone|sealer|drip|paper",
    ),
    "fine_dust_only": (
        "fine|grey|gray + dust|paste|powder|film|fuzz + only|just|nothing_else|no_flakes|nothing_more|no_chunks|normal",
    ),
    "glitter_in_oil": (
        "oil|drained|stick|dipstick|tray|drain + glitter|glittery|sparkle|sparkles|metallic|shimmer|metal_flake|glistening|sparkly|glittering|silver - no|not|filter|magnet|free|pump|without|tank|clean",
        "glittery|sparkly|glitters|sparkles|glittering + gold|metal|paint|silver|like|bronze & oil|stick|dipstick|drain - no|not|new",
        "oil + flecks|flakes|swirl|swirling|pearl|glint|glinting|twinkle|metallic|specks|particles + sun|light|gold|silver|swirling|hits|shine|shiny|looks|drain|stick - filter|pleats|no|not|sump|pan",
        "like + pearl_paint|metallic_paint|metal_flake|glitter_paint|christmas - filter",
        "oil + sheen|specks|sparkle|sparkles|glints|metal_flake|flecks|shimmer + silver|silvery|shiny|metallic|gold|metal|bright|drained|oil - water|outside|bilge|no|not|rainbow",
        "oil|stick|dipstick|drain + tinsel|flakes|sparkles|glints|shimmers|specks|silver|metallic - filter|no|not|clean|pan|screen|strainer|pump|copper|gold",
    ),
    "plug_fur_only": (
        "magnetic_plug|drain_plug|sump_plug|magnet|plug + fuzz|fur|hair|paste|fluff + fine|just|only|normal|bit|little|usual|light - flakes|slivers|chunks|no|spark",
    ),
    "debris_seen_before": (
        "bits|pieces|chips|plastic|swarf|grit|fragments + filter|sump|strainer|screen|relief|drain + before|last_drain|last_time|old|last|again|each_time|twice|every_time - no|not|new|never|none|replaced",
        "years_ago|year_ago|last_year|months_ago|previous_owner|earlier_service|previous_service & screen|strainer|pickup|gauze|filter & "
        "half_blocked|part_blocked|partly_blocked|blocked|clogged|full_of|debris|crud|coke|sludge|sealant|plastic & then|at_that_time|at_the_time|back_then|cleaned - no|not|clear|now|today",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "metal_in_pan": (
        f"{_SUMP} + clean|spotless|no_metal|no_glitter|no_shavings|nothing_in|@not_metal|no_filings|no_swarf - cleaned|outside|to_clean|clean_the|dry",
        "no|@not_any|without + metal|swarf|filings|glitter|debris + sump|pan|bottom|oilpan - filter|screen",
    ),
    "metal_in_filter": (
        "filter|element|cartridge + clean|no_metal|no_glitter|no_shavings|nothing_in|spotless|no_flakes|@not_metal|no_filings|no_swarf|nothing_unusual|free_of_metal - cleaned|air|fuel|new_clean|clean_side|to_clean",
    ),
    "magnetic_metal": (
        "magnet + clean|nothing|picked_up_nothing|no_metal|no_interest|ignored|bare|@not_pick|@not_attract|nothing_on|@not_stick|no_filings - fuzz",
    ),
    "glitter_in_oil": (
        "no_glitter|no_sparkle|no_sparkles|no_shimmer|@not_glitter|@not_sparkle|without_glitter",
        "no_metal|no_specks + oil|drain|stick|dipstick|drained|tray|old_oil",
    ),
}
