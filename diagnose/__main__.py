"""``python -m diagnose``."""

from diagnose.cli.entry import main

if __name__ == "__main__":
    main()
