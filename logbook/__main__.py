"""`python -m logbook` is the command `logbook`."""

import sys

from logbook.cli import main

sys.exit(main())
