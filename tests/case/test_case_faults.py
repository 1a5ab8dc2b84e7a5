"""Every fault of a case is reported at once, whatever else is wrong beside it."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import from_text
from diagnose.errors import BadCaseError
from knowledge.book import the_book
from knowledge.model import Kind
from tests.support.command_line import call

BOOK = the_book()
BAD_WORD = '{no = 2, what = "bearing_nock", state = "present"}'


def faults(text: str) -> list[str]:
    with pytest.raises(BadCaseError) as bad:
        from_text(f"schema = 1\n{text}", None, BOOK)
    return list(bad.value.faults)


def test_an_entry_that_is_no_table_hides_none_after_it() -> None:
    found = faults(f"finding = [7, {BAD_WORD}, 8]")
    assert len(found) == 3
    assert found[0].startswith("finding[1]: must be a table")
    assert "bearing_knock" in " ".join(found)
    assert any(f.startswith("finding[3]: must be a table") for f in found)


def test_a_list_that_is_none_hides_no_other_table() -> None:
    found = faults('finding = 7\n[[reading]]\nno = 1\nrpm = "700 rpm"\npressure = "9 bananas"\n')
    assert len(found) == 2
    assert "finding: must be a list of tables" in found[0]
    assert "bananas" in found[1]


def test_a_limit_of_a_wrong_type_hides_none_beside_it() -> None:
    found = faults('[engine.limits]\nidle_speed = 3\nhot_idle_pressure = "9 bananas"\n')
    assert len(found) == 2
    assert any("idle_speed" in f and "must be text" in f for f in found)
    assert any("hot_idle_pressure" in f and "bananas" in f for f in found)


@pytest.mark.parametrize(
    ("name", "value", "says"),
    [
        ("main_diameter", "900 in", "cannot be"),
        ("main_diameter", "9 bananas", "bananas"),
        ("main_diametre", "2 in", "main_diameter"),
    ],
)
def test_a_dimension_is_checked(name: str, value: str, says: str) -> None:
    (found,) = faults(f'[engine.dimensions]\n{name} = "{value}"\n')
    assert says in found


def test_a_good_dimension_is_read() -> None:
    text = 'schema = 1\n[engine.dimensions]\nmain_diameter = "2 in"\n'
    ((what, value),) = from_text(text, None, BOOK).dimensions.items()
    assert what.id == "main_diameter"
    assert value == pytest.approx(0.0508)


@pytest.mark.parametrize("state", ["present", "absent"])
def test_a_measure_needs_its_value(state: str) -> None:
    (found,) = faults(f'[[finding]]\nno = 1\nwhat = "main_clearance"\nstate = "{state}"\n')
    assert "'main_clearance' is measured; write value" in found
    unknown = 'schema = 1\n[[finding]]\nno = 1\nwhat = "main_clearance"\nstate = "unknown"\n'
    assert from_text(unknown, None, BOOK).facts().measures == {}


def test_a_fault_of_what_is_typed_names_it_as_typed(tmp_path: Path) -> None:
    """The entry has no number yet: it goes by its own name."""
    case = tmp_path / "case.toml"
    case.write_text("schema = 1\n", "utf-8")
    before = case.read_bytes()
    done = call("record", case, "main_clearance=900 mm")
    assert done.code == 2
    assert "main_clearance" in done.err
    assert "no = 1" not in done.err
    assert case.read_bytes() == before


@pytest.mark.parametrize("ending", ["", "\n", "\n\n"])
def test_an_entry_begins_on_a_line_of_its_own(ending: str, tmp_path: Path) -> None:
    case = tmp_path / "case.toml"
    case.write_text(f"schema = 1{ending}", "utf-8")
    assert call("record", case, "needle_flickers=yes").code == 0
    text = case.read_text("utf-8")
    assert text.startswith(f"schema = 1{ending}")
    assert "\n[[finding]]\n" in text


def test_a_case_up_to_an_entry_holds_those_before_it_in_any_order() -> None:
    """Entries go by their numbers, not by their place in the file."""
    entry = '[[finding]]\nno = {}\nwhat = "{}"\nstate = "present"\n'
    text = "schema = 1\n" + "".join(
        entry.format(no, what)
        for no, what in ((3, "bearing_knock"), (1, "oil_milky"), (2, "needle_flickers"))
    )
    cut = from_text(text, None, BOOK, 2)
    seen = {f.id for f in cut.facts().observations if f.kind is not Kind.LAYOUT}
    assert seen == {"oil_milky", "needle_flickers"}
    assert cut.last_number == 2


def test_an_answer_not_known_hides_no_clash_after_it() -> None:
    entry = '[[finding]]\nno = {}\nwhat = "{}"\nstate = "{}"\n'
    rows = (
        (1, "oil_milky", "unknown"),
        (2, "bearing_knock", "present"),
        (3, "bearing_knock", "absent"),
    )
    (found,) = faults("".join(entry.format(*row) for row in rows))
    assert "no = 3: says absent where no = 2 says present" in found
