"""What is seen or known of the sump, pickup and screen, in phrases of more than the book's own ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS_SUCTION: dict[str, tuple[str, ...]] = {
    "screen_blocked": (
        "pickup|screen|strainer|pick-up|gauze screen|was|is|tube|half|completely|totally|partly|partially|found|all|up|nearly? "
        "blocked|clogged|plugged|full|choked|blocked-up|restricted|clogging",
        "half|partly|partially|completely|totally blocked|clogged|plugged|choked with? sludge|gasket|rtv|silicone|debris|crud",
        "clogged|blocked|plugged pickup|screen|strainer|oil",
        "screen|strainer|gauze|mesh|pickup .. covered|choked|blocked|clogged|plugged|matted|caked|smothered with|by|in|up|solid",
        "quarters|half|third|most|all of? the|its? screen|strainer|gauze|mesh|pickup .. blocked|covered|clogged",
    ),
    "sump_dented": (
        "sump|pan hit|clouted|whacked|bashed|caught|grounded|scraped|bottomed-out|bottomed on|by|a|against|the? kerb|curb|rock|rocks|stump|speed-bump|ramp|"
        "stone|log|debris|road",
        "dent|dented|bashed in|the|a? .. sump|pan|oil-pan",
        "sump|pan .. dented|dent",
        "sump|pan hit|struck|grounded|clouted|whacked|caught a|the|on rock|kerb|curb|stump|ground|stone|something",
        "hit|struck|clouted a|the|something rock|kerb|curb|stump|stone .. sump|pan",
        "jack .. under|on|mark .. sump|pan",
        "=bottomed out on|over|hard",
        "=bottomed|=grounded out|the|it|my? .. sump|pan|car",
    ),
    "tank_still_full": (
        "tank|reservoir is|was|all? still|nearly full",
        "oil tank|reservoir is|was|all? full",
        "oil-tank|oiltank is|was? full",
        "plenty|lots|loads of? oil in the? tank|reservoir",
        "oil not leaving|left|moving the|from? tank",
    ),
    "suction_hose_flattens": (
        "hose|pipe|line|sucked|sucks collapses|collapsed|collapsing|flattens|flattened|flat|sucked flat|shut|in?",
        "sucked-flat|soft|kinked|collapsed|flattened hose|suction",
    ),
    "oil_slow_to_return": (
        "takes|took ages|long|minutes|forever to .. drain|run|come|return back|down",
        "oil stays|held|hung|trapped|stuck|pooled|pools up|in the? top|head|heads|valley|covers",
        "level|stick drops|falls|low|lower right|straight|just after .. run|revving|stopping|driving",
    ),
    "something_missed_after_work": (
        "lost|missing a|one shop? rag|cloth|towel",
        "rag|cloth|towel|bolt|nut|washer|cap|plug|circlip was|were|is never|not found|recovered|accounted",
        "rag|cloth|towel|bolt|nut|washer|circlip went|gone|goes missing|astray|awol",
    ),
    "sealer_squeezed_out": (
        "too much|lots silicone|rtv|sealant|sealer|goop",
        "silicone|rtv|sealant|sealer|goop squeezed|oozing|oozed|everywhere|all out|over?",
        "loads|plenty|lots|gobs|tons|excess of? silicone|rtv|sealant|sealer|goop",
    ),
    "pickup_gap_too_small": (
        "pickup|screen|strainer too close|near|low to|the|tight",
        "pickup|screen|strainer .. touching|touches|hits|hitting|sits|resting|against|rubbing the|on|of? bottom|floor|sump|pan",
        "no clearance|gap|space under|below|between the? pickup|strainer|screen",
        "pan|sump|dent|floor .. against|touching|touches|fouling|onto|hitting the? oil? pickup|strainer|screen",
    ),
    "pickup_gap_too_large": (
        "pickup|screen|strainer too|was|is? too|inch high|far|short",
        "pickup|screen|strainer .. inch|length|inches|far|way off|from|above the? bottom|floor|pan|sump",
    ),
    "pickup_witness_mark": (
        "pickup|screen|strainer|shiny|witness|print .. mark|marks|ring|print|rubbed .. sump|pan|floor|bottom",
        "shiny|rub|witness ring|mark|marks in|on the? sump|pan|floor|bottom",
    ),
    "oil_trapped_in_sump": (
        "oil trapped|stays|sits|stuck|held in|at|behind the? front|rear|baffle|end|corner|well",
        "sump|pan @not drain to|towards the? pickup|back",
    ),
    "foreign_material_on_screen": (
        "something|junk|trash|debris|rubbish|leaves|bits stuck|in|on|across|over|blocking in|the|against? the? oil? pickup|screen|"
        "strainer|gauze",
    ),
    "varnish_on_screen": (
        "varnish|lacquer|brown-coating on|in the? pickup? screen|mesh|strainer|gauze",
    ),
    "metal_past_the_screen": (
        "metal|debris|bits behind|past|inside|through the? mesh|screen|gauze|strainer",
    ),
    "tray_rubbed": (
        "rods|counterweights|crank|rod hit|hits|hitting|rubbed|rubbing|touching|caught the? windage? tray",
        "tray rubbed|rubbing|marks|marked|polished|gouged",
    ),
    "returns_blocked": (
        "drainback|return|drain|returns hole|holes|passages .. blocked|clogged|plugged|sludged|covered",
        "blocked|clogged|plugged|sludged oil? drainback|return|drain hole|holes|passages",
    ),
    "oil_valve_found_shut": (
        "oil|tank|shutoff|shut-off tap|valve|cock .. shut|closed|off",
        "forgot|forgotten|left .. oil|tank tap|valve|cock closed|shut|off?",
    ),
    "suction_seal_cut_or_missing": (
        "pinched|cut|torn|hard|missing|wrong|nicked|flattened o-ring|oring on|at|in .. pickup|suction|tube|pipe",
        "no|without o-ring|oring|gasket|seal on|at|in|fitted the? oil? pickup|pick-up|suction|tube",
        "pickup|suction .. o-ring|oring .. pinched|cut|torn|hard|missing|wrong|nicked|flat|flattened|gone|perished",
        "o ring on|at|in .. pickup .. hard|flat|cut|torn|missing",
    ),
    "pickup_bent": (
        "pickup|pick-up|tube .. bent|twisted|crooked",
        "pickup|pick-up|tube .. pushed up|over|against|aside|flat|sideways|upwards|back",
        "bent|twisted oil? pickup|pick-up",
    ),
    "tray_very_old": ("@years|year old windage? tray", "original|old windage tray"),
    "water_in_sump": (
        "water|coolant|antifreeze in|at|lying|puddle the|bottom|in|of? of|the? the? bottom|sump|pan of? the? sump|pan?",
        "puddle of? water|coolant in|at",
    ),
    "bubbles_in_joint_test": (
        "bubbles at|from|in the? joint|tube|braze|pipe",
        "leaks air at|on|from",
    ),
    "pickup_fell_off": (
        "pickup|pick-up|strainer|tube fell|fallen|dropped|came|come|lying|laying|broke|found off|out|down|in|at the|into? bottom|of|"
        "sump|pan?",
        "pickup|pick-up in|lying the? bottom of? the? sump|pan",
    ),
}
