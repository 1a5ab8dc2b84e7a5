"""Findings that do not fit together, and the entries of the case they rest on."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace

from diagnose.case.gauge_looks import as_given
from diagnose.diagnosis import Diagnosis
from diagnose.inference.chaining import Trace, infer
from diagnose.inference.contradictions import by_derivation
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.documents.reported import reported_sentences
from knowledge.alarm import Contradiction
from knowledge.model import Finding, Measure


@dataclass(frozen=True, kw_only=True)
class ContradictionNotice:
    """Findings that do not fit together, and where to look again."""

    findings: tuple[str, ...]
    says: str
    recheck: str
    entries: tuple[int, ...]  #: numbers of the entries it rests on
    entries_say: tuple[str, ...] = field(metadata=NOT_IN_JSON)
    recheck_asks: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True)
class Behind:
    """What a contradiction comes from, also through derived findings."""

    findings: frozenset[Finding]
    measures: frozenset[Measure]
    readings: bool  #: whether it comes from readings of the gauge
    reported: bool = False  #: whether it comes from what was reported of behaviour


def stated_contradictions(diagnosis: Diagnosis) -> Iterator[Contradiction]:
    """The contradictions that rules state or derive; none by odds."""
    known = diagnosis.inference
    yield from known.result.contradictions
    yield from by_derivation(known.result, known.facts.observations)


def contradiction_notices(diagnosis: Diagnosis) -> tuple[ContradictionNotice, ...]:
    """The contradictions of a case."""
    return tuple(_notice(diagnosis, c) for c in diagnosis.contradictions)


def _notice(diagnosis: Diagnosis, contradiction: Contradiction) -> ContradictionNotice:
    entries = rests_on(diagnosis, contradiction)
    return ContradictionNotice(
        findings=tuple(f.id for f in contradiction.findings),
        says=contradiction.says,
        recheck=contradiction.recheck.id,
        entries=tuple(entries),
        entries_say=tuple(f"{number} ({text})" for number, text in entries.items()),
        recheck_asks=contradiction.recheck.asks,
    )


def rests_on(diagnosis: Diagnosis, contradiction: Contradiction) -> dict[int, str]:
    """The entries a contradiction rests on, by number: ``pump_noise=no``, ``8 psi``."""
    return dict(sorted(_entries(diagnosis, contradiction)))


def _entries(diagnosis: Diagnosis, contradiction: Contradiction) -> Iterator[tuple[int, str]]:
    case = diagnosis.case
    behind = behind_it(diagnosis, contradiction)
    for seen in case.finding_records:
        if seen.finding in behind.findings and seen.observation is not None:
            said = "yes" if seen.entry.state == "present" else "no"
            yield seen.entry.no, f"{seen.finding.id}={said}"
    for taken in case.measurements:
        if taken.measure in behind.measures:
            yield taken.entry.no, f"{taken.measure.id}={taken.entry.value}"
    for one in case.readings if behind.readings else ():
        yield one.entry.no, as_given(one.entry)
    if behind.reported:
        sentences = reported_sentences(case)
        for number in _reports(diagnosis, contradiction):
            yield number, sentences[number]


def _reports(diagnosis: Diagnosis, contradiction: Contradiction) -> Iterator[int]:
    """Entries of behaviour without any one of which the contradiction would not be."""
    case, facts = diagnosis.case, diagnosis.inference.facts
    for place, report in enumerate(case.behaviours):
        others = [b.behaviour for i, b in enumerate(case.behaviours) if i != place]
        after = infer(diagnosis.book.statements, replace(facts, behaviours=others))
        left = {*after.contradictions, *by_derivation(after, facts.observations)}
        if all(c.says != contradiction.says for c in left):
            yield report.entry.no


def behind_it(diagnosis: Diagnosis, contradiction: Contradiction) -> Behind:
    """Return the findings, measures and readings that a contradiction comes from."""
    derived = diagnosis.inference.result.derived
    own = diagnosis.inference.result.contradictions.get(contradiction)
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
    return Behind(
        findings=frozenset(findings),
        measures=frozenset(m for t in traces for m in t.measures),
        readings=any(t.read for t in traces),
        reported=any(t.reported for t in traces),
    )
