"""How the trouble began and went on, put without its usual words."""

from __future__ import annotations

_GOOD = "good|healthy|fine|normal|plenty|right|perfect|ok|strong|full_pressure|spot_on"
_NIL = "had_none|nothing|nil|none|zero|no|dead|not_a_thing|no_pressure|flat|nought"
_STOPPED = "stop|stopped|shutdown|shut_down|switched_off|parked|turned_off|shut_off|stop_motor|stopped_the_engine|killed"
_AGAIN = "start_again|next_start|subsequent|restart|restarted|started_again|crank-up|next_time|start_up_again|next_morning|fired_up_again|came_back_to_it|came_back_an_hour|came_back_later|hour_later|went_to_leave|fired_it_up|next_day|cranked_it_again|after_lunch|went_to_start|started_up_again"
_BAD = "pressure|gauge|lamp|light|needle"
#: the finding, by words that stand together when it is there
THERE: dict[str, tuple[str, ...]] = {
    "gone_at_the_next_start": (
        "evening|yesterday|last_night|friday|lunch|night_before & good|fine|normal|@pressure|healthy & morning|today|now|monday|start & pressure & nothing|zero|nil|no_pressure|dead|none - fuel|leak|noise|nothing_wrong|still_good|nothing_else|nothing_changed|lower|cold",
        f"drove_home|drove_it_home|put_it_away|parked_it|parked_her|ran_fine|ran_well & {_GOOD}|@pressure & tonight|this_morning|today|restarting|on_restarting|next_start|turned_the_key|next_morning & no_pressure|no_oil_pressure|stays_dead|nothing_on_the|not_a_flicker|stayed_at_zero|zero|gauge_dead - fuel_pump|fuel_gauge|leak|clutch|brake|tyre|battery",
        f"{_GOOD}|@pressure & {_STOPPED}|stopped_for|shut_it_off|turned_it_off|left_it|put_away|switched_it_off|stop_for|lunch|overnight & restarting|on_restarting|starting_again|started_it_again|fired_it_up_again|fire_up_again|came_back|next_day|monday|next_morning|started_again|restart|restarted|tried_again|started_it_up & no_pressure|no_oil_pressure|nothing_on_the|not_a_flicker|lay_there|lay_dead|@not_build|@not_come_up|zero|gauge_dead|clock_dead|needle_dead - fuel|still_good|leak|low_again|clutch|brake|tyre|water|came_back_up|came_back_good",
        f"{_GOOD} & {_STOPPED} & {_AGAIN}|next|subsequent & {_NIL} - not_lost|leak|fuel|still_good|noise|starts|start_at_all|no_change|no_work",
    ),
    "began_after_revving_hard": (
        "over-speed|overspeed|over-revved|overrevved|ran_away|redline|red_line|wide_open|stuck_open|limiter|rev_limiter|buzzed|money_shift|missed_shift|missed_a_gear|floored|thrashed|screamed|bounced_off & since_then|ever_since|right_after|from_then|straight_after|after_that|since|immediately_after & no_pressure|no_oil_pressure|poor|weak|low_pressure|pressure_low|pressure_poor|pressure_gone|lost_pressure|light_on|light_came - fine|nobody|normal|good|no_link|always|before_that",
        f"over-speed|overspeed|over_speed|over-revved|overrev|overrevved|ran_away|runaway|red_zone|redline|red_line|wide_open|limiter|flat_out|screamed|revved_the|thrashed|revved_it|full_throttle|floored|held_it_wide & {_BAD}|onset & from_then|right_after|after_this|since|immediately_following|straight_after|ever_since|after_that|from_that|following|then & bad|low|came_on|never_came|gone|dropped|on|onset|down|fell|zero - no|not|fine|nobody|when_revved|without|normal|good",
    ),
    "stepped_down_and_stayed": (
        "fell|dropped|went_down|stepped|settled|single_drop|step_down|drop|notch_lower|down_a & one_go|once|single|wobble|twitch|sudden|suddenly|all_at_once|in_one|one_little|flick|jerk|wiggle & remained|stayed|held|steady|ever_since|stayed_there|since|holds|stuck_there - came_back|recovered|then_rose|zero|gradually|slowly|over_months|no|not",
    ),
}
#: the finding, by words that stand together when it is not there
ABSENT: dict[str, tuple[str, ...]] = {
    "gone_at_the_next_start": (
        f"{_GOOD} & {_STOPPED} & {_AGAIN} & still|too|again|same|also - no|not|nothing|zero|none|gone|lost|low",
    ),
    "began_after_revving_hard": (
        "nobody|never|not|no & thrashing|thrashed|revved|over-revved|red_line|redline|flat_out & pottering|low_speed|idling|gently|slow|started|began|slow_running|cruising - then|after_that",
    ),
}
