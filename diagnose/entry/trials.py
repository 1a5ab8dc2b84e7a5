"""Results of trials as typed: "cured", "no difference", "not tried"."""

from __future__ import annotations

from dataclasses import dataclass

from diagnose.case.reports import NOT_TRIED
from diagnose.errors import UsageError, plain
from knowledge.reports.shapes import TrialKind
from knowledge.reports.words import Result

_RESULTS: dict[str, Result] = {
    **{result.value: result for result in Result},
    **dict.fromkeys(("fixed", "fixed it", "cured it", "c"), Result.CURED),
    **dict.fromkeys(("better", "helped a little", "improved", "h"), Result.HELPED),
    **dict.fromkeys(("for a while", "for a time", "f"), Result.FOR_A_WHILE),
    **dict.fromkeys(
        (
            *("no change", "no effect", "same", "the same", "nothing", "no help", "s"),
            *("no odds", "made no odds", "made no difference", "did nothing", "still the same"),
            *("didn't help", "did not help"),
        ),
        Result.NO_DIFFERENCE,
    ),
    **dict.fromkeys(("w",), Result.WORSE),
}
_NEVER_MADE = (NOT_TRIED, "not done", "never", "untried", "n")
#: what can be answered, for messages
CHOICES = "cured, helped, for a while, no difference, worse, or not tried"


@dataclass(frozen=True, slots=True)
class TrialInput:
    """A trial and what it did; ``result`` is None where it was not made."""

    word: TrialKind
    result: Result | None

    def fields(self) -> dict[str, str | float | None]:
        """As fields of a ``[[trial]]``."""
        return {"result": NOT_TRIED if self.result is None else self.result.value}


def named_result(text: str) -> Result | str | None:
    """The result that ``text`` names, ``NOT_TRIED``, or None where it names neither.

    >>> named_result("No change"), named_result("not_tried")
    (<Result.NO_DIFFERENCE: 'no difference'>, 'not tried')
    """
    word = " ".join(text.lower().replace("_", " ").replace("-", " ").split())
    return NOT_TRIED if word in _NEVER_MADE else _RESULTS.get(word)


def trial_input(kind: TrialKind, text: str) -> TrialInput:
    """What a trial did. Raises UsageError, also for "yes" and "no", which can mean two things."""
    result = named_result(text)
    if result is None or text.strip().lower() == "n":
        raise UsageError(f"'{plain(text.strip(), 40)}' is no result of a trial; write {CHOICES}")
    return TrialInput(kind, result if isinstance(result, Result) else None)
