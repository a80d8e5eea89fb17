"""Checks a file of check vectors from Python, through examples/call.mjs.

    python3 examples/call.py shared/jars-fill.json

Needs Python 3.8 or newer, Node, and the built package; nothing else.
"""
import json
import pathlib
import subprocess
import sys

HERE = pathlib.Path(__file__).resolve().parent


class Stillroom:
    """The library in a process of its own: one line in, one line out."""

    def __init__(self):
        command = ["node", str(HERE / "call.mjs"), "--lines"]
        self.process = subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, encoding="utf-8")

    def call(self, name, given=None):
        asked = {"call": name} if given is None else {"call": name, "input": given}
        self.process.stdin.write(json.dumps(asked) + "\n")
        self.process.stdin.flush()
        return json.loads(self.process.stdout.readline())

    def close(self):
        self.process.stdin.close()
        self.process.wait()


def is_quantity(value):
    return isinstance(value, dict) and set(value) == {"value", "unit"}


def near(expected, found, tolerance):
    if isinstance(found, bool) or not isinstance(found, (int, float)):
        return False
    allowed = 1e-12 * abs(expected)
    if tolerance != "exact":
        allowed += tolerance.get("absolute", 0) + tolerance.get("relative", 0) * abs(expected)
    return abs(expected - found) <= allowed


def agrees(library, expected, found, tolerance):
    """Whether an answer holds what is expected: numbers within the tolerance, quantities in any unit."""
    if isinstance(expected, bool) or expected is None or isinstance(expected, str):
        return expected == found
    if isinstance(expected, (int, float)):
        return near(expected, found, tolerance)
    if isinstance(expected, list):
        return (
            isinstance(found, list)
            and len(found) == len(expected)
            and all(agrees(library, one, other, tolerance) for one, other in zip(expected, found))
        )
    if not isinstance(found, dict):
        return False
    if is_quantity(expected) and is_quantity(found) and expected["unit"] != found["unit"]:
        found = library.call("convert", [found, expected["unit"]])
    return all(agrees(library, value, found.get(key), tolerance) for key, value in expected.items())


def passes(library, check):
    found = library.call(check["call"], check["input"])
    expected = check["expect"]
    if "error" in expected:
        return found.get("error", {}).get("code") == expected["error"]
    return agrees(library, expected, found, check.get("tolerance", "exact"))


def main(path):
    library = Stillroom()
    checks = json.loads(pathlib.Path(path).read_text(encoding="utf-8"))["checks"]
    failed = [check["id"] for check in checks if not passes(library, check)]
    library.close()
    print(f"{len(checks) - len(failed)} of {len(checks)} checks pass")
    for check in failed:
        print(f"  fails: {check}")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1] if len(sys.argv) > 1 else HERE.parent / "shared" / "jars-fill.json"))
