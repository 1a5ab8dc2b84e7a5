"""Trials: one that was not made says nothing; one without effect lowers only what it would cure."""

from __future__ import annotations

import math
from functools import cache
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose import CaseBuilder
from diagnose.case.case import Case
from diagnose.case.loading import from_text, load
from diagnose.diagnosis import Diagnosis
from diagnose.entry.interview import about
from diagnose.entry.picking import Reply
from diagnose.entry.questions import TrialQuestion
from diagnose.entry.trials import TrialInput
from diagnose.inference.elimination import log_evidences, posteriors
from diagnose.inference.network import SEEN, SEEN_NOT_THERE, Likelihood
from diagnose.reasoning.case_inference import CaseInference
from knowledge.book import the_book
from knowledge.model import Cause, Finding, Kind, Stage, State, Strength
from knowledge.reports.shapes import TrialKind
from knowledge.reports.words import Result
from knowledge.unlisted import NOT_IN_THE_BOOK
from tests.confirmed.scoring import case_files
from tests.support.command_line import call
from tests.support.examples import one_in

BOOK = the_book()
TRIALS = tuple(BOOK.trials.values())
#: seen and asked for without tools, and shown by no trial
ASKED = tuple(
    f
    for f in BOOK.findings.values()
    if f.kind is Kind.SEEN and f.stage is Stage.KNOWN and f not in BOOK.shown_by_trial
)
WORKED_CASES = [
    path
    for path in sorted((Path(__file__).parents[2] / "cases").glob("*.toml"))
    if "[[closed]]" not in path.read_text("utf-8")  # nothing is asked of a closed job
]
#: causes that say that nothing is wrong, or that nobody knows: no repair cures them
NO_REPAIR = {NOT_IN_THE_BOOK.id}


def inferred(builder: CaseBuilder) -> CaseInference:
    return CaseInference(BOOK, builder.build())


def answered(states: dict[str, bool]) -> CaseBuilder:
    builder = CaseBuilder(layout="unknown")
    for id_, there in states.items():
        builder.finding(id_, there)
    return builder


reports = st.dictionaries(
    st.sampled_from(sorted(f.id for f in ASKED)), st.booleans(), min_size=1, max_size=8
)


@settings(max_examples=25, deadline=None)
@given(reports)
def test_not_tried_changes_no_probability(states: dict[str, bool]) -> None:
    """Answering "not tried" to every question about a trial leaves all as it was."""
    plain = inferred(answered(states)).posterior
    builder = answered(states)
    for trial in TRIALS:
        builder.trial(trial.id, "not tried")
    asked = inferred(builder).posterior
    assert asked.marginal == plain.marginal
    assert asked.log_evidence == plain.log_evidence


@settings(max_examples=15, deadline=None)
@given(reports)
def test_no_of_an_earlier_version_changes_no_probability(states: dict[str, bool]) -> None:
    """In old files "absent" can mean "not tried"."""
    plain = inferred(answered(states)).posterior
    old = "".join(
        f'[[finding]]\nno = {no}\nwhat = "{id_}"\nstate = "absent"\n'
        for no, id_ in enumerate((*BOOK.retired, *(t.cured.id for t in TRIALS)), 100)
    )
    text = answered(states).toml() + "\n" + old
    assert CaseInference(BOOK, from_text(text, None, BOOK)).posterior.marginal == plain.marginal


@pytest.mark.parametrize("path", one_in(3, WORKED_CASES), ids=lambda p: p.stem)
def test_not_tried_changes_no_worked_case(path: Path) -> None:
    text = path.read_text("utf-8")
    last = load(path, BOOK).last_number
    more = "".join(
        f'\n[[trial]]\nno = {last + n}\nwhat = "{t.id}"\nresult = "not tried"\n'
        for n, t in enumerate(TRIALS, 1)
        if t.id not in {made.trial.id for made in load(path, BOOK).trials}
    )
    after = CaseInference(BOOK, from_text(text + more, path, BOOK))
    assert after.posterior.marginal == CaseInference(BOOK, load(path, BOOK)).posterior.marginal


@cache
def real() -> tuple[CaseInference, ...]:
    """A few confirmed cases, all that was found in them known."""
    return tuple(CaseInference(BOOK, load(p, BOOK)) for p in case_files()[::6])


def unknown_trials(inference: CaseInference) -> list[TrialKind]:
    """Trials this engine allows and whose result is not known in the case."""
    known = inference.evidence
    return [t for t in TRIALS if t.cured.id in inference.network.leak and t.cured.id not in known]


def uninhibited(inference: CaseInference) -> list[TrialKind]:
    """Those of them that no cause keeps from curing; all but a few."""
    kinds = unknown_trials(inference)
    plain = [t for t in kinds if t.cured.id not in inference.network.inhibitors]
    assert len(plain) >= 0.9 * len(kinds)
    return plain


def test_without_effect_is_one_likelihood_on_each_cause_it_cures() -> None:
    """Exactly: multiply each cause it would cure by one minus the link's strength, and no other."""
    for inference in real()[::4]:
        evidence = inference.evidence
        kinds = uninhibited(inference)[::3]
        made = [{**evidence, t.cured.id: SEEN_NOT_THERE} for t in kinds]
        instead = [
            {
                **evidence,
                **{
                    c.id: Likelihood(1.0, 1.0 - s.value)
                    for c, (s, _) in t.cures.items()
                    if c.id in inference.network.parents[t.cured.id]
                },
            }
            for t in kinds
        ]
        for trial, one, other in zip(
            kinds,
            posteriors(inference.network, made),
            posteriors(inference.network, instead),
            strict=True,
        ):
            for id_ in BOOK.causes.keys() & one.marginal.keys():
                assert one.marginal[id_] == pytest.approx(other.marginal[id_], abs=1e-9), trial


def test_if_one_cause_is_at_work_all_others_keep_their_odds() -> None:
    """P(no difference) is the same for every cause the trial does not touch, so its odds stay."""
    inference = CaseInference(BOOK, answered({"gauge_reads_low": True}).build())
    network = inference.network
    causes = [c for c in BOOK.causes if c in inference.graph]
    for trial in uninhibited(inference):
        cured, cures = trial.cured.id, network.parents[trial.cured.id]
        alone = [{**dict.fromkeys(causes, SEEN_NOT_THERE), c: SEEN} for c in causes[::9]]
        alone += [{**dict.fromkeys(causes, SEEN_NOT_THERE), c: SEEN} for c in cures if c in causes]
        before = log_evidences(network, alone)
        after = log_evidences(network, [{**a, cured: SEEN_NOT_THERE} for a in alone])
        for case, old, new in zip(alone, before, after, strict=True):
            (cause,) = (c for c, e in case.items() if e is SEEN)
            kept = (1.0 - network.leak[cured]) * (1.0 - cures.get(cause, 0.0))
            assert math.exp(new - old) == pytest.approx(kept, rel=1e-6), (trial, cause)


def related(inference: CaseInference, trial: TrialKind) -> set[str]:
    """Causes a trial cures, and those that share a root with one of them, as wear does."""
    roots = inference.network.ancestors({c.id for c in trial.cures})
    graph = [c for c in BOOK.causes if c in inference.graph]
    return {c for c in graph if inference.network.ancestors({c}) & roots}


def test_by_itself_each_result_moves_its_own_causes_and_no_other() -> None:
    inference = CaseInference(BOOK, CaseBuilder().build())
    network = inference.network
    before = inference.posterior.marginal
    kinds = unknown_trials(inference)
    assert len(kinds) >= 65
    likelihoods = (SEEN, Likelihood.of(0.9), Likelihood.of(0.8), SEEN_NOT_THERE)
    sets = [{t.cured.id: e} for t in kinds for e in likelihoods]
    after = iter(posteriors(network, sets))
    for trial in kinds:
        cured, while_, helped, none = (next(after).marginal for _ in likelihoods)
        own, kin = network.parents[trial.cured.id], related(inference, trial)
        likeliest = max(own, key=lambda c: before[c] * own[c])
        order = [m[likeliest] for m in (none, before, helped, while_, cured)]
        assert order == sorted(set(order)), trial
        for cause in BOOK.causes.keys() & before.keys():
            if cause in own:
                assert none[cause] < before[cause], (trial, cause)
            elif cause not in kin:
                assert none[cause] == pytest.approx(before[cause], abs=1e-12), (trial, cause)


#: an order that a trial without effect may still turn over: exact sums over several causes at once
#: explain away, so causes that compete with those it rules out gain by unequal factors
NEAR_TIE = 1.6
LIKELY = 0.02  #: causes below this probability are not ranked against each other


@pytest.mark.parametrize(
    ("every", "least"), [(4, 300), pytest.param(2, 1_000, marks=pytest.mark.long)]
)
def test_without_effect_hardly_changes_the_order_among_the_others(every: int, least: int) -> None:
    """With several causes possible at once only near ties change places, unless it is a surprise."""
    pairs = turned = 0
    for inference in real()[::every]:
        kinds = unknown_trials(inference)
        evidence, before = inference.evidence, inference.posterior
        found = posteriors(
            inference.network, [{**evidence, t.cured.id: SEEN_NOT_THERE} for t in kinds]
        )
        for trial, after in zip(kinds, found, strict=True):
            if math.exp(after.log_evidence - before.log_evidence) < 0.5:
                continue  # it was expected to cure: a surprise turns the whole picture over
            kin = related(inference, trial)
            others = [
                c
                for c in BOOK.causes.keys() & before.marginal.keys()
                if c not in kin and before.marginal[c] >= LIKELY
            ]
            for a in others:
                for b in others:
                    if before.marginal[a] > before.marginal[b]:
                        pairs += 1
                        turned += after.marginal[a] < after.marginal[b]
                    if before.marginal[a] > NEAR_TIE * before.marginal[b]:
                        assert after.marginal[a] > after.marginal[b], (inference.case.path, trial)
    assert pairs > least
    assert turned < 0.01 * pairs


def case_of(text: str) -> Case:
    return from_text(f"schema = 1\n{text}", None, BOOK)


def entry(kind: str, no: int, **fields: str) -> str:
    rows = "".join(f'{k} = "{v}"\n' for k, v in fields.items())
    return f"[[{kind}]]\nno = {no}\n{rows}"


@pytest.mark.parametrize("old", sorted(BOOK.retired))
def test_an_earlier_version_said_it_as_a_finding(old: str) -> None:
    """Its "present" is that trial without effect; "absent" and "unknown" are nothing."""
    trial = BOOK.retired[old]
    case = case_of(entry("finding", 1, what=old, state="present"))
    same = case_of(entry("trial", 1, what=trial.id, result="no difference"))
    assert case.facts() == same.facts()
    assert case.facts().observations[trial.cured].state is State.ABSENT
    for state in ("absent", "unknown"):
        silent = case_of(entry("finding", 1, what=old, state=state))
        assert silent.facts() == case_of("").facts()
        assert trial.cured in silent.answered()


@pytest.mark.parametrize("trial", TRIALS, ids=lambda t: t.id)
def test_cured_as_a_finding_is_the_trial(trial: TrialKind) -> None:
    as_finding = case_of(entry("finding", 1, what=trial.cured.id, state="present"))
    as_trial = case_of(entry("trial", 1, what=trial.id, result="cured"))
    there = as_trial.facts().observations[trial.cured]
    assert as_finding.facts().observations[trial.cured] == there
    assert there.state is State.PRESENT


def test_a_result_that_says_more_than_no_difference() -> None:
    """A new sender that made it worse, an adjuster that changes nothing."""
    worse = case_of(entry("trial", 1, what="new_sender", result="worse")).facts().observations
    assert worse[BOOK.findings["new_sender_made_it_worse"]].state is State.PRESENT
    assert worse[BOOK.findings["new_sender_cured_it"]].state is State.ABSENT
    still = case_of(entry("trial", 1, what="relief_adjusted", result="no difference"))
    found = Diagnosis(BOOK, still).inference.posterior.marginal
    plain = Diagnosis(BOOK, case_of("")).inference.posterior.marginal
    assert found["relief_stuck_closed"] > 2 * plain["relief_stuck_closed"]
    assert found["relief_spring_weak_broken"] < plain["relief_spring_weak_broken"]


def test_the_second_trial_that_worked_goes_before_the_first_that_did_not() -> None:
    both = case_of(
        entry("trial", 1, what="new_filter", result="no difference")
        + entry("trial", 2, what="new_filter", result="cured")
    )
    assert both.facts().observations[BOOK.trials["new_filter"].cured].state is State.PRESENT


def test_a_pump_primed_in_vain_is_not_to_be_run() -> None:
    primed = Diagnosis(BOOK, case_of(entry("trial", 1, what="pump_primed", result="no difference")))
    assert any("No oil from the pump" in a.says for a in primed.alarms)
    never = Diagnosis(BOOK, case_of(entry("trial", 1, what="pump_primed", result="not tried")))
    assert not any("No oil from the pump" in a.says for a in never.alarms)


def test_a_trial_is_asked_as_a_trial() -> None:
    trial = BOOK.trials["new_pump"]
    question = about(trial.cured, BOOK, 3)
    assert isinstance(question, TrialQuestion)
    assert question.asks.endswith("(3 left at most)")
    for line, result in {
        "n": None,
        "no": None,
        "not tried": None,
        "d": None,
        "": None,
        "c": Result.CURED,
        "helped": Result.HELPED,
        "For a while": Result.FOR_A_WHILE,
        "s": Result.NO_DIFFERENCE,
        "no change": Result.NO_DIFFERENCE,
        "w": Result.WORSE,
    }.items():
        assert question.read(line) == TrialInput(trial, result), line
    assert question.read("yes") is Reply.UNCLEAR
    assert question.read("why") is Reply.WHY
    assert question.read("back") is Reply.BACK


def test_trials_are_recorded_by_their_result(tmp_path: Path) -> None:
    path = tmp_path / "teal.toml"
    path.write_text("schema = 1\n", "utf-8")
    assert call("record", path, "new_pump=no difference", "thicker_oil=helped").code == 0
    assert call("record", path, "new_pump=not tried").code == 0
    made = {t.trial.id: t.result for t in load(path, BOOK).trials}
    assert made == {"new_pump": None, "thicker_oil": Result.HELPED}
    for words, part in {
        "new_pump=no": "write cured, helped, for a while",
        "new_pump=yes": "write cured, helped, for a while",
        "no_better_with_new_pump=yes": "new_pump='no difference'",
    }.items():
        done = call("record", path, words)
        assert done.code == 2
        assert part in done.err
    assert call("record", path, "new_pump=cured", "--where", "rod 3").code == 2


def test_no_to_a_cure_is_what_it_most_likely_means(tmp_path: Path) -> None:
    """Of a check made with tools: no difference. Of what a person only knows: not tried."""
    path = tmp_path / "teal.toml"
    path.write_text("schema = 1\n", "utf-8")
    assert call("record", path, "cooler_bypassed_cures=no", "thicker_oil_helped=no").code == 0
    made = {t.trial.id: t.result for t in load(path, BOOK).trials}
    assert made == {"cooler_bypassed": Result.NO_DIFFERENCE, "thicker_oil": None}


def test_every_cause_that_a_repair_cures_is_touched_by_a_trial() -> None:
    cured = {c.id for t in TRIALS for c in t.cures}
    assert set(BOOK.causes) - cured == NO_REPAIR


#: cures one of the faults that a cause gathers: of wiring, the ground or the fuse alone
ONE_OF_SEVERAL = {"ground_wire_added", "fuse_renewed"}


def test_every_trial_cures_something_for_certain() -> None:
    """Each has a cause it mostly or often cures, a source, and its finding."""
    for trial in TRIALS:
        strengths: dict[Cause, Strength] = {c: s for c, (s, _) in trial.cures.items()}
        likeliest = max(strengths.values(), key=lambda s: s.value)
        assert (likeliest.value >= Strength.OFTEN.value) is (trial.id not in ONE_OF_SEVERAL), trial
        assert trial.source.title
        shown: Finding = trial.cured
        assert BOOK.findings[shown.id] is shown
