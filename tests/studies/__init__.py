"""Scripts that print studies; run each as ``python -m tests.studies.NAME``."""
