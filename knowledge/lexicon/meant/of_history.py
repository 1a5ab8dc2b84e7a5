"""Words beside a finding of the history and use of the engine by which it is something else, or no trouble."""

from __future__ import annotations

from knowledge.lexicon.meant.otherwise import Otherwise
from knowledge.lexicon.words.word_sets import set_of as _set

_JAMS = Otherwise(
    said=_set("freeze freezes freezing froze frozen"),
    beside=_set("pump engine motor valve plunger piston rotor gear lifter bearing crank"),
    unless=_set(
        "winter cold ice icy iced weather night overnight frost morning degrees minus temperature snow water "
        "oil's screen pickup strainer below outside @temperature january february december"
    ),
)
_BODY = _set(
    "rust rusts rusting rot rots corrosion paint body bodywork sills arches doors door roof chassis "
    "shop garage firm place town floor interior trim"
)
_ON_THE_TRACK = _set(
    "race races raced racing track circuit lap laps qualifying rally grid heat corner corners "
    "pressure oil light lamp gauge needle hot psi bar temperature"
)
_CONSUMABLES = _set(
    "tyres tires brakes pads discs battery clutch exhaust seats paint hoses plugs carpets bushes roof "
    "wheels shocks belt belts"
)
_MACHINES = _set(
    "car van boat truck lorry tractor bike engine motor machine digger generator pickup yacht"
)
_DAY = _set("day days weather summer afternoon morning evening outside ambient sun sunny")
_GIVEN = _set("gave give giving given gives good quick gentle sharp")
_ONCE_DRIVEN = _set("took take taking taken home nurse nursed today yesterday")

#: by finding, "-" before it where it was found not to be so; "=" before what gauge or lamp shows
OTHERWISE: dict[str, tuple[Otherwise, ...]] = {
    "direct_gauge": (
        # "still nothing on a mechanical gauge", "put a mate's mechanical gauge on it": it was a test
        Otherwise(
            said=_set("mechanical"),
            beside=_set(
                "a test put tried borrowed mate's mates friend's hooked screwed teed temporary another "
                "workshop checked verified confirmed"
            ),
            unless=_set(
                "has have had got own standard factory original stock fitted-with dash old"
            ),
        ),
    ),
    "earlier_breakage": (
        # "the fan belt snapped"
        Otherwise(
            said=_set("belt"),
            beside=_set(
                "fan alternator drive serpentine aux auxiliary accessory dynamo generator water v-belt vee "
                "polyvee steering aircon"
            ),
            unless=_set("timing cam cambelt"),
        ),
    ),
    "freshly_rebuilt": (
        # "a new o-ring on the pickup fixed the slow build"
        Otherwise(said=_set("slow")),
        # "it has been rebuilt twice already"
        Otherwise(
            beside=_set("already twice thrice times once previously"),
            unless=_set("just fresh freshly new newly recent recently last today yesterday first"),
        ),
    ),
    "high_mileage": (
        # "two hundred hours of labour", "once the engine wore in"
        Otherwise(beside=_set("labour labor bill work workshop welding")),
        Otherwise(said=_set("wore wears wearing"), then=_set("in")),
    ),
    "-high_mileage": (
        Otherwise(said=_set("new"), beside=_CONSUMABLES),
        # "oil is due, 14000 miles on it": so old is the oil
        Otherwise(
            anywhere=_set("oil"),
            also=_set("due black dark old change changed overdue"),
            unless=_set("engine motor clock odometer car truck van boat bike tractor from"),
        ),
        # "drove it several thousand miles like that"
        Otherwise(
            said=_set("few couple several two three"),
            beside=_set("drove driven drive driving run ran running went gone travelled traveled"),
            unless=_set("only just new clock odometer since from total done"),
        ),
    ),
    "history_unknown": (
        # "picking this up again after 5 weeks"
        Otherwise(
            said=_set("picking pick picked"),
            beside=_set("again thread project where"),
            unless=_set("bought auction seller sale dealer purchased"),
        ),
        # "bought the cheap one" of a filter
        Otherwise(
            said=_set("bought buy got purchased"),
            beside=_set("cheap filter oil part parts sender gauge kit gasket"),
            unless=_MACHINES | _set("it her him"),
        ),
    ),
    "hot_and_thin": (
        # "the oil hole is 90 deg out"
        Otherwise(
            said=_set("out round around off"),
            anywhere=_set("hole holes rotated turned bearing timing keyway"),
            unless=_set("weather outside day sun heat climate"),
        ),
        # "a hot day"
        Otherwise(said=_DAY, unless=_set("thin thinner thins watery runny water-like")),
        Otherwise(said=frozenset(["even"])),  # "stays at 85 hot even at idle"
    ),
    "idles_long": (
        # "dry each time between two short runs"
        Otherwise(beside=_set("between")),
        # "took it for a short drive"
        Otherwise(
            said=_set("short little small quick brief"),
            beside=_ONCE_DRIVEN,
            unless=_set(
                "only mostly mainly always never usually every trips journeys runs drives hops"
            ),
        ),
    ),
    "in_a_boat": (
        # "I gave the wire a tug"
        Otherwise(said=_set("tug"), beside=_GIVEN),
    ),
    "in_a_vehicle": (
        # "reused the old pickup"
        Otherwise(
            said=_set("pickup"),
            beside=_set(
                "reused re-used kept pressed tube screen strainer mesh sump pan brazed bracket"
            ),
        ),
    ),
    "known_for_model": (
        # "it is prone to rust", "the shop is famous for its paint work"
        Otherwise(beside=_BODY, unless=_set("oil pressure pump bearing bearings engine engines")),
    ),
    "maker_calls_it_normal": (
        # "a mechanic says it is fine" is not the maker
        Otherwise(
            beside=_set(
                "mechanic mate friend neighbour neighbor brother dad father uncle buddy bloke"
            ),
            unless=_set(
                "dealer dealership maker manufacturer factory book manual handbook agent dealer's garage "
                "normal usual all main"
            ),
        ),
    ),
    "raced_or_heeled": (
        # "used 10w60 racing oil"
        Otherwise(
            said=_set("racing race"),
            then=_set(
                "oil oils pump pumps cam camshaft filter bearings rods pistons engine spec grade"
            ),
            unless=_set("raced circuit track races lap laps cornering corners heeled"),
        ),
        # "the last session with the welder", "the first stage of the restoration", "in practice"
        Otherwise(
            said=_set("session stage stages meeting meet practice"),
            unless=_ON_THE_TRACK,
        ),
    ),
    "several_alike": (
        # "three gauges, all reading the same"
        Otherwise(
            beside=_set("gauge gauges gages sender senders reading readings"),
            unless=_set("engines boats cars trucks tractors owners others forum"),
        ),
    ),
    "stood_in_frost": (
        # "starts first go in the coldest of weathers"
        Otherwise(
            said=_set("coldest"),
            beside=_set("starts start started even always every any runs fires"),
            unless=_set("left parked stood overnight frozen ice frost"),
        ),
        # "the pump keeps freezing up" is a pump that jams
        _JAMS,
    ),
    "stood_long": (
        # "15 psi at idle for ten years"
        Otherwise(
            said=_set("idle"),
            beside=_set("pressure psi gauge hot warm rpm bar lbs pounds kpa revs needle reading"),
        ),
        # "it sat a month" is no long rest
        Otherwise(
            said=frozenset(["a month", "one month", "1 month"]),
            unless=_set("winter years year over than"),
        ),
    ),
    "sump_or_pump_swapped": (
        Otherwise(
            said=_set("new"),
            beside=_set("pump"),
            unless=_set(
                "different another wrong aftermarket pickup sump pan deeper shallower bigger swapped used other"
            ),
        ),
        # "wrong stick from another sump"
        Otherwise(said=_set("stick dipstick")),
    ),
    "worked_hard": (
        # "we worked hard on it all winter", "it was hard work getting it off"
        Otherwise(
            said=_set("worked"), beside=_set("we i he they you"), unless=_set("engine motor")
        ),
        Otherwise(
            said=_set("work"),
            then=_set("getting to finding removing taking fitting pulling with on"),
        ),
        # "a mile after pulling onto the highway"
        Otherwise(said=_set("pulling"), then=_set("onto into off away over")),
    ),
}
