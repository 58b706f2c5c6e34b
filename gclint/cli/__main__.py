"""`python -m gclint.cli`, where the script is not installed"""

from gclint.cli.main import main

if __name__ == "__main__":  # a worker that is a fresh interpreter imports this file as well
    main()
