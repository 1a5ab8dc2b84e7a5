"""Words beside a finding of what gauge and lamp show by which it is something else, or no trouble."""

from __future__ import annotations

from knowledge.lexicon.meant.otherwise import Otherwise
from knowledge.lexicon.words.word_sets import set_of as _set

_LAMPS = _set("light lamp warning buzzer beeping beeper beep alarm horn led siren hooter")
_REV = frozenset(["rev"])
_ALARMS = _set("alarm buzzer horn beeper light lamp siren warning")
_FITTED_WITH = _set("with stock fitted installed plus")
_LAMP_DOES = _set(
    "lit glow glows glowing flash flashes flashing flicker flickers stay stays stayed comes came went goes "
    "when no low bends corners is was showing shows lights on"
)

#: by finding, "-" before it where it was found not to be so; "=" before what gauge or lamp shows
OTHERWISE: dict[str, tuple[Otherwise, ...]] = {
    "-engine_runs_normally": (
        # "the engine is missing its air filter"
        Otherwise(said=_set("missing"), then=_set("its a the some")),
    ),
    "falls_as_revs_rise": (
        # "the light goes off when I rev it": the pressure comes
        # "rev it to 3000 and hold, pressure climbs to 50 then slowly falls": it falls at one speed
        Otherwise(anywhere=_set("hold holding held"), unless=_set("higher more further rising")),
        Otherwise(
            said=_set("off out away stops"),
            anywhere=_LAMPS,
            unless=_set("needle gauge psi bar drops falls sinks dips fades"),
        ),
    ),
    "fell_suddenly": (
        # "the pressure went up all at once"
        Otherwise(
            beside=_set("up rose risen rises climbed higher"),
            unless=_set("down dropped drops fell falls lost zero nothing gone packed gave"),
        ),
    ),
    "=lamp": (
        # "the dash buzzer goes off in reverse"
        # "the survey says check it"
        Otherwise(said=_set("check"), then=_set("it them that this")),
        Otherwise(
            said=_set("buzzer alarm horn beeper beep beeping siren buzz chime"),
            beside=_set(
                "reverse reversing seatbelt belt door doors handbrake parking trailer tailgate bonnet"
            ),
            unless=_set("oil pressure engine"),
        ),
        # "a sender with a red light in the dash"
        Otherwise(then=_set("in on the my"), beside=_FITTED_WITH, unless=_LAMP_DOES),
    ),
    # "the gauge goes up normal"
    "=lost": (
        Otherwise(
            said=_set("goes went"),
            then=_set("up to back right straight from normal fine well past over round good"),
            unless=_set("zero nothing nil none dead"),
        ),
    ),
    "=lost power": (
        # "can't rev over 2000 or the alarm goes off"
        Otherwise(said=_REV, then=_set("the or without because , -") | _ALARMS, anywhere=_ALARMS),
        Otherwise(
            said=_REV,
            then=frozenset(["it"]),
            beside=_set("or without because"),
            anywhere=_ALARMS,
        ),
    ),
    # "a low-pressure pump to the troughs" is how it is built
    "=low": (
        Otherwise(
            said=_set("low"),
            then=_set("pump pumps splash feed trough troughs dip system lubrication oiling"),
            anywhere=_set("splash trough troughs dipper dippers old vintage side-valve"),
        ),
    ),
    "=normal": (
        # "the pressure rises when the clutch goes in"
        Otherwise(
            said=_set("rises rise rose climbs climb climbed increases comes up jumps goes"),
            beside=_set("clutch declutch declutching"),
        ),
    ),
    "rises_just_off_idle": (
        # "runs at 1500, the alarm stopped it"
        Otherwise(said=_set("stopped"), beside=_set("alarm shutdown")),
        Otherwise(said=_set("let back"), unless=_set("touch blip tickle")),  # "when I let off"
    ),
    "=slow to build": (
        Otherwise(
            said=_set("without"),
            beside=_set("ran run runs running drove driven"),
            unless=_set("pressure start starting startup started first"),
        ),
        Otherwise(said=_set("before"), beside=_set("noticed saw looked realised realized spotted")),
    ),
    "ten_seconds_or_more": (
        # "five minutes before I saw that the gauge was at zero"
        Otherwise(said=_set("before"), beside=_set("noticed saw looked realised realized spotted")),
    ),
}
