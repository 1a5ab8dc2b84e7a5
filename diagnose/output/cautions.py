"""Which cautions concern an engine, and their wording; imported by the reports that show steps."""

from __future__ import annotations

from collections.abc import Iterable

from diagnose.diagnosis import Diagnosis
from knowledge.cautions import CAUTIONS
from knowledge.engines.features import DIESEL
from knowledge.model import State
from knowledge.work import Caution


def concerns(kind: Caution, answer: Diagnosis) -> bool:
    """Boats, tractors and injection are warned of where they may be meant."""
    layout = answer.case.layout.id
    known = layout != "unknown"
    if kind is Caution.BOAT:
        return not known or layout.startswith("marine")
    if kind is Caution.TRACTOR:
        return not known or "tractor" in layout
    if kind is Caution.INJECTION:
        return answer.case.features.get(DIESEL) is not State.ABSENT
    return True


def cautions(kinds: Iterable[Caution], answer: Diagnosis) -> list[str]:
    """The wording of each caution once, of those this engine may need."""
    return [CAUTIONS[k][0] for k in dict.fromkeys(kinds) if concerns(k, answer)]
