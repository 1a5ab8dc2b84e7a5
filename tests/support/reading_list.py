"""Every sentence of the book that a user reads, and what makes one hard to read."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from inspect import getdoc

from knowledge.book import Book
from knowledge.cautions import CAUTIONS, DEFERS_TO

#: words that the glossary of DEVELOPERS.md replaces, as patterns; each names what to write
BANNED: dict[str, str] = {
    r"\btold\b": "said, reported, known",
    r"\bupon\b": "on",
    r"\bwhilst\b": "while",
    r"\bthereof\b|\btherein\b|\bthereby\b|\bhereby\b": "in it",
    r"\bsaid (?:part|valve|engine)\b": "the part",
    r"\butili[sz]e": "use",
    r"\bcommence": "begin",
    r"\bprior to\b": "before",
    r"\bsubsequent(?:ly)?\b": "later, then",
    r"\bin order to\b": "to",
    r"\bheld against\b": "compared with",
    r"\bis heard\b|\bare heard\b": "you hear",
    r"\bgives way to\b": "comes after",
    r"\bspeaks? (?:for|against)\b": "points to, points away from",
    r"\bgoes first\b": "comes first",
    r"\bas good as (?!new|zero)": "almost",
    r"\bspanner\b": "wrench",
    r"\bearth(?:ed)?\b(?! \((?:ground|grounded)\))": "earth (ground)",
    r"\bsplit pin\b(?! \(cotter pin\))": "split pin (cotter pin)",
    r"\btreacle\b(?! \(molasses\))": "treacle (molasses)",
    r"(?<!\()\bgudgeon pin\b": "piston pin (gudgeon pin)",
    r"\bposterior\b|\blikelihood\b|\bdecibans?\b": "how likely",
}
LONG = 25  #: words from which a sentence is long
_PASSIVE = re.compile(
    r"\b(?:is|are|was|were|be|been|being)\s+(?:\w+ly\s+|not\s+)?"
    r"(?:\w{2,}ed|known|seen|taken|found|shown|given|held|made|put|cut|left|lost|worn|driven|drawn|"
    r"built|read|done|run|kept|felt|heard|broken|torn|blown|bent|set|shut|fitted)\b"
)
_END = re.compile(r"(?<=[.;?!:])\s+")


@dataclass(frozen=True, slots=True)
class Sentence:
    """One sentence and where it stands."""

    where: str
    text: str

    @property
    def words(self) -> int:
        """How many words it has."""
        return len(re.findall(r"[A-Za-z0-9'’/-]+", self.text))

    @property
    def passive(self) -> bool:
        """Whether it has a verb in the passive; a state as in 'is worn' counts as well."""
        return bool(_PASSIVE.search(self.text))

    @property
    def banned(self) -> list[str]:
        """The patterns of banned words in it."""
        return [p for p in BANNED if re.search(p, self.text, re.IGNORECASE)]


def sentences(book: Book) -> Iterator[Sentence]:
    """Yield each sentence of the book that is shown, with the id and field it comes from."""
    for where, text in _texts(book):
        yield from (Sentence(where, part.strip()) for part in _END.split(text) if part.strip())


def _texts(book: Book) -> Iterator[tuple[str, str]]:
    fields = ("says", "asks", "denies", "mechanism", "remedy", "follows", "keep", "destroys", "why")
    lists = ("steps", "how")
    tables = (
        book.findings, book.causes, book.conditions, book.inspections, book.measures, book.tasks,
        book.parts, book.trials, book.faults, book.limits,
    )  # fmt: skip
    for table in tables:
        for word in table.values():
            for name in fields:
                if isinstance(text := getattr(word, name, ""), str) and text:
                    yield f"{word.id}.{name}", text
            for name in lists:
                for text in getattr(word, name, ()):
                    yield f"{word.id}.{name}", text
    for kind, wordings in CAUTIONS.items():
        yield from ((f"caution {kind.value}", w.says) for w in wordings)
    yield from (("defers to", d.says) for d in DEFERS_TO)
    for statement in book.statements:
        text = getattr(statement, "says", "") or (getdoc(statement) or "").split("\n\n")[0]
        yield f"{getattr(statement, 'id', statement)}", " ".join(text.split())
