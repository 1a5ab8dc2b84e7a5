"""What kind of engine it is, as people say it: traits, and the layout and features they mean."""

from __future__ import annotations

from enum import StrEnum

from knowledge.lexicon.engine import kinds


class Trait(StrEnum):
    """Something said of how an engine is built or where it works."""

    DIESEL = "diesel"
    PETROL = "petrol"
    BOAT = "boat"
    SAIL = "sailing boat"
    STERNDRIVE = "sterndrive"
    TRACTOR = "tractor"
    TRUCK = "truck"
    HEAVY = "heavy"
    CAR = "car"
    CYCLE = "motorcycle"
    GENERATOR = "generator"
    MOWER = "mower"
    PLANT = "plant"
    RACE = "race"
    V8 = "v8"
    V6 = "v6"
    V_TWIN = "v-twin"
    FLAT_FOUR = "flat four"
    FLAT_SIX = "flat six"
    SIX = "six in line"
    FOUR = "four in line"
    THREE = "three cylinders"
    TWIN = "parallel twin"
    SMALL = "small"
    RADIAL = "radial"
    OHC = "overhead cam"
    PUSHROD = "pushrods"
    OLD = "classic"
    LATE = "late model"
    DRY_SUMP = "dry sump"
    TURBO = "turbo"
    NO_TURBO = "no turbo"
    AIR_COOLED = "air-cooled"
    SOLID = "solid lifters"
    AIRCRAFT = "aircraft"
    SIDE_VALVE = "side valves"
    OUTBOARD = "outboard"
    MACHINE = "heavy machine"
    VEE = "vee of ten cylinders or more"
    ROTARY = "rotary pistons"
    TWO_STROKE = "two-stroke"
    OPEN_CRANK = "open crank"
    SPLASH = "oiled by splash"
    TROUGH = "troughs and a low-pressure pump"
    SLOW = "slow and large"
    ROLLERS = "big ends on rollers"


TRAITS: dict[Trait, tuple[str, ...]] = {
    Trait.DIESEL: ("diesel|dsl|derv|turbodiesel|turbo-diesel|turbodiesels",),
    Trait.PETROL: ("petrol|gasoline", "gas engine|motor|tractor|v8|inboard|generator|genset"),
    Trait.BOAT: (
        "boat|inboard|cruiser|cabin-cruiser|marine|runabout|trawler|tug|narrowboat|barge|motorboat|speedboat|lifeboat|powerboat|sportsboat|airboat|workboat|houseboat|ferry|gunboat|jet-boat|ski-boat|sportfisher|dayboat|lugger|catamaran|trimaran|motorsailer|motor-sailer|pilothouse|flybridge",
        "ski|bow boat|thruster",
        "my|our|his|her|their|this|a|steam|motor|river|pilot|wooden|old|police|navy|foot|ft|the|harbour|harbor|island|yard|fishing|"
        "passenger|open|clinker|small|big|diesel|petrol|work|twin|customers|estate|club|rescue =launch|=launch's",
        "=launch engine|motor|diesel|v8|six|four|with|has|had",
        "ships|ship's|ship main|aux|auxiliary|generator|genset|engine|diesel|motor",
        "on|aboard a|an|the|our? ship|vessel|coaster|cutter",
        "fishing|supply|patrol|pilot|crew|motor|passenger|coastal vessel|yacht|ship",
        "marinised|marinized|coaster|tugboat|trawlers|crewboat|schooner|starboard|stbd|stb'd|bilge|bilges|windlass|bow-thruster|gunwale",
    ),
    Trait.SAIL: (
        "sailboat|yacht|ketch|sloop",
        "sailing boat|yacht",
        "auxiliary diesel",
        "sailed|sailing for|to|from|home|back|out",
    ),
    Trait.STERNDRIVE: ("sterndrive|stern-drive|outdrive", "stern drive", "i/o"),
    Trait.TRACTOR: ("tractor",),
    Trait.TRUCK: (
        "truck|pickup-truck|lorry|ute|snowplough|wrecker|flatbed|flat-bed|hgv|motorcoach|day-cab|bus|coach|artic",
        "tractor|artic|prime unit|mover",
        "pick up truck",
        "pickup diesel|v8|six|four|v6",
        "in|drive|drove|bought a|an|my|his|our old? =pickup",
        "@year .. =pickup",
        "v6|v8|six|four|straight-six|slant-six|i6|petrol|gas|half-ton|compact|light =pickup ,|@displacement|@number",
        "diesel|petrol|farm|work|old|small-block|v8|six|straight-six|snowplough|plough|crew-cab =pickup",
    ),
    Trait.HEAVY: (
        "lorry|semi|excavator|combine|dozer|bulldozer|big-rig|haulage|bus|coach|crane|grader|locomotive",
        "big rig",
        "heavy|commercial|tipper|road|artic|articulated truck|lorry|diesel|vehicle|tractor-unit",
        "dumper|tipper|artic|harvester|forwarder|motor-grader|telehandler",
        "road|vibrating|tandem|steam|asphalt roller",
    ),
    Trait.MACHINE: (
        "excavator|dozer|bulldozer|locomotive|forwarder|motor-grader|grader|skidder|hgv|artic|railcar",
        "=combine|=combines|=harvester",
        "haul|dump|dumper|articulated truck",
        "wheel loader",
        "highway|road|semi tractor|truck|train",
        "tractor unit",
        "feller|snow|piste|road buncher|groomer|basher|roller",
    ),
    Trait.OUTBOARD: ("=outboard|=outboards",),
    Trait.VEE: ("v10|v12|v16|v20|v-12|v-10|v-16",),
    Trait.CAR: (
        "car|sedan|saloon|estate|van|suv|coupe|hatchback|roadster|camper|campervan|convertible|minivan|minibus|limousine|taxi|4x4|jeep|motorhome|hot-rod|hotrod|supermini|people-carrier|peoplecarrier|hatch-back|microcar",
        "hot|street|rat|station|family|estate rod|wagon",
        "hot|family|turbo|diesel|twin-cam|track-day|shopping|five-door|old =hatch",
        "=hatch =back|=four|=v6",
        "four|all|people wheel|wheeler|carrier|mover drive?",
        "=gt|two-seater|fastback|cabriolet|spider|spyder|pickup-truck|buggy|kit-car|single-seater|dragster|racer|coupé|hatchback|limo|hearse|ambulance",
        "rally|race|racing|sports|muscle|stock|drag|formula|kit|police|patrol|touring|pace =car",
        "=rally twin-cam|car|v6|v8|four|six",
    ),
    Trait.CYCLE: (
        "motorcycle|motorbike|bike|enduro|motocrosser|tourer|scrambler|moped|cruiser-bike|scooter|sidecar|sportbike|sportsbike|superbike|dirtbike|trike|quad|quadbike|atv|four-wheeler|pitbike|minibike",
        "cruiser v-twin|vtwin|bike|motorcycle",
        "cruiser v twin",
        "touring|sport|sports|dirt|adventure|trail|pit|quad bike",
        "british|classic|vintage|old parallel? =twin",
        "naked|enduro|trials|race|racing|road|litre|motocross|touring|police bike|machine",
        "sports|litre|parallel|flat|boxer|air-cooled|british|vertical|naked sports|parallel? twin|single|triple tourer|bike|machine|roadster?",
    ),
    Trait.GENERATOR: (
        "generator|genset|gen-set|genny",
        "standby set",
        "gen set",
        "emergency|standby|diesel? alternator set",
    ),
    Trait.MOWER: ("mower|lawnmower|ride-on|lawn-tractor", "lawn mower|tractor", "garden tractor"),
    Trait.PLANT: (
        "digger|skid-steer|forklift|backhoe|skidsteer|compactor|loader",
        "skid steer",
        "pump set",
        "compressor|welder|irrigation|pumping set",
        "telehandler|skidsteers|mini-digger|trencher|paver|reefer-unit",
        "reefer|refrigeration unit",
        "hydraulic power pack",
    ),
    Trait.RACE: ("race|racing|drag|race-car", "track car"),
    Trait.V8: (
        "v8|v-8|eight-cylinder|v8s",
        "v 8",
        "small|big block",
        "small-block|big-block|sbc|bbc",
    ),
    Trait.V6: ("v6|v-6|v6s",),
    Trait.V_TWIN: ("v-twin|vtwin", "v twin", "90|60|45 degree|deg twin", "twin , 90|60 degree|deg"),
    Trait.FLAT_FOUR: ("flat-four|flat-4|boxer", "flat four|4", "boxer four"),
    Trait.FLAT_SIX: ("flat-six|flat-6", "flat six|6", "opposed|boxer six", "horizontally opposed"),
    Trait.SIX: (
        "straight-six|inline-six|straight-6|inline-6|i6|six-cylinder|6-cyl|l6",
        "straight|inline|in-line|flathead|cylinder six|6",
        "six|6 cylinder|cyl|pot|banger",
        "in line six|6",
        "push rod six|6",
        "a|my|its|the|old|this @number litre|liter? =six",
        "flathead|slant|petrol|gasoline|vintage|ohc|twin-cam six|6",
    ),
    Trait.FOUR: (
        "four-cylinder|4-cyl|4cyl|inline-four|i4",
        "four|4 cylinder|cyl|pot|banger",
        "inline|straight|ohc|sohc|dohc|twin-cam|flathead|turbo|british|pushrod|petrol|classic|diesel|vintage|skew|ohv|valve|cam|sidevalve|side-valve|gasoline|old four|4",
        "in line four|4",
        "push rod four|4",
        "a|my|its|the|old|this @number litre|liter? =four",
    ),
    Trait.THREE: ("three-cylinder|3-cyl|3cyl", "=three|3 cylinder|cyl|pot|banger"),
    Trait.TWIN: ("twin-cylinder|parallel-twin", "parallel|british|twin|two|2 twin|cylinder|cyl"),
    Trait.SMALL: (
        "compact|mini|subcompact",
        "single cylinder",
        "one|single lung|pot",
        "small diesel|tractor|engine",
        "twin|single on|in|driving|powering a|the|my|our|his generator|genset",
        "generator|genset with|, a? twin|single engine|, from|by|on",
        "portable generator|genset",
    ),
    Trait.RADIAL: ("radial",),
    Trait.OHC: (
        "variable|variable-timing valve? timing? four|six|v6|v8",
        "four-valve|sixteen-valve|16v|24v",
        "ohc|dohc|sohc|twin-cam|overhead-cam",
        "overhead|twin|double cam|overhead cam?",
    ),
    Trait.PUSHROD: (
        "push rod|rods engine|motor|four|six|v8|ohv",
        "pushrod|ohv|pushrods|flathead|sidevalve|side-valve",
        "flat head",
        "side valve",
        "overhead valve|valves",
    ),
    Trait.OLD: (
        "classic|vintage|antique|prewar|pre-war|flathead|sidevalve|side-valve|oldtimer|old-british",
        "old|british|classic sports|british? car",
        "pre war",
        "side valve",
        "old british",
        "flat head",
    ),
    Trait.LATE: ("modern|late-model|roller-lifter", "late model|pushrod", "roller lifter|lifters"),
    Trait.DRY_SUMP: ("dry-sump|dry-sumped|drysump", "dry sumped"),
    Trait.TURBO: ("turbo|turbocharged|turbodiesel|turbo-diesel",),
    Trait.NO_TURBO: (
        "no|without|not|isnt|non|never|hasnt|doesnt have|got? a|any? turbo|turbocharged|turbocharger|turbos",
        "naturally aspirated",
        "non-turbo|nonturbo|unblown",
    ),
    Trait.AIR_COOLED: ("air-cooled|aircooled", "air cooled"),
    Trait.AIRCRAFT: ("aircraft|airplane|aeroplane|plane|gyroplane|helicopter",),
    Trait.SIDE_VALVE: (
        "flathead|sidevalve|side-valve|l-head|flatty",
        "flat head",
        "side valve|valves",
        "l head",
    ),
    Trait.SOLID: ("solid lifters|lifter|cam",),
    Trait.ROTARY: kinds.ROTARY,
    Trait.TWO_STROKE: kinds.TWO_STROKE,
    Trait.OPEN_CRANK: kinds.OPEN_CRANK,
    Trait.SPLASH: kinds.SPLASH,
    Trait.TROUGH: kinds.TROUGH,
    Trait.SLOW: kinds.SLOW,
    Trait.ROLLERS: kinds.ROLLER_BIG_ENDS,
}
_T = Trait
#: the cylinders of an engine with a trait
CYLINDERS: dict[Trait, int] = {
    Trait.V8: 8,
    Trait.V6: 6,
    Trait.V_TWIN: 2,
    Trait.FLAT_FOUR: 4,
    Trait.FLAT_SIX: 6,
    Trait.SIX: 6,
    Trait.FOUR: 4,
    Trait.THREE: 3,
    Trait.TWIN: 2,
}
#: engines whose governor holds a high and a low idle
GOVERNED = frozenset({_T.TRACTOR, _T.PLANT, _T.MACHINE, _T.GENERATOR, _T.HEAVY})
#: features that a trait means by itself
FEATURES: dict[Trait, str] = {
    Trait.DIESEL: "diesel",
    Trait.BOAT: "in_a_boat",
    Trait.SAIL: "in_a_boat",
    Trait.STERNDRIVE: "in_a_boat",
    Trait.OUTBOARD: "in_a_boat",
    Trait.TRACTOR: "in_a_tractor",
    Trait.GENERATOR: "stationary",
    Trait.TURBO: "turbocharged",
    Trait.TRUCK: "in_a_vehicle",
    Trait.CAR: "in_a_vehicle",
    Trait.CYCLE: "in_a_vehicle",
    Trait.DRY_SUMP: "dry_sump",
    Trait.OHC: "overhead_cam",
}
#: features that a trait means where no layout is proposed, which would say it
FEATURES_ALONE: dict[Trait, str] = {
    Trait.V8: "vee_engine",
    Trait.V6: "vee_engine",
    Trait.V_TWIN: "vee_engine",
    Trait.VEE: "vee_engine",
    Trait.SIDE_VALVE: "pushrod_engine",
    Trait.ROTARY: "rotary_piston",
    Trait.TROUGH: "trough_fed",
    Trait.OPEN_CRANK: "drip_oiled",
}
#: features that an engine with a trait lacks
LACKS: dict[Trait, str] = {Trait.AIR_COOLED: "water_cooled", Trait.NO_TURBO: "turbocharged"}
#: features that are said in a way of their own
FEATURE_WORDS: dict[str, tuple[str, ...]] = {
    "pushrod_engine": (
        "pushrod|ohv|pushrods engine|motor?",
        "push rod|rods engine|motor|four|six|v8",
        "overhead valve|valves",
    ),
    "hydraulic_lifters": ("hydraulic lifters|tappets|lifter",),
    "lamp_only": (
        "only|just a? oil? warning? light|lamp",
        "no gauge only|just .. light|lamp",
        "light only no gauge",
        "@not have|got|a|any? a|an|any? oil? pressure? gauge",
        "only an|the|got|has|a? idiot|oil|warning light|lamp",
        "got|has|have no oil? pressure? gauge",
        "idiot light only",
    ),
    "direct_gauge": (
        "line|pipe|tube from|to|between the? block|engine|gauge|dash to|and|is|thats? the? gauge|that|a|thin|small? thin|small? copper|plastic|nylon|capillary",
        "mechanical|capillary oil? pressure? gauge",
        "gauge is|its mechanical",
        "direct dash|panel|reading oil? pressure? gauge",
        "direct reading oil? pressure? gauge",
        "gauge is|was? screwed|plumbed|piped|connected|threaded straight|direct|directly in|into|to|off",
        "gauge is? fed|supplied by|from|with|through an|a|its? own? oil|copper|nylon|plastic|capillary line|pipe|tube",
        "oil|copper|nylon|plastic|capillary line|pipe|tube|tubing to|up-to|runs|running to? the|my? dash? gauge",
    ),
    "electric_gauge": ("electric|electrical oil? pressure? gauge",),
    "oil_cooler": (
        "has|with|have|got|fitted|added|installed|put|external|big|separate an|a|the? external? oil cooler",
        "fit|fitting|fitted|adding|added|since|the|my|its|his|same|stock|standard|original|front an|a|the|my|bigger|external? oil cooler",
        "blew|burst|cracked|holed the|my|an|its? oil cooler",
        "oil cooler core|matrix|line|lines|hose|hoses|pipe|pipes|fitting|fittings|stat|=fitted",
    ),
    "remote_filter": ("remote oil? filter",),
    "windage_tray": ("windage tray",),
    "water_cooled": ("water cooled|watercooled",),
}

#: say that the engine is in a boat, of whichever of its engines it is said
OF_A_BOAT = frozenset(["starboard", "stbd"])
#: behind "pushrod": it says what engine it is
KINDS = frozenset(
    ["v8", "v6", "six", "four", "engine", "motor", "twin", "single", "diesel", "petrol"]
)
#: behind "petrol": it is the engine that burns it
ENGINE_WORDS = frozenset(["four", "six", "engine", "motor", "twin", "single", "three"])
#: before and behind "7 main bearings" where the engine has so many
HAS_SO_MANY = frozenset(["with", "has", "have", "having", "got"])
OF_A_CRANK = frozenset(["engine", "motor", "crank", "crankshaft", "block", "six", "four"])
#: before "petrol" at the end of what is said of the engine: it burns it
BURNS_IT = frozenset(["four", "six", "twin", "single", "cylinder", "cyl", "pot", "v8", "v6"])
#: behind "petrol": that is what is looked at, not what the engine burns
OF_THE_FUEL = frozenset(
    ["in", "smell", "smells", "pump", "tank", "fumes", "leak", "leaks", "got", "gets", "runs"]
)
#: behind "in a pickup": it is no truck
TUBE = frozenset(["tube", "pipe", "screen", "strainer", "assembly"])
#: before "with diesel": it is what something was washed with
WASHES = frozenset(
    ["flushed", "washed", "cleaned", "rinsed", "soaked", "flush", "wash", "clean", "swilled"]
)
#: the grade of the oil in the engine
OIL_IN_IT = (
    "@grade oil?",
    "@grade oil? in it|her|there",
    "running|run|runs|using|use|uses|used|filled|refilled|fill|got|fresh|new|full on|with|of|up|it? it|her|some|the|fresh|new? @grade oil?",
    "oil|now|engine in|is|its it|use|the? engine|is? is|at|:? @grade",
    "changed|switched|went|swapped|changing|gone oil? over? to|up|down to? @grade oil?",
    "put|poured|filled in|it? fresh|new|some? @grade oil? in?",
)
#: before a grade in its clause: it is not, or no longer, the oil in the engine
NOT_IN_IT = frozenset(
    [
        "from",
        "instead",
        "was",
        "were",
        "previously",
        "before",
        "formerly",
        "manual",
        "book",
        "handbook",
        "recommended",
        "recommends",
        "recommend",
        "specified",
        "specifies",
        "specify",
        "specs",
        "spec",
        "calls",
        "called",
        "says",
        "should",
        "supposed",
        "than",
        "not",
        "wants",
        "needs",
        "required",
        "replaced",
        "original",
        "originally",
        "old",
        "factory",
        "rather",
        "usual",
        "usually",
        "normally",
        "for",
        "about",
    ]
)
