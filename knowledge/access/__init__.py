"""The tree of access: what must be open before what, how long it takes, what it spoils.

Imported by planning and output. Minutes are for a practised person with space to work.
"""

from collections.abc import Mapping
from types import MappingProxyType

from knowledge.access.openings import OPENINGS, Opening
from knowledge.access.switches import openings_for

#: what the minutes are multiplied by for the person who does the work (common practice)
EXPERIENCE: Mapping[str, float] = MappingProxyType({"practised": 1.0, "first_time": 1.5})
#: and by this in a crowded engine bay or bilge (common practice)
CROWDED = 2.0

__all__ = ["CROWDED", "EXPERIENCE", "OPENINGS", "Opening", "openings_for"]
