"""When a finding is not what its words seem to say: the cases of every subject, put together."""

from __future__ import annotations

from knowledge.lexicon.meant import (
    of_bearings,
    of_debris,
    of_filter_and_galleries,
    of_gauge,
    of_history,
    of_leaks,
    of_level,
    of_oil,
    of_pump,
    of_sender_and_wiring,
    of_top_end,
    of_what_shows,
)
from knowledge.lexicon.meant.otherwise import Otherwise

#: by finding, "-" before it where it was found not to be so; "=" before what gauge or lamp shows
OTHERWISE: dict[str, tuple[Otherwise, ...]] = {
    **of_bearings.OTHERWISE,
    **of_debris.OTHERWISE,
    **of_filter_and_galleries.OTHERWISE,
    **of_gauge.OTHERWISE,
    **of_history.OTHERWISE,
    **of_leaks.OTHERWISE,
    **of_level.OTHERWISE,
    **of_oil.OTHERWISE,
    **of_pump.OTHERWISE,
    **of_sender_and_wiring.OTHERWISE,
    **of_top_end.OTHERWISE,
    **of_what_shows.OTHERWISE,
}
