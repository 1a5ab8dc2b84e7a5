"""Words beside a finding of the oil's level and use by which it is something else, or no trouble."""

from __future__ import annotations

from knowledge.lexicon.meant.otherwise import Otherwise
from knowledge.lexicon.words.word_sets import set_of as _set

_FLUIDS = _set(
    "fuel petrol gas gasoline diesel water coolant antifreeze ethanol paraffin screenwash adblue"
)
_OF_OIL = _set("oil oils oily dipstick stick sump pan")
#: another fluid drips, runs out or is topped up
_ANOTHER_FLUID = Otherwise(beside=_FLUIDS, unless=_OF_OIL)
_SLOPES = _set(
    "slope slopes hill hills bank banks incline nose tilted tilt heeled heel list side sideways camber "
    "uphill downhill ground"
)
_OF_STICK = _set("oil dipstick stick mark marks fluid")
_WATERS = _set(
    "water coolant antifreeze glycol seawater diesel fuel petrol gas gasoline paraffin kerosene"
)
_HOLDERS = _set("filter filters canister cooler line hose pipe jug bottle tin can jar cup head")
_OF_SUMP = _set("sump pan dipstick stick crankcase")
_FORGOTTEN = _set(
    "forgot forgotten fill filled filling refill refilled refilling change changed put"
)
_TIMES = _set("@seconds @minutes second seconds minute minutes moment moments")
#: "the filter holds very little oil"
_HELD = Otherwise(said=_set("hold holds held holding"), anywhere=_HOLDERS, unless=_OF_SUMP)
_HOW_MUCH = _set("quart quarts litre litres liter liters pint pints lot lots much gallon")
_FLOWS_DOWN = Otherwise(
    said=_set("much lots"),
    then=_set("coming comes came getting gets running runs going pouring down up at out"),
)

#: by finding, "-" before it where it was found not to be so; "=" before what gauge or lamp shows
OTHERWISE: dict[str, tuple[Otherwise, ...]] = {
    "dipstick_dry": (
        # "the oil on the stick is clean"
        Otherwise(
            said=_set("clean"),
            beside=_set("oil"),
            unless=_set("no not nothing dry wiped low bone"),
        ),
        # "ran out of oil on the motorway, filled it up": it was so once, and is not now
        Otherwise(said=_set("ran run"), anywhere=_set("filled refilled topped")),
        # "the turbo's bearing was starved of oil": it got none, whatever the sump held
        Otherwise(said=_set("starved"), unless=_set("sump pan tank crankcase")),
        # "ran out of fuel, tank ran dry", "nothing left in the tank"
        Otherwise(
            anywhere=_set("fuel petrol diesel gas gasoline"),
            unless=_OF_OIL | _set("engine pressure light lamp"),
        ),
        # "took the line off at the block, no oil at all came out"
        _HELD,
        Otherwise(
            said=_set("no"),
            anywhere=_set("line pipe hose union port hole tapping sender switch rocker rockers"),
            unless=_set(
                "dipstick stick sump pan drain drained plug crankcase had left engine motor"
            ),
        ),
    ),
    "dipstick_low": (
        # "ran low on oil last year, topped it up": it is not low now
        Otherwise(beside=_set("ran"), anywhere=_set("filled refilled topped last ago since")),
        # "at minimum revs", "a quarter full tank"
        _ANOTHER_FLUID,
        Otherwise(then=_set("revs rpm throttle")),
        # "the needle swings more and more, then below the minimum"
        Otherwise(
            anywhere=_set("needle gauge pointer swings swing"),
            unless=_set("stick dipstick level oil filled topped sump"),
        ),
        Otherwise(anywhere=_set("tank bottle can"), unless=_OF_OIL | _set("level")),
        # "the filter hangs sideways and holds very little oil"
        _HELD,
    ),
    "dipstick_not_its_own": (
        # "checked the dipstick from the other side"
        Otherwise(then=_set("side way end hand day week morning")),
    ),
    "drained_volume": (
        # "drained 3 litres of diesel out of the sump"
        Otherwise(said=_WATERS, unless=_set("oil")),
        Otherwise(then=_WATERS),
    ),
    "level_correct": (
        # "the oil on the stick is full of bubbles"
        Otherwise(
            said=_set("full"),
            beside=_set(
                "bubbles bubble froth foam air water coolant fuel petrol diesel metal glitter flakes "
                "grit dirt sludge muck bits swarf shavings crud gunk carbon"
            ),
            unless=_set("no not free"),
        ),
        # "the tank is empty, the sump is full": the oil is in the wrong place
        Otherwise(said=_set("full"), anywhere=_set("tank"), also=_set("empty drained emptied")),
        # "it comes level again and it is OK"
        # "the dipstick is the right one"
        Otherwise(said=frozenset(["right"]), then=_set("one down off")),  # "was right down"
        # "between two short runs the stick was dry"
        Otherwise(
            said=_set("between"),
            unless=_set("mark marks line lines add full min notches dots holes halfway level"),
        ),
        Otherwise(said=_set("level"), anywhere=_SLOPES, unless=_OF_STICK | _set("sump filled")),
        # "it took 3 quarts to bring it up to the mark"
        Otherwise(
            said=_set("mark full line max"),
            beside=_set("took takes needed required swallowed wanted"),
            unless=_set("now is shows reads change changed"),
        ),
        # "returns oil to the tank"
        Otherwise(then=_set("tank sump pan block head rockers gauge bearings turbo")),
    ),
    "level_high": (
        # "far too much oil comes down from the cam"
        _FLOWS_DOWN,
    ),
    "not_refilled": (
        # "it ran ten seconds without oil", after the pump failed
        Otherwise(said=_set("without"), beside=_TIMES, unless=_FORGOTTEN),
    ),
    "oil_not_checked_long": (
        # "no oil on the stick when I checked"
        Otherwise(said=_set("no"), anywhere=_set("dipstick stick")),
    ),
    "-oil_used_fast": (
        # "burnt oil, never changed"
        Otherwise(said=_set("burnt burned"), then=_set("changed")),
    ),
    "oil_used_fast": (
        # "the oil I'm using, from 10W-30 to 10W-40"
        Otherwise(
            said=_set("using use"),
            beside=_set("from grade weight 10w-30 10w-40 15w-40 20w-50 5w-30 5w-40 straight brand"),
            unless=_set("quart quarts litre litres liter liters pint pints every lot much"),
        ),
        # "all the oil goes through it"
        Otherwise(said=_set("through"), then=_set("it the a that this both"), unless=_HOW_MUCH),
    ),
    "too_much_poured_in": (_ANOTHER_FLUID, _FLOWS_DOWN),
    "wet_sumps": (
        # "the petrol drained out of its tank into the engine"
        Otherwise(
            beside=_set("fuel petrol gas gasoline diesel"),
            unless=_set("oil"),
        ),
        # "a one way valve against wet sumping"
        Otherwise(
            beside=_set("against anti prevent prevents preventing stop stops stopped cured"),
            unless=_set("despite still anyway overnight again"),
        ),
    ),
}
