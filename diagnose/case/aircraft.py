"""Whether a person's words point to an aircraft engine, for which nothing may be advised.

Used by the loading of cases. A case that says ``aircraft = false`` is never asked.
"""

from __future__ import annotations

import re

#: a hydroplane is a boat, and so is what comes up on the plane; makers of light aircraft and of
#: their engines are named as people type nothing else: "my cessna"
_AIRCRAFT = re.compile(
    r"""\b(
        aircraft (?!\ carrier)
      | (aero|air|sea|float|bi|tri|mono|sail|gyro)[- ]?planes?
      | (light|war|spray)[ ]?planes? | planes?['’]s?\b | (my|his|her|our|their)\ planes?
      | (motor[- ]?)?gliders? | helicopters? | rotorcraft | auto[- ]?g[iy]ros? | gyrocopters?
      | aero[- ]?engines? | airships? | microlights? | ultra-?lights? | (para|tri)motors?
      | crop[- ]?dusters? | pre-?flight | flying\ (club|school)
      | take-?off\ (roll|run|power) | climb-?out
      | (aeio|hio|lio|lo|tsio|tio|gtsio|io|o)-(200|2[0-9]{2}|3[0-9]{2}|470|5[0-9]{2}|720)
      | cessnas? | beechcraft | lycomings?
    )(?!\w)""",
    re.IGNORECASE | re.VERBOSE,
)


def speaks_of_aircraft(text: str) -> bool:
    """Whether the words point to an engine in an aircraft.

    >>> speaks_of_aircraft("my plane's oil pressure drops to 40")
    True
    >>> speaks_of_aircraft("low once the boat is on the plane")
    False
    """
    return bool(_AIRCRAFT.search(text))
