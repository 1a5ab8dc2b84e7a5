"""The title of a case that nobody gave one: how its story begins, without who wrote it."""

from __future__ import annotations

import pytest

from diagnose.entry.titles import first_words


@pytest.mark.parametrize(
    ("story", "title"),
    [
        (
            "Re: Low oil pressure at hot idle\nby ann » Tue Mar 03, 2020\n\nMy six has 8 psi",
            "Low oil pressure at hot idle",
        ),
        ("Re: oil light flickers by ann", "oil light flickers"),
        (
            "Subject: no pressure after rebuild\nFrom: ann\nJust rebuilt it",
            "no pressure after rebuild",
        ),
        ("Posted by: ann, 12 posts\nMy oil light flickers", "My oil light flickers"),
        ("it was rebuilt\nby my dad\nno pressure", "it was rebuilt by my dad no pressure"),
        ("by accident I overfilled it. Light on", "by accident I overfilled it"),
        ("To start with the pressure is ok", "To start with the pressure is ok"),
    ],
)
def test_who_wrote_is_no_title(story: str, title: str) -> None:
    """A subject line is the title; lines with names and dates are left out."""
    assert first_words(story) == title
