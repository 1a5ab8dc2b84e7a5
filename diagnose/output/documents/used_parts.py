"""Which used parts go back in, as ``signoff`` shows it."""

from __future__ import annotations

from dataclasses import dataclass

from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.limits import source_title
from diagnose.signoff.reuse import part_fates
from knowledge.reuse import Fate


@dataclass(frozen=True, kw_only=True)
class UsedPartEntry:
    """A used part: its fate, why, and what to do; ``fate`` is empty where nobody looked yet."""

    id: str
    part: str
    fate: str  #: renew, rework, reuse; or empty
    because: tuple[str, ...]
    how: str  #: what to do, as an order
    source: str

    @property
    def decided(self) -> bool:
        """Whether something was seen or measured that decides."""
        return bool(self.fate)

    @property
    def goes_back(self) -> bool:
        """Whether it goes back in as it is."""
        return self.fate == Fate.REUSE.value


def used_parts(diagnosis: Diagnosis) -> tuple[UsedPartEntry, ...]:
    """Build the entries; none where nothing of any of these parts is known."""
    fates = part_fates(diagnosis)
    if not any(f.fate for f in fates):
        return ()
    return tuple(
        UsedPartEntry(
            id=f.part.id,
            part=f.part.says,
            fate=f.fate.value if f.fate else "",
            because=tuple(
                b.stated(f.fate is not Fate.REUSE or b in f.part.sound) for b in f.because
            ),
            how=f.how,
            source=source_title(f.part.source),
        )
        for f in fates
    )
