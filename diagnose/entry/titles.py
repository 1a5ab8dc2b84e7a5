"""The title of a case that nobody gave one."""

from __future__ import annotations

from pathlib import Path

LONGEST_TITLE = 60  #: characters


def first_words(story: str) -> str:
    """How a story begins, as the title of its case.

    >>> first_words("Petrel, petrol V8. Flickers at hot idle since the pump was renewed")
    'Petrel, petrol V8'
    """
    words = story.partition(". ")[0].split()
    cut = len(" ".join(words)) > LONGEST_TITLE
    while len(" ".join(words)) > LONGEST_TITLE:
        words.pop()
    title = " ".join(words)
    if cut and "," in title:
        title = title.rpartition(",")[0]
    return title.rstrip(".,;:")


def title_of(story: str, path: Path) -> str:
    """The title of a new case: how its story begins, else the name of its file.

    >>> title_of("Petrel, petrol V8. Flickers", Path("a.toml")), title_of("?", Path("port_six.toml"))
    ('Petrel, petrol V8', 'port six')
    """
    words = first_words(story)
    return words if any(c.isalpha() for c in words) else path.stem.replace("_", " ")
