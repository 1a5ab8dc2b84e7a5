"""Words beside a finding of sender, wiring and line by which it is something else, or no trouble."""

from __future__ import annotations

from knowledge.lexicon.meant.otherwise import Otherwise
from knowledge.lexicon.words.word_sets import set_of as _set

_IGNITION = _set("coil spark plug plugs battery starter alternator distributor dizzy ht charger")
_OF_THE_SENDER = _set("sender sensor gauge switch oil lamp light unit")
_WATCHED = _set(
    "needle gauge reading jumps jump flickers flicker flickered changes change makes made moves goes "
    "came comes out lit flashes"
)
_CHAFED = _set("metal block bracket body rubbed chafed bare copper")

#: by finding, "-" before it where it was found not to be so; "=" before what gauge or lamp shows
OTHERWISE: dict[str, tuple[Otherwise, ...]] = {
    "gauge_dead_on_known_signal": (
        # "gauge dead 0" is what it shows
        Otherwise(
            said=frozenset(["dead"]),
            beside=_set("0 zero nothing"),
            unless=_set("signal known resistor resistance pot terminals terminal bench tested"),
        ),
    ),
    "ground_strap_bad": (
        # "the earth of the instrument panel is loose"
        Otherwise(
            beside=_set("panel dash dashboard cluster instrument instruments"),
            unless=_set("engine block strap motor"),
        ),
    ),
    "-ground_strap_bad": (
        # "cleaning the earth on the block cured it"
        Otherwise(said=_set("cleaning cleaned remaking refitting")),
    ),
    "sender_connector_loose": (
        # "the plugs were oily", "loose plug in the boot floor"
        Otherwise(
            said=_set("plugs"), unless=_set("sender sensor wire wires wiring connector gauge loom")
        ),
        Otherwise(
            said=_set("plug"),
            beside=_set("spark boot floor filler core rubber number cylinder"),
            unless=_OF_THE_SENDER,
        ),
    ),
    "sender_leaks_oil": (
        Otherwise(
            said=_set("plugs plug"),
            beside=_set("spark number cylinder plugs"),
            unless=_set("sender sensor wire wires wiring connector gauge loom switch"),
        ),
    ),
    "sender_wire_off": (Otherwise(beside=_IGNITION, unless=_OF_THE_SENDER),),
    "wiggle_moves_needle": (
        # "I moved the wires to the oil light": nobody watched the needle
        Otherwise(said=_set("moved moving shifted rerouted"), unless=_WATCHED),
        # "the wire was rubbed through, touching metal"
        Otherwise(said=_set("touching touches touched"), anywhere=_CHAFED, unless=_WATCHED),
    ),
}
