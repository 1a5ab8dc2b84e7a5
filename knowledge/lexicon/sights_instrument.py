"""What is seen of gauge, sender, lamp and wiring, in phrases of more than the book's ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS_INSTRUMENT: dict[str, tuple[str, ...]] = {
    "tap_frees_needle": (
        "gauge|needle .. works|jumps|moves|comes .. tap|tapped|tapping|hit|thump",
        "tap|tapping|tapped|hit|thump the? gauge|dash|glass .. moves|jumps|works|comes|goes|reads",
    ),
    "wiggle_moves_needle": (
        "wiggle|wiggling|wiggled|touch|touching|move|jiggle .. wire|plug|connector|lead .. moves|jumps|comes|goes|changes|flickers|reads",
    ),
    "lamp_dead_with_key_on": (
        "light|lamp|bulb @not come|light|work|works|comes|lights on|with|when|up? .. key|ignition",
        "bulb blown|dead",
        "light|lamp @not|never comes|come on at|when|with|even? all|key|ignition",
    ),
    "second_instrument_disagrees": (
        "zero|low|nothing .. gauge but|and|yet .. light|lamp is|stays? off|out",
        "light|lamp|buzzer off|out|not|stays|is|never|says .. gauge .. zero|low|nothing",
        "gauge .. zero|low|nothing|ok|fine|good|normal but|yet|and|while .. light|lamp @not|is|stays|never off|on|out|come|came",
        "no light|lamp|alarm but|though|and .. gauge",
        "light|lamp .. but .. gauge .. good|fine|normal|ok|@pressure",
        "gauges disagree|differ",
    ),
    "other_gauges_also_wrong": (
        "all|other|fuel|temp|temperature gauge|gauges|of|and? .. dead|also|too|wrong|out|erratic|zero|went|quit|crazy",
    ),
    "needle_stuck_at_one_value": (
        "gauge|needle|pressure stays|sits|reads|shows at .. no|whatever|regardless matter|revs|rpm|of",
        "gauge|needle never|@not moves|move|changes|change .. whatever|matter|regardless|revs",
        "gauge|needle stuck at|on|in",
        "needle|gauge stuck|frozen",
        "always reads|shows the? same|@pressure",
    ),
    "needle_off_zero_at_rest": (
        "pegged|reads|shows|sits|at .. with|when key|ignition on engine|motor? off|stopped?",
        "pegged|reads|shows|sits|at .. with|when engine|motor off|stopped",
        "gauge|needle|reads|shows|sits|reading .. engine|key|ignition|motor|its off|stopped",
        "needle|gauge @not return|drop|go|back|goes|returns back? to zero",
    ),
    "gauge_line_leaking": (
        "gauge line|pipe|tube|capillary leaking|leaks|burst|cracked|broke|split",
    ),
    "sender_leaks_oil": (
        "sender|sending|sensor|switch unit? .. leaks|leaking|weeping|oily|wet",
        "oil in|at|around the? connector|sender|plug",
    ),
    "sender_connector_loose": (
        "loose|corroded|dirty connector|plug|terminal|connection|wire",
        "connector|terminal loose|corroded|green",
    ),
    "sender_wire_off": (
        "wire|lead|plug|connector .. off|unplugged|disconnected|hanging",
        "sender unplugged|disconnected",
    ),
    "sender_wire_broken": (
        "wire|lead broken|chafed|burnt|melted|frayed",
        "broken|chafed|frayed|melted wire|lead",
    ),
    "lifters_quiet": (
        "lifters|tappets|hlas|top-end are|stay|is|remain|all|perfectly|nice|and|very? quiet|silent",
        "no|@not lifter|tappet|valve|top-end noise|tick|ticking|clatter",
        "quiet lifters|tappets|top-end",
    ),
    "slow_needle": ("needle|gauge .. sluggish|slow|lazy",),
    "panel_reads_too_low": (
        "mechanical|test|direct|second|proper|other gauge .. higher|more|good|fine|normal|healthy",
        "dash|panel|factory|stock gauge .. low|lower|less .. mechanical|test|direct",
    ),
    "direct_gauge_zero": ("mechanical|test|direct|manual|master|shop gauge .. zero|nothing|none",),
    "direct_gauge_low": (
        "mechanical|test|direct|manual|master gauge .. confirms|confirmed|same|agrees|low|also|too|says|verified",
        "confirmed|verified low? with|by|on a? mechanical|test|direct|manual|master|second gauge",
    ),
}
