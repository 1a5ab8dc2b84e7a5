"""The study of surveys whose engine, oil or gauge is not as stated: what it makes, and floors."""

from __future__ import annotations

import numpy as np
import pytest

from knowledge.book import the_book
from knowledge.engines.profiles import Profile
from tests.studies.survey_study import trial
from tests.studies.survey_unlike import KINDS, as_stated, everything, study

PROFILES = list(the_book().profiles.values())


@pytest.mark.parametrize("profile", PROFILES, ids=lambda p: str(p.id))
def test_every_kind_of_truth_changes_what_it_names_and_nothing_else(profile: Profile) -> None:
    made = {name: kind(profile, np.random.default_rng(4)) for name, kind in KINDS.items()}
    plain = made["as stated"]
    for name, truth in made.items():
        every = name == "all three"
        assert (truth.profile is not profile) == (every or name == "other dimensions")
        assert (truth.oil_grade != plain.oil_grade) == (every or name == "another oil")
        assert (truth.scale > plain.scale) == (every or name == "another gauge")
        assert (truth.offset > plain.offset) == (every or name == "another gauge")


def test_as_stated_is_the_same_model_and_another_truth_changes_only_the_readings() -> None:
    """Without a baseline: predictions come from the stated profile whatever the truth is."""
    profile = PROFILES[0]
    stated, other = (kind(profile, np.random.default_rng(4)) for kind in (as_stated, everything))
    (same, seen, _), (plain, wanted, _), (shows, off, _) = (
        trial(profile, "pump_slip", 0.6, np.random.default_rng(2), calibrated=False, truth=truth)
        for truth in (stated, None, other)
    )
    assert np.array_equal(seen, wanted)
    assert np.array_equal(same.healthy, plain.healthy)
    assert np.array_equal(shows.healthy, plain.healthy)
    assert np.abs(off - wanted).max() > 3.0


@pytest.mark.long
def test_a_wrong_idea_of_the_engine_costs_hits_but_not_all() -> None:
    """Thirty-nine engines: dimensions, oil and gauge all wrong are worst, and no worse than this."""
    tallies = study(39)
    right, wrong = tallies["as stated", True, 7], tallies["all three", True, 7]
    assert right.first > wrong.first
    assert right.misled < wrong.misled
    assert wrong.second / wrong.trials >= 0.5
    assert wrong.misled / wrong.trials <= 0.33
