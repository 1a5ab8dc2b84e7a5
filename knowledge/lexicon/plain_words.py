"""Plain words of English near a word of the lexicon, which spelling must not turn into it.

Found by comparing the lexicon with the commonest words of English; a common word is no misspelling.
"""

from __future__ import annotations


def _set(text: str) -> frozenset[str]:
    return frozenset(text.split())


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
