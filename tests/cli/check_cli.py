#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Asks the terminal program everything it promises.

    check_cli.py PROGRAM [NAME…]    all tests, or those of the modules test_NAME.py
"""

import os
import sys
import unittest
from pathlib import Path


def main():
    os.environ["LASTRIVET_CLI"] = str(Path(sys.argv[1]).resolve())
    # Rule profiles of whoever runs the tests are none of theirs.
    os.environ["XDG_DATA_HOME"] = "/nowhere"
    here = Path(__file__).parent
    names = sys.argv[2:] or ["*"]
    loader = unittest.TestLoader()
    suite = unittest.TestSuite(
        loader.discover(str(here), pattern=f"test_{name}.py") for name in names)
    result = unittest.TextTestRunner(verbosity=1).run(suite)
    return 0 if result.wasSuccessful() and result.testsRun > 0 else 1


if __name__ == "__main__":
    sys.exit(main())
