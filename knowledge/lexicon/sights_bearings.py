"""What is seen or known of bearings, shells and crankshaft, in phrases of more than the book's own ``also``."""

from __future__ import annotations

_BRG = (
    "bearing|bearings|shell|shells|mains|big-ends|big-end|inserts|insert|rod-bearings|main-bearings"
)
_BE = "is|are|was|were|had|have|has|been|looked|look|found|all|both|badly|very|quite|completely|totally|really"
_CRANK = "=crank|crankshaft|journal|journals|crankpin|crankpins|pins"
_ENGINE = "engine|motor|it|she|boat|car"
_STOPPED = "=stopped|=died|=quit|=stalled|=seized|=siezed|=failed|=locked|=conked"
#: the finding, by what is said when it is there
SIGHTS_BEARINGS: dict[str, tuple[str, ...]] = {
    "engine_seized": (
        "=seized|=siezed|=seised|=seizes",
        "=locked|=locks|=lock =up|=solid",
        "engine|motor =froze|=frozen =up|=solid?",
        "engine seizure",
        "then|finally it|engine|she|motor? =seized|=siezed|=locked",
        f"{_ENGINE}|motor then|suddenly|finally|soon|just? =seized|=siezed|=locked =within|=after|=about|=in|=some|=shortly|=soon|=a|=seconds|@seconds|@minutes",
        "@seconds|@minutes|minutes|seconds then|and|later|after? =seized|=siezed|=locked",
        "=seized|=siezed|=locked @seconds|@minutes later|after",
        "then|and|into|by|a =seizure",
        "seizure",
        f"{_ENGINE} wont|wouldnt|@not =turn =over|=round at? all?",
        "crank wont|wouldnt turn|budge|move at-all|over|by?",
        f"{_ENGINE} nipped|tightened up",
    ),
    "engine_banged_or_shook": (
        "huge|terrific|terrible|almighty|great|loud|massive|tremendous clunk|clatter|thump|crunch|rattle|thud|bang",
        "=bang|=boom|=banged|=vibration|=vibrates|=vibrating|=vibrated|=vibrate|=vibrations|=shook|=shaking|=shudder|=shuddering",
        "loud|big|almighty|sharp|metallic bang|bangs|crack|crash",
        "violent|violently|bad|heavy|severe shaking|shake|shook|vibration",
        "=hammered|=hammering|=banging loudly|badly|violently|away|like",
        "with a|an loud? pop|bang|crash",
        "a|loud pop|clunk .. then|smoke|and",
        "popping|banging and|& clunking|banging|popping",
        "engine|motor|it =let go at|on|in|down|and|with|in",
        "loud|big|almighty|horrible|sickening|huge|dull|terrific|great|massive|heavy|nasty thump|bang|clunk|thud|boom|report|explosion",
        "=boom|=kaboom",
    ),
    "stopped_with_loss_of_power": (
        "engine|all? power was|all? lost|gone|failed",
        "complete|total|sudden|all|marked|partial|lost|full loss|all|engine|of of? all? engine? power",
        "lost|loses|losing|loss of? all|complete? engine? power",
        "seized|siezed while|under|in|at|on driving|way|running|cruise|flight|speed|the|motorway",
        "died|=quit|stalled|conked on|out|under|while|when|at|in me?|the? road|way|motorway|highway|cruise|flight|running?",
        f"{_ENGINE} then? =stalled|=died|=quit|=cut",
        "engine|it|she|motor then|itself|suddenly|just|and? =stopped by|dead|itself|working|running|within itself|its|own?",
        "engine then|itself|suddenly =stopped",
        "engine =failed|=failure",
        "cut|cuts|cutting out",
        "=came|=coasted|ground to a halt|stop|standstill",
        "became|went sluggish|flat .. died|stopped",
        "no|without more|less|any power",
        "would|did not restart",
        "packed|gave up",
        "complete|total|sudden|all|full|partial engine? power loss|failure",
        "power was|went|is|had|then|soon|all|completely? lost|gone",
        "engine power loss|failure",
        f"then|finally it|engine|she|motor? {_STOPPED}",
        f"{_ENGINE}|motor then|suddenly|finally|soon|just? {_STOPPED} =within|=after|=about|=in|=some|=shortly|=soon|=a|=seconds|@seconds|@minutes",
        f"@seconds|@minutes|minutes|seconds then|and|later|after? {_STOPPED}",
        f"{_STOPPED} @seconds|@minutes later|after",
        "then|and|into|by|a =seizure",
        "no power at|anymore|left|whatsoever",
        "had to be towed|towed",
        "wouldnt|would|not keep running|going",
        "cut|cuts|cutting out by|on|at|when|while|and",
        "spluttered|sputtered|shuddered|juddered|coughed|clattered|stuttered|ground|jerked to|into a? halt|stop|silence|standstill",
        "engine|motor|it|car|she spluttered|sputtered|coughed and|, died|stopped|quit|cut",
        "engine|motor =stopped =dead|=solid",
        "rolled|coasted|drifted to a halt|stop|standstill with|in|engine|on",
    ),
    "rod_through_block": (
        "rod|rods|conrod|con-rod|leg is|has|have|had|was? gone|come|came|went|poked|punched out|straight|clean? through|out|of the|my|a? side? of? the? block|crankcase|side",
        "=threw|=thrown|=throws|=tossed a? rod|conrod|con-rod|leg",
        "rod|conrod|con-rod|leg .. through|out|exited|hanging|poked .. block|side|crankcase|sump|pan",
        "hole in|through the? side|of|the? block|crankcase",
        "windowed|ventilated|holed .. block|crankcase",
        "put a leg|rod out|through .. bed|side|block",
    ),
    "shells_found_ruined": (
        f"{_BRG} {_BE}? {_BE}? ruined|shot|gone|destroyed|toast|trashed|knackered|failed|wrecked|hammered|finished|mangled|bad|stuffed|rooted|disintegrated",
        f"ruined|destroyed|trashed|failed|knackered|wrecked|shot|bad {_BRG}",
        f"main|rod|big-end|bottom-end {_BRG} failure|failed|gone|had",
        "big end|ends gone|went|failed|shot|run",
        f"ran|run|knocked|lost a|the|its|number? {_BRG}",
        "bottom end is|was? shot|gone|ruined|toast|destroyed|trashed",
    ),
    "shells_look_normal": (
        f"{_BRG} {_BE}? {_BE}? good|fine|perfect|normal|ok|okay|excellent|like-new|as-new|beautiful|great|serviceable|unmarked",
        f"{_BRG} looked|look|were|are|like|all like|as new",
        f"nothing wrong with the? {_BRG}",
        f"good|perfect {_BRG} when|on|at stripped|strip|strip-down|teardown|inspection",
    ),
    "shells_wiped": (
        f"{_BRG} {_BE}? .. wiped|melted|burnt|blued|smeared|burned|cooked|overheated|fried",
        f"wiped|melted|burnt|blued|smeared|burned|cooked|fried {_BRG}|out",
    ),
    "shell_spun": (
        f"{_BRG} {_BE}? {_BE}? spun|turned|spinning|rotated in|its|the?",
        f"=spun|=spinning|=spin a|the|rod|main|number|another|big-end? rod|main|cam|big-end|@number? {_BRG}|rod|main",
        "number|no @number big|main|rod? end|bearing? spun",
        "big|main|rod end|bearing? spun",
        "spun bearing",
    ),
    "shell_backs_shiny": (f"backs|back of the? {_BRG} {_BE}? .. polished|shiny|fretted|fretting",),
    "shells_worn_evenly": (
        f"{_BRG} {_BE}? .. worn|down .. evenly|copper",
        f"{_BRG} {_BE}? {_BE}? worn|wore evenly|through|down|to into|to? the? copper|evenly",
        f"{_BRG} {_BE}? {_BE}? worn out?",
        "worn|wear|down|showing|into|through to|through|into|the? the? copper|brass|=backing|babbitt",
        "copper|brass|pink showing",
        f"{_BRG} worn .. no heat|scoring|blueing|damage",
        f"worn out? {_BRG} found|were|was|on|when",
    ),
    "shells_embedded_dirt": (
        f"dirt|specks|grit|particles|swarf|debris|metal embedded|bedded in|into the? {_BRG}",
        f"{_BRG} .. embedded|full with|of? dirt|grit|debris|particles|specks",
    ),
    "shells_scratched": (
        f"{_BRG} {_BE}? {_BE}? scratched|scored|grooved|gouged|scuffed|scratches|scoring",
        f"scratched|scored|grooved|gouged {_BRG}",
        f"scratches|scoring|score|grooves|gouges marks? in|on the? {_BRG}",
    ),
    "shells_etched": (
        f"{_BRG} {_BE}? .. etched|corroded|pitted|spongy|acid",
        f"etched|corroded {_BRG}",
    ),
    "shells_flaking": (
        f"{_BRG} {_BE}? .. flaking|flaked|cracked|fatigued|peeling|delaminated|delaminating|crumbling|fatigue|lifting|crazed",
        "white-metal|babbitt|lining|overlay|whitemetal .. flaking|flaked|cracked|peeling|breaking|broken|come|lifting of|off|from?",
        f"flaking|cracked|fatigued|peeling {_BRG}|white-metal|babbitt",
    ),
    "crank_scored": (
        f"{_CRANK} {_BE}? {_BE}? scored|grooved|damaged|blued|scratched|gouged|chewed|ruined|galled|scuffed|bruised|rough",
        f"scored|grooved|damaged|blued|scratched|ruined {_CRANK}",
        f"scoring|score|scores|grooves marks? in|on the? main|rod? {_CRANK}",
    ),
    "bearing_found_seized": (
        "big|main|rod|number|end|bearing|shell|rod end|bearing|shell|rod|main? is|was|had|been|friction|all? welded|seized|fused|stuck|nipped|locked|picked "
        "itself|solid|up? to|on|onto|solid the|its|my|it|crank|crankpin|journal|solid crank|crankshaft|journal|crankpin|pin|throw?",
        f"{_BRG} {_BE}? seized|welded|picked-up|stuck to|on|onto the? {_CRANK}?",
    ),
    "signs_of_starvation": (
        "oil starvation|starved|starving",
        f"{_BRG}|crank|journal|rods .. starved|starvation|dry|ran of|for? oil?",
        "ran|run|running dry|without oil",
        "signs|evidence|case of of? oil? starvation|lubrication",
        "lack of oil|lubrication",
    ),
    "damaged_by_debris_only": (f"{_BRG} .. debris damage|scratches|marks only|no",),
    "all_bearings_wiped": (
        f"all|every the? main|rod|of? the? {_BRG} {_BE}? .. wiped|ruined|gone|destroyed|damaged|melted|failed|shot",
    ),
    "worst_far_from_pump": (
        f"rear|back|farthest|furthest|last|number-five|front {_BRG}|main|cylinder .. worst|worse|most",
    ),
    "one_bearing_wiped": (
        f"one|single|just|only|number|no @number? rod|main|big|end|big-end? {_BRG} {_BE}? {_BE}? wiped|gone|ruined|failed|destroyed|shot|melted",
        f"one|only @number? .. {_BRG} .. others|rest fine|good|perfect|ok",
    ),
    "thrust_face_ploughed": (
        "thrust washer|washers|face|faces|bearing|flange|surface .. worn|ploughed|scored|gone|chewed|fallen|dropped|missing|wiped|destroyed|out",
        "worn|missing|wiped thrust washer|washers|bearing",
    ),
    "main_bearing_shifted": (f"main {_BRG}? .. shifted|moved|walked|migrated",),
    "shell_hole_mismatch": (
        "oil hole|holes .. @not line|lined|align|aligned|match|up",
        f"{_BRG} .. blocking|covering|covers|blocked|misaligned .. oil hole|oilway|hole|feed",
        f"{_BRG} .. hole .. @not line|align|match",
    ),
    "wrong_shells_fitted": (
        f"wrong|incorrect|standard|undersize|oversize size|sized? {_BRG} fitted|installed|were|was|for|on|used|in",
        f"{_BRG} {_BE}? the? wrong|incorrect size|ones|undersize",
    ),
    "main_clearance_too_wide": (
        "main|mains bearing? clearance|clearances|clearences .. too|excessive|over|wide|out|large|big|loose",
        "excessive|too|wide|loose main bearing? clearance|clearances",
    ),
    "rod_clearance_too_wide": (
        "rod|rods|big-end bearing? clearance|clearances .. too|excessive|over|wide|out|large|big|loose",
        "excessive|too|wide|loose rod|big-end bearing? clearance|clearances",
    ),
    "bearing_clearance_too_tight": (
        "main|rod|bearing bearing? clearance|clearances .. too? tight|small",
        "tight|insufficient bearing|main|rod clearance|clearances",
    ),
    "journal_not_true": (
        f"{_CRANK} {_BE}? .. tapered|oval|out-of-round|taper|rough|egg-shaped|bent",
        f"{_CRANK} .. out of|off round",
    ),
    "crank_end_float_over": (
        "crank|crankshaft end play|float|thrust .. excessive|over|too|out|beyond",
        "excessive|too .. end float|play|thrust .. crank?",
    ),
    "crank_moves_endwise": (
        "crank|pulley|crankshaft|damper|flywheel pulley? moves|move|moved|walks|walking|slides|floats|shifts in|fore|back|endwise|forward|end and|to|&|when|forth|with?",
        "crank walk|walking",
        "in and|& out movement|play .. crank|pulley",
        "see|watch .. crank|pulley move|moving",
        "play in|at the? crank|crankshaft pulley?",
    ),
    "rod_or_crank_bent": (
        "rod|rods|conrod|crank|crankshaft is|was|are|were|found|slightly|badly? slightly|badly? bent|twisted",
        "bent|twisted rod|rods|conrod|crank|crankshaft",
    ),
    "main_bores_out_of_line": (
        "mains|main|bores|tunnel bores|tunnel|bearing|line? .. out|misaligned|distorted of|off line|alignment?",
        "block|crankcase .. warped|distorted|twisted",
        "line boring|bored|honing needed|required|out",
    ),
    "crank_broken": (
        "crank|crankshaft is|was|had|has|broken|snapped|clean|found? =broken|=snapped|=broke|=cracked|=fractured|=sheared in|clean|into?",
        "broken|snapped|cracked|fractured|broke crank|crankshaft",
        "broke|snapped the|its|a crank|crankshaft",
    ),
    "liner_broken": (
        "liner|liners|cylinder|bore|sleeve wall|is|was|had|has? =cracked|=broken|=split|=holed",
        "cracked|broken|split|holed liner|liners|sleeve",
    ),
    "block_cracked": (
        "block|crankcase is|was|had|has|casting|found? =cracked|=crack|=split|=cracks|=porous",
        "crack|hairline|cracks in|across the? block|crankcase|main",
        "cracked block|crankcase",
    ),
    "rod_broken": (
        "rod|conrod|con-rod|rods bolt|bolts|cap|is|was|had|has|found? =broken|=snapped|=broke|=failed|=sheared|=fractured",
        "broken|snapped|failed|broke|bent a|the|conrod? rod|conrod|con-rod bolt|bolts?",
    ),
    "bores_or_pistons_scored": (
        "bore|bores|piston|pistons|cylinder|cylinders|liner|skirt|skirts {_BE}? {_BE}? scored|scuffed|seized|picked-up|scratched|galled|marked".replace(
            "{_BE}", _BE
        ),
        "scored|scuffed|scratched bore|bores|piston|pistons|liner|liners|cylinder",
    ),
    "piston_or_pin_broken": (
        "piston|ring|rings|wrist|gudgeon|pin|lands|land pin|crown|skirt|button|is|was|had|has|land? =broken|=broke|=cracked|=holed|=melted|=shattered|=collapsed|=failed",
        "broken|cracked|holed|melted|shattered piston|ring|rings|gudgeon|wrist|pin",
        "hole in|through a|the|number? piston",
    ),
    "clearances_at_limit": (
        "clearances|clearance .. limit|wide-side|loose|upper side|end|at?",
        "clearances|clearance on|at|to the? loose|wide|upper|high side|end|limit",
    ),
    "clearances_built_wide": (
        "built loose|wide|with",
        "loose|race|racing|wide|generous bearing? clearances|clearance",
        "never|didnt|without|not check|checked|measure|measured|measuring|plastigaged|plastigauged|checking the? bearing? clearances|clearance",
        "@not|never plastigaged|plastigauged|plastigage|plastigauge",
        "@not|never measure|measured|mic|miced|check|checked the|any|my? main|rod|big-end|crank? rods|mains|bearings|big-ends|shells",
    ),
    "bearings_failed_again": (
        f"second|third|another|repeat set|time|bearing of|on|in|failure? {_BRG}",
        "second|third|another|repeat failure|bearing of|on|in|failure?",
        f"{_BRG} failed|went|gone|knocked|spun|again|wiped again|twice|once-more",
        "rebuilt .. failed|went|gone|knocked|spun|knocking again|twice",
        "same bearing|rod|cylinder failed|went|again|spun|gone",
        "failed|went|gone again within|after|in .. new|@distance|@hours|rebuild|miles",
        "second|third failure",
    ),
    "locked_then_freed": (
        "=seized|=locked|=siezed .. freed|restarted|free|turned|then|later|unlocked .. again|later|free|restarted|cooled|cold",
        "locked|seized when hot .. free|turns cold|cool",
        "=seized|=locked|=siezed .. but|then|later .. restarted|freed|free|turned|started",
        "freed itself|up off? when|once|after|again",
        "was|is locked .. later restarted|started|freed",
    ),
    "ran_on_without_pressure": (
        "=carried|=kept|=continued|=drove|=driven|=drive|=limped|=nursed|=pressed|=ridden|=rode|=motored on|home|going|driving|running|for|back|it|another|with|riding|to .. light|lamp|pressure|gauge|warning|anyway|lit|mile|miles|regardless|@distance|@minutes|without|zero",
        "drove|driven|limped|nursed|rode|ridden|carried it|her|the|car|on|@distance|about? car|on|about|back|@distance? home",
        "=ran|=run|=running|=driving|=drove|=driven it|on|for|about|her|another|the|around .. without|no|zero|low oil? pressure|oil",
        "=drove|=driven|=rode|=carried it|on on? to =work|school|town|shops",
        "thought|think nothing|little|no-more of|about it and|so .. drove|carried|kept|continued|went|rode|ran",
        "carried on driving|home|regardless|mowing|working|ploughing|motoring|cruising|cutting|baling|fishing",
        "finished|finish|finishing the|my|that field|row|job|load|round|trip|run|crossing|pad|headland with|on .. light|lamp|alarm|buzzer|zero|pressure",
        "run|ran|motored|took|drove it|her|us|on|in|into .. harbour|harbor|port|marina|home|base|yard with|on no|zero|the|without oil? pressure|light|lamp|alarm",
        "i|we|he|she|they didnt|never stop|stopped|shut down|off|it? , finished|carried|kept|went|drove",
        "ignored the? oil? light|lamp|warning|gauge|alarm",
        "@not notice|noticed|see|spot|stop|spotted the? oil? gauge|light|lamp|pressure|engine|straight|until",
        "before|until i|he|she|we noticed|saw|stopped|realised|realized|spotted",
        "by the time i|he|she|we noticed|saw|realised|realized|spotted|looked",
        "thought|assumed|blamed|put it|the|down|its|it|was|gauge .. gauge|sender|faulty .. drove|driven|carried|on|kept",
        "finished|completed|carried|did|drove|ran|continued|kept .. race|lap|laps|stage|session|rally|heat .. light|lamp|alarm|like|no|zero|anyway|low|without",
    ),
    "hard_to_turn": (
        "hard|stiff|tight|difficult|heavy =to turn|crank|rotate over|by|it?",
        "starter|starting drags|struggles|labours|labors|struggled|dragging|laboured|barely|straining|groans",
        "turns|turned|turn|cranks|cranked|cranking over? real|very|really|quite|too|pretty? stiff|stiffly|slow|slowly|hard|tight",
        "tight|stiff spot|spots",
        "stiff engine",
        "engine is|was|feels|felt|very|really|too? very|really|too? tight|stiff",
        "wont|barely|hardly|could turn|turn|crank over|by|it|hand? .. starter|hand|bar",
    ),
    "deep_knock_under_load": (
        "deep|heavy|low|dull|low-pitched thump|thud|knock|rumble|knocking|thumping|rumbling|pounding metallic? under|on|when|with|pulling|at load|acceleration|power|accelerating|pulling",
        "deep|heavy|dull thump|thud|rumble|pounding|thumping|knock|knocking",
        "main bearing knock|rumble|noise",
        "rumble|rumbles|rumbling from|under|on the? load|acceleration|bottom|power|below|crankcase",
        "knocks|knock|thumps|thuds|knocking when|under|on|with pulling|load|accelerating|hills|acceleration",
    ),
    "rap_dulled_by_cut_out": (
        "knock|noise|rap|rattle|knocking|rapping goes|disappears|stops|quiets|changes|reduces|gone|quietens|dulls .. plug|cylinder|lead|injector|cut|shorted|shorting",
        "rapping|rap|hammering|rattling at|around|when|on @rpm|revs|revved|lift-off|overrun",
        "pull|pulled|pulling|shorting|cracking .. plug|lead|injector .. knock|noise goes|quiets|stops|disappears|gone",
    ),
    "bearing_pieces_in_pump": (
        f"pieces|bits|fragments|parts|chunks of a? {_BRG} in|inside|through the? oil? pump",
    ),
}
