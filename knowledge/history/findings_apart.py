"""What the engine is like now, as far as work on it goes."""

from knowledge.history.findings import history
from knowledge.sources import COMMON_PRACTICE

ENGINE_APART = history(
    id="engine_apart",
    says="the engine is out on a stand, or apart",
    asks="Is the engine out on a stand, or apart?",
    source=COMMON_PRACTICE,
    also=("engine out", "engine stripped", "engine on the bench", "bottom end apart"),
)
