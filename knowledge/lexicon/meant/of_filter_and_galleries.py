"""Words beside a finding of filter, galleries and plugs by which it is something else, or no trouble."""

from __future__ import annotations

from knowledge.lexicon.meant.otherwise import Otherwise
from knowledge.lexicon.words.word_sets import set_of as _set

_FLUIDS = _set(
    "fuel petrol gas gasoline diesel water coolant antifreeze ethanol paraffin screenwash adblue"
)
_OF_OIL = _set("oil oils oily dipstick stick sump pan")
#: another fluid drips, runs out or is topped up
_ANOTHER_FLUID = Otherwise(beside=_FLUIDS, unless=_OF_OIL)
_WEEPS = _set(
    "weeping weeps weep wept seeping seeps seep damp drip drips dripping dribble dribbles sweats sweating"
)
_GONE = _set(
    "loose loosened gone missing out open fell fallen dropped blown blew popped pushed stripped undone "
    "off lost finger-tight finger unscrewed absent spat"
)
_FOULED = _set(
    "foul fouls fouled fouling sooty soot wet gap gapped gapping electrode electrodes spark sparks "
    "sparking misfire misfires misfiring glow ht lead leads"
)
_SPARK_PLUG = Otherwise(
    beside=_FOULED, unless=_set("gallery oilway galley blanking cup welsh core block hole thread")
)
_ALL_OVER = Otherwise(said=_set("over round around"))
#: "filter head gasket"
_SEAL_OF_THE_HEAD = Otherwise(
    said=_set("head"), beside=_set("gasket seal o-ring"), unless=_set("element can")
)

#: by finding, "-" before it where it was found not to be so; "=" before what gauge or lamp shows
OTHERWISE: dict[str, tuple[Otherwise, ...]] = {
    "all_plugs_accounted_for": (
        # "oil all over the plug on the switch"
        _ALL_OVER,
    ),
    "cooler_found_blocked": (
        # "the turbo drain hose kinked", "blocked off the oil cooler to try"
        Otherwise(said=_set("off")),
        Otherwise(
            beside=_set(
                "turbo turbocharger drain breather vacuum heater fuel brake water coolant radiator "
                "washer pcv intercooler boost"
            ),
            unless=_set("cooler coolers"),
        ),
    ),
    "filter_burst": (
        # "the gasket between filter head and block is split"
        _SEAL_OF_THE_HEAD,
    ),
    "filter_bypass_stuck_open": (
        # "the heater bypass" is read apart; "the bypass valve closes properly"
        Otherwise(
            said=_set("closes shuts seats closed"), unless=_set("not never wont doesnt stuck")
        ),
    ),
    "-filter_collapsed": (
        # "in june the filter and oil, ok few weeks then"
        Otherwise(then=_set("few for till until weeks some")),
    ),
    "filter_misfitted": (
        # how a filter hangs: "screw-on filter hanging upside down"
        Otherwise(
            said=_set("upside wrong"),
            beside=_set("hanging hangs hung mounted sits sitting up screw spin-on"),
            unless=_set("gasket element cartridge seal stem spring"),
        ),
        # "the old filter had a rubber flap"
        Otherwise(said=frozenset(["rubber"]), anywhere=_set("flap membrane diaphragm valve")),
    ),
    "filter_not_listed": (
        # "the filter spanner is too small"
        Otherwise(anywhere=_set("spanner wrench"), unless=_set("oil")),
    ),
    "-filter_packed": (Otherwise(then=_set("few for till until weeks some")),),
    "filter_packed": (
        # "filter full of copper flakes"
        Otherwise(then=_set("copper brass bronze metal metallic bearing flakes glitter swarf")),
    ),
    "-filter_seat_leaks": (
        # "new filter dry, did not prefill"
        Otherwise(
            said=frozenset(["dry"]), anywhere=_set("prefill prefilled fill filled prime primed")
        ),
        # "put the new filter on dry"
        Otherwise(
            said=frozenset(["dry"]),
            beside=_set("new put fitted screwed installed fit"),
            unless=_set("seat joint gasket leak leaks wiped bone now"),
        ),
    ),
    "filter_seat_leaks": (
        # "new filter and poured in seven quarts"
        Otherwise(
            said=_set("poured pouring pour"),
            then=_set("in into oil fresh new some"),
            unless=_set("out from everywhere onto over off down floor block gasket seal"),
        ),
        _SEAL_OF_THE_HEAD,
        _ANOTHER_FLUID,
    ),
    "gallery_found_blocked": (
        # "the cam bearing turned, its oil hole half covered"
        Otherwise(said=_set("covered covers half"), beside=_set("cam camshaft bush bushing")),
        # "the oil band came out of the bore and dumped the gallery"
        Otherwise(said=_set("dumped dumps dumping")),
    ),
    "gallery_plug_found_missing": (
        Otherwise(beside=_WEEPS, unless=_GONE),
        # "can't remember putting the gallery plugs back"
        Otherwise(said=_set("remember recall")),
        Otherwise(said=frozenset(["no"]), anywhere=_set("checked counted remembered remember")),
        # "the gallery plugs were out for cleaning"
        Otherwise(said=_set("out off"), then=_set("for to while when at")),
        # "number 2 plug fouls"
        _SPARK_PLUG,
    ),
    "-gallery_plug_found_missing": (
        _SPARK_PLUG,
        _ALL_OVER,
    ),
}
