"""Commands as a user runs them: answers, streams, one screen."""
