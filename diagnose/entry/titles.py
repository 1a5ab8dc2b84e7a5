"""The title of a case that nobody gave one."""

from __future__ import annotations

import re
from pathlib import Path

from diagnose.understanding.words.facts import Fact, Understanding
from knowledge.book import Book
from knowledge.model import Kind

LONGEST_TITLE = 60  #: characters
LONGEST_TROUBLE = 48  #: of them, for what is wrong
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


def title_of(story: str, path: Path, said: Understanding, book: Book) -> str:
    """The title of a new case: how its story begins, the words for its trouble, or its file's name.

    The beginning serves where it fits or ends with a clause, and says something.

    >>> from diagnose.understanding.reader import read
    >>> from knowledge.book import the_book
    >>> def title(story: str) -> str:
    ...     said = read(story, the_book())
    ...     return title_of(story, Path("port_six.toml"), said, the_book())
    >>> title("Petrel, petrol V8. Flickers"), title("?"), title(". 0")
    ('Petrel, petrol V8', 'port six', 'port six')
    >>> title("I'm new to this. My old diesel tractor, the oil light flickers when it is hot")
    'diesel tractor: oil light flickers when it is hot'
    """
    words = first_words(story)
    first = _without_who(story).partition(". ")[0]
    rest = story.partition(words)[2] if words else ""
    whole = len(_CALL.sub("", first)) <= LONGEST_TITLE or rest.startswith(",")
    if not (whole and _is_said_in(story, words, said)):
        words = _in_short(said, book) or words
    return words if any(c.isalpha() for c in words) else path.stem.replace("_", " ")


def _is_said_in(story: str, words: str, said: Understanding) -> bool:
    """Whether a fact was read from the first words of a story, or nothing was read at all."""
    at = story.find(words)
    inside = range(at, at + len(words))
    return at < 0 or not said.facts or any(a in inside for f in said.facts for a, _ in f.spans)


def _in_short(said: Understanding, book: Book) -> str:
    """The words for the engine and for the first trouble: "diesel tractor: oil light flickers"."""
    engine = sorted(s for f in said.facts if _is_of_the_engine(f, book) for s in f.spans)
    troubles = [sorted(f.spans) for f in said.facts if f.table in ("behaviour", "reading")]
    trouble = min(troubles, default=[])
    kind = " ".join(dict.fromkeys(said.text[a:b].strip() for a, b in engine))
    what = ""
    if trouble:
        what = said.text[trouble[0][0] : trouble[-1][1]].strip()
        if len(what) > LONGEST_TROUBLE:
            what = max((said.text[a:b].strip() for a, b in trouble), key=len)
    words = ": ".join(" ".join(part.split()) for part in (kind, what) if part).split(" ")
    while len(" ".join(words)) > LONGEST_TITLE:
        words.pop()
    return _SMALL_END.sub("", " ".join(words)).rstrip(".,;:") if what else ""


def _is_of_the_engine(fact: Fact, book: Book) -> bool:
    """Whether it says how the engine is built, or what it drives."""
    if fact.table == "finding":
        kept = fact.name in book.findings and book.findings[fact.name].kind is Kind.LAYOUT
        return kept and fact.fields.get("state") == "present"
    return fact.table == "layout"
