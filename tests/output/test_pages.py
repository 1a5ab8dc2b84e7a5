"""Pages to print: self-contained, with every blank, and no text becomes markup."""

from __future__ import annotations

import re
import shutil
import subprocess
import sys
import tempfile
import tomllib
from functools import cache
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from diagnose.case.schema import LONGEST
from diagnose.errors import clean
from tests.support.command_line import Done, call, run
from tests.support.complaints import CASES, JOBS, path_of, plan
from tests.support.examples import one_in
from tests.support.page import Page

EVERY = sorted(CASES.glob("*.toml"))
MOST_BYTES = 600_000
COMMANDS = ("teardown", "signoff", "report")
SHEETS = ("teardown", "signoff")
OPTION = {"teardown": "--html", "signoff": "--html", "report": "--out"}
FETCHES = {"src", "srcset", "data", "poster", "action", "formaction", "background", "ping"}


def page_of(command: str, case: Path, folder: Path, *options: str) -> str:
    out = folder / "page.html"
    done = call(command, case, OPTION[command], out, *options)
    assert (done.code, done.err) == (0, ""), done
    assert done.out == f"page written to {out}\n"
    return out.read_text("utf-8")


@cache
def page_once(command: str, case: Path) -> str:
    """Return the page of a read-only case, made once for every test."""
    with tempfile.TemporaryDirectory() as name:
        return page_of(command, case, Path(name))


def stands_alone(text: str) -> Page:
    """No script, nothing fetched, headings in order, a language and a title."""
    page = Page(text)
    assert not {"script", "iframe", "object", "embed", "link", "img", "base", "form"} & {*page.tags}
    for tag, name, value in page.attributes:
        assert not name.startswith("on"), (tag, name)
        assert name not in FETCHES, (tag, name)
        if name in ("href", "xlink:href"):
            assert value.startswith("#"), value
    ids = [value for _, name, value in page.attributes if name == "id"]
    assert len(ids) == len(set(ids))
    wanted = {v[1:] for _, n, v in page.attributes if n == "href"}
    wanted |= {v for _, n, v in page.attributes if n == "aria-labelledby"}
    assert wanted <= set(ids)
    style = text[text.index("<style>") : text.index("</style>")]
    assert "url(" not in style
    assert "@import" not in style
    assert page.headings[0] == 1
    assert page.headings.count(1) == 1
    for before, after in zip(page.headings, page.headings[1:], strict=False):
        assert after <= before + 1, "a level of heading is left out"
    assert ("html", "lang", "en") in page.attributes
    assert page.title.strip()
    assert page.tags.count("table") == page.tags.count("caption")
    assert all(any(n == "scope" for _, n, _ in page.attributes) for t in page.tags if t == "th")
    return page


# ------------------------------------------------------------------------------ every case


@pytest.mark.parametrize("command", SHEETS)
@pytest.mark.parametrize("case", one_in(4, EVERY), ids=lambda p: p.stem)
def test_every_case_has_its_page(case: Path, command: str) -> None:
    is_a_page(case, command)


@pytest.mark.parametrize("case", one_in(6, EVERY), ids=lambda p: p.stem)
def test_every_case_has_its_report(case: Path) -> None:
    is_a_page(case, "report")


def is_a_page(case: Path, command: str) -> None:
    text = page_once(command, case)
    stands_alone(text)
    assert len(text.encode()) <= MOST_BYTES


@pytest.mark.own_diagnoses
def test_the_same_case_gives_the_same_page(tmp_path: Path) -> None:
    """Of the sign-off; plan and report are made in another process below."""
    assert page_of("signoff", EVERY[0], tmp_path) == page_once("signoff", EVERY[0])


@pytest.mark.long
@pytest.mark.own_diagnoses
@pytest.mark.parametrize("command", COMMANDS)
@pytest.mark.parametrize("case", EVERY, ids=lambda p: p.stem)
def test_each_case_gives_the_same_page_twice(case: Path, command: str, tmp_path: Path) -> None:
    assert page_of(command, case, tmp_path) == page_once(command, case)


@pytest.mark.parametrize("name", one_in(4, list(JOBS)))
def test_every_blank_of_the_plan_is_on_its_page(name: str, tmp_path: Path) -> None:
    """As ``code`` beside the blank, so that it can be typed back."""
    text = page_of("teardown", path_of(name), tmp_path)
    stands_alone(text)
    blanks = tomllib.loads(call("teardown", path_of(name), "--blanks").out)
    for id_ in blanks:
        assert f"<code>{id_}</code>" in text, id_


@pytest.mark.parametrize("case", one_in(3, EVERY), ids=lambda p: p.stem)
def test_every_blank_of_the_sign_off_is_on_its_page(case: Path, tmp_path: Path) -> None:
    text = page_of("signoff", case, tmp_path, "--whole-engine")
    page = stands_alone(text)
    assert len(text.encode()) <= MOST_BYTES
    blanks = tomllib.loads(call("signoff", case, "--blanks", "--whole-engine").out)
    assert blanks
    for id_ in blanks:
        assert f"<code>{id_}</code>" in text, id_
    for phase in ("Block, plugs and bearings", "Run-in and sign-off"):
        assert phase in page.words


@pytest.mark.parametrize("command", COMMANDS)
def test_a_photocopy_keeps_the_meaning(command: str) -> None:
    """Black, white and grey only, so no meaning rests on hue."""
    text = page_once(command, CASES / "gannet.toml")
    hues = re.findall(r"#([0-9a-fA-F]{6}|[0-9a-fA-F]{3})\b(?=[;\"' ])", text)
    assert len(hues) > 5
    for hue in hues:
        parts = [hue[i : i + len(hue) // 3] for i in range(0, len(hue), len(hue) // 3)]
        assert len(set(parts)) == 1, hue
    assert not re.search(
        r"(?:fill|stroke|color|background)\s*[:=]\s*\"?(?:rgb|hsl|[a-z]+red|blue)", text
    )


@pytest.mark.parametrize("command", COMMANDS)
def test_a_case_without_a_title_is_marked_untitled(command: str, tmp_path: Path) -> None:
    case = tmp_path / "case.toml"
    case.write_text('schema = 1\n[job]\ntitle = " \\r "\n', "utf-8")
    assert "case without a title" in stands_alone(page_of(command, case, tmp_path)).title


@pytest.mark.parametrize(
    ("command", "case"),
    [("teardown", path_of("winch_begun")), ("report", CASES / "gannet.toml")],
    ids=lambda x: getattr(x, "stem", x),
)
def test_the_same_bytes_from_another_process(command: str, case: Path, tmp_path: Path) -> None:
    """Nothing of the clock, of chance or of the order of a set is in a page."""
    out = tmp_path / "page.html"
    done = run(command, case, OPTION[command], out, PYTHONHASHSEED="1")
    assert done.code == 0, done
    assert out.read_text("utf-8") == page_once(command, case)


def test_a_stage_is_marked_by_word_and_outline(tmp_path: Path) -> None:
    """Cautions stand before the steps; the sketch says where in words too."""
    text = page_of("teardown", path_of("winch_begun"), tmp_path)
    stages = [s for s in text.split('<section class="stage"')[1:] if 'id="stage-' in s]
    planned = plan("winch_begun")["stages"]
    assert len(stages) == len(planned) > 1
    assert any(known["cautions"] for known in planned)
    for stage, known in zip(stages, planned, strict=True):
        assert ("CAUTION" in stage) is bool(known["cautions"])
        assert stage.split("CAUTION")[0].count("<ol>") == 0 or not known["cautions"]
        assert ">here" in stage
        assert 'stroke-width="5"' in stage
        assert "This stage is at: " in stage
        assert 'class="rule"' in stage


def test_alarms_come_before_everything_else() -> None:
    for command in COMMANDS:
        words = Page(page_once(command, CASES / "petrel.toml")).words
        assert words.index("STOP THE ENGINE") < words.index("Date")


def test_the_first_start_is_predicted_where_there_is_a_circuit(tmp_path: Path) -> None:
    """Without one the page goes without, quietly; what was asked for is never passed over."""
    page = page_once("signoff", CASES / "tern.toml")
    assert "What the gauge should show at first start" in page
    none = page_of("signoff", path_of("knot"), tmp_path, "--whole-engine")
    assert "What the gauge should show" not in none
    done = call("signoff", path_of("knot"), "--html", tmp_path / "x.html", "--left", "nothing")
    assert (done.code, done.out) == (2, "")


def test_a_recorded_value_shows_its_verdict(tmp_path: Path) -> None:
    case = tmp_path / "case.toml"
    case.write_text((CASES / "tern.toml").read_text("utf-8"), "utf-8")
    shutil.copytree(CASES / "cards", tmp_path / "cards")
    note = "<b>left</b> as it was"
    assert call("record", case, "pickup_gap_fitted=24 mm").code == 0
    assert call("record", case, "front_plugs_in=skipped", "--note", note).code == 0
    page = stands_alone(page_of("signoff", case, tmp_path))
    assert "FAILED: " in page.words
    assert "does not fit" in page.words
    assert note in page.words
    assert "<b>left" not in page_of("signoff", case, tmp_path)


def test_only_what_is_open_on_its_page(tmp_path: Path) -> None:
    """What is settled stays off the sheet that asks for the rest."""
    case = tmp_path / "case.toml"
    case.write_text((CASES / "tern.toml").read_text("utf-8"), "utf-8")
    shutil.copytree(CASES / "cards", tmp_path / "cards")
    assert call("record", case, "pickup_gap_fitted=8 mm", "screen_parallel=done").code == 0
    whole = page_of("signoff", case, tmp_path)
    short = page_of("signoff", case, tmp_path, "--open-only")
    stands_alone(short)
    for id_ in ("pickup_gap_fitted", "screen_parallel"):
        assert f"<code>{id_}</code>" in whole
        assert f"<code>{id_}</code>" not in short
    assert "Parts and consumables" not in short


# ------------------------------------------------------------------------------ hostile words

HOSTILE = [
    "<script>alert(1)</script>",
    "</title><script>x</script>",
    "\"' onmouseover='x' style=\"x",
    "{{ 7 * 7 }} {% raw %} {# #}",
    "&lt;b&gt; &amp; &#60;script&#62;",
    "</style></svg><!-- --> ]]>",
    "javascript:alert(1)",
    "\u202eright to left\u202c שמן ضغط",
    "🛢️👩‍🔧 油圧",
    "x" * LONGEST,
    "long " * (LONGEST // 5),
]
FREE = st.one_of(
    st.sampled_from(HOSTILE),
    st.text(st.characters(codec="utf-8"), min_size=1, max_size=200),
    st.text("<>\"'&;=/ scriptonclk", min_size=1, max_size=80),
).filter(lambda text: clean(text).strip())  # nothing is no reason to leave a thing out


OPEN, CLOSED = ("distributor_v8", False), ("dry_sump_race", True)  #: with charts; soon made


def case_with(folder: Path, text: str, layout: str, closed: bool) -> Path:
    """The text in every free field that a page shows, and in some that it may come to show."""
    case = folder / "hostile.toml"
    quoted = toml(text)
    end = f'[[closed]]\nno = 3\ncauses = ["relief_debris"]\nhow = {quoted}\n'
    end += f"remedy = {quoted}\nreason = {quoted}\nby = {quoted}\n"
    case.write_text(
        "schema = 1\n"
        f"[job]\ntitle = {quoted}\nby = {quoted}\ncomplaint = {quoted}\nnote = {quoted}\n"
        f'[engine]\nlayout = "{layout}"\nname = {quoted}\nnote = {quoted}\n'
        f'[[finding]]\nno = 1\nwhat = "debris_on_relief_seat"\nstate = "present"\n'
        f"note = {quoted}\nby = {quoted}\nwhere = {quoted}\n"
        f'[[work]]\nno = 2\nwhat = "sump_washed"\nstate = "skipped"\nnote = {quoted}\n'
        f"by = {quoted}\nwhere = {quoted}\n" + (end if closed else ""),
        "utf-8",
    )
    return case


def toml(text: str) -> str:
    escaped = "".join(c if c.isalnum() or c in " <>='/" else f"\\U{ord(c):08x}" for c in text)
    return f'"{escaped}"'


A_STORY = 8  #: words of a complaint that are a story, and more than that


def shape(page: Page) -> list[tuple[str, str]]:
    """Elements and attributes without their words."""
    return [*((t, "") for t in page.tags), *((t, n) for t, n, _ in page.attributes)]


@cache
def plain_shape(command: str, job: tuple[str, bool], words: int = 1) -> list[tuple[str, str]]:
    """The same of a page with harmless words; with many, a story was given and less is asked."""
    text = " ".join(["plain"] * words)
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        return shape(Page(page_of(command, case_with(folder, text, *job), folder)))


def flat(text: str) -> str:
    return " ".join(text.split())


def words_stay_words(folder: Path, text: str, job: tuple[str, bool]) -> None:
    """The text is read on each page as it was typed, and brings no element with it."""
    case = case_with(folder, text, *job)
    for command in COMMANDS:
        page = stands_alone(page_of(command, case, folder))
        assert flat(clean(text)) in flat(page.words), "title and note are shown whole"
        assert shape(page) == plain_shape(command, job, min(len(text.split()), A_STORY))


@pytest.mark.parametrize(
    "text",
    one_in(3, ["<script>alert(1)</script>", "x" * LONGEST, "\u202eright to left\u202c שמן ضغط"]),
    ids=["markup", "long", "right to left"],
)
def test_words_stay_words_beside_charts(text: str, tmp_path: Path) -> None:
    words_stay_words(tmp_path, text, OPEN)


@settings(max_examples=4, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(FREE)
def test_a_persons_words_stay_words(tmp_path: Path, text: str) -> None:
    """Of a closed job on an engine whose circuit is not known in figures."""
    words_stay_words(tmp_path, text, CLOSED)


# ------------------------------------------------------------------------------ refusals


def refused(done: Done, code: int, *parts: str) -> None:
    assert (done.code, done.out, len(done.err.splitlines())) == (code, "", 1), done
    for part in parts:
        assert part in done.err


@pytest.mark.parametrize("command", COMMANDS)
def test_a_page_never_overwrites_a_case(command: str, tmp_path: Path) -> None:
    case = tmp_path / "case.toml"
    case.write_text(JOBS["heron"], "utf-8")
    before, option = case.read_bytes(), OPTION[command]
    refused(call(command, case, option, case), 2, "must end in .html")
    refused(call(command, case, option, tmp_path / "other.toml"), 2, "must end in .html")
    link = tmp_path / "link.html"
    link.symlink_to(case)
    refused(call(command, case, option, link), 2, "is the name of a case")
    assert case.read_bytes() == before
    assert sorted(p.name for p in tmp_path.iterdir()) == ["case.toml", "link.html"]


@pytest.mark.parametrize("command", COMMANDS)
def test_exit_codes(command: str, tmp_path: Path) -> None:
    case, page, option = path_of("heron"), tmp_path / "page.html", OPTION[command]
    refused(call(command, case, option, tmp_path / "no" / "page.html"), 73, "no such folder")
    refused(call(command, tmp_path / "none.toml", option, page), 66)
    if command in SHEETS:
        refused(call(command, case, option, page, "--json"), 2, "leave out --json")
    bad = tmp_path / "bad.toml"
    bad.write_text("schema = 9\n", "utf-8")
    assert call(command, bad, option, page).code == 65
    assert not page.exists()
    (tmp_path / "folder.html").mkdir()
    refused(call(command, case, option, tmp_path / "folder.html"), 73)


def test_only_a_page_loads_the_templates() -> None:
    """The other forms start without jinja2 and matplotlib."""
    code = (
        "import sys\nfrom diagnose.cli import app\n"
        "try:\n    app.main(['teardown', sys.argv[1]])\n"
        "except SystemExit:\n    pass\n"
        "assert not {'jinja2', 'matplotlib'} & {*sys.modules}"
    )
    subprocess.run(
        [sys.executable, "-c", code, str(path_of("heron"))],
        check=True,
        capture_output=True,
        timeout=60,
    )
