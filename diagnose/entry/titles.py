"""The title of a case that nobody gave one."""

from __future__ import annotations

import re
from pathlib import Path

LONGEST_TITLE = 60  #: characters
#: before the subject of a letter or of an answer in a thread
_SUBJECT = re.compile(r"^(?:(?:re|fwd?|aw|subject|title|topic)\s*:\s*)+", re.IGNORECASE)
#: a line that says who wrote and when
_WHO = re.compile(
    r"^(?:by\s+\S+\s*(?:[»|@-]|on\b|$)|(?:from|to|sent|date|author)\s*:|posted\b|.* wrote:$)",
    re.IGNORECASE,
)
#: before what a letter is about, and words at which no title ends
_CALL = re.compile(
    r"^(?:(?:help|please|sorry|(?:hi|hello|hey)(?:\s+(?:all|guys|folks))?)\b[\s,!.:]*)+",
    re.IGNORECASE,
)
_SMALL_END = re.compile(
    r"(?:\s+(?:a|an|the|at|in|on|of|to|by|for|with|from|and|but|or|my|its|is|was|when))+$",
    re.IGNORECASE,
)
_BY = re.compile(r"\s+by\s+\S+(?:\s+».*)?$", re.IGNORECASE)  #: behind a subject in its line


def first_words(story: str) -> str:
    """How a story begins, as the title of its case.

    >>> first_words("Petrel, petrol V8. Flickers at hot idle since the pump was renewed")
    'Petrel, petrol V8'
    >>> first_words("All day it ran fine")
    'All day it ran fine'
    >>> first_words("HELP!! oil light just came on flashing on the motorway at the roundabout")
    'oil light just came on flashing on the motorway'
    """
    words = _CALL.sub("", _without_who(story)).partition(". ")[0].split()
    cut = len(" ".join(words)) > LONGEST_TITLE
    while len(" ".join(words)) > LONGEST_TITLE:
        words.pop()
    title = " ".join(words)
    if cut and "," in title:
        title = title.rpartition(",")[0]
    elif cut:
        title = _SMALL_END.sub("", title)
    return title.rstrip(".,;:")


def _without_who(story: str) -> str:
    """A story without the lines that say who wrote it; its subject alone where it has one.

    >>> _without_who("Re: Low pressure at idle\\nby ann » Tue Mar 03\\n\\nMy six has 8 psi")
    'Low pressure at idle'
    """
    lines = [line.strip() for line in story.splitlines() if line.strip()]
    lines = [line for line in lines if not _WHO.match(line)]
    if lines and (subject := _SUBJECT.match(lines[0])):
        return _BY.sub("", lines[0][subject.end() :])
    return "\n".join(lines)


def title_of(story: str, path: Path) -> str:
    """The title of a new case: how its story begins, else the name of its file.

    >>> title_of("Petrel, petrol V8. Flickers", Path("a.toml")), title_of("?", Path("port_six.toml"))
    ('Petrel, petrol V8', 'port six')
    """
    words = first_words(story)
    return words if any(c.isalpha() for c in words) else path.stem.replace("_", " ")
