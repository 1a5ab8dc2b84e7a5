"""Facts that others of the same text make needless or wrong: said more closely, in figures, twice."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable

from diagnose.understanding.sentences.paragraph import Paragraph
from diagnose.understanding.values.springs_compared import SAID_BY_SPRINGS
from diagnose.understanding.words.facts import Fact
from knowledge.lexicon.described.beside import BESIDE
from knowledge.lexicon.meant.narrower import NARROWER
from knowledge.lexicon.shows.beside_pressure import FINDING_OF
from knowledge.lexicon.sights.of_several import OF_SEVERAL, SOUND_ALL
from knowledge.reports.words import Shows

#: what words for the speed of a reading say as well
_OF_A_READING = frozenset(["worked_hard"])
#: of these the one that is read first holds; figures are read before words
_OPPOSITES = {
    "panel_reads_too_low": "panel_reads_too_high",
    "panel_reads_too_high": "panel_reads_too_low",
}
#: not read where what it needs is denied: one that was stopped at once did not run long
_NEEDS = {"ran_long_without_distress": "ran_on_without_pressure"}
#: not read where one of these is there too: "no loud noise, then it died" is no sound engine
_SPOILED = {
    "engine_runs_normally": frozenset(["stopped_with_loss_of_power", "engine_seized", "knock"])
}


def without_measured(facts: list[Fact]) -> list[Fact]:
    """Without readings and sights in the words of a measured value, which says it in figures.

    "relief opens at 45 psi" is no reading, "pickup 1/4 in off the pan" no pickup off the pan.
    """
    taken = [s for f in facts if "value" in f.fields and f.table != "limit" for s in f.spans]
    read = [s for f in facts if f.table == "reading" for s in f.spans]
    facts = [f for f in facts if f.name not in _OF_A_READING or not f.is_within(read)]
    pressures = {str(f.fields["pressure"]) for f in facts if f.table == "reading"}
    if len(pressures) > 1:  # "sits at 15 psi at idle, at 2000 rpm its 45"
        facts = [f for f in facts if f.name != "needle_stuck_at_one_value"]
    return [
        f
        for f in facts
        if "value" in f.fields
        or f.table not in ("reading", "finding")
        or (f.name in SAID_BY_SPRINGS and not f.is_within(taken))
        or not any(a < d and c < b for a, b in f.spans for c, d in taken)
    ]


def without_wider(facts: list[Fact], paragraph: Paragraph) -> list[Fact]:
    """Without findings that only name by some of its words what their sentence says more closely.

    "the sender weeps oil" is no oil on the outside of the engine.
    """
    ends = [line.tokens[-1].end for line in paragraph.lines]
    wider: dict[int, set[str]] = {}
    for fact in facts:
        if fact.table == "finding" and "state" in fact.fields:
            absent = "-" if fact.is_absent else ""
            key = f"{absent}{fact.fields['what']}"
            names = (*NARROWER.get(key, ()), *BESIDE.get(key, ()))
            wider.setdefault(bisect_left(ends, fact.spans[0][1]), set()).update(names)
    return [
        f
        for f in facts
        if f.table != "finding"
        or f.fields["what"] not in wider.get(bisect_left(ends, f.spans[0][1]), ())
    ]


def without_spoiled(facts: list[Fact]) -> list[Fact]:
    """Without findings of which something else said is the opposite, or denies what they need."""
    denied = {f.name for f in facts if f.is_absent}
    there = {f.name for f in facts if f.is_present}
    there |= {str(f.fields["shows"]) for f in facts if "shows" in f.fields}
    return [
        f
        for f in facts
        if _NEEDS.get(f.name) not in denied
        and not (f.is_present and there & _SPOILED.get(f.name, frozenset()))
    ]


def without_opposites(facts: list[Fact]) -> list[Fact]:
    """Without findings that words say where figures say the opposite."""
    said = [f.name for f in facts if f.is_present]
    return [
        f
        for f in facts
        if f.name not in _OPPOSITES
        or _OPPOSITES[f.name] not in said
        or said.index(f.name) < said.index(_OPPOSITES[f.name])
    ]


def once_of_pressure(facts: list[Fact]) -> list[Fact]:
    """Without "runs as usual" in the words that say so of the pressure: "checked it, it was fine"."""
    normal = [s for f in facts if f.fields.get("shows") == Shows.NORMAL.value for s in f.spans]
    return [f for f in facts if f.name != "engine_runs_normally" or not f.is_within(normal)]


def without_what_is_of_others(facts: list[Fact]) -> list[Fact]:
    """Without "sound" of some parts of a kind where others of that kind were found bad.

    "one and two look lovely, five is wiped": the shells are wiped, and are not as they should be.
    """
    seen = {f.name for f in facts if f.is_present}
    return [
        f
        for f in facts
        if not (f.is_absent and f.name in seen and f.name in OF_SEVERAL)
        and not (f.is_present and seen & SOUND_ALL.get(f.name, frozenset()))
    ]


def without_denials_of_what_shows(facts: list[Fact]) -> list[Fact]:
    """Without findings denied that show all the same: "the light came on; it is out now and stays out"."""
    shown = {
        FINDING_OF.get(s) for s in Shows if any(f.fields.get("shows") == s.value for f in facts)
    }
    return [f for f in facts if not f.is_absent or f.name not in shown]


def each_once(facts: Iterable[Fact]) -> list[Fact]:
    """Facts said twice are one, at both places; of two that contradict each other, the surer."""
    kept: dict[tuple[str, str], Fact] = {}
    for fact in facts:
        about = (fact.table, str(sorted(fact.fields.items(), key=str)))
        if "what" in fact.fields:
            about = (fact.table, f"{fact.name} {fact.fields.get('where', '')}")
        if fact.table == "layout":
            about = ("layout", "")
        old = kept.get(about)
        if old is None or (fact.fields != old.fields and _weight(fact) > _weight(old)):
            kept[about] = fact
        elif fact.fields == old.fields:
            spans = tuple(sorted({*old.spans, *fact.spans}))
            kept[about] = Fact(old.table, old.fields, spans, max(old.sure, fact.sure))
    return list(kept.values())


def _weight(fact: Fact) -> tuple[float, int, int]:
    return fact.sure, len(fact.fields), max(b - a for a, b in fact.spans)
