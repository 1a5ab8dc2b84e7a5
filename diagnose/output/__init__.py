"""Documents of each command, and their renderings."""
