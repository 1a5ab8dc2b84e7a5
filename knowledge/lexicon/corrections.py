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
