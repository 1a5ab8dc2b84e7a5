"""The marks for what has no passage behind it, and the books and standards of the physics."""

from functools import cache

from knowledge.model import Source


@cache
def idea_from(source: Source) -> Source:
    """Return the mark of a statement of which a source gives a part, and the rest is judgement."""
    return Source(f"{source.key}*", f"judgement, the idea from: {source.title}", "in part")


COMMON_PRACTICE = Source(
    "CP", "common practice, no source: widely taught in the trade, no passage read", "practice"
)
JUDGEMENT = Source("J", "judgement of the book's makers, no source", "judgement")
FROM_MEMORY = Source("M", "from memory, not re-read", "memory")
PHYSICS = Source(
    "PHY",
    "the lubrication circuit's equations (pump, laminar and orifice leaks, relief valve), after "
    "Shigley, Mechanical Engineering Design, ch. 12, and Esposito, Fluid Power",
    "strong",
)
CIRCUIT_MODEL = Source(
    "MOD",
    "share of plausible engines whose gauge shows it, by this book's own circuit model "
    "(a calculation, no measurement)",
    "medium",
)
SAE_J300 = Source(
    "J300",
    "SAE J300, engine oil viscosity classification (2015 figures)",
    "strong, read in a copy",
)
