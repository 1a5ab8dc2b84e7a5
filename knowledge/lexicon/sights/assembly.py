"""What is seen of assembly, or known of work just done, in phrases of more than the book's own ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS_ASSEMBLY: dict[str, tuple[str, ...]] = {
    "cap_bolts_slack": (
        "main|rod|cap|through|big-end|crankcase|bearing cap|bearing|end? bolts|nuts|bolt|studs .. loose|slack|under|undertorqued|under-torqued|not|insufficient|finger",
        "loose|slack|under-torqued|undertorqued main|rod|cap|big-end|through bearing|cap|end? bolts|nuts|bolt|caps",
    ),
    "caps_mixed": (
        "=caps|main|rod|bearing =caps? @number|two|three|one and|& @number|four|three|two are|is|were|was|have been|got? swapped|mixed|switched|reversed|"
        "transposed|wrong",
        "numbers|stamps|stampings|marks|numbering on|of|on-the|of-the? caps|cap? were|are|was|dont|didnt|not not|out|all|arent|werent|match|in|line in|of|over|"
        "up? order|sequence|place|match|line|up",
        "caps|cap .. swapped|mixed|backwards|reversed",
        "caps|cap .. wrong|back|other order|way|to-front|hole|place|position",
        "mixed|swapped|reversed .. bearing|main|rod|cam? caps|cap",
    ),
    "changed_after_other_work": (
        "first|soon|day|straight|shortly|just|right|hours|minutes|next|trouble|began|started .. after|since|following the? repair|service|overhaul",
        "first|soon|day|straight|shortly|just|right|hours|minutes|next|trouble|began .. after|since|following the? work|service|repair|repairs|job|inspection|maintenance|accessory|installation",
        "work|accessory|pump|instruments|part .. done|changed|installed|replaced|fitted|renewed the? day|hours|morning before",
        "since the? work|repair|job|service|garage|shop|mechanic|other",
    ),
    "crank_plug_found_missing": (
        "crank|crankshaft|journal|sludge-trap|oilway oil? plug|plugs .. missing|left|loose|out|forgotten|fell|came|gone",
        "missing|forgot|loose|forgotten .. crank|crankshaft|journal|sludge-trap plug|plugs",
    ),
    "drive_shaft_absent": (
        "forgot|forgotten|left|without|no|missing to|out|the|fit|install|a|refit|put? the|a|in|fit|install|oil? the? oil? pump? drive|intermediate? shaft|driveshaft|drive-rod|drive-shaft .. pump|left|out|at|in?",
        "pump|drive|intermediate drive? shaft|rod .. left|missing|forgotten|absent|never out|fitted|installed?",
    ),
    "fastener_found_loose": (
        "bolt|bolts|nut|nuts|stud|cap-screw|setscrew inside|is|was|were|had|found|in|on? .. =loose|=slack|backed|undone|finger-tight|missing .. inside|engine|out|off|cap|block",
        "loose|slack bolt|bolts|nut|nuts inside|found|on",
    ),
    "foreign_part_fitted": (
        "non|not approved|genuine|standard|original parts|part fitted|used?",
        "non-approved|unapproved|non-genuine|home-made|homemade|pattern|counterfeit|bogus|wrong part|parts|piece|plug|valve|spring",
        "wrong part|parts|pieces fitted|used|installed|number|inside",
        "part|parts from|off|for a? different|another|wrong|other|not engine|model",
    ),
    "freshly_rebuilt": (
        "@number|ten|twenty|thirty|forty|sixty over|oversize ,? fresh|new|just|all-new",
        "just|only-just|finally|freshly finished|done|completed|built|building|assembled|put the|a|an|my|our|first|up? first|own|full|fresh|engine|motor|"
        "complete? rebuild|build|engine|motor|overhaul|together",
        "my|our|his|first first|very|own? rebuild|build|engine-build",
        "just|freshly|newly|recently|fresh|been|completely been|had? rebuilt|overhauled|built|reconditioned|rebuild",
        "fresh|newly|freshly built|build|rebuild|overhaul|rebuilt",
        "first|few|handful|zero|practically .. hours|miles|starts|flights|start|run|runs|trial .. since|after|on|from|of the? rebuild|overhaul|new|build|rebuilt",
        "straight|right|directly|immediately after|from|since|out the|a|of? rebuild|overhaul|the",
        "first start|starts|run|runs|flight|flights|trial|drive|trip|outing|miles|hours .. rebuild|overhaul|rebuilt|build",
        "first start|starts|run|runs|flight|flights|trial|drive|trip|outing|miles|hours of|on|with|since the|a|my|this|new engine",
        "rebuilt .. first|few|hours|miles|never|starts|not",
        "freshly|newly fitted|installed|rebuilt engine|motor",
        "=running in",
        "=breaking|=break =in it|the|engine|period|oil?",
        "first @number flights|hours|miles|runs|starts",
    ),
    "just_worked_on": (
        "day|days|hours|hour|week|straight|soon|shortly|right|just|immediately|minutes|@hours|@days|@minutes|morning after|since|following .. work|service|repair|repairs|inspection|maintenance|job|shop",
        "first flight|run|drive|trip|start|outing .. after|since .. work|service|repair|maintenance|inspection",
        "just|recently|fresh been? in|back|out|from of|from|the? the? garage|shop|service|workshop|dealer",
        "just|recently been? serviced|worked on?",
        "work done|carried|finished out? the? day|yesterday|just|week|before",
    ),
    "leftover_found": (
        "rag|tape|cap|plug|cloth|paper|bung|tool|socket|masking left|forgotten|found .. in|inside|over|on|behind",
        "left a|the|some|my|piece of? rag|tape|cap|plug|cloth|bung|tool|socket|masking in|inside|over|on",
        "shipping|transit|blanking|plastic plug|cap|bung|plugs|caps left|still|found|in",
    ),
    "piece_found_inside": (
        "found|a|loose|broken bolt|nut|washer|piece|pieces|chunk|chunks|screw|circlip|pin|spring|clip in|inside|at|lying|on the|bottom|of|in? the|bottom|of? oil? sump|pan|oil-pan|crankcase|engine",
        "bolt|nut|washer|circlip|broken|screw pieces? in|inside|lying the|bottom|of|in? oil? sump|pan|crankcase|oil-pan",
        "bits|pieces|chunks|parts of piston|rod|cam|chain|lifter|gear|ring|rings|guide|plastic in|inside|found|at",
    ),
    "small_part_left_out": (
        "slinger|spacer|baffle|dowel|ring|thrower|spring|shim|washer .. left|missing|forgotten|omitted out?",
        "forgot|left|omitted|without out? the|a|to? fit|put|install? the? oil? slinger|spacer|baffle|dowel|thrower|ring|seal",
    ),
}
