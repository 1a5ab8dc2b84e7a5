"""The wording of the cautions that concern an engine; imported by the reports that show steps."""

from __future__ import annotations

from collections.abc import Iterable

from diagnose.diagnosis import Diagnosis
from knowledge.applying import applies
from knowledge.cautions import CAUTIONS
from knowledge.work import Caution


def cautions(kinds: Iterable[Caution], answer: Diagnosis) -> list[str]:
    """Return each sentence of these cautions once, of those that may concern this engine."""
    state = answer.case.known_features.get
    sentences = (w for kind in kinds for w in CAUTIONS[kind] if applies(w, state))
    return list(dict.fromkeys(w.says for w in sentences))
