#!/usr/bin/env python3
"""Holds the schemas in docs/schema against real files: every golden attempt and the browser's call have to fit, and
each of these files spoilt in one place must not.

usage: check.py SCHEMA FILE...     needs the Python package jsonschema
"""

import copy
import json
import sys
from pathlib import Path

from jsonschema import Draft202012Validator


def spoilt(attempt):
    """The same attempt, wrong in one place each time."""
    wrong = copy.deepcopy(attempt)
    wrong["actions"][0]["do"] = "no-such-act"
    yield "an unknown act", wrong
    wrong = copy.deepcopy(attempt)
    wrong["actions"][0]["extra"] = 1
    yield "a field too many", wrong
    wrong = copy.deepcopy(attempt)
    wrong["rules"] = 99
    yield "other rules", wrong
    wrong = copy.deepcopy(attempt)
    wrong["drill"] = {"fault": "F01"}
    yield "a drill without a seed", wrong
    wrong = copy.deepcopy(attempt)
    del wrong["actions"]
    yield "no acts", wrong


def main(schema, files):
    schema = json.loads(Path(schema).read_text())
    Draft202012Validator.check_schema(schema)
    validator = Draft202012Validator(schema)
    failed = 0
    for name in files:
        attempt = json.loads(Path(name).read_text())
        for error in sorted(validator.iter_errors(attempt), key=str):
            print(f"{name}: {list(error.absolute_path)}: {error.message[:200]}")
            failed += 1
        for what, wrong in spoilt(attempt):
            if validator.is_valid(wrong):
                print(f"{name}: the schema lets {what} through")
                failed += 1
    print(f"{len(files)} attempts, each also spoilt in 5 ways: {failed} disagreements")
    return 1 if failed or not files else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], sys.argv[2:]))
