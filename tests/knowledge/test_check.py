"""``diagnose check``: each of its checks finds the fault in a book broken for it."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import fields, replace
from functools import cache, partial
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from diagnose.bookcheck import distinguishability as apart
from diagnose.bookcheck import everything
from diagnose.bookcheck.access import access
from diagnose.bookcheck.distinguishability import alike, distinguishing, reached, signatures
from diagnose.bookcheck.duplicates import duplicates, strengths
from diagnose.bookcheck.everything import Checked
from diagnose.bookcheck.examples import ExampleRunner, examples, never_fired, of_statement
from diagnose.bookcheck.names import names
from diagnose.bookcheck.shapes import TABLES, Result, Whole
from diagnose.bookcheck.sources import sources
from diagnose.inference.chaining import infer
from diagnose.output.documents.check import check_document
from diagnose.output.text.check import check_text
from knowledge.access.precedence import BEFORE
from knowledge.book import Book, the_book
from knowledge.circuit.conditions import RELIEF_BLEEDS, RELIEF_HELD_OPEN
from knowledge.model import MOSTLY, Source, Station
from knowledge.pressure.patterns import NEEDLE_FLICKERS
from knowledge.rule_api import (
    Computed,
    Conclusions,
    Known,
    LinkGroup,
    Statement,
    example,
    is_present,
    leads_to,
)
from knowledge.sources import JUDGEMENT
from knowledge.stations.bearings.findings import BEARING_KNOCK
from knowledge.stations.oil.causes import OIL_LEVEL_LOW
from knowledge.stations.relief.causes import RELIEF_DEBRIS
from knowledge.work import Access
from tests.support.command_line import call, in_eighty_columns
from tests.support.situations import CASES, facts_of_case

BOOK = the_book()
WHOLE = Whole(BOOK)
CHIP = "chip_under_the_ball"
SPUN = "primed_in_vain"


def but(table: str, id_: str, **changed: Any) -> Whole:
    """The book with one word changed."""
    word = replace(getattr(BOOK, table)[id_], **changed)
    return with_table(table, {**getattr(BOOK, table), id_: word})


def with_table(table: str, words: Mapping[str, Any]) -> Whole:
    return Whole(replace(BOOK, **{table: dict(words)}))


def with_rule(name: str, body: Callable[[Known], Conclusions], **changed: Any) -> Whole:
    """The book with one rule more."""
    chip = BOOK.links[CHIP]
    changed = {"matches": chip.matches, "non_matches": chip.non_matches, **changed}
    rule = replace(BOOK.rules[SPUN], id=name, does=body, station=Station.RELIEF, **changed)
    return with_table("rules", {**BOOK.rules, name: rule})


def group(**changed: Any) -> LinkGroup:
    """The link group of the chip under the ball with some fields changed."""
    return replace(BOOK.links[CHIP], links=(), **changed)


def with_group(changed: LinkGroup) -> Whole:
    """The book with that link group changed."""
    return with_table("links", {**BOOK.links, CHIP: changed})


def with_link_source(source: Any) -> Whole:
    """The book with the source of one of its links changed."""
    effects = {child: (strength, source) for child, (strength, _) in group().effects.items()}
    return with_group(group(effects=effects))


def same_link(_: Known) -> Conclusions:
    yield leads_to(RELIEF_DEBRIS, RELIEF_HELD_OPEN, MOSTLY, JUDGEMENT)


def odd_link(_: Known) -> Conclusions:
    yield leads_to(OIL_LEVEL_LOW, BEARING_KNOCK, Computed(0.123), JUDGEMENT)


def knock(known: Known) -> Conclusions:
    if known.has(NEEDLE_FLICKERS):
        yield is_present(BEARING_KNOCK)


def without_opening(place: Access) -> Whole:
    return Whole(
        BOOK, openings=lambda has: {a: o for a, o in WHOLE.openings(has).items() if a is not place}
    )


def needing(place: Access, *needs: Access) -> Whole:
    def openings(has: Any) -> Any:
        tree = WHOLE.openings(has)
        return {**tree, place: replace(tree[place], needs=needs)}

    return Whole(BOOK, openings=openings)


def too_late() -> Whole:
    """A check that is to come before the very place it lies behind."""
    line = BEFORE[0]
    return Whole(BOOK, before=(*BEFORE, replace(line, opening=line.check.access)))


def in_a_circle() -> Whole:
    """Two checks of one place, each to come before the other."""
    line = WHOLE.first_of[0]
    return Whole(
        BOOK, first_of=(*WHOLE.first_of, replace(line, check=line.then[0], then=(line.check,)))
    )


def unseen(cause: str) -> Whole:
    """No check reveals anything that this cause is known by."""
    shown = set()
    for layout in BOOK.layouts.values():
        seen = signatures(WHOLE, layout)
        if BOOK.causes[cause] in seen.causes:
            row = seen.likely[seen.causes.index(BOOK.causes[cause])]
            shown |= {f for f, known in zip(seen.findings, row, strict=True) if known}
    checks = {
        i: replace(c, reveals=tuple(f for f in c.reveals if f not in shown))
        for i, c in BOOK.inspections.items()
    }
    return with_table("inspections", checks)


def without_covered() -> Whole:
    """A task stands in for another that is not there."""
    gone = next(t for task in BOOK.tasks.values() for t in task.covers)
    return with_table("tasks", {i: t for i, t in BOOK.tasks.items() if t is not gone})


NO_TITLE = Source("X", "", "strong")
FINDING = replace(BEARING_KNOCK, id="somewhere_else")
BROKEN: list[tuple[Callable[[Whole], Result], Callable[[], Whole], str]] = [
    (names, lambda: but("causes", "oil_level_low", id="oil_level_lo"), "is stored under oil_level_low"),
    (names, lambda: with_table("causes", {**BOOK.causes, "Two words": replace(OIL_LEVEL_LOW, id="Two words")}), "is no id"),
    (names, lambda: with_table("conditions", {**BOOK.conditions, "oil_level_low": replace(RELIEF_BLEEDS, id="oil_level_low")}), "is used twice, in causes and conditions"),
    (names, lambda: but("inspections", "read_the_stick", reveals=(FINDING,)), "read_the_stick: reveals names somewhere_else"),
    (names, lambda: but("layouts", "dry_sump_race", has=(FINDING,)), "layouts: dry_sump_race: has names"),
    (names, without_covered, "which is not among the tasks"),
    (names, lambda: with_table("limits", {}), "which is not among the limits"),
    (names, lambda: with_table("measures", {}), "which is not among the measures"),
    (names, lambda: with_table("dimensions", {}), "which is not among the dimensions"),
    (names, lambda: with_table("layouts", {}), "which is not among the layouts"),
    (names, lambda: Whole(BOOK, before=(replace(BEFORE[0], check=replace(BEFORE[0].check, id="gone")),)), "precedence of gone"),
    (names, lambda: with_rule("odd", lambda _: iter([is_present(FINDING)])), "rule odd: finding names somewhere_else"),
    (names, lambda: Whole(BOOK, kept=frozenset({replace(BEFORE[0].check, id="gone")})), "checks always recorded names gone"),
    (sources, lambda: but("causes", "oil_level_low", source=NO_TITLE), "causes: oil_level_low: source 'X' has no title"),
    (sources, lambda: but("rules", SPUN, source=None), f"rules: {SPUN}: no source"),
    (sources, lambda: with_link_source(None), f"links: {CHIP}: relief_debris to relief_held_open: no source"),
    (sources, lambda: with_link_source(NO_TITLE), f"links: {CHIP}: relief_debris to fell_suddenly: source 'X' has no title"),
    (names, lambda: with_group(group(id="chip_under_a_ball")), f"links: chip_under_a_ball is stored under {CHIP}"),
    (names, lambda: with_table("links", {**BOOK.links, "A chip": group(id="A chip")}), "'A chip' is no id"),
    (names, lambda: with_group(group(effects={FINDING: (MOSTLY, JUDGEMENT)})), "names somewhere_else"),
    (sources, lambda: but("inspections", "read_the_stick", source=None), "minutes: a number without"),
    (sources, lambda: Whole(BOOK, before=(replace(BEFORE[0], source=NO_TITLE),)), "precedence of"),
    (strengths, lambda: with_rule("odd", odd_link), "0.123 is neither"),
    (strengths, lambda: but("causes", "oil_level_low", rate=3.3), "rate 3.3 is not"),
    (strengths, lambda: but("findings", "bearing_knock", background=0.1), "bearing_knock: background"),
    (strengths, lambda: with_table("links", {}), "leads to nothing"),
    (duplicates, lambda: with_rule("again", same_link), f"in more than one place: again, {CHIP}"),
    (duplicates, lambda: with_rule("again", BOOK.rules[SPUN].does, matches=BOOK.rules[SPUN].matches), "have the same conclusions"),
    (access, partial(without_opening, Access.SUMP_OFF), "sump_off cannot be opened"),
    (access, partial(without_opening, Access.CAM_OUT), "cannot be done: cam_out"),
    (access, lambda: needing(Access.SUMP_OFF, Access.TRAY_OFF), "need each other in a circle"),
    (access, lambda: needing(Access.VALLEY_OPEN), "valley_open cannot be reached from outside"),
    (access, too_late, "but needs it open"),
    (access, in_a_circle, "no order satisfies all precedence"),
    (access, lambda: but("inspections", "catch_sump_contents", needs_running=True), "it cannot run"),
    (reached, partial(unseen, "gallery_crack"), "no check reveals gallery_crack"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("check", "broken", "fault"), BROKEN, ids=lambda x: getattr(x, "__name__", None)
)
def test_each_fault_of_a_broken_book_is_found(
    check: Callable[[Whole], Result], broken: Callable[[], Whole], fault: str
) -> None:
    """One line for each fault, and this one among them."""
    faults = check(broken()).faults
    assert any(fault in f for f in faults), faults[:5]
    assert all("\n" not in f and f.strip() for f in faults)


FLICKERS = example(NEEDLE_FLICKERS)
NOTHING = example()


def rule(**changed: Any) -> Statement:
    """A rule that concludes a knock from a flickering needle, with some fields changed."""
    sound = {"does": knock, "matches": (FLICKERS,), "non_matches": (NOTHING,)}
    return replace(BOOK.rules[SPUN], **{**sound, **changed})


@pytest.mark.parametrize(
    ("broken", "fault"),
    [
        (lambda: group(says="No sentence"), "first line is not the sentence"),
        (lambda: rule(says="No sentence"), "first line is not the sentence"),
        (lambda: group(matches=()), "no example of a match"),
        (lambda: group(non_matches=()), "no example of a non-match"),
        (lambda: rule(matches=()), "no example of a match"),
        (lambda: rule(non_matches=()), "no example of a non-match"),
        (lambda: rule(matches=(NOTHING,)), "concludes nothing on its match 1"),
        (lambda: rule(non_matches=(NOTHING, FLICKERS)), "fires on its non-match 2"),
        (lambda: group(matches=(NOTHING,)), "match 1 makes none of relief_debris more probable"),
        (lambda: group(non_matches=group().matches), "non-match 1 is as probable as the matches"),
    ],
)
def test_faults_of_examples_are_found(broken: Callable[[], Statement], fault: str) -> None:
    """Each broken statement has its fault; the same statement unbroken has none."""
    found = list(of_statement(broken(), ExampleRunner(BOOK)))
    assert any(fault in f for f in found), found
    assert not list(of_statement(group(), ExampleRunner(BOOK)))
    assert not list(of_statement(rule(), ExampleRunner(BOOK)))


def test_examples_of_every_statement_are_run(monkeypatch: pytest.MonkeyPatch) -> None:
    """Each fault names its statement; run on one station, for the whole takes half a minute."""
    rules = {i: r for i, r in BOOK.rules.items() if r.station is Station.RELIEF}
    links = {i: r for i, r in BOOK.links.items() if r.station is Station.RELIEF}
    assert rules
    assert links
    broken_rule = replace(next(iter(rules.values())), says="No sentence")
    monkeypatch.setattr("diagnose.bookcheck.examples.infer", lambda _, f: infer(BOOK.statements, f))
    book = replace(
        BOOK,
        rules={**rules, broken_rule.id: broken_rule},
        links={**links, CHIP: group(says="No sentence")},
    )
    result = examples(Whole(book))
    assert [f for f in result.faults if "sentence" in f] == [
        f"rule {broken_rule.id}: its first line is not the sentence a person is shown",
        f"links {CHIP}: its first line is not the sentence a person is shown",
    ]
    assert result.counts["rules"] == len(rules)
    assert result.counts["link groups"] == len(links)


# ------------------------------------------------------------------------------ distinguishability


def test_what_distinguishes_two_causes() -> None:
    """Ten times likelier, and present, or absent, in at least half the cases of one."""
    one = np.array([0.60, 0.60, 0.40, 0.97, 0.97, 0.50])
    other = np.array([0.05, 0.07, 0.01, 0.60, 0.70, 0.02])
    # the fourth: absent in 3 % of the cases of one and 40 % of the other's, not in half of them
    assert distinguishing(one, other).tolist() == [True, False, False, False, False, True]
    assert distinguishing(other, one).tolist() == distinguishing(one, other).tolist()
    assert distinguishing(np.array([0.97]), np.array([0.5])).tolist() == [True]


def twins() -> Whole:
    """A second name for a cause, which leads to all that the first does."""
    twin = replace(RELIEF_DEBRIS, id="relief_debris_twin")

    effects = {
        link.child: (link.strength, link.source)
        for link in WHOLE.links
        if link.parent is RELIEF_DEBRIS
    }
    again = group(id="twin", parent=twin, effects=effects)
    book = replace(
        BOOK,
        causes={**BOOK.causes, twin.id: twin},
        links={**BOOK.links, "twin": again},
        layouts={"unknown": BOOK.layouts["unknown"]},
    )
    return Whole(book)


def test_a_cause_and_its_copy_are_indistinguishable() -> None:
    found = alike(twins())
    pairs = {frozenset((p.one.id, p.other.id)): p.layouts for p in found.indistinguishable}
    assert pairs[frozenset(("relief_debris", "relief_debris_twin"))] == 1
    assert found.neighbours > 1_000


@cache
def likeness() -> apart.Likeness:
    """Of the book as it is, worked out once."""
    return alike(WHOLE)


def test_pairs_of_the_book() -> None:
    """Known weak points; a new pair here is a cause that wants a finding of its own."""
    found = likeness()
    assert {(p.one.id, p.other.id) for p in found.indistinguishable} == {
        ("dirt_in_assembly", "part_shedding_inside"),
        ("overload_lugging", "poured_bearing_broken_up"),
    }
    assert found.opened
    assert not {(p.one, p.other) for p in found.indistinguishable} & {
        (p.one, p.other) for p in found.opened
    }


def test_statements_that_never_fire() -> None:
    """A rule fires where its conclusion bears on the case; another case only adds to these."""
    facts = facts_of_case("petrel")
    unused = never_fired(BOOK, {"petrel": facts})
    assert 0 < len(unused) < len(BOOK.statements)
    every = never_fired(BOOK, {name: facts_of_case(name) for name in CASES})
    assert set(every) < set(unused)
    assert never_fired(BOOK, {}) == list(BOOK.statements)


# ---------------------------------------------------------------------------- the command


@pytest.fixture
def quick(monkeypatch: pytest.MonkeyPatch) -> None:
    """Skip the examples, which take half a minute, and reuse the pairs: both have their tests."""
    monkeypatch.setattr(everything, "alike", lambda _: likeness())
    monkeypatch.setattr(
        everything, "CHECKS", tuple(c for c in everything.CHECKS if c is not examples)
    )


def test_every_kind_of_the_book_is_checked() -> None:
    assert set(TABLES) == {f.name for f in fields(Book)}
    assert examples in everything.CHECKS


@pytest.mark.usefixtures("quick")
def test_a_sound_book_ends_in_0() -> None:
    folder = Path(__file__).parents[2] / "cases"
    done = call("check", "--cases", folder)
    assert (done.code, done.err) == (0, "")
    in_eighty_columns(done.out)
    assert "Nothing is wrong with the book." in done.out
    assert f"{len(BOOK.layouts)} layouts" in done.out
    assert "dirt_in_assembly and part_shedding_inside" in done.out
    assert f"Run on {len(list(folder.glob('*.toml')))} cases" in done.out
    longer = call("check", "--all")
    assert len(longer.out) > len(done.out)
    assert "Only behind a cover:" in longer.out


@pytest.mark.usefixtures("quick")
def test_a_broken_book_ends_in_1(monkeypatch: pytest.MonkeyPatch) -> None:
    broken = but("rules", SPUN, source=NO_TITLE).book
    monkeypatch.setattr("knowledge.book.the_book", lambda: broken)
    done = call("check")
    assert done.code == 1
    assert "1 WRONG" in done.out
    assert f"- rules: {SPUN}: source 'X' has no title" in done.out
    assert "1 thing is wrong." in done.out
    as_json = call("check", "--json")
    assert as_json.code == 1
    data = json.loads(as_json.out)
    assert data["faults"] == 1
    assert [c["faults"] for c in data["checks"] if c["id"] == "sources"] == [
        [f"rules: {SPUN}: source 'X' has no title, or no statement of how far it can be trusted"]
    ]


@pytest.mark.usefixtures("quick")
def test_cases_that_cannot_be_read_are_left_out(tmp_path: Path) -> None:
    (tmp_path / "bad.toml").write_text("schema = 2\n")
    (tmp_path / "good.toml").write_text("schema = 1\n")
    done = call("check", "--cases", tmp_path)
    assert done.code == 0
    assert done.err.startswith(f"left out: {tmp_path}/bad.toml: schema")
    assert "Run on 1 case:" in done.out
    for folder in (tmp_path / "none", tmp_path / "bad.toml"):
        gone = call("check", "--cases", folder)
        assert (gone.code, gone.out, len(gone.err.splitlines())) == (66, "", 1)


def test_long_lists_are_cut_unless_all_is_asked_for() -> None:
    pair = likeness().opened[0]
    many = Checked((), apart.Likeness(90, (pair,) * 30, ()), 0, ())
    assert "and 18 more; --all lists them" in check_text(check_document(many))
    assert check_text(check_document(many), whole_lists=True).count(pair.one.id) == 30
