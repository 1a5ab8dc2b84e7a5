"""The whole review as printed, letter by letter: every column, mark and blank line."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from diagnose.output.documents.alarms import AlarmNotice
from diagnose.output.documents.contradictions import ContradictionNotice
from diagnose.output.documents.found import FoundFaultEntry
from diagnose.output.documents.named import Named
from diagnose.output.documents.next_checks import CheckOption, CheckOutcome
from diagnose.output.documents.opening_step import OpeningStep
from diagnose.output.documents.ranking import RankedCause
from diagnose.output.documents.reasons import EvidenceItem
from diagnose.output.documents.review import CauseSet, Damage, ReviewDocument
from diagnose.output.documents.shop_note import ShopNote
from diagnose.output.text.alarms import alarm_lines
from diagnose.output.text.next_step import next_step_lines
from diagnose.output.text.review import review_text
from knowledge.model import Severity

KEPT = Path(__file__).parents[1] / "data" / "review_printed.txt"
MANY = "word " * 9


def long(start: str) -> str:
    """A text that takes two lines at least."""
    return f"{start} {MANY}".strip()


def evidence(says: str) -> EvidenceItem:
    return EvidenceItem(
        finding="f", decibans=4.0, chain=(), weight="some (+4 dB)", strength="some", says=says
    )


def cause(name: str, probability: float, no_fault: bool = False) -> RankedCause:
    return RankedCause(
        id=name, says=long(name), station="pump", probability=probability, prior=0.01,
        no_fault=no_fault, source="s", pro=(evidence(long("first")), evidence("second")),
        con=(evidence(long("third")),), chain=long("chain"), remedy=long("mend"),
        follows=long("then"),
    )  # fmt: skip


def check(name: str, minutes: float) -> CheckOption:
    return CheckOption(
        inspection=name, says=long(f"look at {name}"), minutes=minutes, bits=0.1, opens=(),
        findings=("one", "two", "three"), cautions=(), evidence=long("it goes"),
        outcomes=(
            CheckOutcome(finding="one", probability=0.3, leads="a", leads_with=0.6,
                         says=long("one is there"), leads_says="the pump"),
            CheckOutcome(finding=None, probability=0.7, leads="b", leads_with=0.4,
                         says="none of these", leads_says="the relief valve"),
        ),
        opening_minutes=20.0,
        openings=(
            OpeningStep(says=long("the sump"), minutes=15.0, keep=long("the mark")),
            OpeningStep(says="the cover", minutes=5.0, keep=""),
        ),
        keep=long("the angle"), warnings=(long("hot oil"),), care=(long("hot"),),
    )  # fmt: skip


def fault(title: str, rest: str) -> FoundFaultEntry:
    """A found fault; ``rest`` stands behind each of its labels but the first, if anything."""
    return FoundFaultEntry(
        id="x", says="says", damage=False, proofs=(), cost=None, explains=(), origins=(),
        decides=rest and long("a look"), title=long(title), seen=long("on the seat"),
        explained=rest and long("the needle"), came_from=rest and long("the shells"),
    )  # fmt: skip


DOCUMENT = ReviewDocument(
    case=None,
    title=long("Skua"),
    reported=(long("low when hot"), "a new filter"),
    layout="distributor_v8",
    alarms=(
        AlarmNotice(severity=Severity.STOP, says=long("no pressure")),
        AlarmNotice(severity=Severity.CARE, says="a lamp only"),
    ),
    contradictions=(
        ContradictionNotice(
            findings=("a", "b"), says=long("both"), recheck="a", entries=(1, 2),
            entries_say=("1 (a=yes)", long("2 (b=no)")), recheck_asks=long("is it there?"),
        ),
        ContradictionNotice(
            findings=("c", "d"), says="neither", recheck="c", entries=(), entries_say=(),
            recheck_asks="or is it?",
        ),
    ),
    found=(fault("metal", "some"), fault("groove", "")),
    contaminated=(long("cooler"), "filter"),
    stations=(),
    causes=(cause("wear", 0.5), cause("gauge", 0.3, no_fault=True), cause("leak", 0.1)),
    explanations=(
        CauseSet(causes=("a",), share=0.75, says=long("wear alone")),
        CauseSet(causes=("b",), share=0.004, says="wear and leak"),
    ),
    damage=(Damage(id="d", says=long("journals scored"), probability=0.8),),
    damage_chain=("a", "b"),
    unexplained=(Named(id="n", says=long("the noise")),),
    left_out=("this", "that"),
    evidence={"f": None},  # type: ignore[dict-item]
    log_evidence=0.0,
    next=(check("pump", 35.4), check("pump", 12.0), *(check(f"c{i}", 10.0 + i) for i in range(3))),
    history=ShopNote(folder="jobs", jobs=3, says=long("Seen before"), whole=()),
    path="my case.toml",
    closed="",
    held_up=False,
    to_close=False,
    verdict="",
    differs="",
    strip="",
    engine=long("an engine"),
    in_short=long("most likely"),
    settled=False,
    remedies=False,
    loss_is_real=True,
    damage_path=long("a -> b"),
    still_missing=long("3 psi are missing"),
)  # fmt: skip


@pytest.fixture(autouse=True)
def narrow(monkeypatch: pytest.MonkeyPatch) -> None:
    """Fifty columns: every sentence takes more than one line."""
    monkeypatch.setenv("COLUMNS", "50")


def test_the_whole_review_as_printed() -> None:
    """The text was read through line by line before it was kept."""
    assert review_text(DOCUMENT, 2) + "\n" == KEPT.read_text("utf-8")


def test_a_review_of_nothing_has_only_its_frame() -> None:
    bare = replace(
        DOCUMENT, title="", alarms=(), contradictions=(), explanations=DOCUMENT.explanations[:1],
        damage=(), reported=(), found=(), contaminated=(), unexplained=(), left_out=(), evidence={}, next=(), history=None, in_short="",
        still_missing="", causes=(replace(cause("wear", 0.5), pro=(), con=(), chain=""),),
    )  # fmt: skip
    lines = review_text(replace(bare, engine="an engine")).splitlines()
    assert lines[:5] == [
        "Case without a title",
        "Engine: an engine",
        "Nothing has been seen or reported yet: what",
        "follows is only how common each cause is.",
        "",
    ]
    assert [line for line in lines if not line.startswith(" ")][4:] == [
        "",
        "Root causes, likeliest first",
        "",
        "",
        "No check is left that would tell these causes apart.",
        "",
        *review_text(DOCUMENT).splitlines()[-4:],
    ]


def test_a_settled_cause_comes_with_its_remedy_and_without_outcomes() -> None:
    text = review_text(replace(DOCUMENT, settled=True, remedies=True))
    plain = review_text(DOCUMENT)
    assert "\n  remedy    mend word word" in text
    assert "\n            word" in text.split("remedy    mend")[1].split("if left")[0]
    assert "\n  if left   then word word" in text
    assert "Still worth a look" in text
    assert "if one is there" not in text
    for absent in ("remedy", "if left", "Still worth"):
        assert absent not in plain


def test_a_lone_check_has_no_other_beside_it() -> None:
    one = replace(check("pump", 35.5), evidence="", keep="", openings=(), warnings=(), outcomes=())
    lines = next_step_lines((replace(one, opening_minutes=0.0, says="look"),), "-x", settled=False)
    assert lines == [
        "Look at next",
        "  look (36 min hands-on) [pump]",
        "  Write down what you find (yes, no or unknown):",
        "    diagnose record ./-x one=yes",
    ]


def test_an_alarm_shown_before_is_not_shown_again() -> None:
    """Nor is the precedence of the maker's limits where no stop is new."""
    stop, care = DOCUMENT.alarms
    assert alarm_lines((stop, care), {stop.says}) == ["TAKE CARE: a lamp only"]
    assert alarm_lines((stop, care), {stop.says, care.says}) == []
    assert alarm_lines((care,), {stop.says}) == ["TAKE CARE: a lamp only"]
    last = alarm_lines((stop, care))[-1:]
    assert last == ["The engine maker's own stop limits come first."]


def test_what_was_found_is_put_right_where_no_check_is_left() -> None:
    """The whole review says the same as the short one."""
    document = replace(DOCUMENT, next=(), remedies=True)
    (line,) = [x for x in review_text(document).splitlines() if x.startswith("Next: ")]
    assert line.startswith("Next: put it right; what to check on the way:")
