"""``record`` in words: the entries they become, the verdict on each value, and what is ambiguous."""

from __future__ import annotations

import io
from pathlib import Path
from unittest.mock import patch

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose.case.case import Case
from diagnose.case.loading import from_text, load
from diagnose.case.writing import Appended, NewEntry
from diagnose.cli import app
from diagnose.entry.candidates import MOST, candidates
from diagnose.entry.details import Details
from diagnose.entry.recording import Input, new_entries, record
from diagnose.entry.spoken import Choice, is_words, resolve
from diagnose.errors import UsageError
from diagnose.output.documents.verdicts import DECIMALS, shown, verdicts
from knowledge.book import the_book
from knowledge.limits import Limit, Side
from knowledge.pressure.quantities import HOT_IDLE_PRESSURE, STOP_IDLE_PRESSURE
from knowledge.stations.bearings.quantities import MOST_MAIN_CLEARANCE
from knowledge.units import DIMENSIONS, PSI, show
from tests.support.command_line import call
from tests.support.examples import examples
from tests.support.fuzzing import CODES

BOOK = the_book()
EMPTY = "schema = 1\n"
CASE = from_text(EMPTY, None, BOOK)
OWN = from_text('schema = 1\n[engine.limits]\nmain_clearance = "3 thou"\n', None, BOOK)

#: words, and what each entry holds
RECORDED = {
    "oil level ok": ["level_correct present"],
    "no leaks": ["oil_seen_outside absent"],
    "no knock": ["bearing_knock absent"],
    "metal in the filter": ["metal_in_filter present"],
    "mains 4.5 thou": ["main_clearance 4.5 thou"],
    "no 3 main 0.006 in": ["main_clearance 0.006 in @ main 3"],
    "mains 4 thou and rods 3 thou": ["main_clearance 4 thou", "rod_clearance 3 thou"],
    "#2 rod 3 thou, #3 rod 5 thou": [
        "rod_clearance 3 thou @ rod 2",
        "rod_clearance 5 thou @ rod 3",
    ],
    "end float 8 thou": ["crank_end_float 8 thou"],
    "pump cover clearance .004": ["pump_end_clearance 0.004 in"],
    "relief spring 52 mm long": ["relief_spring_length 52 mm"],
    "relief opens at 45 psi on the bench": ["relief_setting 45 psi"],
    "5 psi at hot idle": ["reading 5 psi"],
    "2.5 bar cold": ["reading 2.5 bar"],
    "hot idle 0,8 bar, 3,5 at 3000 rpm": ["reading 3.5 bar", "reading 0.8 bar"],
    "mains 0,06 mm": ["main_clearance 0.06 mm"],
    "new sender made no difference": ["new_sender no difference"],
    "lifters ticking": ["behaviour ticking"],
    "needle_flickers=yes": ["needle_flickers present"],
    'main_clearance="0.1 mm"'.replace('"', ""): ["main_clearance 0.1 mm"],
    "Main-Clearance = 0.1 mm": ["main_clearance 0.1 mm"],
}


def _entries(*texts: str, case: Case = CASE, details: Details | None = None) -> list[NewEntry]:
    given = Input(facts=texts, details=details or Details())
    return list(new_entries(given, case, BOOK))


def _short(entry: NewEntry) -> str:
    fields = entry.fields
    name = fields.get("what") or entry.kind
    keys = ("value", "state", "pressure", "result", "shows")
    value = next(fields[k] for k in keys if fields.get(k))
    where = f" @ {fields['where']}" if fields.get("where") else ""
    return f"{name} {value}{where}"


@pytest.mark.parametrize("text", RECORDED)
def test_words_become_entries(text: str) -> None:
    """Ids and words alike."""
    assert [_short(e) for e in _entries(text)] == RECORDED[text]


def test_many_at_once_go_together() -> None:
    """Each with its own words as its note."""
    made = _entries("oil level ok", "mains 4.5 thou", "bearing_knock=no")
    notes = {str(e.fields["what"]): e.fields["note"] for e in made}
    assert notes == {
        "level_correct": "oil level ok",
        "main_clearance": "mains 4.5 thou",
        "bearing_knock": None,
    }


def test_a_note_stands_before_the_words_and_a_place_before_theirs() -> None:
    """What an option says is kept."""
    details = Details(note="cold engine", where="main 5", by="Ann")
    [entry] = _entries("no 3 main 6 thou", details=details)
    assert entry.fields["note"] == "cold engine; no 3 main 6 thou"
    assert (entry.fields["where"], entry.fields["by"]) == ("main 5", "Ann")


def test_what_is_left_over_stays_in_the_note() -> None:
    """Nothing of the words is lost."""
    made = _entries("mains 4 thou, rods 3 thou, frobnicated the wibbler")
    assert "frobnicated the wibbler" in str(made[0].fields["note"])


def test_a_figure_of_the_maker_leaves_the_rest_to_be_saved() -> None:
    """What was read is an entry; the book's own figure is said to belong on a card."""
    resolved = resolve(["spec is 45 psi at 2000, i get 28"], BOOK)
    assert [f.short for s in resolved.spoken for f in s.facts] == ["reading 28 psi 2000 rpm"]
    assert not resolved.unclear
    assert ["45 psi" in line and "card" in line for line in resolved.left_out] == [True]


@pytest.mark.parametrize("text", ["relief_ball=yes", "main_clearance", "=yes", "yes", "=", "a=b"])
def test_ids_are_not_taken_for_words(text: str) -> None:
    """A misspelt id is refused as before, with the nearest right one."""
    assert not is_words(text, BOOK)


# ------------------------------------------------------------------------- ambiguous


def test_ambiguous_words_are_one_line_with_sentences_and_ids() -> None:
    """Nothing is written; the other words are not either."""
    with pytest.raises(UsageError) as error:
        _entries("mains 4.5 thou", "backlash 12 thou", "wibble frobnicate")
    lines = str(error.value).splitlines()
    assert len(lines) == 2
    assert "not clear; it may mean: " in lines[0]
    assert 'pump_backlash="12 thou"' in lines[0]
    assert lines[1] == (
        "'wibble frobnicate': not understood; say it in other words, or try diagnose lookup"
    )


@pytest.mark.parametrize(
    ("text", "said"),
    [
        (
            "small block v8",
            'how the engine is made; write layout = "distributor_v8" into its [engine]',
        ),
        ("would a new pump help?", "a question, a plan or of another engine; say what was seen"),
        ("my brother's mains are 6 thou", "a question, a plan or of another engine"),
        ("is 4 thou too much for the mains?", "a question, a plan or of another engine"),
        ("mains 900 mm", "nothing that is measured can be 900 mm"),
        ("main clearance", "give its value too, like 'main clearance 0.0045 in'"),
        ("cap torque 12 ft lbs", "not clear; it may mean: "),
        ("relief valve odd", "not clear; it may mean: "),
    ],
)
def test_what_cannot_be_recorded_says_why(text: str, said: str) -> None:
    """One line each, and nothing is guessed."""
    with pytest.raises(UsageError) as error:
        _entries(text)
    assert "\n" not in str(error.value)
    assert str(error.value).startswith(f"'{text}': {said}")


def test_the_words_of_an_id_are_the_finding() -> None:
    """As a person reads them off a sheet, without the "=yes"."""
    [entry] = _entries("switch opens wrong")
    assert (entry.fields["what"], entry.fields["state"]) == ("switch_opens_wrong", "present")


def test_a_part_of_the_engine_is_no_finding() -> None:
    """It says where the figure belongs."""
    with pytest.raises(
        UsageError, match=r'filter_bypass = "12 psi" into its \[engine.dimensions\]'
    ):
        _entries("filter bypass opens at 12 psi")


def test_the_chosen_candidate_is_recorded_and_no_other() -> None:
    """The choice is asked once; None refuses."""
    asked: list[Choice] = []

    def second(choice: Choice) -> int:
        asked.append(choice)
        return 1

    given = Input(facts=["clearance 4 thou"], choose=second)
    [entry] = new_entries(given, CASE, BOOK)
    [choice] = asked
    assert entry.fields["what"] == choice.candidates[1].id
    assert entry.fields["value"] == "4 thou"
    with pytest.raises(UsageError, match="none of these; nothing is saved"):
        new_entries(Input(facts=["clearance 4 thou"], choose=lambda _: None), CASE, BOOK)


def test_a_value_is_offered_as_a_measure_not_as_a_task_of_the_same() -> None:
    """A quantity is offered once; what only a task measures is offered as that."""
    offered = {c.id for c in candidates("clearance 4 thou", BOOK)}
    assert {"main_clearance", "rod_clearance"} <= offered
    assert "main_clearance_fitted" not in offered
    assert "relief_cap_torqued" in {c.id for c in candidates("cap torque 12 ft lbs", BOOK)}


def test_a_denied_phrase_offers_that_it_is_not_there() -> None:
    """ "no ... " is never offered as a finding that is there."""
    found = candidates("there was not any wear on the ball of the relief", BOOK)
    assert 0 < len(found) <= MOST
    assert {c.fact.state for c in found} == {"absent"}
    assert all(c.typed.endswith("=no") for c in found)


class _Terminal(io.StringIO):
    def isatty(self) -> bool:
        return True


@pytest.mark.parametrize(("lines", "saved"), [("1\n", 1), ("99\nx\n1\n", 1), ("\n", 0), ("", 0)])
def test_on_a_terminal(
    lines: str, saved: int, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A numbered choice; Enter or the end of the input saves nothing of that phrase."""
    path = tmp_path / "c.toml"
    path.write_text(EMPTY, "utf-8")
    with patch("sys.stdin", _Terminal(lines)), pytest.raises(SystemExit) as end:
        app.main(["record", str(path), "backlash 12 thou", "oil level ok"])
    shown = capsys.readouterr().err
    assert " 1. backlash between the pump's gears: 12 thou [pump_backlash]" in shown
    case = load(path, BOOK)
    assert len(case.measurements) == saved
    assert len(case.finding_records) == 1
    assert ("nothing is saved of it" in shown) is not bool(saved)
    assert end.value.code in (0, None)


# ------------------------------------------------------------------------- verdicts


def _verdict(text: str, case: Case = CASE) -> str:
    """The verdict on the first entry of some words."""
    made = tuple(_entries(text, case=case))
    tables = "\n".join(_table(i, e) for i, e in enumerate(made, 1))
    limits = "".join(
        f'[engine.limits]\n{x.id} = "{show(v, DIMENSIONS[x.dimension], digits=8)}"\n'
        for x, v in case.limits.items()
    )
    after = from_text(f"{EMPTY}{limits}{tables}", None, BOOK)
    return verdicts(Appended(case, after, made), BOOK).get(1, "")


def _table(number: int, entry: NewEntry) -> str:
    kept = {k: v for k, v in entry.fields.items() if isinstance(v, str)}
    rows = "\n".join(f"{k} = {v!r}" for k, v in kept.items())
    return f"[[{entry.kind}]]\nno = {number}\n{rows}\n"


@pytest.mark.parametrize(
    ("text", "begins"),
    [
        ("mains 4.5 thou", "over the limit of 3.5 thou by 1 ("),
        ("mains .0045", "over the limit of 0.0035 in by 0.001 ("),
        ("mains 0.1 mm", "over the limit of 0.089 mm by 0.011 ("),
        ("mains 2 thou", "within limits: at most 3.5 thou ("),
        ("mains 0.5 thou", "under the limit of 1 thou by 0.5 ("),
        ("relief spring 52 mm long", "no limit in the book; the engine maker's figure decides"),
        ("sender reads 200 ohms", "should be 240 ohms ("),
        ("oil temp 125 C", "over the limit of 121 C by 4 ("),
        ("fuel dilution 3 %", "within limits: at most 4 % ("),
        ("pickup is 1 in off the pan", "over the limit of 0.5 in by 0.5 ("),
        ("5 psi at hot idle", "under the limit of 7 psi by 2 ("),
        ("8 psi at hot idle", "under the limit of 10 psi by 2 ("),
        ("0.4 bar at hot idle", "under the limit of 0.5 bar by 0.1 ("),
        ("12 psi at hot idle", "within limits: at least 7 psi ("),
        ("15 psi at 2500 rpm hot", "under the limit of 20 psi by 5 ("),
        ("60 psi cold", ""),
    ],
)
def test_a_value_is_answered_at_once(text: str, begins: str) -> None:
    """In the unit that was typed, with the limit and its source."""
    said = _verdict(text)
    assert said.startswith(begins)
    assert bool(said) == bool(begins)


def test_the_engines_own_figure_comes_first() -> None:
    """As the rules have it."""
    assert _verdict("mains 4.5 thou", OWN) == (
        "over the limit of 3 thou by 1.5 (this engine's own figure)"
    )


@pytest.mark.parametrize(
    "limit",
    [x for x in BOOK.limits.values() if any(q.id in BOOK.measures for q in x.quantities)],
    ids=lambda x: x.id,
)
def test_figures_are_those_that_are_published(limit: Limit) -> None:
    """A value a tenth beyond the book's figure is beyond it by a tenth; a value inside is not."""
    measure = next(BOOK.measures[q.id] for q in limit.quantities if q.id in BOOK.measures)
    dimension = DIMENSIONS[measure.dimension]
    unit = dimension.units[0]
    printed = limit.printed(CASE.has)
    if not printed:
        assert limit.typical_only_with, "else what is typical would judge it"
        value = show(limit.typical, dimension, digits=9)
        assert _verdict(f"{measure.id}={value}") == "no figure for this engine: enter yours"
        return
    way = -1 if limit.side is Side.LEAST else 1
    step = 0.1 * abs(printed[0].value - unit.offset)
    figure = shown(printed[0].value, dimension, None)
    least = 0.51 * 10.0 ** -DECIMALS.get(unit.names[0], 9)
    for sign, word in ((1, {Side.LEAST: "under", Side.MOST: "over"}), (-1, {})):
        value = show(printed[0].value + sign * way * step, dimension, digits=9)
        said = _verdict(f"{measure.id}={value}")
        if limit.side is Side.NOMINAL:
            assert said.startswith(f"should be {figure} (")
        elif sign == 1:
            assert said.startswith(f"{word[limit.side]} the limit of {figure} by ")
            by = float(said.split(" by ")[1].split()[0])
            assert by == pytest.approx(step / unit.factor, rel=0.01, abs=least)
        else:
            assert said.startswith("within limits: ")
            assert f"{figure} (" in said


def test_limits_of_the_table_are_the_books() -> None:
    """The figures written above."""
    assert MOST_MAIN_CLEARANCE.typical == pytest.approx(0.0035 * 0.0254)
    assert STOP_IDLE_PRESSURE.typical == pytest.approx(7 * PSI)
    assert HOT_IDLE_PRESSURE.typical == pytest.approx(10 * PSI)


# ------------------------------------------------------------------------- hostile text

WILD = st.one_of(
    st.text(min_size=1, max_size=60),
    st.text(alphabet="\x00\x07\x1b[]\u202e\n\r\"'=%{}$`<>;\\ 0123456789.", max_size=40),
    st.lists(
        st.sampled_from(
            [
                *(
                    "mains",
                    "4.5 thou",
                    "no",
                    "not",
                    "relief",
                    "ball",
                    "5 psi",
                    "hot idle",
                    "=",
                    ",",
                ),
                *("pickup", "1/4 in", "#", "3", ".004", "?", "and", "oil", "\x1b[2J", "rods", "%"),
            ]
        ),
        max_size=9,
    ).map(" ".join),
)


@given(st.lists(WILD, min_size=1, max_size=3))
@settings(max_examples=examples(60), deadline=None)
def test_random_words_to_record(tmp_path_factory: pytest.TempPathFactory, words: list[str]) -> None:
    """No traceback; what is clear is saved with its words, and the rest is named."""
    path = tmp_path_factory.mktemp("fuzz") / "c.toml"
    path.write_text(EMPTY, "utf-8")
    done = call("record", path, *["--", *words])
    assert done.code in CODES
    assert "Traceback" not in done.err
    assert not any(ord(c) < 32 and c != "\n" for c in done.out + done.err)
    after = path.read_text("utf-8")
    assert after.startswith(EMPTY)
    load(path, BOOK)
    if done.code and after != EMPTY:
        assert "not saved" in done.out + done.err


@given(st.one_of(WILD, st.lists(WILD, max_size=4).map(". ".join)))
@settings(max_examples=examples(60), deadline=None)
def test_random_words_to_tell(tmp_path_factory: pytest.TempPathFactory, words: str) -> None:
    """No traceback; a new case keeps every word."""
    path = tmp_path_factory.mktemp("fuzz") / "c.toml"
    done = call("tell", path, "--yes", "--", words)
    assert done.code in CODES
    assert not any(ord(c) < 32 and c != "\n" for c in done.out + done.err)
    if done.code == 0:
        assert load(path, BOOK).job.complaint == words.strip()


def test_what_words_say_twice_costs_the_others_nothing(tmp_path: Path) -> None:
    """The good phrases are saved; the doubtful thing is named."""
    path = tmp_path / "tern.toml"
    path.write_text("schema = 1\n", "utf-8")
    twice = ("relief spring length 62 mm", "relief spring length 70 mm")
    saved = record(path, BOOK, Input(facts=["oil level ok", *twice]))
    assert [r.finding.id for r in saved.after.finding_records] == ["level_correct"]
    assert saved.refused == (
        "relief_spring_length: given 2 times; for several places use --where, one command each",
    )
    assert not saved.after.measurements
