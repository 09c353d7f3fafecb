"""Lines of each module that the tests reach, held against .ci/coverage.csv.

    python3 .ci/coverage.py            # runs all tests but those of the docs, and fails below a floor
    python3 .ci/coverage.py --move     # writes what was measured, rounded down, as the new floors: say why in the commit
    python3 .ci/coverage.py --unmet    # lists the lines that no test reaches as well

A line that is reached need not be tested: that is what .ci/mutants asks. A floor only sees that nothing new comes without a test.
What measures is of the toolchain: rustup component add llvm-tools.
"""

import collections
import csv
import json
import os
import pathlib
import subprocess
import sys

root = pathlib.Path(__file__).resolve().parent.parent
floors_file = root / ".ci" / "coverage.csv"
target = pathlib.Path(os.environ.get("CARGO_TARGET_DIR", root / "target")).resolve() / "coverage"
raw = target / "raw"
# One file a program, added up over its runs.
environment = {
    **os.environ,
    "CARGO_TARGET_DIR": str(target),
    "RUSTFLAGS": "-C instrument-coverage",
    "LLVM_PROFILE_FILE": str(raw / "%m.profraw"),
}

subprocess.run(["rm", "-rf", raw], check=True)
subprocess.run(["rustup", "component", "add", "llvm-tools"], check=True, capture_output=True)
told = subprocess.run(["rustc", "--print", "target-libdir"], check=True, capture_output=True, text=True).stdout
tools = pathlib.Path(told.strip()).parent / "bin"

tests = ["cargo", "test", "--locked", "--all-features", "--lib", "--tests"]
subprocess.run(tests, cwd=root, env=environment, check=True)
built = subprocess.run(
    [*tests, "--no-run", "--message-format", "json"], cwd=root, env=environment, check=True, capture_output=True, text=True
).stdout
programs = [each["executable"] for each in map(json.loads, built.splitlines()) if each.get("executable")]

merged = target / "all.profdata"
subprocess.run([tools / "llvm-profdata", "merge", "-sparse", raw, "-o", merged], check=True)
objects = [word for program in programs for word in ("-object", program)][1:]
export = [tools / "llvm-cov", "export", "-format=text", "-skip-expansions", "-skip-functions", f"-instr-profile={merged}", *objects]
files = json.loads(subprocess.run(export, check=True, capture_output=True, text=True).stdout)["data"][0]["files"]

lines = collections.Counter()
reached = collections.Counter()
for file in files:
    path = pathlib.Path(file["filename"])
    if not path.is_relative_to(root / "src"):
        continue
    inside = path.relative_to(root / "src")
    # Tests are not what is tested.
    if inside.name == "tests.rs" or "tests" in inside.parts:
        continue
    # `src/joint.rs` and all below `src/joint/` are one module, and `joint::whole` is another, as large as all others.
    module = "joint::whole" if inside.parts[:2] in (("joint", "whole"), ("joint", "whole.rs")) else inside.parts[0].removesuffix(".rs")
    lines[module] += file["summary"]["lines"]["count"]
    reached[module] += file["summary"]["lines"]["covered"]
    if "--unmet" in sys.argv:
        unmet = sorted({segment[0] for segment in file["segments"] if segment[3] and segment[4] and segment[2] == 0})
        if unmet:
            print(f"{inside}: {', '.join(map(str, unmet))}")

share = {module: 100 * reached[module] / lines[module] for module in sorted(lines)}
if "--move" in sys.argv:
    with open(floors_file, "w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(("module", "floor"))
        writer.writerows((module, int(2 * share[module]) / 2) for module in share)

with open(floors_file, encoding="utf-8", newline="") as file:
    floors = {row["module"]: float(row["floor"]) for row in csv.DictReader(file)}
wrong = []
for module in share:
    print(f"{module:16} {reached[module]:>6} of {lines[module]:>6} lines  {share[module]:5.1f} %  floor {floors.get(module, '-')}")
    if share[module] < floors.get(module, 100):
        wrong.append(module)
if wrong or floors.keys() != share.keys():
    sys.exit(f"FAILED: below their floors, or not in {floors_file.name}: {', '.join(wrong) or sorted(floors.keys() ^ share.keys())}")
