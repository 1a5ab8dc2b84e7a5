"""Further words for the state a part is in; see ``states``."""

from __future__ import annotations

from knowledge.lexicon.things.states import State

#: a part in one of these is as it should be
WELL_STATES = frozenset(
    {State.FINE, State.CLEAN, State.FREE, State.TIGHT, State.TRUE, State.IN_PLACE}
)
_NOT = "not|wasnt|isnt|werent|hadnt|hasnt|never"
STATES_MORE: dict[State, tuple[str, ...]] = {
    State.LOOSE: (
        f"{_NOT} been? pushed|pressed|driven|tapped|knocked|pulled all|right|fully|quite? the? way? in|home|up|on",
        f"{_NOT} been? fully|properly|quite|right home|engaged|pushed|pressed|seated in|home?",
    ),
    State.FINE: (
        "flat|true|smooth ,? and|with? no|not|without any? scratches|scratched|scoring|scored|marks|marked|grooves|grooved|wear",
        "same|equal length|height|as|to? the|a? new one|spring?",
        "closes|opens|seats|shuts|seals =properly|=correctly|=fully|=right|=tight",
    ),
    State.FREE: (
        "turns|moves|slides|rotates =freely|=free|=smoothly",
        "falls|drops|slides under|by|of its own weight",
    ),
    State.CLEAN: ("flows|runs|passes =freely|=free",),
}
