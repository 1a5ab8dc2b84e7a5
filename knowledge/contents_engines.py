"""The list of every file about kinds of engine; a new one is added here.

Imported by ``contents``.
"""

from knowledge.engines import features as engines_features
from knowledge.engines import features_build as engines_features_build
from knowledge.engines import features_kinds as engines_features_kinds
from knowledge.engines import layouts as engines_layouts
from knowledge.engines import layouts_more as engines_layouts_more
from knowledge.engines import layouts_old as engines_layouts_old
from knowledge.engines import layouts_special as engines_layouts_special
from knowledge.engines import profiles as engines_profiles
from knowledge.engines import profiles_more as engines_profiles_more
from knowledge.engines import rules_build as engines_rules_build
from knowledge.engines import rules_kinds as engines_rules_kinds
from knowledge.engines import rules_small as engines_rules_small
from knowledge.stations.oil import causes_feed as oil_causes_feed
from knowledge.stations.oil import findings_feed as oil_findings_feed

#: features, layouts, circuits in figures, and rules on them
ENGINES = (
    engines_features,
    engines_features_build,
    engines_features_kinds,
    engines_layouts,
    engines_profiles,
    engines_profiles_more,
    engines_layouts_special,
    engines_layouts_more,
    engines_layouts_old,
    engines_rules_build,
    engines_rules_small,
    engines_rules_kinds,
    oil_findings_feed,
    oil_causes_feed,
)
