"""``python -m diagnose``."""

from diagnose.cli.app import main

if __name__ == "__main__":
    main()
