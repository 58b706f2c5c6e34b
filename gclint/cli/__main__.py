"""`python -m gclint.cli`, where the script is not installed"""

from gclint.cli.main import main

main()
