"""Any file as a case: real ones with something corrupted, built ones, and bytes, with a clock on each."""

from __future__ import annotations

import random
import re
import subprocess
import sys
from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from diagnose.case.loading import from_text, load
from diagnose.case.writing import table_text
from diagnose.entry.readings import parse_reading
from diagnose.errors import BadCaseError, OutOfScopeError, UsageError
from knowledge.book import the_book
from knowledge.model import Kind, Measure
from knowledge.units import DIMENSIONS, UnitError, parse, show
from tests.support.command_line import ROOT, call, environment
from tests.support.fuzzing import COUNT, REAL, TOKENS, chooser, ended_well, is_shown, one, too_late
from tests.support.reported import HOSTILE, REPORTED

BOOK = the_book()
SAVED = settings(
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
#: what a case that can be read is then given to, now and then
COMMANDS = [
    ["review"],
    ["review", "--json", "--causes", "200"],
    ["teardown", "--blanks"],
    ["teardown", "--json"],
    ["survey"],
    ["budget"],
    ["bearings", "--full"],
    ["bearings", "main 1 strip 2.2 thou", "--json"],
    ["forecast", "--set", "oil=20W-50"],
    ["signoff"],
    ["signoff", "--whole-engine", "--markdown"],
    ["signoff", "--start"],
    ["graph", "--format", "graphml"],
    ["graph", "--format", "bif"],
    ["record", "needle_flickers=yes"],
    ["record", "--reading", "700 rpm 95 C 8 psi"],
    ["record", "--withdraw", "1"],
    ["record", "--behaviour", "low during hot, idle only gradual since work"],
    ["record", "--earlier", "oil pump renewed 2 weeks before by owner"],
    ["record", "--reading", "5 psi at hot idle"],
    ["report", "--out", "page.html"],
    ["close", "--reason", "sold", "--how", "seen"],
]


def read(data: bytes) -> bool:
    """Whether it is a case; where it is none, the fault is one for a person."""
    try:
        from_text(data.decode("utf-8"), None, BOOK)
    except UnicodeDecodeError:
        return False
    except (BadCaseError, OutOfScopeError) as bad:
        message = str(bad)
    else:
        return True
    assert message.strip()
    assert len(message.splitlines()) <= 41
    return False


def worked(path: Path, data: bytes, dice: random.Random) -> None:
    """A command on a case that can be read; what stood in it still does."""
    path.write_bytes(data)
    page = path.with_name("page.html")
    words = [str(page) if w == page.name else w for w in dice.choice(COMMANDS)]
    with one("corrupted case files", (words, data), 30.0, new=False):
        ended_well(call(words[0], path, *words[1:]), (words, data))
    assert path.read_bytes().startswith(data)
    load(path, BOOK)
    if page.exists():
        html = page.read_text("utf-8")
        assert "<script" not in html, data
        assert is_shown(html), data
        page.unlink()


def spoil_and_read(path: Path, first: int, many: int) -> int:
    """Return how many of these corrupted cases could still be read."""
    sound = 0
    for number in range(first, first + many):
        dice = chooser("case", number)
        data = too_late(dice.choice(REAL), dice)
        with one("corrupted case files", (number, data)):
            readable = read(data)
        sound += readable
        if readable and dice.random() < 0.04:
            worked(path, data, dice)
    return sound


def test_corrupted_cases_are_read_or_refused(tmp_path: Path) -> None:
    """Few enough for every run; some of them must be sound and some not, or nothing is tried."""
    sound = spoil_and_read(tmp_path / "x.toml", 0, 300)
    assert 20 < sound < 280


@pytest.mark.long
def test_corrupted_cases_at_length(tmp_path: Path) -> None:
    spoil_and_read(tmp_path / "x.toml", 300, 120_000)


# ------------------------------------------------------------------------------- built ones


WRONG: st.SearchStrategy[Any] = st.sampled_from(HOSTILE) | st.sampled_from(
    [0, -1, True, 1e300, "", " ", "nearly", [], ["x"], {"a": "b"}, "1/0 psi", "nan rpm", "2 psi"]
)
PRESSURE = st.integers(0, 90).map("{} psi".format) | st.floats(0, 6).map("{:.3g} bar".format)
GAUGE = {
    "rpm": st.integers(100, 6000).map("{} rpm".format),
    "oil": st.integers(-20, 150).map("{} C".format),
    "pressure": PRESSURE,
}
SOMETIMES = {
    "when": st.dates() | st.datetimes(),
    "by": st.text(max_size=5),
    "note": st.text(max_size=5),
    "replaces": st.integers(1, 3),
}


def figure(measure: Measure) -> st.SearchStrategy[str]:
    """A value this measure can have."""
    low, high = measure.plausible
    dimension = DIMENSIONS[measure.dimension]
    shares = st.floats(0.05, 0.95)
    return shares.map(lambda x: show(low + x * (high - low), dimension))


FINDING = st.fixed_dictionaries(
    {
        "what": st.sampled_from([i for i, f in BOOK.findings.items() if f.kind is not Kind.LAYOUT]),
        "state": st.sampled_from(["present", "present", "absent", "unknown", "withdrawn"]),
    },
    optional={"sure": st.floats(0.5, 1.0), **SOMETIMES},
)
MEASURED = st.sampled_from(list(BOOK.measures.values())).flatmap(
    lambda m: st.fixed_dictionaries({"what": st.just(m.id), "value": figure(m)})
)
WORK = st.fixed_dictionaries(
    {
        "what": st.sampled_from([t.id for t in BOOK.tasks.values() if not t.dimension]),
        "state": st.sampled_from(["done", "failed", "skipped"]),
        "note": st.just("no time"),
    }
)
READ = {"gauge": st.sampled_from(["panel", "direct"]), "error": st.just("1 psi"), **SOMETIMES}
CLOSED = st.fixed_dictionaries(
    {"causes": st.lists(st.sampled_from(list(BOOK.causes)), min_size=1, max_size=2)},
    optional={"minutes": st.just("90 min"), "how": st.text(max_size=5)},
)
ENTRY: st.SearchStrategy[tuple[str, dict[str, Any]]] = st.one_of(
    st.tuples(st.just("finding"), FINDING),
    st.tuples(st.just("finding"), FINDING),
    st.tuples(st.just("finding"), MEASURED),
    st.tuples(st.just("reading"), st.fixed_dictionaries(GAUGE, optional=READ)),
    st.tuples(st.just("baseline"), st.fixed_dictionaries(GAUGE)),
    st.tuples(st.just("work"), WORK),
    st.tuples(st.just("closed"), CLOSED),
    REPORTED,
    REPORTED,
    REPORTED,
)


@st.composite
def cases(draw: st.DrawFn) -> str:
    """A case as it should be, and in every second or so a field or two that are not."""
    text = "schema = 1\n"
    layout = draw(st.none() | st.sampled_from(list(BOOK.layouts)))
    if layout is not None:
        text += table_text("[engine]", {"layout": layout})
    corrupt = draw(st.booleans())
    for number, (kind, fields) in enumerate(draw(st.lists(ENTRY, min_size=1, max_size=7)), 1):
        entry = {"no": number, **fields}
        if "replaces" in entry and entry["replaces"] >= number:
            del entry["replaces"]
        if corrupt and draw(st.integers(0, 3)) == 0:
            entry[draw(st.sampled_from([*entry, "sure", "value", "wat"]))] = draw(WRONG)
        text += table_text(f"[[{kind}]]", entry)
    return text


def test_built_cases_are_of_both_sorts() -> None:
    """Enough can be read and enough cannot, or nothing is tried."""
    sound = []

    @settings(SAVED, max_examples=60, derandomize=True)
    @given(text=cases())
    def build(text: str) -> None:
        sound.append(read(text.encode("utf-8", "surrogatepass")))

    build()
    assert 10 < sum(sound) < len(sound) - 5


@pytest.mark.long
@settings(SAVED, max_examples=15_000)
@given(text=cases(), seed=st.integers(0, 2**32))
def test_built_cases_at_length(tmp_path: Path, text: str, seed: int) -> None:
    dice = random.Random(seed)
    with one("built case files", text):
        readable = read(text.encode("utf-8", "surrogatepass"))
    if readable and dice.random() < 0.1:
        worked(tmp_path / "x.toml", text.encode(), dice)


@pytest.mark.long
@settings(SAVED, max_examples=15_000)
@given(data=st.binary(max_size=400))
def test_bytes_at_length(data: bytes) -> None:
    with one("bytes as case files", data):
        read(data)


# ----------------------------------------------------------------------------- single lines


def line_of(dice: random.Random) -> str:
    """A figure or a reading as a person types it, with something wrong now and then."""
    pieces = []
    for _ in range(dice.choice((1, 1, 2, 3, 4, 5))):
        number = dice.choice(("700", "95", "8", "1/8", "1 1/2", "-4", "0.0025", "1e3", "٣", "1,5"))
        unit = dice.choice(
            ("rpm", "rev/min", "C", "°F", "psi", "bar", "kPa", "in", "thou", "µm", "direct")
        )
        pieces.append(dice.choice((number + " " + unit, number + unit, dice.choice(TOKENS))))
    text = dice.choice((" ", " ", "", ", ")).join(pieces)
    if dice.random() < 0.3:
        at = dice.randrange(len(text) + 1)
        text = text[:at] + chr(dice.randrange(0xD800)) * dice.choice((1, 1, 300)) + text[at:]
    return text


def read_line(text: str) -> None:
    """The line as a figure of every dimension, and as a reading."""
    ways: list[Callable[[], object]] = [partial(parse, text, d) for d in DIMENSIONS.values()]
    ways.append(partial(parse_reading, text))
    for way in ways:
        try:
            way()
        except (UnitError, UsageError) as bad:
            message = str(bad)
        else:
            continue
        assert message.strip()
        assert "\n" not in message
        assert len(message) < 1000


@pytest.mark.long
def test_lines_at_length() -> None:
    """Figures with units, and gauge readings."""
    for number in range(30_000):
        dice = chooser("line", number)
        text = line_of(dice)
        with one("figures and readings", text):
            read_line(text)


# --------------------------------------------------------------------- as a fuzzer guides it


def guided(kind: str, folder: Path, seconds: int) -> int:
    """How many inputs a fuzzer tried in so many seconds. Raises AssertionError with what it found."""
    seeds = folder / "seeds"
    seeds.mkdir()
    for number, text in enumerate(REAL if kind == "case" else TOKENS):
        (seeds / str(number)).write_bytes(text.encode())
    limits = (f"-max_total_time={seconds}", "-timeout=10", "-max_len=4096")
    done = subprocess.run(
        [
            sys.executable,
            "-m",
            "tests.support.guided_fuzz",
            kind,
            seeds,
            *limits,
            f"-artifact_prefix={folder}/",
        ],
        capture_output=True,
        cwd=ROOT,
        env=environment(),
        timeout=seconds + 120,
        check=False,
    )
    output = (done.stdout + done.stderr).decode("utf-8", "replace")
    counted = re.search(r"Done (\d+) runs", output)
    assert done.returncode == 0, output[-4000:]
    assert counted, output[-4000:]
    COUNT[f"guided bytes of a {kind}"] += int(counted[1])
    return int(counted[1])


@pytest.mark.long
@pytest.mark.parametrize("kind", ["case", "line"])
def test_bytes_guided_by_what_they_reach(tmp_path: Path, kind: str) -> None:
    """A coverage-guided fuzzer, where one is installed."""
    pytest.importorskip("atheris")
    assert guided(kind, tmp_path, seconds=90) > 1_000
