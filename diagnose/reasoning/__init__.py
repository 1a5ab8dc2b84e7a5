"""From a case to its causes and the next check: the parts that a ``Diagnosis`` puts together."""
