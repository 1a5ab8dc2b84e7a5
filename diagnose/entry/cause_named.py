"""The causes a person names at the end of a job: by id, or in words that mean one cause."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from diagnose.diagnosis import Diagnosis
from diagnose.entry.requests import each_id
from diagnose.errors import UsageError, plain
from diagnose.lookup.finder import Hit, finder_of
from diagnose.planning.choosing import SURE
from diagnose.ways import Way, to
from knowledge.book import Book
from knowledge.lexicon.meant.no_fault import NO_FAULT
from knowledge.model import Cause
from knowledge.stations.oil.causes_condition import OIL_HOT_NORMAL

LIKELY = 0.5  #: from here on the leading no fault is the one meant
SEVERAL = 2  #: words that name a cause where they stand in one alone
LEADERS = 3  #: causes listed, of those that are near the words or likeliest
_CLEAR, _AHEAD = 0.6, 0.25  #: how well words fit the one cause that is meant, and how far ahead


def confirmed_causes(texts: Sequence[str], answer: Diagnosis) -> list[str]:
    """The ids of the causes named, else of those that are nearly certain.

    Raises UsageError, with what may be meant.
    """
    named = [id_ for text in texts for id_ in _no_fault(text, answer) or _meant(text, answer.book)]
    found = named or [r.cause.id for r in answer.ranking if r.probability >= SURE]
    if not found:
        likeliest = [r.cause for r in answer.ranking[:LEADERS]]
        raise UsageError(
            f"{to(Way.CAUSE)}: no cause is nearly certain; name it. Likeliest:\n{_listed(likeliest)}"
        )
    return list(dict.fromkeys(found))


def _no_fault(text: str, answer: Diagnosis) -> list[str]:
    """The likeliest cause that is no fault, if the words say that nothing is wrong."""
    if _plain(text) not in NO_FAULT:
        return []
    first = answer.ranking[0]
    if first.cause.no_fault and first.probability >= LIKELY:
        return [first.cause.id]
    return [OIL_HOT_NORMAL.id]


def _meant(text: str, book: Book) -> list[str]:
    """The causes one text names. Raises UsageError with the nearest ones."""
    ids = list(each_id([text]))
    if all(id_ in book.causes for id_ in ids):
        return ids
    if word_for_word := _word_for_word(text, book):
        return [word_for_word.id]
    hits = finder_of(book).find(text, (Cause,), LEADERS)
    if " " in text.strip() and _is_clear(hits):
        return [hits[0].word.id]
    near = [h.word for h in hits if isinstance(h.word, Cause)]
    meant = f" May be:\n{_listed(near)}\n" if near else " "
    raise UsageError(
        f"{to(Way.CAUSE)}: no cause '{plain(text, 40)}'.{meant}"
        "where the book has none: not_in_the_book"
    )


def _word_for_word(text: str, book: Book) -> Cause | None:
    """The one cause in whose words a text of several words stands; None where none or more do."""
    wanted = _plain(text)
    if len(wanted.split()) < SEVERAL:
        return None
    holds = [
        c
        for c in book.causes.values()
        if any(f" {wanted} " in f" {_plain(said)} " for said in (c.says, *c.also))
    ]
    return holds[0] if len(holds) == 1 else None


def _plain(text: str) -> str:
    """The words of a text with single blanks between them."""
    return " ".join("".join(c if c.isalnum() else " " for c in text.lower()).split())


def _is_clear(hits: Sequence[Hit]) -> bool:
    """Whether one cause fits well, and much better than the next."""
    next_ = hits[1].score if len(hits) > 1 else 0.0
    return bool(hits) and hits[0].score >= _CLEAR and hits[0].score - next_ >= _AHEAD


def _listed(causes: Iterable[Cause]) -> str:
    return "\n".join(f"- {cause.says}: {cause.id}" for cause in causes)
