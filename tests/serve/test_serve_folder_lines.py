"""The list of jobs says what each was by name."""

from __future__ import annotations

from pathlib import Path

from diagnose.serve.folder import JobFolder
from knowledge.book import the_book
from tests.support.command_line import call

CLOSED = """schema = 1
[job]
title = "Tern"
complaint = "{}"
[engine]
layout = "distributor_v8"
[[closed]]
no = 1
causes = ["bearing_wear_mains", "sender_faulty"]
how = "measured"
remedy = "new shells"
when = 2026-11-30
"""


def test_causes_are_named_as_the_book_names_them(tmp_path: Path) -> None:
    (tmp_path / "tern.toml").write_text(CLOSED.format("lamp on"), "utf-8")
    causes = [the_book().causes[c].says for c in ("bearing_wear_mains", "sender_faulty")]
    (line,) = JobFolder(tmp_path).lines()
    assert list(line.causes) == causes
    assert JobFolder(tmp_path).lines("main bearings worn")
    shown = call("history", tmp_path).out
    assert f"tern.toml  {causes[0]}" in shown
    assert "bearing_wear_mains" not in shown.split("Found most often")[0]
