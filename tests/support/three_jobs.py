"""Three whole jobs that new users worked on: what each owner says, knows and would find."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class WholeJob:
    """``facts``: a case file with what the owner knows, for the interview; ``right``: ids of checks
    that would show what is wrong, or whether the trouble is real; ``seen``: ids of findings that
    the other checks show, of all else they show that it is not so.
    """

    name: str
    story: str
    facts: str
    right: tuple[str, ...]
    seen: tuple[str, ...]
    found: str  #: what is written down in the end, in words
    cause: str  #: id of the cause it is closed with


def finding_entry(no: int, what: str, state: str = "present") -> str:
    return f'[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "{state}"\n'


A = WholeJob(
    "A",
    "Petrol V8 in a boat. Gauge wavers at hot idle, 9 psi at hot idle, 38 psi at 2000 rpm hot, "
    "no leaks, new sender made no difference",
    'schema = 1\n[engine]\nlayout = "distributor_v8"\n'
    + finding_entry(1, "needle_flickers")
    + finding_entry(2, "in_a_boat")
    + finding_entry(3, "level_correct")
    + finding_entry(4, "dipstick_low", "absent")
    + finding_entry(5, "bearing_knock", "absent")
    + finding_entry(6, "just_worked_on", "absent")
    + '[[reading]]\nno = 7\nrpm = "700 rpm"\noil = "90 C"\npressure = "9 psi"\n'
    + '[[reading]]\nno = 8\nrpm = "2000 rpm"\noil = "90 C"\npressure = "38 psi"\n',
    ("fit_a_direct_gauge", "pull_the_relief_valve", "cut_the_filter_open"),
    ("level_correct", "oil_looks_clean"),
    "metal under the relief ball",
    "relief_debris",
)
B = WholeJob(
    "B",
    "Lamp flickers in long bends only, petrol four cylinder car, fine otherwise",
    'schema = 1\n[engine]\nlayout = "overhead_cam_four"\n'
    + finding_entry(1, "falls_in_a_manoeuvre")
    + finding_entry(2, "in_a_vehicle")
    + finding_entry(3, "bearing_knock", "absent")
    + finding_entry(4, "just_worked_on", "absent"),
    ("read_the_stick", "repeat_the_manoeuvre", "fill_over_the_mark"),
    ("oil_looks_clean",),
    "oil level low",
    "oil_level_low",
)
C = WholeJob(
    "C",
    "Petrol V8 just rebuilt, pressure low since the first start, 12 psi at hot idle, mains "
    "measured 3.5 thou clearance, pump and bearings new",
    'schema = 1\n[engine]\nlayout = "distributor_v8"\n'
    + finding_entry(1, "gauge_reads_low")
    + finding_entry(2, "just_worked_on")
    + finding_entry(3, "level_correct")
    + finding_entry(4, "dipstick_low", "absent")
    + finding_entry(5, "bearing_knock", "absent")
    + '[[reading]]\nno = 6\nrpm = "700 rpm"\noil = "90 C"\npressure = "12 psi"\n',
    ("fit_a_direct_gauge", "lay_plastic_thread", "measure_journals_and_seats"),
    ("level_correct", "oil_looks_clean"),
    "no 3 main 3.5 thou",
    "bearing_wrong_size",
)
THREE = (A, B, C)
