"""The oil circuit of one case: built, calibrated, harmed, and held against its readings."""
