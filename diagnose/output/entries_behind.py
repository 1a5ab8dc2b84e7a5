"""The entries of a case that a contradiction rests on; imported by the reports."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.diagnosis import Diagnosis
from diagnose.inference.chaining import Trace
from knowledge.model import Finding, Measure
from knowledge.rule_api import Contradiction


def rests_on(answer: Diagnosis, contradiction: Contradiction) -> dict[int, str]:
    """What each entry behind it says, by the entry's number: ``pump_noise=no``, ``8 psi``."""
    return dict(sorted(_entries(answer, contradiction)))


def _entries(answer: Diagnosis, contradiction: Contradiction) -> Iterator[tuple[int, str]]:
    case = answer.case
    findings, measures, read = _behind(answer, contradiction)
    for seen in case.sightings:
        if seen.finding in findings and seen.observation is not None:
            said = "yes" if seen.entry.state == "present" else "no"
            yield seen.entry.no, f"{seen.finding.id}={said}"
    for taken in case.measured:
        if taken.measure in measures:
            yield taken.entry.no, f"{taken.measure.id}={taken.entry.value}"
    for one in case.readings if read else ():
        entry = one.entry
        yield entry.no, " ".join(filter(None, (entry.rpm, entry.oil, entry.pressure)))


def _behind(
    answer: Diagnosis, contradiction: Contradiction
) -> tuple[set[Finding], set[Measure], bool]:
    """The findings, measures and readings it comes from, through whatever was derived on the way."""
    derived = answer.inference.result.derived
    own = answer.inference.result.contradictions.get(contradiction)
    waiting: list[Finding] = [*contradiction.findings, *(own.premises if own else ())]
    traces: list[Trace] = [own] if own else []
    findings: set[Finding] = set()
    while waiting:
        finding = waiting.pop()
        if finding in findings:
            continue
        findings.add(finding)
        here = [t for d, t in derived.items() if d.finding is finding]
        traces += here
        waiting += [f for t in here for f in t.premises]
    measures = {m for t in traces for m in t.measures}
    return findings, measures, any(t.read for t in traces)
