"""Commands by the user's words: the only place that prints, prompts and exits."""

INTERRUPTED = 130  #: exit code of a command a person stopped
STOPPED = "stopped; what was saved is kept"
