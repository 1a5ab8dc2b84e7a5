"""Further words for the state a part is in; see ``states``."""

from __future__ import annotations

from knowledge.lexicon.states import State

_NOT = "not|wasnt|isnt|werent|hadnt|hasnt|never"
STATES_MORE: dict[State, tuple[str, ...]] = {
    State.LOOSE: (
        f"{_NOT} been? pushed|pressed|driven|tapped|knocked|pulled all|right|fully|quite? the? way? in|home|up|on",
        f"{_NOT} been? fully|properly|quite|right home|engaged|pushed|pressed|seated in|home?",
    ),
    State.FINE: (
        "flat|true|smooth ,? and|with? no|not|without any? scratches|scratched|scoring|scored|marks|marked|grooves|grooved|wear",
    ),
}
