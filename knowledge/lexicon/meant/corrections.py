"""Words that take back what was said before."""

#: say so by themselves
CORRECTIONS = (
    "i|we|he|she read|measured|looked|checked|answered|said|typed|wrote|ticked|picked|chose|put|got|had the|a|it|that|this? stick|dipstick|level|gauge|answer|question|one? =wrong|=wrongly|=incorrectly",
    "misread|misspoke|mistyped|mis-read|mis-typed",
    "my|our|by mistake|error",
    "was|were|been mistaken|=wrong about|before|earlier|there|then?",
    "i|we|that|it was|were =wrong",
    "=correction",
    "not what|as i|we said|answered|wrote|typed",
    "=wrong answer",
    "scratch|strike|forget that|this|it",
    "take that|this|it back",
)
#: beside them these say nothing more
FILLERS = frozenset(
    [
        "its",
        "it's",
        "it",
        "is",
        "was",
        "right",
        "really",
        "actually",
        "in",
        "fact",
        "and",
        "but",
        "so",
        "sorry",
        "no",
        "i",
    ]
)
#: behind a figure and "was": it is taken back
WAS = frozenset(["was", "is", "were", "are", "turned"])
BESIDE_WRONG = frozenset(
    ["a", "my", "just", "simply", "all", "plain", "completely", "totally", "out"]
)
WRONG = frozenset(
    [
        "wrong",
        "wrongly",
        "incorrect",
        "mistaken",
        "misread",
        "mistyped",
        "typo",
        "mistake",
        "error",
        "rubbish",
        "nonsense",
        "false",
        "slip",
        "untrue",
    ]
)
#: before a figure: it is taken back
STRUCK = frozenset(
    ["ignore", "forget", "scratch", "strike", "delete", "remove", "withdraw", "disregard", "cancel"]
)
#: how the words of a noise begin
SOUNDS = (
    *("knock", "nois", "rattl", "tick", "tap", "whin", "clatter", "squeal", "rumbl", "thump"),
    *("thud", "click", "grind", "scream", "clunk", "howl", "sound", "bang", "squeak", "chirp"),
)
#: behind "the knock was": it came from no part of the engine
OTHER_NOISE_MAKERS = frozenset(
    [
        "compressor",
        "alternator",
        "exhaust",
        "gearbox",
        "transmission",
        "clutch",
        "starter",
        "fan",
        "door",
        "trailer",
        "wheel",
        "suspension",
        "propshaft",
        "driveshaft",
        "water pump",
        "fuel pump",
        "vacuum pump",
        "steering pump",
        "heat shield",
        "engine mount",
        "fan belt",
    ]
)
NOT_THE_ENGINE = frozenset(["not the engine", "not the motor", "not my engine", "not this engine"])
