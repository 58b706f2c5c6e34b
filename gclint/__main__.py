"""`python -m gclint`"""

from gclint.cli.main import main

main()
