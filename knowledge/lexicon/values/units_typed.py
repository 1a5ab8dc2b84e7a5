"""What people write for a unit. Common practice."""

from __future__ import annotations

#: what people write for a unit, beside the names the book reads
SPELLINGS = {
    "thousandths": "thou",
    "thousandth": "thou",
    "thous": "thou",
    "mils": "mil",
    "millimetres": "mm",
    "millimeters": "mm",
    "millimetre": "mm",
    "millimeter": "mm",
    "mms": "mm",
    "\u201d": "in",
    "''": "in",
    "centistokes": "cst",
    "lbs": "psi",
    "lb": "psi",
    "degrees c": "c",
    "degrees f": "f",
    "\u2126": "ohm",
    "\u03a9": "ohm",
    "secs": "s",
    "mins": "min",
    "hrs": "h",
    "qts": "qt",
    "gals": "gal",
    "pints": "pint",
    "ltr": "l",
    "ltrs": "l",
    "ft lb": "lb-ft",
    "ft lbs": "lb-ft",
    "ft-lbs": "lb-ft",
}
