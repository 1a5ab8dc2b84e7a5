"""Questions with several answers on the page, what nobody knew, and the numbers of saved facts."""

from __future__ import annotations

from pathlib import Path

from diagnose.case.loading import load
from diagnose.case.writing import NewEntry, append_by, start
from diagnose.entry.questions import ChoiceQuestion
from diagnose.serve.screens.asking import _others, _ticks
from knowledge.book import the_book
from knowledge.questions.essentials import NOISE
from knowledge.questions.groups import STICK
from tests.support.command_line import call
from tests.support.web import browser


def test_none_of_them_is_a_button_and_no_tick() -> None:
    """There is one way to say it, in the words of the question."""
    for menu, says in ((NOISE, "No noise"), (STICK, "None of these")):
        question = ChoiceQuestion(menu, menu.choices)
        real = [(n, c.says) for n, c in enumerate(menu.choices, 1) if c.there]
        assert _ticks(question) == real
        assert _others(question)[0] == ("n", says)


def test_what_nobody_knew_is_out_of_the_way(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    start(path, the_book(), {"title": "x"})
    unknown = [
        NewEntry("finding", {"what": what, "state": "unknown"})
        for what in ("worse_in_the_wet", "no_pattern_to_it")
    ]
    known = NewEntry("finding", {"what": "level_correct", "state": "present"})
    append_by(path, the_book(), lambda _: [known, *unknown])
    tab = browser(tmp_path)
    words = tab.get("/job/a.toml/note").words
    assert "Asked, and not known: 2" in words
    assert words.index("the oil is between the marks") < words.index("not known: ")
    assert "1 entry." in tab.get("/job/a.toml").words


def test_tell_says_the_numbers_that_withdraw_takes(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    done = call("tell", path, "-y", "petrol V8, 5 psi at hot idle, oil level ok")
    said = " ".join(done.out.split())
    assert "number in the file" not in said, "the engine comes last: they are the same"
    assert load(path, the_book()).standing.keys() == {1, 2}
    more = call("tell", path, "-y", "no knock, oil pump renewed last week")
    assert "facts 1-2 are entries 3-4" in " ".join(more.out.split())


def test_what_a_find_changed_is_shown_where_it_was_written_down(tmp_path: Path) -> None:
    """The answer as it is now, beside what was saved."""
    path = tmp_path / "a.toml"
    path.write_text("schema = 1\n", "utf-8")
    tab = browser(tmp_path)
    form = tab.get("/job/a.toml/note").form("note")
    saved = tab.post(form.action, {**form.fields, "words": "petrol smell on the dipstick"})
    assert "Now: " in saved.words
    assert "fuel in the oil" in saved.words[saved.words.index("Now: ") :][:120]
    assert "Now: " not in tab.get("/job/a.toml/note").words
