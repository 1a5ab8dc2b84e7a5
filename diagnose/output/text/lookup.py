"""``lookup`` and ``show`` on a terminal."""

from __future__ import annotations

from diagnose.output.documents.lookup import HitsDocument, ListDocument, ShowDocument
from diagnose.output.lines import labelled, wrapped


def hits_text(document: HitsDocument) -> str:
    """Render what is understood, the words that fit, best first, and how to read more."""
    lines = []
    for says in document.understood or ():
        lines += labelled("understood", says, 0, 12)
    if document.understood:
        lines.append("")
    for hit in document.hits:
        lines += labelled(hit.kind, f"{hit.says} [{hit.id}]", 0, 12)
    more = [f"More on one: diagnose show {document.hits[0].id}"] if document.hits else []
    if document.understood:
        more.append("Record it in the same words: diagnose record CASE WORDS")
    return "\n".join([*lines, "", *more])


def list_text(document: ListDocument) -> str:
    """Render every word of a kind."""
    return "\n".join(line for each in document.words for line in wrapped(str(each.word), 0, 4))


def show_text(document: ShowDocument) -> str:
    """Render all fields of each word, its links and the checks that show it."""
    lines = []
    for each in document.words:
        lines += ["", *wrapped(f"{each.kind}: {each.word.says}")]
        for row in each.rows:
            for i, text in enumerate(row.texts):
                lines += labelled(row.label if i == 0 else "", text, 2, 18)
    return "\n".join(lines[1:])
