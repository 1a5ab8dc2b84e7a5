"""Words that show a repair holds where no pressure is read: each with the task they tick.

Patterns of lower-case text. Words of ``UNPROVED`` say that it does not hold, or not surely.
"""

from knowledge.reassembly import by_lamp, first_start, run_in

_LAMP = r"\b(?:(?:oil |warning |red |pressure )*(?:lamp|light)|it)\b"
_OUT = r"(?:out|off)"
_AT_ONCE = (
    r"(?:straight|right) ?away|at once|immediately|instantly|straight out|as soon as|first turn|"
    r"(?:in|within|after) (?:a|one|two|\d) ?s(?:ec(?:ond)?s?)?"
)
_NIGHT = (
    r"after (?:a|one|the) (?:whole )?night|over ?night|next (?:day|morning)|this morning|"
    r"in the morning|every morning|after standing|cold start"
)
_GOES_OUT = rf"{_LAMP} (?:now )?(?:went|goes|is|was|came|comes)? ?{_OUT}"
_NO_RATTLE = r"\b(?:no|not a|without a?) ?(?:more )?(?:rattles?|clatter|noise)\b|\bquiet\b"

#: all patterns of a task must be found
PROOFS = (
    (by_lamp.LAMP_OUT_TIMED, (_GOES_OUT, _AT_ONCE)),
    (by_lamp.STARTED_AFTER_A_NIGHT, (_NIGHT, rf"{_GOES_OUT}.*(?:{_AT_ONCE})|{_NO_RATTLE}")),
    (
        by_lamp.LAMP_STAYS_OUT_HOT,
        (
            rf"\b(?:stays?|stayed|staying|remains?|keeps?|kept|is|was) {_OUT}\b|no flicker|"
            r"never (?:came|comes) on|not (?:come|came) (?:back )?on",
            r"\b(?:hot|warm|idl\w+|tick ?over|half an hour|\d+ (?:min|minutes|miles|km|hours?)|"
            r"drive|drove|bumps?|humps?)\b",
        ),
    ),
    (
        by_lamp.LAMP_LIT_WITH_KEY,
        (r"\b(?:lit|lights?|comes on|came on|on|glows?) (?:up )?with (?:the )?(?:key|ignition)\b",),
    ),
    (
        by_lamp.STEADY_WHEN_WIRE_MOVES,
        (
            r"\b(?:wiggl\w+|mov\w+|pull\w+|shak\w+|shook) (?:at |about )?(?:the |its |that )?(?:wire|wires|plug|lead|cable)s?\b",
            r"\b(?:no change|nothing (?:happens|changes|happened)|stays? (?:out|off|as it is|steady)|no flicker)\b",
        ),
    ),
    (
        by_lamp.WIRE_LAID_CLEAR,
        (
            r"\b(?:wire|lead|cable)\b",
            r"\b(?:sleeved?|clipped|taped|tied|rerouted|moved clear|new wire|soldered)\b",
        ),
    ),
    (
        by_lamp.FLAP_IN_NEW_FILTER,
        (r"\bnew (?:filter|one)\b", r"\b(?:flap|anti[- ]drain[- ]?back|drain[- ]?back valve)\b"),
    ),
    (
        first_start.NO_LEAK_RUNNING,
        (
            r"\b(?:no|not a|without) (?:more )?(?:leaks?|drips?|drops?|oil under)\b|"
            r"\b(?:not|nothing) (?:leaking|dripping|leaks|drips)\b|\b(?:all )?dry\b",
        ),
    ),
    (
        first_start.NO_KNOCK_HEARD,
        (r"\b(?:no|without) (?:more )?(?:knock|knocks|knocking|rumble)\b",),
    ),
    (
        run_in.LEVEL_AND_LEAKS_AFTER_FIRST_STOP,
        (r"\blevel (?:is |was )?(?:right|ok|good|fine|correct|on the mark|at the full mark)\b",),
    ),
)
UNPROVED = (
    r"\b(?:still|on again|back again|but|almost|nearly|sometimes|unless|until|except|"
    r"(?:did|does|do|has|have|is|was|would|will|wo|ca|could|can)(?:n'?t| not) (?:go|gone|out|going|stay|light|try|tried|check|look))\b"
)
