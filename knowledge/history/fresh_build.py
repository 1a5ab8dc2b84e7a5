"""Whether work was a rebuild of the whole engine straight before the trouble."""

from knowledge.history.areas_inside import WHOLE_ENGINE
from knowledge.reports.shapes import EarlierWork

_DAY = 86400.0  #: seconds


def just_rebuilt(work: EarlierWork) -> bool:
    """Whether the whole engine was rebuilt within a day before the trouble, or it began with it."""
    return work.area is WHOLE_ENGINE and work.before is not None and work.before <= _DAY
