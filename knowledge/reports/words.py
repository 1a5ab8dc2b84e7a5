"""Closed lists of words for what people report; the words are those of a case file.

They import nothing of ours.
"""

from __future__ import annotations

from enum import StrEnum


class Speed(StrEnum):
    """Engine speed in words."""

    CRANKING = "cranking"
    IDLE = "idle"
    FAST_IDLE = "fast idle"
    OFF_IDLE = "off idle"  #: a touch of throttle
    CRUISE = "cruise"
    HALF = "half throttle"
    FULL = "full speed"
    ANY = "any speed"  #: reported of every speed that was tried


class Heat(StrEnum):
    """Oil temperature in words."""

    COLD = "cold"
    WARMING = "warming"
    HOT = "hot"
    VERY_HOT = "very hot"
    ANY = "hot or cold"


class Bound(StrEnum):
    """Whether the pressure is the figure itself or bounds it."""

    EXACT = "exact"
    AT_MOST = "at most"  #: "never above 25"
    AT_LEAST = "at least"  #: "off the top of the scale"


class Shows(StrEnum):
    """What is seen of the pressure, or heard of the engine."""

    LOW = "low"
    NONE = "none"
    HIGH = "high"
    UNSTEADY = "unsteady"  #: the needle wavers, the lamp flickers
    LAMP = "lamp"  #: lamp or alarm on
    SLOW = "slow to build"
    LOST = "lost"  #: was there, is gone; how fast is not said
    FALLING = "falling"  #: sinks while one watches
    NORMAL = "normal"
    TRIPS = "trips"  #: its own protection stops the engine
    KNOCK = "knock"
    TICKING = "ticking"  #: lifters, valve gear
    RATTLE = "rattle"  #: chain, start-up
    WHINE = "whine"
    GRINDING = "grinding"
    SQUEAK = "squeak"
    SMOKE = "smoke"
    LOST_POWER = "lost power"
    ROUGH = "runs rough"
    NO_START = "will not start"  #: it cranks
    ALARM = "alarm"  #: a general alarm that does not say for what


#: less pressure than there should be, by gauge or lamp
LOSSES = frozenset({Shows.LOW, Shows.NONE, Shows.LAMP, Shows.LOST, Shows.FALLING})
NOISES = frozenset(
    {Shows.KNOCK, Shows.TICKING, Shows.RATTLE, Shows.WHINE, Shows.GRINDING, Shows.SQUEAK}
)
#: shown by the engine, not by an instrument; the course of the trouble is not theirs
SHOWN_BY_THE_ENGINE = NOISES | {
    Shows.SMOKE,
    Shows.ROUGH,
    Shows.LOST_POWER,
    Shows.NO_START,
    Shows.ALARM,
}


class Circumstance(StrEnum):
    """When, or while what, it shows."""

    START = "at start"
    IDLE = "idle"
    OFF_IDLE = "off idle"
    SPEED = "at speed"
    SLOWING = "slowing to idle"
    COLD = "cold"
    WARMING = "warming up"
    HOT = "hot"
    MINUTES = "after minutes of running"
    LATE = "late in a run"
    HARD_RUN = "after a hard run"
    BENDS = "bends"
    BRAKING = "braking"
    ACCELERATING = "accelerating"
    SLOPE = "slopes"
    SEAWAY = "seaway"  #: pitching, rolling, heeling
    ROUGH_ROAD = "bumps"
    LOAD = "load"
    ELECTRICAL = "electrical load"  #: lamps, wipers, indicators
    WET = "wet"
    STANDING = "after standing"
    AFTER_REST = "after a short rest"
    LOW_LEVEL = "low oil level"
    CLUTCH = "clutch pressed"
    TOUCHED = "wiring touched"  #: lead moved, sender tapped
    RANDOM = "no pattern"


class Onset(StrEnum):
    """How fast it came."""

    SUDDEN = "sudden"
    GRADUAL = "gradual"


class Course(StrEnum):
    """How it went on."""

    CONSTANT = "constant"
    COMES_AND_GOES = "comes and goes"
    RECOVERED = "recovered by itself"
    RETURNS = "returns under the same condition"
    WORSENING = "worsening"
    SPREADING = "at first only hot, later anywhere"
    ONCE = "once"
    UNCHANGED = "unchanged for years"
    NOT_REPRODUCED = "cannot be reproduced"


class Since(StrEnum):
    """Since when."""

    FIRST_START = "first start"  #: of a build, an engine new to the owner, a swap
    WORK = "work"  #: name the work as [[earlier]]
    OIL_CHANGE = "oil change"
    DATE = "a date"  #: began on a day nothing was done
    STANDING = "standing"  #: weeks or more out of use
    OVERHEATING = "overheating"
    BLOW = "a blow to the sump"
    REVVING = "revving hard"
    GRADE = "oil grade change"  #: and nothing else changed
    NEXT_START = "the next start"  #: there when stopped, not at the next start
    FROST = "frost"
    ALWAYS = "always"


class Result(StrEnum):
    """What a trial did."""

    CURED = "cured"
    HELPED = "helped"
    FOR_A_WHILE = "cured for a while"
    NO_DIFFERENCE = "no difference"
    WORSE = "worse"


class Done(StrEnum):
    """What kind of work was done at a place."""

    RENEWED = "renewed"
    REBUILT = "rebuilt"
    CLEANED = "cleaned"
    ADJUSTED = "adjusted"
    REFITTED = "taken off and refitted"
    OPENED = "opened"
    LEFT_OUT = "left out"


class Hands(StrEnum):
    """Who did it."""

    OWNER = "owner"
    SHOP = "workshop"
    MACHINE_SHOP = "machine shop"
    EARLIER_OWNER = "earlier owner"
