"""What people report: readings in words, behaviour, trials, earlier work; and what follows."""
