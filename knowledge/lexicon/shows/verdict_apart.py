"""Words of a verdict that stands apart from the pressure it is of: "pressure at idle is low"."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set
from knowledge.reports.words import Shows

#: what shows the pressure
SHOWN = _set("pressure gauge needle psi reading readings")
#: straight before it: another
OTHER_PRESSURES = _set(
    "fuel water coolant boost air tyre tire brake vacuum turbo manifold compression temp temperature petrol gas "
    "diesel rail line crankcase steering hydraulic transmission gearbox"
)
#: beside the words for when
BEFORE_WHEN = _set(
    "at on in when while with under during after once if the a engine motor its it is my normal just about around "
    "and or even only running"
)
#: between the words for when and the verdict
IS_SO = _set(
    "is was are were gets got seems seemed looks looked reads read stays stayed sits sat remains remained runs ran "
    "goes went feels"
)
BEFORE_VERDICT = _set(
    "very too a bit little quite really rather extremely dangerously still so way always just also pretty somewhat "
    "slightly much fairly consistently alarmingly awfully only all the down to at close near almost nearly absolutely "
    "perfectly usually generally worryingly terribly far"
)
#: the same verdict on something else: "low on oil"
NO_VERDICT_BEHIND = _set("on enough as than to compared")
_LOW = "low lower poor weak bad terrible marginal rubbish pathetic awful lousy dire"
_NONE = "zero nothing nil 0 nonexistent non-existent"
_FINE = "good fine normal ok okay excellent perfect great healthy alright"
VERDICTS: dict[str, Shows] = {
    **dict.fromkeys(_set(_LOW), Shows.LOW),
    **dict.fromkeys(_set(_NONE), Shows.NONE),
    **dict.fromkeys(_set(_FINE), Shows.NORMAL),
}
