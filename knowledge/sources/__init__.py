"""Every source that is cited, sorted by kind; ``trust`` says how far each is relied on."""

from knowledge.sources.bearing_sizes import *  # noqa: F403
from knowledge.sources.general import *  # noqa: F403
from knowledge.sources.makers import *  # noqa: F403
from knowledge.sources.makers_cleaning import *  # noqa: F403
from knowledge.sources.makers_kinds import *  # noqa: F403
from knowledge.sources.makers_limits import *  # noqa: F403
from knowledge.sources.shop_notes import *  # noqa: F403
from knowledge.sources.tables import *  # noqa: F403
from knowledge.sources.trade_press import *  # noqa: F403
