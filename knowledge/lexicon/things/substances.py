"""Substances found where they should not be, by the words for them."""

from __future__ import annotations

from knowledge.lexicon.things.thing import Substance

_BITS = (
    "shavings|flakes|filings|chips|slivers|swarf|particles|fragments|specks|bits|pieces|glitter|sparkles|dust|"
    "chunks|splinters|curls|fuzz|needles|whiskers|hairs"
)
SUBSTANCES: dict[Substance, tuple[str, ...]] = {
    Substance.OIL: (
        "fresh|old|engine|motor|hot|clean|black? =oil",
        "oil mist|film|residue|spray|streaks",
    ),
    Substance.METAL: (
        f"metal|metallic {_BITS}|debris?",
        f"{_BITS}|bit|chip|chunk|lump|piece|sliver|flake|shaving of? metal|swarf",
        "shavings|swarf|filings|flakes|glitter|slivers|sparkles|metal|metallic",
        "shiny|silver|silvery|sparkly bits|flakes|specks|particles|pieces|stuff",
    ),
    Substance.DEBRIS: (
        "black|rubbery|rubber|brown|soft|hard|little|tiny|stringy? black|rubbery|rubber|belt crumbs|crumb|bits|particles|pieces|flakes|fragments|shreds|strings|grains|stuff|debris|fibres|fibers",
        "crumbs|belt-bits|belt-debris",
        "grass|chaff|fluff|leaves|straw|hair|weed|moss|insects|acorn|nut|seeds|feathers",
        "debris|dirt|grit|muck|crud|junk|rubbish|trash|crap|contamination",
        "foreign material|matter|object|body",
        "bit|bits|piece|pieces|lump|chunk|chip|sliver of? something|dirt|crud",
        "particles|lump|chunk|lumps|chunks|bits|pieces|chip|chips|sliver",
    ),
    Substance.COPPER: (
        f"copper|bronze|brass|coppery|gold|golden colored|coloured? {_BITS}",
        f"{_BITS} of copper|bronze|brass",
        "copper|bronze|brass|coppery",
    ),
    Substance.BEARING: (
        f"bearing|shell material|metal|{_BITS}",
        f"babbitt|babbit|white-metal|whitemetal {_BITS}?",
        f"{_BITS} of bearing|shell|babbitt",
        "white metal",
    ),
    Substance.SOFT: (
        f"aluminium|aluminum|nonferrous|non-ferrous|alloy|nonmagnetic metal? {_BITS}?",
        f"bright|soft|shiny|silver metal|{_BITS}",
        f"non ferrous|magnetic metal|{_BITS}?",
    ),
    Substance.STEEL: (
        f"steel|iron|magnetic|ferrous metal? {_BITS}",
        "ferrous metal",
        f"{_BITS} of steel|iron",
    ),
    Substance.DUST: (
        "fine|grey|gray|just|bit|little of|grey|gray|fine? dust|paste|fuzz|powder|fur",
        "fuzz|fur",
        "normal fuzz|wear",
    ),
    Substance.SLUDGE: ("sludge|gunk|tar|goo|gloop|sludgy", "black jelly|goo|gunk|sludge|tar"),
    Substance.CARBON: (f"carbon|coke|coked {_BITS}|deposits|oil?",),
    Substance.SEALER: (
        "silicone|rtv|sealant|sealer|silicon|hylomar|goop|hermetite|permatex bits|strings|worms|sealer|sealant?",
        f"{_BITS} of silicone|rtv|sealant|sealer|silicon",
        "gasket maker|goo|sealer|sealant|compound",
        f"jointing|sealing|joint compound|paste|goo {_BITS}?",
        f"{_BITS}|beads|blobs|strings|threads|worms|snakes|ribbons|curls|crumbs of? blue|red|orange|black|grey|gray|clear|jointing|sealing|rubbery goo|gunk|silicone|rtv|compound|sealant|sealer|goop|rubber",
        "instant gasket",
        "liquid gasket",
    ),
    Substance.GASKET: (
        f"{_BITS}|shreds|scraps|strips|bit|piece|chunk|chip of cork|paper|fibre|fiber|old? gasket|seal|o-ring|oring|rubber|joint|cork",
        f"gasket|cork|fibre|fiber|paper|joint {_BITS}|material|shreds|scraps",
        "bits|pieces|shreds|strips|scraps of gasket|cork|fibre|fiber",
        "fibres|fibers|cork",
    ),
    Substance.PLASTIC: (
        f"plastic|nylon|phenolic|fibre timing? gear? teeth|{_BITS}",
        f"{_BITS} of timing? plastic|nylon|guide|teeth teeth|guide?",
        f"{_BITS} of timing? chain guide",
        "plastic|nylon",
        f"chain? guide|guides {_BITS}|plastic",
    ),
    Substance.CLOTH: ("rag|rags|cloth|towel|lint|tissue", "paper|shop|blue towel|towels|roll"),
    Substance.WATER: ("water|moisture|condensation|droplets", "water droplets"),
    Substance.COOLANT: ("coolant|antifreeze|glycol", "anti freeze"),
    Substance.FUEL: ("petrol|gasoline|diesel|fuel|gas",),
    Substance.ICE: ("ice|slush", "frozen water|condensation"),
    Substance.GREASE: ("grease|vaseline", "petroleum jelly", "assembly lube|paste|grease"),
    Substance.SAND: (
        "sand|grit|glass beads?",
        "casting|core|blasting sand|grit|media",
        "bead|beads|shot|honing grit|blast|beads|media?",
    ),
    Substance.CREAM: (
        "white|whitish|milky|creamy|brown|grey|gray|beige white|grey|gray|brown? slime|goo|gunk|sludge|foam|scum|film|paste|mayo|emulsion|cream|snot|gloop|jelly|coating|stuff|mush",
        "cream|creamy|mayo|mayonnaise|emulsion|custard|milkshake",
        "white|milky|creamy|brown goo|gunk|sludge|foam|scum|film|paste|mayo|emulsion|cream",
    ),
    Substance.FOAM: ("foam|froth|bubbles|foaming|frothing",),
}
