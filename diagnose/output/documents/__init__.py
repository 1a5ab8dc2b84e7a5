"""One document per command: everything the command answers, as frozen dataclasses of plain values.

Only these modules read the reasoning objects (diagnosis, plan, survey ...). The renderers in
``text``, ``markdown``, ``html`` and ``as_json`` read documents and nothing else.
"""
