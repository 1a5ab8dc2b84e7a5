"""What spelling leaves alone, and what it mends: plain words near trade words, phone spellings."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set

PLAIN = _set(
    "sports sport spots house horse motive bearing bearings course nose close whole where "
    "there three clear early dear stale tight night right light might sight fight weight "
    "eight drive driven drives river cover covers over even never every under other another "
    "either neither whether weather leather father mother brother people little title about "
    "above among being going doing having since sense hence place plate plane plans plant "
    "start state store story short shore share shape sharp smart small smell spell shell "
    "still steel street sheet sleep steep speed spend spent spare spark space paper paint "
    "point print price prize pride thing think thank those these their theirs worth world "
    "words works worse worst first burst thirst today tomorrow yesterday morning evening "
    "minute moment mostly money month mouth south north party parts gauges figure figures "
    "picture pictures posted poster poses loses lower slower flower power powers tower trace "
    "track trick truck trust trunk round sound found bound pound ground wound would could "
    "should raise rinse riser rises wiser miles mills tests texts taste tasted later lather "
    "latter letter better batter matter butter bitter filled fitted fixed fired filer filler "
    "finder finger linger listen listed years yards heard beard board hoard noted noise "
    "noised voice choice chain chair change chance dance really ready rally relay reply apply "
    "supply simply simple sample ample apple model metal medal pedal pulled polled called "
    "rolled mailed nailed failed railed tailed boiled coiled soiled toiled"
)
#: short spellings of a phone, and the words they are
TYPED = {
    "guage": "gauge",
    "guages": "gauges",
    "gage": "gauge",
    "gages": "gauges",
    "allready": "already",
    "untill": "until",
    "lite": "light",
    "lites": "lights",
    "nite": "night",
    "wen": "when",
    "n": "and",
    "u": "you",
    "ur": "your",
    "thru": "through",
    "cos": "because",
    "coz": "because",
    "cuz": "because",
    "dident": "didnt",
    "dint": "didnt",
    "didn": "didnt",
    "didint": "didnt",
    "dosent": "doesnt",
    "dosnt": "doesnt",
    "doesent": "doesnt",
    "mway": "motorway",
    "mtrway": "motorway",
    "hwy": "highway",
    "fwy": "freeway",
    "pls": "please",
    "shud": "should",
    "cud": "could",
    "wud": "would",
    "wid": "with",
    "abt": "about",
    "bout": "about",
    "tho": "though",
    "ppl": "people",
    "2day": "today",
    "b4": "before",
    "brg": "bearing",
    "brgs": "bearings",
    "brngs": "bearings",
    "presure": "pressure",
    "preasure": "pressure",
    "enging": "engine",
    "b/e": "bigend",
    "b/es": "bigends",
    "m/b": "main",
    "c/shaft": "crankshaft",
    "c/case": "crankcase",
    "b/p": "bypass",
    "w/l": "lamp",
    "alu": "aluminium",
    "ali": "aluminium",
    "nonmag": "nonmagnetic",
    "null": "zero",
    "bung": "plug",
    "bungs": "plugs",
    "sieve": "strainer",
    "sieves": "strainers",
    "cog": "gear",
    "cogs": "gears",
    "cogwheel": "gear",
    "cogwheels": "gears",
    "tooths": "teeth",
}
#: two words that the lexicon has as one
JOINED = {
    ("pressure", "tank"): "preluber",
    ("pressure", "pot"): "preluber",
    ("pressure", "primer"): "preluber",
    ("prelube", "tank"): "preluber",
    ("garden", "sprayer"): "preluber",
    ("dip", "stick"): "dipstick",
    ("flat", "tappet"): "tappet",
    ("flat", "tappets"): "tappets",
    ("dry", "sump"): "drysump",
    ("milk", "shake"): "milkshake",
    ("milk", "shakes"): "milkshake",
    ("fire", "engine"): "lorry",
    ("fire", "engines"): "lorry",
    ("fire", "truck"): "lorry",
    ("fire", "tender"): "lorry",
    ("leak", "off"): "leakoff",
    ("leak", "offs"): "leakoff",
    ("spill", "rail"): "leakoff",
    ("lift", "pump"): "liftpump",
    ("o", "ring"): "oring",
    ("o", "rings"): "orings",
    ("bell", "housing"): "bellhousing",
    ("wind", "screen"): "windscreen",
    ("wind", "shield"): "windshield",
    ("over", "heated"): "overheated",
    ("over", "night"): "overnight",
    ("over", "filled"): "overfilled",
    ("crank", "shaft"): "crankshaft",
    ("cam", "shaft"): "camshaft",
    ("by", "pass"): "bypass",
    ("oil", "clock"): "gauge",
    ("hard", "line"): "hardline",
    ("ground", "up"): "groundup",
    ("in", "frame"): "inframe",
    ("w", "/"): "with",
    ("sealing", "ring"): "seal",
    ("sealing", "rings"): "seals",
    ("joint", "ring"): "seal",
    ("high", "idle"): "highidle",
    ("hi", "idle"): "highidle",
}
#: words of degree, which change nothing about what was seen
DEGREES = _set(
    "very quite rather really pretty totally completely absolutely badly slightly somewhat almost nearly "
    "virtually practically heavily severely clearly obviously definitely simply also actually apparently"
)
#: "was found to be", "was seen to have"
PERCEIVED = _set("found seen noticed discovered observed reported thought said known")
#: all that may stand beside a mileage or hours that are a sentence of their own
AGE_WORDS = _set(
    "about around roughly some only just over nearly almost has have had got with at on the clock it its now so far "
    "total of running use from new old engine motor car truck boat tractor bike odometer meter hour original genuine"
)
#: parts whose names are also what one does: "plugged" says nothing of a plug
COUNTED_PARTS = frozenset(
    ["plug", "block", "filter", "screen", "switch", "cap", "bolt", "seal", "pipe", "vent"]
)
NAMES_AND_DEEDS = COUNTED_PARTS | frozenset(["pump", "drain", "lead", "line"])
#: plain words near a word of the lexicon, found by comparing it with the commonest words of English
PLAIN_WORDS = _set(
    "accidental aging allies alone alternate apples arena assemble assembled attractive automated "
    "backyard batch beach beaches bears beast beasts blend blood bonding bonds booth bread bride "
    "broker brokers brook busted cache camel camping camps castle cents certainly certainty "
    "champagne chart charts cheat cheated checkout citation classical clause clone collect "
    "collected comet compete competing complain complained complaining constituency constraints "
    "consultant consultants container containers contestants continent continuation contract "
    "contracted contracting contracts controlled controlling conversation conversations cookie "
    "cookies costing costs counties county craft crafted crafts create created creates creepy "
    "crust cultivation currently curse cursed dangerous dealt deceased declaration definitive "
    "deliver delivered delivering delivers derived dessert detective detectives developer "
    "developers differentiate difficulties difficulty discoveries discovery dismissal distribute "
    "distributed distribution divers doesn donate donated drastically drone drones dusty eighth "
    "eighty electronic electronics emergence endure enduring eternal eventual excellence excited "
    "exclusion faction factions factor factors faculty fairy false farther fatty feast fiction "
    "fighting fights finer flank flanks fling flint flour foods foreigners forex functional "
    "funded funding funds garbage generally generate generated generates generating grating grove "
    "guild handle handled handles handy hardy harvester haunted health heart hearted hearts hello "
    "horizontal ideal ideals incidence infection infections inferior inspector inspectors "
    "instrumental integral internet intro irony kinda kindle labelled lawyer lawyers learn "
    "learned learns learnt lease leased lengthy linear litter liver loser losers lotus lounge "
    "lucky manly manufacture manufactured manufacturing margin margins marina marker markers "
    "maternal maths mayor meals median mental messy metre metres midst mighty migrant migrants "
    "miners modes moist monkey monkeys motto neural nicer nothin obviously opera operational "
    "originated oversight pains palace pants particularly parties performer performers petty "
    "pierce piper plain plains planet planets plots poker potentially pottery practical precious "
    "predictable presenter presently president presidents prevalent probable product products "
    "profession professional professionals progressive projection projections properties property "
    "publisher publishers quarterly quartz radical raids realism realm recognition recovery "
    "registration registry regulatory relation relations relies relying replay replica "
    "reproductive reside resist resistant responsive revised revive revived ridiculous rigs risky "
    "robot robots rocky rouge rubbery ruler rulers sacked safer salon salty salute sandy savage "
    "scanning scans scarf scary scent selection selections selling sells senate sensory seriously "
    "server servers shady shaky shale sheep shock shocked shores shout shouted shrine sights "
    "significance significantly similarly sincere singer singers singing sings situation "
    "situations slash slate slice slices smoother snack snacks snail sneak solar songs spear "
    "spears species specific speedy spends spice spoon spurs stabbed stairs stark statue statues "
    "steak steal steals sting stoke storm storms straightedge straightedges strand stranded "
    "stranger strangers stray stubborn studied studies study stunned stunning subjective "
    "successive successor sufficiently supporter supporters supportive tackle tackles tally "
    "tastes tasting teach teaches technically temple temples tempo temporary terminate terminated "
    "thankful thirsty thorough thousandths throne thrones timer tough tract trans transform "
    "transmit tribal tricky triple trustee trustees tying typically uncertainty unity vibrant "
    "violet virtual wages waist warrant warrants weakly weigh weighed weighing weighs weighty "
    "wheat wherever widen widened widens wider widow worlds worthy write writes writing writings "
)
