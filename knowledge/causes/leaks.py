"""Root causes at the leaks station."""

from knowledge.sources import HB07
from knowledge.vocabulary import Cause, Rate, Station

# tier C, layouts A, source column: HB-07 r1, HB-03 r3, TMK class III
EXTERNAL_LEAK_MAJOR = Cause(
    "external_leak_major",
    Station.LEAKS,
    "filter seal, line, cooler, sender, seal or pan leak big enough to lose oil",
    "level falls, then as oil-level-low; gusher: sudden fall",
    Rate.COMMON,
    "+ + ++ 0 0",
    "stop; repair",
    HB07,
    follows="fire, seizure",
)
