"""How the engine is built, said once more: what takes the place of what stands in the case."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass
from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.engine_writing import set_engine
from diagnose.case.loading import load
from diagnose.case.writing import Fields, NewEntry, append_by, append_engine
from diagnose.entry.details import Details
from diagnose.entry.withdrawing import withdrawal
from diagnose.understanding.words.facts import Fact
from knowledge.book import Book
from knowledge.engines.layouts import UNKNOWN
from knowledge.model import Kind, State
from knowledge.questions.engines import ENGINE_KINDS
from knowledge.work import Layout

#: features that tell one kind of engine from another, by id
OF_A_KIND = frozenset(feature for kind in ENGINE_KINDS for feature in kind.has)


@dataclass(frozen=True, slots=True)
class EngineChange:
    """The layout that stood in a case, and the one that takes its place."""

    was: Layout
    now: Layout


def recorded_features(case: Case) -> frozenset[str]:
    """Ids of what the case has entries of, as parts of the engine that are there."""
    return frozenset(
        r.finding.id
        for r in case.finding_records
        if r.finding.kind is Kind.LAYOUT
        and r.observation is not None
        and r.observation.state is State.PRESENT
    )


def engine_change(
    was: Layout, facts: Iterable[Fact], book: Book, recorded: Collection[str] = ()
) -> EngineChange | None:
    """What facts change of a layout; None where they agree with it or say nothing of it.

    ``recorded``: ids of features the engine is known to have. A layout without one of them is not
    this engine's, whatever else fits; what came with the layout that gives way, gives way with it.

    A layout of the same kind gives way only where a feature that was said goes against it, so that
    "the V8" leaves a V8 in a boat as it is.
    """
    said = list(facts)
    layout = next((f.value for f in said if f.table == "layout"), None)
    features = _features(said)
    now = book.layouts[layout] if layout is not None else None
    kept = {name for name in recorded if features.get(name, True)} - {f.id for f in was.has}
    if now is not None and any(f.id in kept for f in now.lacks):
        now = None
    if now is was:
        return None
    against = any(_is_against(was, name, there) for name, there in features.items())
    if now is None:
        return EngineChange(was, UNKNOWN) if against else None
    gained = {f.id for f in now.has} - {f.id for f in was.has}
    other = was is UNKNOWN or not _kinds(was) & _kinds(now)
    if other or against or any(there and name in gained for name, there in features.items()):
        return EngineChange(was, now)
    return None


def write_engine(
    path: Path,
    book: Book,
    layout: str,
    has: Iterable[str] = (),
    facts: Iterable[Fact] = (),
    by: str = "",
) -> Case:
    """Write the layout of a case, in place of the one it has.

    Findings on its kind that stand in the case and go against it are withdrawn, unless ``facts``
    say them. Raises as ``append_by``.
    """
    kept = tuple(has)
    case = load(path, book)
    if not case.has_engine:
        return append_engine(path, book, {"layout": layout, "has": list(kept) or None})
    was, now = case.layout, book.layouts[layout]
    said = _features(facts)

    def made(before: Case) -> list[NewEntry]:
        numbers = [
            r.entry.no
            for r in before.finding_records
            if r.observation is not None
            and r.finding.id in OF_A_KIND - said.keys()
            and _is_gone(r.finding.id, r.observation.state is State.PRESENT, was, now)
        ]
        return [withdrawal(no, before, Details(by=by)) for no in numbers if no in before.standing]

    set_engine(path, book, layout, kept, OF_A_KIND)
    return append_by(path, book, made).after


def write_fields(path: Path, book: Book, fields: Fields, by: str = "") -> Case:
    """Write the [engine] that was chosen. Raises as ``append_by``."""
    has = fields.get("has")
    layout = str(fields["layout"])
    return write_engine(path, book, layout, has if isinstance(has, list) else (), by=by)


def _features(facts: Iterable[Fact]) -> Mapping[str, bool]:
    """Features that facts say the engine has or lacks, by id."""
    return {f.name: f.state == "present" for f in facts if f.table == "finding"}


def _is_against(layout: Layout, feature: str, there: bool) -> bool:
    """Whether a feature of the kind goes against a layout."""
    wrong = layout.lacks if there else layout.has
    return feature in OF_A_KIND and any(f.id == feature for f in wrong)


def _is_gone(feature: str, there: bool, was: Layout, now: Layout) -> bool:
    """Whether what was recorded of a feature belongs to the layout that is given up."""
    if _is_against(now, feature, there):
        return True
    has = [f.id for f in now.has]
    return there and feature not in has and any(f.id == feature for f in was.has)


def _kinds(layout: Layout) -> set[str]:
    kinds = {k.says for k in ENGINE_KINDS if any(id_ == layout.id for id_, _ in k.layouts)}
    return kinds or {layout.id}
