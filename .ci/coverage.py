"""Lines of each module that a test runs, held against .ci/coverage.csv: what no test meets cannot be trusted.

    python3 .ci/coverage.py            # fails if a module is below its floor
    python3 .ci/coverage.py --lines    # and shows every line that is not run
    python3 .ci/coverage.py --move     # writes what was measured as the new floors: say why in the commit

By hand: a build of all tests with counters in them, and a run of each, take ten minutes. Doc examples are left out, as
each is a program of its own; so is what only tests are made of. That a line is run says little of whether it is
right: see the mutants in DEVELOPERS.md.
"""

import csv
import json
import os
import pathlib
import re
import shutil
import subprocess
import sys

here = pathlib.Path(__file__).resolve().parent
root = here.parent
floors_file = here / "coverage.csv"
target = pathlib.Path(os.environ.get("CARGO_TARGET_DIR", root / "target")).resolve() / "coverage"
raw = target / "raw"


def said(*command, **more):
    return subprocess.run(command, check=True, capture_output=True, text=True, cwd=root, **more).stdout


def tool(name):
    """Of the compiler itself: another one's may not read its counters."""
    found = pathlib.Path(said("rustc", "--print", "target-libdir").strip()).parent / "bin" / name
    if not found.exists():
        subprocess.run(["rustup", "component", "add", "llvm-tools"], check=True)
    return found


def module(path):
    parts = pathlib.PurePath(path).with_suffix("").parts
    return "joint/whole" if parts[:2] == ("joint", "whole") else parts[0]


def only_for_tests(path):
    return re.search(r"(^|/)tests(/|\.rs$)", path) or path.startswith("tables/generated/")


environment = os.environ | {
    "CARGO_TARGET_DIR": str(target),
    "CARGO_PROFILE_TEST_DEBUG": "0",
    "CARGO_PROFILE_DEV_DEBUG": "0",
    "RUSTFLAGS": "-C instrument-coverage",
    "LLVM_PROFILE_FILE": str(raw / "%4m.profraw"),
}
shutil.rmtree(raw, ignore_errors=True)
tests = ["cargo", "test", "--locked", "--all-features", "--lib", "--tests"]
# With counters in it, time grows otherwise.
subprocess.run([*tests, "--quiet", "--", "--skip", "growth"], check=True, cwd=root, env=environment, stdout=subprocess.DEVNULL)
built = said(*tests, "--no-run", "--message-format=json", env=environment).splitlines()
programs = [own for line in built if line.startswith("{") and (own := json.loads(line).get("executable"))]

merged = target / "merged.profdata"
said(tool("llvm-profdata"), "merge", "-sparse", *map(str, sorted(raw.glob("*.profraw"))), "-o", str(merged))
objects = [word for program in programs[1:] for word in ("-object", program)]
exported = said(tool("llvm-cov"), "export", "-format=text", f"-instr-profile={merged}", programs[0], *objects)

source = str(root / "src") + "/"
count, run = {}, {}
for file in json.loads(exported)["data"][0]["files"]:
    path = file["filename"].removeprefix(source)
    if path == file["filename"] or only_for_tests(path):
        continue
    lines = file["summary"]["lines"]
    count[module(path)] = count.get(module(path), 0) + lines["count"]
    run[module(path)] = run.get(module(path), 0) + lines["covered"]
    if "--lines" in sys.argv:
        for line, column, times, counted, begins, *_ in file["segments"]:
            if counted and begins and times == 0:
                print(f"src/{path}:{line}:{column}")

with open(floors_file, encoding="utf-8", newline="") as file:
    floors = {row["module"]: float(row["floor"]) for row in csv.DictReader(file)}
wrong = [name for name in floors if name not in count]
for name in wrong:
    print(f"{name}: no such module is measured")
for name in sorted(count):
    share = 100.0 * run[name] / count[name]
    low = share < floors.get(name, 100.0)
    wrong += [name] * low
    print(f"{name:16} {share:5.1f} % of {count[name]:6} lines" + ("  BELOW ITS FLOOR" if low else ""))

if "--move" in sys.argv:
    with open(floors_file, "w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(["module", "floor"])
        # A little below, so that a moved brace does not fail.
        writer.writerows([name, f"{max(100.0 * run[name] / count[name] - 0.3, 0.0):.1f}"] for name in sorted(count))
elif wrong:
    sys.exit(f"FAILED: {', '.join(wrong)}")
