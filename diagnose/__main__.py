"""``python -m diagnose``."""

from diagnose.cli.main import main

if __name__ == "__main__":
    main()
