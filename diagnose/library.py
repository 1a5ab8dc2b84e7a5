"""The functions of the public API; each loads what it needs when it is called."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from diagnose.bearings.table import Bearings
    from diagnose.case.card import Card
    from diagnose.case.case import Case
    from diagnose.circuit.budget import Budget
    from diagnose.circuit.expected import Expected
    from diagnose.circuit.forecast import Forecast
    from diagnose.circuit.sizing import Sizing
    from diagnose.circuit.survey import Survey
    from diagnose.diagnosis import Diagnosis
    from diagnose.lookup.finder import Hit
    from diagnose.output.documents.record import RecordDocument
    from diagnose.output.documents.review import ReviewDocument
    from diagnose.teardown.plan import Plan
    from diagnose.understanding.words.facts import Understanding


def load_case(path: str | PathLike[str], *, last_entry: int | None = None) -> Case:
    """Load a case file (TOML, UTF-8).

    ``last_entry``: ignore entries with a higher number.

    Raises NoCaseError where there is no such file, BadCaseError with every fault found in it,
    OutOfScopeError for a certified aircraft engine.
    """
    from diagnose.case.loading import load
    from knowledge.book import the_book

    return load(Path(path), the_book(), last_entry)


def engine_card(path: str | PathLike[str]) -> Card:
    """Load an engine's card (TOML, UTF-8), the file that several jobs name.

    ``values`` of the result hold its figures by id, SI, ``low`` to ``high`` as fitted and ``worn``
    the wear limit; ``limits`` what it sets. ``card_document`` of ``diagnose.output.documents.card``
    says what is missing, the most useful first.

    Raises NoCaseError where there is no such file, BadCaseError with every fault found in it.
    """
    from diagnose.case.card import load_card
    from knowledge.book import the_book

    return load_card(Path(path), the_book())


def parse_case(text: str) -> Case:
    """Read a case from the text of a case file (TOML).

    Raises BadCaseError with every fault found, OutOfScopeError for a certified aircraft engine.
    """
    from diagnose.case.loading import from_text
    from knowledge.book import the_book

    return from_text(text, None, the_book())


def diagnose(case: Case, *, learned: Mapping[str, float] | None = None) -> Diagnosis:
    """Diagnose a case; each part of the result is computed when it is first used.

    ``learned``: factors on how common each cause is, by its id (see ``learned_factors``).

    The result holds ``found_faults`` (states of parts that were seen or measured to be wrong, with
    the pressure each costs at hot idle in Pa, what it explains and what it can have come from),
    ``ranking`` (every cause this engine can have with its probability, 0 to 1),
    ``reasons`` (weights of evidence in decibans, sets of causes, damage), ``alarms``, ``may_run``,
    ``contradictions`` and ``next_check`` (minutes of hands-on time).
    """
    from diagnose.diagnosis import Diagnosis
    from knowledge.book import the_book

    return Diagnosis(the_book(), case, learned=learned)


def learned_factors(
    folder: str | PathLike[str], *, without: str | PathLike[str] | None = None
) -> Mapping[str, float]:
    """Learn from a shop's closed jobs how common each cause is, against the book.

    ``folder``: of case files; open jobs and files that are no cases are ignored. ``without``: the
    case file of the job to diagnose, which must not count. Returns a factor by the id of each
    cause; all are 1 without closed jobs.

    Raises NoCaseError where there is no such folder.
    """
    from diagnose.history.learning import learned_from
    from diagnose.history.shop import read_shop
    from knowledge.book import the_book

    jobs = read_shop(Path(folder), the_book()).counted(Path(without) if without else None)
    return learned_from(jobs, the_book()).factor


def review(diagnosis: Diagnosis, *, for_json: bool = False) -> ReviewDocument:
    """Put a diagnosis into words: everything the command ``review`` shows.

    ``causes`` of the result have ``probability`` (0 to 1), ``remedy`` and, for the first few,
    the evidence for (``pro``) and against (``con``) them, each with its weight in decibans.
    ``for_json``: as the command's ``--json`` has it, without the sentence on missing pressure, for
    which the oil circuit is solved; ``as_json`` turns the result into JSON values.
    """
    from diagnose.output.documents.review import review_document

    path = diagnosis.case.path
    return review_document(diagnosis, str(path) if path else "", for_json=for_json)


def plan(
    diagnosis: Diagnosis,
    *,
    until: float = 0.9,
    minutes: float | None = None,
    on_stand: bool = False,
    closed_up: bool = False,
    first_time: bool = False,
    crowded: bool = False,
) -> Plan:
    """Plan the checks and openings that confirm a cause with the least hands-on time.

    ``until``: probability that confirms a cause, 0.5 to 0.99. ``minutes``: most hands-on minutes.
    ``on_stand``: the engine is out of its place. ``closed_up``: the repair can only be proved by
    running, so openings are closed each time. ``first_time`` and ``crowded`` take more minutes.

    The result holds ``stages`` (what to open together, checks, minutes, probability of finding
    the cause there), ``estimate`` and ``not_planned``. Raises UsageError for ``until`` or
    ``minutes`` out of range.
    """
    from diagnose.errors import UsageError
    from diagnose.teardown.plan import Plan, PlanRequest

    if not 0.5 <= until <= 0.99:
        raise UsageError(f"until: {until:g} is not from 0.5 to 0.99")
    if minutes is not None and not minutes > 0:
        raise UsageError(f"minutes: {minutes:g} is not above zero")
    return Plan(
        diagnosis,
        PlanRequest(
            until=until,
            minutes=minutes,
            on_stand=on_stand,
            closed_up=closed_up,
            first_time=first_time,
            crowded=crowded,
        ),
    )


def survey(case: Case) -> Survey:
    """Compare the case's gauge readings with the computed oil circuit.

    ``rows`` of the result are the possible states of the circuit, most probable first: ``share``
    (0 to 1, all states equally probable before), ``severity`` (16 %, 50 % and 84 % quantile, 0
    to 1). Pressures are in Pa unless a field says psi.

    Raises UsageError without a reading of the running engine, or without figures for the
    circuit of this layout.
    """
    from diagnose.circuit.survey import survey as survey_of
    from knowledge.book import the_book

    return survey_of(case, the_book())


def budget(case: Case) -> Budget:
    """Compute how much of the missing pressure each measured finding explains.

    ``accounts`` of the result are hot idle and cruise; their pressures are in Pa, as mean and 5 %
    and 95 % quantile over plausible engines. ``shares`` go in the order of ``findings``.

    Raises UsageError without figures for the circuit of this layout.
    """
    from diagnose.circuit.budget import budget as budget_of

    return budget_of(case)


def judge_bearings(case: Case) -> Bearings:
    """Judge the main and rod bearings of a case from its ``[[bearing]]`` entries.

    ``found`` and ``fitted`` of the result hold a row for each bearing: ``clearance`` (``value`` and
    ``error``, one standard deviation, in m), ``journal`` and ``bore`` (mean, out of round, taper in
    m) and ``marks``, what is wrong. ``targets`` and ``orders`` go by kind: the clearance wanted
    with every source, and the shells to order. ``pressures`` are in Pa; empty with the reason where
    the layout has no figures for the circuit.
    """
    from diagnose.bearings.table import bearings_of

    return bearings_of(case)


def forecast(
    case: Case, changes: Sequence[str] = (), *, fixes: Sequence[str] = (), target: str = ""
) -> Forecast:
    """Predict the pressure after a planned repair.

    ``fixes``: what is put right, in trade words, as ``"relief"``, ``"mains=0.002"`` or
    ``"oil=20W-50"``. ``changes``: quantities by name, as ``"main_clearance=0.0025 in"`` or
    ``"pump_displacement=+25 %"``. ``target``: a hot pressure to reach, ``"25 psi"`` at idle speed
    or ``"2500 rpm 40 psi"``.

    ``fits`` of the result is false where no plausible engine shows the case's readings: then its
    figures are worth nothing, and ``state.readings`` says which reading is missed and by how much.
    ``hot_pressure(repair.after, 700)`` of the result ``repair`` is the pressure in Pa for each
    plausible engine; ``before`` and ``after`` hold all quantities, hot and cold, in SI units and
    shape (engines, speeds), at ``speeds`` in rpm. Raises UsageError for a change, fix or target
    that cannot be read, or without figures for the circuit of this layout.
    """
    from diagnose.circuit.forecast import forecast as forecast_of
    from diagnose.entry.requests import parse_changes, parse_fixes, parse_target

    settings, plans = parse_changes(changes), parse_fixes(fixes, case)
    wanted = parse_target(target, case) if target else None
    return forecast_of(case, settings, wanted, plans=plans)


def sizing(
    case: Case,
    *,
    changes: Sequence[str] = (),
    target: str = "",
    relief: str = "",
    pump: str = "",
    oils: Sequence[str] = (),
    hot: str = "",
    cold: str = "",
    plunger: str = "",
    springs: Sequence[str] = (),
) -> Sizing:
    """Compare pumps, relief settings and oils: is the pump enough, and what does another cost.

    ``changes`` and ``target`` as in ``forecast``. ``relief``: another setting, ``"70 psi"``;
    ``pump``: another one, ``"+25 %"`` or ``"26 cm3"``; ``oils``: grades; ``hot`` and ``cold``: oil
    temperatures; ``plunger``: of the relief valve, ``"12.7 mm"``; ``springs``: its spring in hand,
    ``"11.2 lbf at 1.75 in"``. Empty: the usual steps.

    ``supply`` of the result is what the pump delivers at the pressure wanted and what the engine
    takes (m3/s), ``choices`` hold pressures (Pa), power and heat (W), torque (N·m) and the speed
    from which the pump cavitates (rpm), ``oils`` pressures by grade, ``spring`` the relief spring
    (N, m, N/m). Raises UsageError for what cannot be read, or without figures for the circuit of
    this layout.
    """
    from diagnose.circuit.sizing import sizing as sizing_of
    from diagnose.entry.requests import parse_changes, parse_target, parse_wanted

    aim = parse_target(target, case) if target else None
    wanted = parse_wanted(
        relief=relief, pump=pump, oils=oils, hot=hot, cold=cold, plunger=plunger, springs=springs
    )
    return sizing_of(case, parse_changes(changes), aim, wanted)


def read_words(text: str) -> Understanding:
    """Read plain English into facts, as ``tell`` does; nothing is written.

    ``facts`` of the result are entries of a case, each with ``table``, ``fields`` and ``sure``
    (0.5 to 1); ``words(fact)`` are the words it came from, ``not_understood`` is what is left.

    >>> [fact.short for fact in read_words("no 3 main 4.5 thou").facts]
    ['finding main_clearance 4.5 thou main 3']
    """
    from diagnose.understanding.reader import read
    from knowledge.book import the_book

    return read(text, the_book())


def record_words(
    path: str | PathLike[str], *phrases: str, by: str = "", note: str = ""
) -> RecordDocument:
    """Append findings, values and readings to a case file, in words or as ``id=value``.

    The result holds ``entries``, ``meanings`` and ``verdicts`` (sentences, by the number of the
    entry), ``not_read`` and the ``alarms`` that are new.

    Raises UsageError with one line for each phrase that is not understood or is ambiguous, and
    writes nothing then; NoCaseError, BadCaseError, CannotWriteError.
    """
    from diagnose.entry.details import Details
    from diagnose.entry.recording import Input, record
    from diagnose.output.documents.record import record_document
    from knowledge.book import the_book

    given = Input(facts=phrases, details=Details(by=by, note=note))
    return record_document(record(Path(path), the_book(), given), the_book(), Path(path))


def expected(case: Case, at: Sequence[str]) -> Expected:
    """Predict what the gauge shows at stated speeds and oil temperatures.

    ``at``: states as ``"1200 rpm 95 C"`` or ``"idle hot"``. ``bands`` of the result has a pressure
    in Pa for each (``low``, ``mean``, ``high``: the middle 90 % and the mean of
    the middle half); ``learned_from`` says
    whether it rests on what the engine showed when sound (``[[baseline]]``), on the case's own
    readings, or on what is usual for its kind. Raises UsageError.
    """
    from diagnose.circuit.expected import expected as expected_of
    from diagnose.entry.requests import parse_at

    return expected_of(case, [parse_at(text, case) for text in at])


def find_words(text: str, *, kind: str = "", most: int = 8) -> list[Hit]:
    """Find what the book calls something that is known by another word, best match first.

    ``kind``: only of this kind, as ``"finding"``, ``"measure"`` or ``"cause"``. Each hit has a
    ``word`` with ``id`` and ``says``, and a ``score`` from 0 to 1.

    >>> find_words("needle dances", kind="finding")[0].word.id
    'needle_flickers'

    Raises UsageError for an unknown kind.
    """
    from diagnose.errors import UsageError, nearest, plain
    from diagnose.lookup.finder import KINDS, finder_of
    from knowledge.book import the_book

    if kind and kind not in KINDS:
        raise UsageError(
            f"no kind '{plain(kind)}'; one of {', '.join(KINDS)}.{nearest(kind, KINDS)}"
        )
    kinds = (KINDS[kind][0],) if kind else ()
    return finder_of(the_book()).find(text, kinds, most)


def parse_value(text: str, what: str) -> float:
    """Read a figure with its unit; return it in the SI unit of its dimension.

    ``what``: the id of a measurement, a task with a value, or a dimension.

    >>> round(parse_value("8 psi", "pressure"))
    55158
    >>> parse_value("0.1 mm", "main_clearance")
    0.0001

    Raises UsageError for a missing or unknown unit and for an unknown id.
    """
    from diagnose.entry.facts import find_word
    from diagnose.errors import UsageError
    from knowledge.book import the_book
    from knowledge.model import Finding
    from knowledge.reports.shapes import TrialKind
    from knowledge.units import DIMENSIONS, UnitError, parse

    dimension = DIMENSIONS.get(what)
    if dimension is None:
        word = find_word(what, the_book())
        if isinstance(word, Finding | TrialKind) or not word.dimension:
            raise UsageError(f"{word.id}: has no value")
        dimension = DIMENSIONS[word.dimension]
    try:
        return parse(text, dimension)
    except UnitError as error:
        raise UsageError(f"{what}: {error}") from None
