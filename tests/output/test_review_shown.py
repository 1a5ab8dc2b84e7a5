"""What ``review`` prints of its document, part by part, and the words for figures at their limits."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from types import SimpleNamespace
from typing import Any

import pytest

from diagnose.case.loading import from_text, load
from diagnose.diagnosis import Diagnosis
from diagnose.inference.causegraph import MISFIT, READINGS
from diagnose.inference.explain import Weight
from diagnose.inference.network import Likelihood
from diagnose.output.as_json import as_json
from diagnose.output.documents.contradictions import contradiction_notices
from diagnose.output.documents.named import Named
from diagnose.output.documents.next_checks import CheckOption, next_checks
from diagnose.output.documents.ranking import others
from diagnose.output.documents.reasons import (
    EvidenceItem,
    chain_in_words,
    evidence_items,
    in_short,
    is_settled,
    stated,
)
from diagnose.output.documents.review import CauseSet, Damage, ReviewDocument, review_document
from diagnose.output.lines import percent
from diagnose.output.text.alarms import alarm_lines
from diagnose.output.text.next_step import next_step_lines
from diagnose.output.text.review import review_text
from knowledge.book import the_book
from knowledge.model import Condition
from tests.support.complaints import flat, inferred, path_of

BOOK = the_book()
FLICKERS = BOOK.findings["needle_flickers"]


@cache
def diagnosis_of(name: str) -> Diagnosis:
    return Diagnosis(BOOK, load(path_of(name), BOOK))


@cache
def document() -> ReviewDocument:
    """A review with evidence, not settled."""
    return review_document(diagnosis_of("plover"), "my case.toml")


def printed(shown: int = 5, **changes: Any) -> str:
    """The review as printed in one line, with parts of its document changed."""
    return flat(review_text(replace(document(), **changes), shown))


# ------------------------------------------------------------------------ figures in words


@pytest.mark.parametrize(
    ("p", "words"),
    [(0.0, "< 1 %"), (0.0049, "< 1 %"), (0.005, "0 %"), (0.0051, "1 %"), (0.5, "50 %"),
     (0.994, "99 %"), (0.9951, "> 99 %"), (1.0, "> 99 %")],
)  # fmt: skip
def test_a_probability_in_words(p: float, words: str) -> None:
    assert percent(p) == words


def about(probability: float, evidence: bool = True) -> Any:
    """A diagnosis whose first cause has this probability."""
    cause = SimpleNamespace(says="the cause")
    first = SimpleNamespace(cause=cause, probability=probability, began=probability)
    known = inferred([first], evidence)
    return SimpleNamespace(ranking=[first], inference=known, case=None, alarms=("one",))


@pytest.mark.parametrize(
    ("p", "begins", "settled"),
    [
        (0.39, "not clear yet; best guess: the cause", False),
        (0.40, "most likely the cause", False),
        (0.89, "most likely the cause", False),
        (0.90, "almost certainly the cause", True),
    ],
)
def test_the_answer_in_a_sentence(p: float, begins: str, settled: bool) -> None:
    said = in_short(about(p))
    assert said.startswith(begins)
    assert f"({percent(p)} likely)" in said
    assert ("not settled" in said) is (0.4 <= p < 0.9)
    assert is_settled(about(p)) is settled
    assert in_short(about(p, evidence=False)) == ""


@pytest.mark.parametrize(
    ("there", "absent", "words"),
    [
        (1.0, 0.0, FLICKERS.says),
        (0.95, 0.05, FLICKERS.says),
        (0.94, 0.06, f"probably (94 % sure) {FLICKERS.says}"),
        (0.2, 0.8, f"probably (80 % sure) {FLICKERS.stated(False)}"),
        (0.05, 0.95, FLICKERS.stated(False)),
    ],
)
def test_an_observation_in_words(there: float, absent: float, words: str) -> None:
    assert stated(FLICKERS, Likelihood(absent, there)) == words
    assert FLICKERS.stated(False) != FLICKERS.says


@pytest.mark.parametrize(
    ("decibans", "weight"),
    [(8.0, "strong (+8 dB)"), (7.9, "some (+8 dB)"), (3.0, "some (+3 dB)"), (2.9, "slight (+3 dB)"),
     (-8.0, "strong (-8 dB)"), (-3.0, "some (-3 dB)"), (-0.6, "slight (-1 dB)")],
)  # fmt: skip
def test_the_weight_of_evidence_in_words(decibans: float, weight: str) -> None:
    given = [Weight(FLICKERS.id, decibans, ("a", FLICKERS.id))]
    pro, con = (evidence_items(diagnosis_of("plover"), given, sign) for sign in (1, -1))
    assert [i.weight for i in pro] == ([weight] if decibans > 0 else [])
    assert [i.weight for i in con] == ([weight] if decibans < 0 else [])


def test_what_is_not_there_may_rule_out_rivals() -> None:
    """Said only of a finding denied, without a way from the cause, that speaks for it."""
    text = 'schema = 1\n[[finding]]\nno = 1\nwhat = "needle_flickers"\nstate = "absent"\n'
    denied = Diagnosis(BOOK, from_text(text, None, BOOK))
    for answer, decibans, chain, rivals in [
        (denied, 4.0, (), True),
        (denied, 4.0, ("a", FLICKERS.id), False),
        (denied, -4.0, (), False),
        (diagnosis_of("plover"), 4.0, (), False),
    ]:
        sign = 1 if decibans > 0 else -1
        (item,) = evidence_items(answer, [Weight(FLICKERS.id, decibans, chain)], sign)
        assert item.says.endswith("(rules out rivals)") is rivals
    assert evidence_items(denied, [Weight(FLICKERS.id, 0.0, ())], 1) == ()
    assert evidence_items(denied, [Weight(FLICKERS.id, 0.0, ())], -1) == ()


def test_the_way_from_the_cause_to_the_strongest_evidence() -> None:
    answer = diagnosis_of("plover")
    nodes = list(answer.inference.graph.nodes)[:3]
    long, short = (*nodes[:2], FLICKERS.id), (nodes[0], FLICKERS.id)
    says = [str(answer.inference.graph.nodes[n]["says"]) for n in long]
    assert chain_in_words(answer, [Weight(FLICKERS.id, 5.0, long)]) == " -> ".join(says)
    assert chain_in_words(answer, [Weight(FLICKERS.id, 5.0, short)]) == "", "plain as it is"
    assert chain_in_words(answer, [Weight(FLICKERS.id, -5.0, long)]) == "", "speaks against it"


# ------------------------------------------------------------------------ the parts


def test_the_head_names_job_and_engine() -> None:
    assert printed().startswith(f"{document().title} Engine: {document().engine} ")
    assert printed(title="").startswith("Case without a title Engine")
    assert "Nothing has been seen or reported yet" not in printed()
    assert "Nothing has been seen or reported yet" in printed(evidence={})


def test_remedy_and_consequence_are_shown_once_it_is_settled() -> None:
    first = replace(document().causes[0], remedy="mend it", follows="it breaks")
    rest = document().causes[1:]
    plain = printed(causes=(first, *rest), in_short="so it is", remedies=False)
    assert "In short: so it is." in plain
    assert "mend it" not in plain
    settled = printed(causes=(first, *rest), in_short="so it is", remedies=True)
    assert "In short: so it is. remedy mend it if left it breaks" in settled
    assert "if left" not in printed(causes=(replace(first, follows=""), *rest), remedies=True)
    assert "In short" not in printed(in_short="", remedies=True)


@pytest.mark.parametrize("shown", [1, 3, 7])
def test_so_many_causes_are_shown_and_the_rest_counted(shown: int) -> None:
    text, causes = printed(shown), document().causes
    for number, cause in enumerate(causes, 1):
        head = f" {number}. {percent(cause.probability)} likely {cause.says} [{cause.id}]"
        assert (head in text) is (number <= shown)
    highest = max(c.probability for c in causes[shown:])
    assert f"{len(causes) - shown} more causes, none above {percent(highest)}" in text
    assert "more causes" not in printed(len(causes))


def test_no_more_than_four_pieces_of_evidence_on_a_side() -> None:
    (item, *_) = next(c.pro for c in document().causes if c.pro)
    many = tuple(replace(item, says=f"sign {i}") for i in range(6))
    first = replace(document().causes[0], pro=many, con=many[:2], chain="this -> that")
    text = printed(causes=(first, *document().causes[1:]))
    assert f"for {item.weight}: sign 0 {item.weight}: sign 1" in text
    assert text.count("sign 3") == 1
    assert "sign 4" not in text
    assert f"against {item.weight}: sign 0" in text
    assert "how this -> that" in text
    no_fault = printed(causes=(replace(first, no_fault=True), *document().causes[1:]))
    assert no_fault.count("(no fault: it would explain the reading)") == 1


def test_a_wrong_gauge_ranks_last_where_the_loss_is_real() -> None:
    low, high = (replace(document().causes[0], probability=p) for p in (0.2, 0.6))
    assert "come last" in others((low, high), 1, loss_is_real=True)
    assert "come last" not in others((low, high), 1, loss_is_real=False)
    assert "come last" not in others((high, low), 1, loss_is_real=True)
    assert others((high, low), 2, loss_is_real=True) == ""
    assert others((low, high), 1, loss_is_real=False).startswith("1 more causes, none above 60 %")


def test_sets_are_shown_from_two_on() -> None:
    one, two = (CauseSet(causes=(), share=s, says=f"set {s}") for s in (0.7, 0.2))
    assert "Explanations as sets of causes 70 % set 0.7 20 % set 0.2" in printed(
        explanations=(one, two)
    )
    assert "Explanations" not in printed(explanations=(one,))


def test_damage_and_its_chain() -> None:
    harm = Damage(id="x", says="journals scored", probability=0.6)
    assert "Following damage" not in printed(damage=())
    text = printed(damage=(harm,), damage_path="a -> b")
    assert "repair it too 60 % journals scored chain a -> b" in text
    assert "chain" not in printed(damage=(harm,), damage_path="")


def test_what_is_left_over_is_named() -> None:
    assert "Left out, too entangled to compute: one, two" in printed(left_out=("one", "two"))
    assert "Left out" not in printed(left_out=())
    assert "2 psi are missing" in printed(still_missing="2 psi are missing")
    assert printed().endswith("Certified aircraft engines are out of scope.")


def test_a_contradiction_names_the_entries_it_rests_on() -> None:
    """Two sure entries that cannot both be right, with their numbers and what they say."""
    text = "schema = 1\n" + "".join(
        f'[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "{state}"\n'
        for no, what, state in (
            (3, "gauge_reads_zero", "present"),
            (5, "needle_flickers", "present"),
            (8, "direct_gauge_low", "absent"),
            (9, "direct_gauge_zero", "present"),
        )
    )
    answer = Diagnosis(BOOK, from_text(text, None, BOOK))
    notices = contradiction_notices(answer)
    assert notices
    mine = next(n for n in notices if {8, 9} <= set(n.entries))
    assert "8 (direct_gauge_low=no)" in mine.entries_say
    assert "9 (direct_gauge_zero=yes)" in mine.entries_say
    assert list(mine.entries) == sorted(mine.entries)
    shown = flat(review_text(review_document(answer, "x.toml")))
    assert f"- {mine.says} entries: {', '.join(mine.entries_say)}" in shown
    assert f"look again: {mine.recheck_asks} [{mine.recheck}]" in shown


# ------------------------------------------------------------------------ alarms and the next check


def test_the_makers_stop_limits_are_named_beside_a_stop() -> None:
    def lines(*present: str) -> str:
        text = "schema = 1\n" + "".join(
            f'[[finding]]\nno = {i}\nwhat = "{what}"\nstate = "present"\n'
            for i, what in enumerate(present, 1)
        )
        answer = Diagnosis(BOOK, from_text(text, None, BOOK))
        return flat("\n".join(alarm_lines(review_document(answer, "x", for_json=True).alarms)))

    precedence = "The engine maker's own stop limits come first."
    assert lines("fell_suddenly").endswith(precedence)
    assert lines("fell_suddenly").startswith("STOP THE ENGINE: ")
    care = lines("climbs_past_setting")
    assert care.startswith("TAKE CARE: ")
    assert precedence not in care
    assert lines() == ""


def check(**changes: Any) -> CheckOption:
    best = document().next[0]
    return replace(best, **changes)


def step(*options: CheckOption, settled: bool = False) -> str:
    return flat("\n".join(next_step_lines(options, "my case.toml", settled=settled)))


def test_the_next_check_with_its_cost() -> None:
    plain = check(minutes=35.0, opening_minutes=0.0, keep="", evidence="")
    assert step(plain).startswith("Look at next ")
    assert f"{plain.says} (35 min hands-on) [{plain.inspection}]" in step(plain)
    assert "35 min hands-on, 20 of them to open" in step(replace(plain, opening_minutes=20.0))
    assert step(plain, settled=True).startswith("Still worth a look ")
    assert "record first" not in step(plain)
    assert "record first: the mark" in step(replace(plain, keep="the mark"))
    assert f"diagnose record 'my case.toml' {plain.findings[0]}=yes" in step(plain)
    assert step() == "No check is left that would tell these causes apart."


def test_outcomes_are_shown_until_it_is_settled() -> None:
    best = document().next[0]
    assert best.outcomes
    for outcome in best.outcomes:
        said = (
            f"if {outcome.says} ({percent(outcome.probability)}): then {outcome.leads_says} leads, "
            f"{percent(outcome.leads_with)} likely"
        )
        assert said in step(best)
        assert said not in step(best, settled=True)


def test_two_other_checks_are_named_and_never_the_same_again() -> None:
    best = document().next[0]
    rest = [
        replace(best, inspection=f"i{n}", says=f"other {n}", minutes=n) for n in (5.0, 6.0, 7.0)
    ]
    assert "or other 5.0 (5 min); other 6.0 (6 min) Write down" in step(best, *rest)
    assert " or " not in step(best, best).split("Write down")[0].split("likely")[-1]


def test_the_data_of_the_best_check_alone_hold_its_outcomes() -> None:
    first, *others_ = as_json(document())["next"]
    assert {"adds", "value", "evidence", "outcomes"} <= set(first)
    assert others_
    for other in others_:
        assert not {"adds", "value", "evidence", "outcomes"} & set(other)
    nothing = [o["finding"] for o in first["outcomes"]]
    assert nothing[-1] is None, "last: none of what it can show"


def survey_item(absent: float, present: float) -> tuple[EvidenceItem, Condition]:
    """What is shown of a survey that gives one condition these likelihoods.

    The readings are one item of evidence, whether the condition fits them or not.
    """
    name, condition = next(iter(BOOK.conditions.items()))
    likelihood = Likelihood(absent, present)
    end = READINGS if present >= absent else MISFIT
    weight = Weight(READINGS, 5.0, ("a", name, end))
    known = SimpleNamespace(
        evidence={weight.what: likelihood}, survey=SimpleNamespace(likelihoods={name: likelihood})
    )
    answer: Any = SimpleNamespace(book=BOOK, inference=known)
    (item,) = evidence_items(answer, [weight], 1)
    return item, condition


def test_a_surveys_evidence_is_shown_as_odds() -> None:
    for absent, present, fits in ((0.1, 0.8, "fit"), (0.8, 0.1, "do not fit")):
        item, condition = survey_item(absent, present)
        assert (
            item.says
            == f"the readings {fits} a known fault of the circuit (8 to 1): {condition.says}"
        )


LONG = "word " * 40


def indents(start: str, **changes: Any) -> tuple[int, int]:
    """Columns before a line that holds a text, and before the line after it."""
    lines = review_text(replace(document(), **changes)).splitlines()
    at = next(i for i, line in enumerate(lines) if start in line)
    return tuple(len(x) - len(x.lstrip()) for x in lines[at : at + 2])  # type: ignore[return-value]


def test_later_lines_hang_under_the_first() -> None:
    first = replace(document().causes[0], chain=f"chained {LONG}", no_fault=True)
    causes = (first, *document().causes[1:])
    assert indents("chained", causes=causes) == (6, 16)
    assert indents("(no fault", causes=causes)[0] == 6
    assert indents("more causes, none above") == (2, 2)
    best = replace(document().next[0], evidence=f"spoilt {LONG}", warnings=(f"hot {LONG}",))
    rest = document().next[1:]
    assert indents("first, because", next=(best, *rest)) == (4, 6)
    assert indents("caution: hot", next=(best, *rest)) == (4, 6)
    assert indents("In short:", in_short=LONG) == (0, 2)
    assert indents("missing", still_missing=f"missing {LONG}") == (0, 2)
    harm = Damage(id="x", says=f"scored {LONG}", probability=0.6)
    assert indents("scored", damage=(harm,)) == (2, 10)


def test_outcomes_are_worked_out_until_it_is_settled(monkeypatch: pytest.MonkeyPatch) -> None:
    """They cost a sum each; the data for programs hold them all the same."""
    answer = diagnosis_of("plover")
    assert next_checks(answer)[0].outcomes
    monkeypatch.setattr("diagnose.output.documents.next_checks.is_settled", lambda _: True)
    assert next_checks(answer)[0].outcomes == ()
    assert next_checks(answer, all_outcomes=True)[0].outcomes


def test_the_chain_of_damage_stands_in_its_column() -> None:
    harm = Damage(id="x", says="scored", probability=0.6)
    lines = review_text(replace(document(), damage=(harm,), damage_path="a -> b")).splitlines()
    assert "  chain   a -> b" in lines


def test_what_is_not_explained_hangs_under_its_first_word() -> None:
    long = Named(id="needle_flickers", says="the needle wavers " * 8)
    lines = review_text(replace(document(), unexplained=(long, long)), 5).splitlines()
    first = lines.index("Not explained yet") + 1
    block = lines[first : lines.index("", first)]
    starts = [len(line) - len(line.lstrip()) for line in block]
    assert set(starts) == {2, 4}
    assert [line.lstrip().startswith("- ") for line in block] == [s == 2 for s in starts]
