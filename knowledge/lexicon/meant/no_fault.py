"""What people say at the end of a job on an engine that has no fault."""

NO_FAULT = frozenset(
    [
        *("nothing wrong", "nothing is wrong", "nothing was wrong", "nothing wrong with it"),
        *("no fault", "no fault found", "no faults", "no fault was found", "no trouble found"),
        *("nothing found", "nothing was found", "nff", "ntf", "all ok", "all good", "all well"),
        *("it is fine", "its fine", "engine is fine", "engine fine", "healthy", "sound"),
        *("engine is sound", "the engine is sound", "it is normal", "normal"),
    ]
)
