"""`python -m gclint`, where the script is not on the PATH"""

from gclint.cli.main import main

if __name__ == "__main__":  # a worker that is a fresh interpreter imports this file as well
    main()
