"""The cautions that concern an engine, and what takes precedence over every plan, in words."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from diagnose.diagnosis import Diagnosis
from knowledge.applying import applies
from knowledge.cautions import CAUTIONS, DEFERS_TO, Wording
from knowledge.work import Caution


def cautions(kinds: Iterable[Caution], answer: Diagnosis) -> list[str]:
    """Return each sentence of these cautions once, of those that may concern this engine."""
    return list(dict.fromkeys(w.says for w in _wordings(kinds, answer)))


def short_cautions(kinds: Iterable[Caution], answer: Diagnosis) -> list[str]:
    """Return the same in a few words each, for a screen whose full text has the sentences."""
    return list(dict.fromkeys(w.short for w in _wordings(kinds, answer)))


def _wordings(kinds: Iterable[Caution], answer: Diagnosis) -> Iterator[Wording]:
    state = answer.case.known_features.get
    return (w for kind in kinds for w in CAUTIONS[kind] if applies(w, state))


def deferrals() -> tuple[str, ...]:
    """Return what takes precedence over a plan, sign-off or report."""
    return tuple(d.says for d in DEFERS_TO)
