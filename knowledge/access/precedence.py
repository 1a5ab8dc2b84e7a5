"""What must be looked at before it is spoilt: before an opening, or first at an open place.

Imported by planning, sign-off and the self-check. An entry binds only while its check is still
open and worth its minutes; with the tree of access, all of them have an order on every layout.
"""

from knowledge.access.before_inside import BEFORE_INSIDE
from knowledge.access.before_outside import BEFORE_OUTSIDE
from knowledge.access.first_inside import FIRST_INSIDE
from knowledge.access.first_outside import FIRST_OUTSIDE
from knowledge.access.precedence_model import CLOSED_TO_RUN, ENDS_RUNNING, Before, FirstOf

BEFORE: tuple[Before, ...] = (*BEFORE_OUTSIDE, *BEFORE_INSIDE)
FIRST_OF: tuple[FirstOf, ...] = (*FIRST_OUTSIDE, *FIRST_INSIDE)

__all__ = ["BEFORE", "CLOSED_TO_RUN", "ENDS_RUNNING", "FIRST_OF", "Before", "FirstOf"]
