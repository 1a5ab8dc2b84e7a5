"""Words for metal, sealer and other pieces found in oil, filter, sump and screen."""

from __future__ import annotations

from knowledge.lexicon.words.names import OLD_OIL

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
        "strainer|gauze|mesh|net|sieve|screen|pickup|suction_pipe|pick-up|intake_screen|suction_strainer|rose|foot_filter + metal|slivers|swarf|flakes|brass|copper|bronze|whitemetal|white_metal|chips|shavings|shiny|glitter|filings|babbitt|silver_bits|bearing_metal|steel + stuck|on|in|carrying|caught|lying|held|full|picked|had|has|sitting|trapped|with - no|not|nothing|free|clean|without|never|none|nil|sump|filter_paper|magnet|hole|torn|clear|tube_broke|valve|cage",
        f"{_SCREEN} + metal|swarf|filings|flakes|shavings|slivers|glitter|bronze|brass|aluminium|aluminum - no|not|clean|free|hole",
    ),
    "gasket_shreds_found": (
        "strainer|sump|pan|filter|screen|oil + shreds|bits|pieces|scraps|fragments + gasket|paper_seal|joint|cork|fibre|fiber|seal|packing - no|not|none|nothing|goo|maker",
        "gasket|joint|cork|fibre|fiber|gasket_paper|packing|paper_gasket + chunks|bits|fragments|shreds|pieces|crumbs|scraps|strips|flakes|lumps|torn_bits|strands|ribbons + filter|sump|pan|screen|drain|strainer|pleats|element|pickup|oil|bottom|oilpan|caught - no|not|none|nothing|never|goo|sealant|silicone|rtv|ball|hole|cover_off|cleaned_off|scraped|face",
        f"gasket|paper|fibre|cork + shreds|bits|pieces|scraps|strips|fibres + filter|{_SUMP}|element - pickup|strainer|screen|no|not|goo",
    ),
    "piece_found_inside": (
        "nut|bolt|washer|washers|clip|circlip|spring|key|stud|piece|screw|dowel|tooth|collet|pin + sump|pan|bottom|valley|crankcase|timing_case|timing_chest|oilpan + lying|found|in|dropped|fallen|loose|fell|floating|rattling - drain|plug|pan_bolts|sump_bolts|gasket|tightened|torqued|dropped_the|no|dropped_the_pan_bolts|piece_of_bearing|plastic|gudgeon",
        "bolt|nut|=washer|circlip|clip|pin|spring|piece|=bit|bits|chunk|lump|half|roller|needle_roller|valve_guide|tooth + lying|found|sitting|rolling|floating|rattling + sump|pan|oil_pan|crankcase|bottom_of_the_engine|inside|bottom - no|not|drain|plug|oil_pump|relief|pickup|screen|filter|screw_in",
        "pan|sump|oil_pan|bottom_of_the_engine|crankcase|bottom_of_the_pan|pulled_the_pan + stray_nut|stray_bolt|stray|nut_rolled_out|half_a_circlip|circlip|broken_piece|broken_bit|steel_part|small_steel|capscrew|roll_pin|broken_bolt|loose_bolt|loose_nut|a_nut|a_bolt|a_washer|half_a_washer|cotter_pin|split_pin|lump_of_metal|chunk_of_metal|bolt_head|broken_tooth|woodruff_key|keeper|collet|snap_ring|half_a_clip + found|rolled|discover|fished|in_it|lying|picked|out|magnet|bottom|dropped|loose|in_the - no|not|nothing|drain|bolt_loose|pan_bolt|sump_bolt|left_off|missing|stripped|round|torque|leak|thrust|gasket|plug",
    ),
    "magnetic_metal": (
        "fragments|slivers|bits|pieces|flakes|particles|debris|chips|metal + answered_to_a_magnet|answer_to_a_magnet|magnet|magnetic|fridge_magnet + jump|jumped|stuck|stick|sticks|clung|cling|answered|picked|pick|drawn|attracted|pulled|leapt|love - not|no|never|wont|@not|ignore|ignores|unmoved|non",
        "magnet|magnetic|ferrous + hairy|bristling|bearded|grew_a_beard|came_out|came_up|cling|clings|clung|grabbed|grabs|picks|picked|goes_to|jump|jumped|jump_to|leapt|stick|sticks|stuck|covered|furry|loaded|attracted|pulls|pulled & slivers|iron|steel|bits|pieces|flakes|chips|chunks|splinters|filings|metal|whiskers|needles|shavings|debris|they|particles - no|not|nothing|non|@not|never|thin|fine|usual|normal|none|only|just|ignored|wont|brass|clean|fuzz|soft|light|sender|pickup_coil|mag_mount",
        "pieces|bits|flakes|slivers|chips|metal|debris|particles|shavings|splinters + iron|ferrous|steel|magnetic - no|not|non|cast|block|liner|head|pump_body|ring|nonmagnetic|plug|gear|@not|aluminium",
        "magnet|magnetic + slivers|beard|hairy|fuzz_of|covered|filings|shavings|chunks|hedgehog|picked_up|picks_up|chips|bristling|furry|splinters|flakes|stuck_to|sticks_to - no|not|nothing|non|@not|fine_fuzz|thin|clean|light|just|fur|normal|none|plunger",
    ),
    "bright_soft_metal": (
        "glittering|bright|shiny|silvery|glitter|flakes|fragments|bits|shiny_bits|sparkly & magnet|magnetic & unmoved|unaffected|ignores|ignored|wont|@not|indifferent|no_effect|non|doesnt|nothing_to|leaves - grey|gray|copper|black|dull|brass|bronze",
        "bright|silver|silvery|shiny|soft|white|aluminium|aluminum + bits|pieces|flakes|metal|particles|curls|slivers|specks|chips|shavings & bend|bends|squash|squashes|soft|fingernail|nail|mash|foil|crush|fold|tinfoil|butter|smear|paper & magnet|nonmagnetic|non-magnetic|fingers|nail|fingernail|easily|hand - no|grey|gray|dull|hard|copper|gold|brittle",
        "aluminium|aluminum|nonferrous|non-ferrous|nonmagnetic|non-magnetic|alloy|magnesium + flakes|debris|bits|slivers|metal|particles|pieces|curls|shavings|chips|swarf|dust - no|not|head|block|sump|casting|housing|cover|pan|washer|piston_is|grey|gray|rod",
        "flakes|slivers|bits|metal|shavings|flake & magnet & @not|nothing|none|ignored|ignores|leaves|no_interest - clean",
        "aluminium|aluminum|alloy|bright_soft|soft_bright + flakes|bits|slivers|shavings|specks|glitter|metal - no|not|sump|pan_is|head|block",
    ),
    "copper_flakes": (
        "copper|copper-colored|copper-coloured|bronze-colored|brassy|brass-coloured|coppery|gold-colored|gold-coloured|golden|penny-coloured|bronze-coloured|brass-colored|rose-gold + glitter|flakes|bits|specks|shimmer|sparkle|dust|particles|metal|flecks|chips|hue|shine|tint|pieces|debris|fragments - no|not|washer|pipe|line|tube|silicone|rtv|showing|sealant|paint|wire|sealer",
        "reddish|red|yellow|yellowish|orange|pinkish|copper|bronze|brass|brassy|golden|gold|coin|penny|coppery|ginger + specks|bits|pieces|flakes|metal|particles|glitter|flecks|debris|colour|color|coloured|colored|slivers|shavings|dust|glints & metal|copper|brass|bronze|oil|filter|pan|sump|drained|coin|tap|penny|shone|shiny|debris|magnet|paper|screen|particles|strainer|metallic - no|not|rust|rusty|washer|pipe|line|sealer|silicone|rtv|light|lamp|rubber|rubbery|worms|showing|goo|gasket|paint|backing|dipstick|tube|through_to|tape|wire",
        "copper + all_through|all_over|everywhere|lots_of|full_of + sump|pan|oil|filter|strainer - no|not|washer|pipe|line",
        "copper|bronze|brass|coppery|gold|golden|bronze_coloured|brass_coloured + grit|flakes|bits|glitter|specks|specs|slivers|shavings|flecks|particles|sparkle|filings|dust|tinge - no|not|washer|down|pipe|line|showing|backing",
    ),
    "lining_strip": (
        "overlay|lining|bearing|babbitt|whitemetal|shell + foil|strip|strips|layer|skin|peelings|ribbon|ribbons|sheet|leaf|peel|thin_strips|skins + debris|pan|sump|screen|filter|found|came_off|strainer|drain|oil|thin|off|lying - no|not|none|fine|seal|gasket|plug|worn|shows",
        "debris + overlay_foil|bearing_foil|lining_strip|lining_strips|bearing_strip|overlay_strips|lining_foil|shell_strips - no|nil",
        "ribbon|strip|strips|foil|sheet|sheets|sliver|slivers|peeling|peelings|skin|skins|leaf|layer|ribbons|flat_piece|flat_pieces|tinfoil|wrapper + overlay|babbitt|babbit|bearing|shell|lining|whitemetal|white_metal|insert|half-moon|crank's|bearings|liners|plating & found|lying|sump|strainer|pan|filter|screen|peeled|fished|thin|flat|long|off|from|came|drain|oil|inside|pieces - no|not|none|still|shells_are|sealant|sealer|silicone|plastic|gasket|cam_bearing_tool|timing",
        "bearing|lining|shell|white_metal|whitemetal|babbitt + strips|foil|slivers|sheets|ribbons|strip|flakes|pieces + filter|pan|sump|screen|pump|oil|found - no|not|cam_bearing_tool",
    ),
    "grey_soft_flakes": (
        "grey|gray|dull|white_metal|whitemetal|babbitt|leaden|pewter + lumps|flakes|bits|blobs|appearance|crumbs|pieces|debris|metal|looking|fragments|dregs + soft|melted|molten|dent|run|runny|smeared|squash|nail|fingernail|globules|beads|lead - no|not|dust|plug|fuzz|shells|journals|paste|hard",
        "grey|greyish|gray|grayish|dull|babbitt|babbit|whitemetal|lead|leaden|solder|tin|pewter + melted|molten|solder|smeared|mash|soft|squashes|drips|blobs|splashes|run|runny|beads|droplets|squash & bits|scraps|flakes|pieces|crumbs|look|pan|sump|filter|lumps|tin|metal|filter|drops|magnet - no|not|hard|none|journal|shells|bearings_look|plug|terminal|wire|fuzz|never|dust|paste|shiny|relay|even",
        "grey|gray|dull + flakes|soft|blobs|beads + soft|melted|metal|flakes|smear - no|not|dust|even",
    ),
    "metal_throughout": (
        "glitter|metal|bits|swarf|debris|brass|flakes|metal_bits & everywhere|every_part|whole_oil|whole_system|you_name_it|all_over_the|everything|throughout|all_the_oilways|whole_oil_system|whole_lubrication|every_part_the_oil & oil|lines|cooler|lifters|system|engine|motor|part|goes - no|not|never|floor|bench|bay|outside|fuel",
        "debris|metal|brass|swarf|glitter|bronze|copper|bits|shavings|filings|flakes|shrapnel|contaminated|contamination|whitemetal|particles + full_system|whole_system|every_drilling|everywhere|very_last|all_round|right_round|right_through|carried_round|every_oilway|every_gallery|entire|every_passage|all_through|cooler|through_the|galleries|whole_engine|rockers|top_to_bottom|end_to_end|throughout & head|cooler|galleries|rockers|oilway|=drilling|system|engine|motor|last|round|lifters|cam|oilways|every|contaminated|turbo|top|everywhere - no|not|never|only|stayed|none|nowhere|free|clear|clean|nothing|just",
        "metal|debris|bearing_material|swarf|filings|glitter|shrapnel|bits + throughout|everywhere|all_through|all_over|every_oilway|whole_engine|entire|right_through|whole_oiling|through_the_whole - no|not",
    ),
    "crank_trap_full": (
        "crank|crankshaft|c/shaft|crank's|crankpin|crankpins|shaft|throws|journals + oilways|oilway|drillings|drilling|hole|holes|tube|passages|trap|traps|bore|oil_holes|oil_hole|centrifuge|ways|cross-drillings|sludge + stopped|plugged|blocked|choked|solid|packed|full|couldnt|@not_get_a_wire|bunged|clogged|stuffed|caked|@not_blow|jammed|closed|wouldnt|rammed|furred - no|not_blocked|gallery|feed_seal|bearing|shell|clear|open|seal|sensor|pulley|clean|cam|free|dowel",
        "trap|traps|sludge_traps|sludge_trap|crank_drillings|crank_plugs + solid|full|packed|choked|blocked|rammed - drain|trap_door|no|not|water",
    ),
    "hard_chips": (
        "debris + casting_sand|sand|bristles|grit|shot|swarf_from_machining|blast_media|glass_bead|glass_beads|lint - no|nil|wear",
        "sand|grit|blasting_grit|casting_sand|glass_beads|drilling_chips|blast_media|bead_blast|machining_chips|brush_bristles|metal_chips_from_drilling|shot_peen + inside|left|left_in|block|sump|found|galleries|engine|oilway|in_the - no|not|none|road|beach|drain_plug|magnet|sandpaper|free|clean_of",
        "=sand|sandy|casting_sand|glass_beads|shot_blast|blast_beads|drill_shavings|drilling_swarf|machining_swarf|lint|bristle|bristles|blast_media|abrasive|grinding_paste|emery|honing_dust|wire_brush + left|leftover|galleries|gallery|oilways|strainer|screen|pan|sump|passages|engine|block|filter|bearings|caught|found - no|not|none|free|road|beach|sandbank|drain_plug|magnet|carbon_brush|starter|alternator|motor_brush|sand_coloured",
        "gritty|grit|sand + left|leftover|cleaned|cleaning|machining|casting|blasting|honing|rebuild|scratches|machine_shop & block|engine|galleries|oilways|crank|rebuild|motor - no|not|none|free|road|beach|clean_side",
        "=sand|=grit|casting_sand|glass_beads|bead_blast|bristle|shot_blast|steel_shot + filter|sump|pan|oilway|oilways|pump|screen|galleries|engine|found|passages|inside - no|not|sandwich|bead_of|sealant|silicone|sealer|drip|paper",
    ),
    "fine_dust_only": (
        "grey|gray|fine|dust|powder|fines|paste|pencil_lead|graphite|silt|talc|flour|sludge_of_dust|haze|film + no_flakes|no_pieces|no_bits|no_shiny|nil_flakes|no_slivers|nothing_else|no_chunks|no_lumps|nothing_bigger|nothing_you_can_feel|only|no_metal|nothing_coarse|nothing_more|nothing_shiny|no_glitter|no_particles|just & filter|paper|pleats|element|cut|can|cartridge|media - plug|magnet|sump|pan|not_just|not_only|past|beyond|more_than|coat_of",
        "normal_fines|usual_fines|normal_wear_dust|usual_wear_dust|ordinary_fines|normal_fuzz|just_fines|only_fines & filter|cut|paper|element|pleats|nil|no|nothing|can - plug|magnet|more_than|beyond",
        "fine|grey|gray + dust|paste|powder|film|fuzz + only|just|nothing_else|no_flakes|nothing_more|no_chunks|normal",
    ),
    "glitter_in_oil": (
        "oil|drained|stick|dipstick|tray|drain + glitter|glittery|sparkle|sparkles|metallic|shimmer|metal_flake|glistening|sparkly|glittering|silver - no|not|filter|magnet|free|pump|without|tank|clean",
        "glittery|sparkly|glitters|sparkles|glittering + gold|metal|paint|silver|like|bronze & oil|stick|dipstick|drain - no|not|new",
        "oil + flecks|flakes|swirl|swirling|pearl|glint|glinting|twinkle|metallic|specks|particles + sun|light|gold|silver|swirling|hits|shine|shiny|looks|drain|stick - filter|pleats|no|not|sump|pan",
        "like + pearl_paint|metallic_paint|metal_flake|glitter_paint|christmas - filter",
        "oil + sheen|specks|sparkle|sparkles|glints|metal_flake|flecks|shimmer + silver|silvery|shiny|metallic|gold|metal|bright|drained|oil - water|outside|bilge|no|not|rainbow",
        "oil|stick|dipstick|drain + tinsel|flakes|sparkles|glints|shimmers|specks|silver|metallic - filter|no|not|clean|pan|screen|strainer|pump|copper|gold",
        f"specks|flecks|glitter|sparkles|shimmer|shimmered|gold_dust|metallic_paint|sparkle|twinkles & floating|{OLD_OIL}|drain_tray|drained|bucket|drain_pan|sun|light|came_out - no|filter|magnet|not|screen|@not",
    ),
    "plug_fur_only": (
        "magnet|drain_plug|magnetic_plug|mag_plug|sump_plug + fur|fuzz|fluff|whiskers|fines|paste + only|light|bit|just|that's_all|all|normal|usual|thin|slight|little - slivers|chunks|heavy|more_than|hanging|not_just|big|flakes",
        "magnet|magnetic_plug|mag_plug|drain_plug|drain_screw|sump_plug|drain_bolt|magnetic_drain|drain|screw + fuzz|fur|fluff|whisker|whiskers|hair|hairs|paste|fuzzy|furry|powder|bristle|film|grey_stuff|felt|mush|beard_of_fines + only|just|nothing_but|no_chunks|nothing_more|no_slivers|thin|fine|little|soft|slight|usual|normal|expect|no_flakes|light|nothing_else|bit_of|nothing - proper|more_than|heavy|thick|hanging|splinters|covered|big|hairy|spark|not_just|glow|slivers_and",
        "magnetic_plug|drain_plug|sump_plug|magnet|plug + fuzz|fur|hair|paste|fluff + fine|just|only|normal|bit|little|usual|light - flakes|slivers|chunks|no|spark",
    ),
    "debris_seen_before": (
        "bits|pieces|chips|plastic|swarf|grit|fragments + filter|sump|strainer|screen|relief|drain + before|last_drain|last_time|old|last|again|each_time|twice|every_time - no|not|new|never|none|replaced",
        "years_ago|year_ago|last_year|months_ago|previous_owner|earlier_service|previous_service & screen|strainer|pickup|gauze|filter & "
        "half_blocked|part_blocked|partly_blocked|blocked|clogged|full_of|debris|crud|coke|sludge|sealant|plastic & then|at_that_time|at_the_time|back_then|cleaned - no|not|clear|now|today",
    ),
    "metal_in_filter": (
        "cut|sliced|opened|sawed|sawn|split|slit|chopped|tore|pulled|sectioned|inside|unfolded & can|filter|spin-on|spinon|canister|cartridge|element|screw-on|pleats|paper & sparkle|sparkles|sparkled|sparkly|glitter|glittered|glittery|flakes|shiny|silver|silvery|swarf|metal|slivers|brass|shavings|filings|specks|copper|glinted|bling|disco - no|not|nothing|never|without|none|nil|free|screen|sump|pan|clean|powder|dust|valve",
        "pleats|paper|element|filter_paper|folds|media|spin-on|spinon|screw-on + sparkle|sparkles|sparkly|glitter|glittery|flakes|shiny_bits|silver_bits|shiny|silvery|swarf|metal|slivers|brass|shavings|filings|specks|copper|glinting|twinkles - no|not|nothing|never|without|none|nil|free|sump|pan|screen|clean|powder|air|fuel|soft",
    ),
    "metal_in_pan": (
        "pan|sump|tub|tray|oil_pan|bottom_of_the_engine|oilpan|basin|bottom + shiny_bits|shiny|silvery|silver|slivers|sliver|metal|metalflake|metal_flake|flakes|swarf|glitter|shavings|filings|sparkle|sparkles|chips|metallic|brass|bearing_metal|curls|shards + in|swirling|lying|full|bottom|spilled|looked|found|had|with|came|came_out|all_over|at - no|not|nothing|never|without|none|nil|filter|free|screen|strainer|pickup|pump|clean|drip|magnet|drain_plug|gasket|silver_paint|sealer|silicone",
    ),
    "carbon_flakes": (
        "carbon|coke|cinders|clinker|coked + hard|flakes|chunks|lumps|bits|crunch|granules|debris|pieces|chips|brittle + sump|pan|debris|found|filter|screen|bottom|black|in|from|held - no|not|none|barely|hardly|packed|spark|piston_crown|canister|seal|valve|choked|coking|brush|hose|head|monoxide|heads|ring|rings",
        "debris + hard_carbon|carbon_flakes|coke|carbon_chips|carbon_granules - no|nil",
        "black|burnt|burned|charred|coke|carbon|cinders|coal|clinker|coked|charcoal|soot + hard|cracked|crack|crunchy|crunch|brittle|coal|crumbs|cinders|grit|toast|snap|snaps|crumble|granules|gravel|thumbnail & sump|pan|filter|bottom|bits|pieces|flakes|crumbs|chunks|oil|thumbnail|screen|strainer|lumps|break|found|black - packed|solid|caked|coked|choked|no|not|none|barely|rubber|rubbery|soft|plastic|belt|hardly|shells|bearing|seal|valve|spark|piston_crown|smoke|hose|nylon|magnet|sludge",
    ),
    "bearing_pieces_in_pump": (
        "pump|oil_pump|rotors|pump_gears & chunks|pieces|bits|fragments|scraps|flakes|lumps|slivers & insert|bearing|shell|babbitt|whitemetal|inserts|lining|half-moon - no|not|water|fuel|none|nothing|vacuum|steering",
        "pump|oil_pump|gears|rotors|pumps_the_oil + shell|bearing|babbitt|half-moon|linings|insert|inserts|shells|whitemetal|white_metal|bearing_shell + fragments|bits|pieces|chunks|fragment|lumps|slivers|flakes|chewed|shrapnel|scraps|crumbs|jammed|strips - no|not|none|water|fuel|pump_bearing|steering|never|nothing|nut",
    ),
    "crank_trap_metal": (
        "crank_plugs|crank|crankshaft|crank_oilways|sludge_plugs & metal|swarf|grit|brass|glitter|filings|debris & behind|packed_behind|inside|traps|drillings|holes|plugs|oilways|passages|trap - no|not|gallery|gallery_plugs|none|seal|pulley|clean",
        "crank|throws|crankshaft|c/shaft|crank's|crankpin|crankpins|shaft|crank_plugs|sludge_traps|sludge_trap|dirt_traps|traps + glitter|swarf|grit|metal|whitemetal|white_metal|filings|brass|chips|shavings|debris|slivers|bronze|flakes + traps|trap|drillings|cross_holes|holes|plugs|oilways|drilling|cross-drillings|passages|hole|inside|behind|tubes|gave_up - no|not|none|free|clean|nothing|dipstick|gallery_plug|seal|bearing_hole|pulley|sensor|cross_hatch|drain",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "metal_in_pan": (
        "not_one|not_a|nothing_but|no|nil|nothing|zero|without|free_of + sliver|speck|flake|clean_oil|bit_of_metal|trace_of_metal|swarf|flakes|glitter|bits|metal|debris|slivers|grit + pan|sump|tub|tray|bottom|oilpan - filter|screen|magnet|strainer|pickup|plug",
        f"{_SUMP} + clean|spotless|no_metal|no_glitter|no_shavings|nothing_in|@not_metal|no_filings|no_swarf - cleaned|outside|to_clean|clean_the|dry",
        "no|@not_any|without + metal|swarf|filings|glitter|debris + sump|pan|bottom|oilpan - filter|screen",
    ),
    "metal_in_filter": (
        "filter|element|cartridge + clean|no_metal|no_glitter|no_shavings|nothing_in|spotless|no_flakes|@not_metal|no_filings|no_swarf|nothing_unusual|free_of_metal - cleaned|air|fuel|new_clean|clean_side|to_clean",
    ),
    "magnetic_metal": (
        "magnet + nothing_stuck|came_up_clean|came_out_clean|came_up_bare|nothing|@not_stick|@not_pick|@not_attract|ignores|ignored|no_interest|leaves|wont_touch|found_none|clean|bare - hairy|full|fuzz_only|but_slivers",
        "magnet + clean|nothing|picked_up_nothing|no_metal|no_interest|ignored|bare|@not_pick|@not_attract|nothing_on|@not_stick|no_filings - fuzz",
    ),
    "glitter_in_oil": (
        "no_glitter|no_sparkle|no_sparkles|no_shimmer|@not_glitter|@not_sparkle|without_glitter",
        "no_metal|no_specks + oil|drain|stick|dipstick|drained|tray|old_oil",
        "no_glitter|no_specks|no_flecks|no_sparkle|no_sparkles|no_shimmer|not_a_speck|no_metallic - filter|screen|magnet",
    ),
    "fine_dust_only": (
        "past|beyond|more_than|worse_than|coarser_than|bigger_than|not_just|not_only|more_like|not + fine|grey_powder|gray_powder|powder|fines|grey_dust|gray_dust|normal_fines & flakes|chips|bits|pieces|slivers|chunks|proper|lumps|filter|paper|particles - plug|magnet",
    ),
    "bright_soft_metal": (
        "no|nothing|none|nil|without|not_one|@not_any + bright|aluminium|aluminum|soft|nonmagnetic|non-magnetic|non-ferrous|alloy + bits|metal|flakes|specks|pieces|particles|slivers - magnet_picks|but|only",
    ),
    "grey_soft_flakes": (
        "no|none|nothing|nil|without|not_one + babbitt|babbit|whitemetal|white_metal|soft_grey|grey_flakes|melted|melted-looking|solder|molten|soft_gray|grey_crumbs + crumbs|flakes|stuff|bits|pieces|looking|metal|specks|blobs|in - but|fuse|wire|shells",
    ),
    "carbon_flakes": (
        "barely|hardly|no|not_any|scarcely|nil|without|none|little|not_a + coke|carbon|cinders|black_crumbs|black_bits|black_flakes|coal|clinker|hard_black|black_lumps + in|any|crumbs|flakes|found|at_all|speak|it|sump|filter|pan|bits|build-up|to - but|canister|smoke|seal|monoxide",
    ),
    "plug_fur_only": (
        "plug|magnet|drain_plug|mag_plug + more_than|not_just|beyond|worse_than|past|slivers|chunks|splinters|proper + fuzz|fur|fluff|paste|hanging|whiskers|slivers|bits|chunks - no_slivers|no_chunks|spark|nothing",
    ),
    "metal_throughout": (
        "shavings|metal|debris|swarf|flakes|bits|filings|glitter|particles + never|@not|stayed|stopped|didnt|confined|contained + past|beyond|spread|gone|further|through|galleries|system|got|cooler|sump|pan - sure|know|screen_only|hard|cracked",
    ),
    "crank_trap_full": (
        "crank|crankshaft|crank's|crankpins|throws|journals|crankpin + oilway|oilways|drillings|drilling|holes|traps|passages|oil_holes|trap|cross-drillings|sludge_trap + clear|open|clean|freely|air_blows|blew_through|blows|free|wire_through|see_through|empty|right_through|daylight|flushed - not|blocked|full|packed|plugged|seal",
    ),
    "gasket_shreds_found": (
        "no|none|nothing|not_a|nil|without|zero & gasket|cork|fibre|fiber|joint & bits|shreds|scraps|pieces|fragments|chunks|strands|material & filter|sump|pan|screen|oil|found - but|leak|filter_gasket",
    ),
}
