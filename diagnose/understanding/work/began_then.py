"""Trouble that began with work: "had the head off in spring and it's been low since", "light on from then"."""

from __future__ import annotations

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.sentences.stance import UNTRUE
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.jobs import Job
from diagnose.understanding.work.results_said import results_of
from knowledge.lexicon.words.word_sets import set_of as _set
from knowledge.lexicon.work.beside_results import BETTER, SAYS_STILL
from knowledge.reports.words import Result

#: the area of earlier work that a trial is which names none
_AREA_OF = {
    "topped_up": "oil_added",
    "overfilled": "oil_added",
    "crank_reground": "bearings",
    "line_bored": "machine_shop",
    "pump_drive_renewed": "pump_drive",
    "distributor_refitted": "pump_drive",
    "gallery_plugs_fitted": "machine_shop",
    "filter_tightened": "filter_change",
    "fuel_leak_mended": "fuel_system",
    "piston_jets_renewed": "pistons",
    "gauge_port_changed": "instrument",
    "sump_baffled": "sump",
    "new_turbo": "turbo",
    "wiring_repaired": "instrument",
    "connector_refitted": "instrument",
    "ground_wire_added": "instrument",
}
_FROM_THEN = (("from", "then"), ("from", "that"), ("from", "there"), ("since", "then"))
_WRONG = _set(
    "low lower down light lamp warning alarm buzzer pressure flicker flickers flickering gauge needle drops dropped dropping "
    "dips wavers wavering rattles rattle rattled knocks knock jumps jumping zero bad poor wanders starves slow psi red weak "
    "beeps unsteady erratic sags"
)
_WELL = _set("fine good ok okay great perfect well right normal happy better trouble-free lovely")
_NEXT = _set("next later afternoon evening")
_LIT = _set("on came comes")


def area_of(job: Job, begun: bool) -> str | None:
    """The area of earlier work; that of a trial only where the trouble began with it, or it is dated."""
    return job.area or (_AREA_OF.get(job.trial or "") if begun else None)


def since_behind(job: Job) -> Mark[object] | None:
    """The "since" or "from then" behind work where a trouble is there since; None where unsaid."""
    line = job.line
    behind = range(job.last, len(line.tokens))
    at = next((k for k in behind if _leads_back(line, k)), None)
    if at is None or line.stances.of[at] & UNTRUE:
        return None
    words = line.words(job.last, len(line.tokens))
    well = any(r.value in BETTER and r.first >= job.last for r in results_of(line))
    if well or words & _WELL or not words & _WRONG:
        return None
    return Mark(True, at, at + 1)


def _leads_back(line: Line, at: int) -> bool:
    """Whether a word says "since this": at the end, before a mark, or "from then"."""
    if (line.word(at), line.word(at + 1)) in _FROM_THEN:
        return True
    ends = at + 1 >= len(line.tokens) or line.tokens[at + 1].is_mark
    return ends and line.word(at) in ("since", "after", "afterwards", "thereafter")


def lit_since(job: Job, result: Mark[Result]) -> bool:
    """Whether a lamp is on since dated work: "changed the oil yesterday now the light is on"."""
    said = job.line.words(result.first, result.last)
    lit = result.value is Result.NO_DIFFERENCE or job.line.word(result.first) == "then"
    if not lit or not said & _LIT or said & SAYS_STILL:
        return False
    behind = job.line.words(result.last, len(job.line.tokens))
    before, _ = job.before()
    dated = (bool(before) or bool(behind & _NEXT)) and not behind & {
        "again",
        "same",
        "still",
        "soon",
        "anyway",
    }
    after = job.line.word(len(job.line.tokens) - 1) == "after"
    return (dated or after) and not job.tried
