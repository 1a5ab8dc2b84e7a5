"""Reading a case: every fault is reported at once, and a wrong file only gives faults."""

from __future__ import annotations

import os
import time
from pathlib import Path

import pytest

from diagnose.case.loading import LARGEST, from_text, load
from diagnose.case.writing import append, table_text
from diagnose.errors import BadCaseError, NoCaseError
from diagnose.output.documents.entries import entry_lines
from knowledge.book import the_book
from tests.support.command_line import anyones, as_nobody

BOOK = the_book()
HEAD = "schema = 1\n"
__all__ = ["anyones"]
KNOCK = '[[finding]]\nno = {no}\nwhat = "bearing_knock"\nstate = "{state}"\n'


def faults(text: str) -> list[str]:
    with pytest.raises(BadCaseError) as bad:
        from_text(text, Path("x.toml"), BOOK)
    assert all(line.startswith("x.toml: ") for line in str(bad.value).split("\n"))
    return list(bad.value.faults)


def finding(**fields: object) -> str:
    return HEAD + table_text("[[finding]]", {"no": 1, **fields})  # type: ignore[dict-item]


#: what is wrong, and what must be said of it
BAD: list[tuple[str, str, list[str]]] = [
    ("empty", "", ["schema: missing", "schema = 1"]),
    ("schema of tomorrow", "schema = 2\n", ["schema: '2' is unknown here; this is 1"]),
    ("schema true", "schema = true\n", ["schema: true is unknown"]),
    ("no TOML", "schema = \n", ["not a TOML file", "line 1"]),
    ("cut short", HEAD + '[job]\ntitle = "My bo', ["not a TOML file"]),
    ("key twice", HEAD + "[job]\n[job]\n", ["not a TOML file"]),
    ("unknown table", HEAD + "[[findings]]\n", ["findings: no such table", "'finding'"]),
    ("unknown key", finding(what="bearing_knock", stat="present"), ["stat: no such", "'state'"]),
    ("unknown word", finding(what="bearing_nock", state="present"), ["'bearing_knock'"]),
    ("unknown layout", HEAD + '[engine]\nlayout = "distributor-v6"\n', ["'distributor_v8'"]),
    ("unknown feature", HEAD + '[engine]\nhas = ["turbo_charged"]\n', ["'turbocharged'"]),
    ("unknown limit", HEAD + '[engine.limits]\nidle_sped = "9 rpm"\n', ["'idle_speed'"]),
    ("unknown cause", HEAD + '[expect]\nfirst = ["relief_debri"]\n', ["'relief_debris'"]),
    ("unknown state", finding(what="bearing_knock", state="yes"), ["'yes' is not 'present', "]),
    ("no state", finding(what="bearing_knock"), ["state is missing"]),
    ("value of no measure", finding(what="bearing_knock", value="3"), ["is not measured"]),
    ("measure without value", finding(what="main_clearance"), ["is measured", "0.0045 in"]),
    ("wrong unit", finding(what="main_clearance", value="4 psi"), ["'4 psi' is no length", "mm"]),
    ("comma", finding(what="drained_volume", value="1,500 l"), ["'1,500 l' is no volume"]),
    ("below zero", finding(what="main_clearance", value="-0.001 in"), ["cannot be", "0.0787 in"]),
    ("too wide", finding(what="main_clearance", value="9 mm"), ["expected 0 mm to 2 mm"]),
    ("limit of nothing", HEAD + '[engine.limits]\nidle_speed = "0 rpm"\n', ["above zero"]),
    (
        "900 psi",
        HEAD + '[[reading]]\nno = 1\nrpm = "700 rpm"\npressure = "900 psi"\n',
        ["'900 psi' cannot be right", "300 psi"],
    ),
    ("no pressure", HEAD + '[[reading]]\nno = 1\nrpm = "700 rpm"\n', ["pressure is missing"]),
    (
        "unknown speed",
        HEAD + '[[reading]]\nno = 1\nrpm = "hot idel"\npressure = "9 psi"\n',
        ["rpm: 'hot idel' is not known. Did you mean 'hot idle'?"],
    ),
    (
        "unknown heat",
        HEAD + '[[reading]]\nno = 1\noil = "coldish"\npressure = "9 psi"\n',
        ["oil: 'coldish' is not known. Did you mean 'cold'?"],
    ),
    (
        "unknown circumstance",
        HEAD + '[[reading]]\nno = 1\nduring = ["bend"]\npressure = "9 psi"\n',
        ["during: 'bend' is not known. Did you mean 'bends'?"],
    ),
    (
        "both ways",
        HEAD + '[engine]\nhas = ["diesel"]\nlacks = ["diesel"]\n',
        ["stands under both has and lacks"],
    ),
    (
        "number twice",
        HEAD + KNOCK.format(no=3, state="present") + KNOCK.format(no=3, state="present"),
        ["no = 3: the number is used twice"],
    ),
    (
        "replaces nothing",
        HEAD + KNOCK.format(no=3, state="present") + "replaces = 9\n",
        ["replaces = 9 names no earlier entry"],
    ),
    (
        "replaces itself",
        HEAD + KNOCK.format(no=3, state="present") + "replaces = 3\n",
        ["replaces = 3 names no earlier entry"],
    ),
    (
        "replaces a reading",
        HEAD
        + '[[reading]]\nno = 1\nrpm = "700 rpm"\npressure = "9 psi"\n'
        + KNOCK.format(no=2, state="present")
        + "replaces = 1\n",
        ["replaces = 1 is of another kind"],
    ),
    (
        "contradiction",
        HEAD + KNOCK.format(no=1, state="present") + KNOCK.format(no=2, state="absent"),
        ["no = 2: says absent where no = 1 says present", "add replaces = 1"],
    ),
    ("number zero", HEAD + KNOCK.format(no=0, state="present"), ["no: '0' must be a whole"]),
    ("sure of little", finding(what="bearing_knock", state="present", sure=0.2), ["0.5 to 1"]),
    ("too long", HEAD + f'[job]\nnote = "{"a" * 20_000}"\n', ["20,000 characters; at most 10,000"]),
    ("deep lists", HEAD + "x = " + "[" * 10_000, ["nested too deep"]),
    ("deep lists, closed", HEAD + f"x = {'[' * 10_000}{']' * 10_000}", ["nested too deep"]),
    ("deep tables", HEAD + f"x = {'{a=' * 10_000}1{'}' * 10_000}", ["nested too deep"]),
    ("deep keys", HEAD + "a." * 10_000 + "b = 1", ["nested too deep"]),
    ("deep headers", HEAD + f"[[{'a.' * 400_000}b]]", ["nested too deep"]),
    ("many blanks", HEAD + (" " * 60_000 + "[\n") * 30, ["not a TOML file"]),
    ("deep quoted keys", HEAD + '"=".' * 400_000 + "b = 1", ["nested too deep"]),
    ("deep limits", HEAD + f"[engine.limits{'.a' * 20}]", ["limits.a: a table must be text"]),
    ("deep schema", f"schema{'.a' * 20} = 1", ["schema: a table is unknown"]),
    ("long number", f"schema = {'1' * 10_000}", ["a number too long"]),
    ("long hexadecimal", f"schema = 0x{'f' * 10_000}", ["a number of many digits"]),
    ("crowd", HEAD + f"[engine]\nhas = [{'1,' * 400_000}]", ["400,000 entries; at most 1,000"]),
]


@pytest.mark.parametrize(("text", "parts"), [b[1:] for b in BAD], ids=[b[0] for b in BAD])
def test_faults_of_a_bad_case_are_named(text: str, parts: list[str]) -> None:
    began = time.process_time()
    [fault] = faults(text)
    assert time.process_time() - began < 5
    assert fault.isprintable()
    assert len(fault) < 400
    for part in parts:
        assert part in fault


@pytest.mark.parametrize("value", ["1", "1.5", "true", "[1]", "{a = 1}", "07:32:00", "inf"])
def test_wrong_types_everywhere(value: str) -> None:
    """Each field in turn holds a value of a wrong type; each is named."""
    tables = {
        "[job]": ["title", "by", "note", "opened"],
        "[engine]": ["layout", "has", "limits", "oil"],
        "[expect]": ["first", "among_three"],
        "[[finding]]": ["what", "state", "value", "where", "when", "learned"],
        "[[reading]]": ["rpm", "oil", "pressure", "gauge", "tap", "when", "state"],
    }
    for header, keys in tables.items():
        usual = 'no = 1\nwhat = "bearing_knock"\nstate = "present"\n'
        if header == "[[reading]]":
            usual = 'no = 1\nrpm = "700 rpm"\npressure = "9 psi"\n'
        lines = usual.splitlines() if header.startswith("[[") else []
        for key in keys:
            kept = [line for line in lines if not line.startswith(f"{key} ")]
            text = "\n".join([HEAD, header, *kept, f"{key} = {value}"])
            assert any(key in fault for fault in faults(text)), text
        if value != "1" and header.startswith("[["):
            text = "\n".join([HEAD, header, *lines[1:], f"no = {value}"])
            assert any(".no:" in fault for fault in faults(text)), text
        assert faults(f"{HEAD}{header.strip('[]')} = {value}\n")


def test_all_faults_at_once() -> None:
    """One word wrong in a table hides no other fault of the table, and makes no false one."""
    text = """
schema = 1
[job]
titel = "x"
[engine]
layout = "distributor_v9"
has = ["dieselx", 1]
[[finding]]
no = 1
what = "bearing_nock"
state = "presnt"
[[finding]]
no = 2
what = "bearing_knock"
stat = "present"
replaces = 1
[[finding]]
no = 3
what = "main_clearance"
value = "4,2,1 mm"
when = "2026-05-01"
[[reading]]
no = 4
rpm = "9 rpm"
presure = "9 psi"
[[reeding]]
"""
    found = faults(text)
    for part in (
        "reeding: no such table. Did you mean 'reading'?",
        "job.titel: no such field. Did you mean 'title'?",
        "engine.layout: no such layout 'distributor_v9'. Did you mean 'distributor_v8'?",
        "engine.has[2]: '1' must be text, in quotes",
        "engine.has: no such feature 'dieselx'. Did you mean 'diesel'?",
        "finding no = 1.state: 'presnt' is not 'present', 'absent', 'unknown' or 'withdrawn'. "
        "Did you mean 'present'?",
        "finding no = 2.stat: no such field. Did you mean 'state'?",
        "finding no = 3: '4,2,1 mm' is no length here; write it like 0.0045 in, 0.11 mm or 4.5 thou, "
        "without a comma",
        "finding no = 3.when: '2026-05-01' must be a date, written 2026-05-01 without quotes",
        "reading no = 4: rpm '9 rpm' cannot be right; expected 50 rpm to 20000 rpm",
        "reading no = 4.presure: no such field. Did you mean 'pressure'?",
    ):
        assert part in found
    assert len(found) == 11  # entry 1 is replaced, so its word need not be known any more


def test_very_many_faults_are_cut_short() -> None:
    text = HEAD + "".join(f'[[finding]]\nno = {n}\nwhat = "zzz{n}"\n' for n in range(1, 2_000))
    found = faults(text)
    assert len(found) == 41
    assert found[-1] == "and at least 60 more"


# --------------------------------------------------------------------------- whole files


def refused(path: Path) -> str:
    with pytest.raises(BadCaseError) as bad:
        load(path, BOOK)
    return str(bad.value)


def test_files_that_are_no_text(tmp_path: Path) -> None:
    path = tmp_path / "x.toml"
    path.write_bytes("schema = 1 # mü".encode("latin-1"))
    assert "byte 14 is not UTF-8 text; save the file as UTF-8" in refused(path)
    path.write_bytes(HEAD.encode("utf-16"))
    assert "byte 0 is not UTF-8" in refused(path)
    path.write_bytes(b"\x00" * 100)
    assert "not a TOML file" in refused(path)


def test_a_file_of_50_mb_is_refused_at_once(tmp_path: Path) -> None:
    path = tmp_path / "x.toml"
    with path.open("wb") as file:
        file.truncate(50_000_000)
    began = time.perf_counter()
    assert f"50,000,000 bytes; a case is at most {LARGEST:,}" in refused(path)
    assert time.perf_counter() - began < 1


def test_files_that_are_not_there(tmp_path: Path) -> None:
    (tmp_path / "petrel.toml").write_text(HEAD)
    (tmp_path / "gone.toml").symlink_to(tmp_path / "nowhere")
    (tmp_path / "loop.toml").symlink_to(tmp_path / "loop.toml")
    os.mkfifo(tmp_path / "pipe.toml")
    for name, message in {
        "petral.toml": "no such case; did you mean",
        "folder/x.toml": "there is no folder",
        "petrel.toml/x.toml": "there is no folder",
        ".": "is a folder; name a case file in it",
        "gone.toml": "is a link to a file that is not there",
        "loop.toml": "symbolic links",
        "pipe.toml": "is no ordinary file",
        "a" * 300: "File name too long",
        "a\0b": "no such file name",
        "a\nb": "a\\nb: no such case",
    }.items():
        with pytest.raises(NoCaseError) as missing:
            load(tmp_path / name, BOOK)
        assert message in str(missing.value)
        assert "\n" not in str(missing.value)


def test_a_file_one_may_not_read(anyones: Path) -> None:
    path = anyones / "x.toml"
    path.write_text(HEAD)
    path.chmod(0)
    code, _, err = as_nobody("review", str(path))
    assert (code, err) == (66, f"{path}: no permission to read it\n")


def test_a_folder_one_may_not_enter(anyones: Path) -> None:
    (anyones / "x.toml").write_text(HEAD)
    anyones.chmod(0)
    code, _, err = as_nobody("review", str(anyones / "x.toml"))
    anyones.chmod(0o777)
    assert (code, err) == (66, f"{anyones / 'x.toml'}: no permission to read it\n")


def test_odd_files_that_are_cases(tmp_path: Path) -> None:
    path = tmp_path / "x.toml"
    dots = HEAD + '[job]\nnote = """\n' + "." * 5000 + "a.\n" * 50 + '"""\n'
    for text in (dots, "\ufeff" + HEAD, HEAD.replace("\n", "\r\n"), HEAD.strip(), "#x\n" + HEAD):
        path.write_bytes(text.encode())
        append(path, BOOK, [("finding", {"what": "bearing_knock", "state": "present"})])
        assert path.read_bytes().startswith(text.encode())
        assert load(path, BOOK).last_number == 1


def test_ids_are_read_in_any_spelling_and_shown_again() -> None:
    """Capitals, hyphens and spaces in a file written by hand are no difference anywhere."""
    rows = (
        '[engine]\nlayout = "{}"\nhas = ["{}"]\n[[finding]]\nno = 1\nwhat = "{}"\nstate = "present"\n'
        '[[work]]\nno = 2\nwhat = "{}"\nvalue = "50 psi"\n[[closed]]\nno = 3\ncauses = ["{}"]\n'
    )
    ids = ("distributor_v8", "diesel", "needle_flickers", "relief_opens_at", "relief_debris")
    by_hand = ("Distributor-V8", "Diesel", "needle flickers", "Relief-opens-at", " Relief-Debris")
    one, other = (
        from_text(f"schema = 1\n{rows.format(*each)}", None, BOOK) for each in (ids, by_hand)
    )
    assert other.layout is one.layout
    assert other.features == one.features
    assert entry_lines(other, BOOK) == entry_lines(one, BOOK)
    assert len(entry_lines(one, BOOK)) == 3
