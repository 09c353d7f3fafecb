"""Which part of the lines of each module the tests of the library run, from rustc's own counters.

    python3 .ci/coverage.py          fails below a floor of .ci/coverage.csv
    python3 .ci/coverage.py --move   writes the floors anew: what is measured, less half a percent
    python3 .ci/coverage.py --again  reads the counts of the last run
    python3 .ci/coverage.py --list   also names the longest runs of lines that no test reaches

Counts the lines of src that are compiled, without unit tests and generated tables; doc-tests and examples do not count as tests.
The reader of the counters is a component of the compiler: rustup component add llvm-tools
"""

import csv
import json
import os
import pathlib
import shutil
import subprocess
import sys

ROOT = pathlib.Path(__file__).resolve().parent.parent
FLOORS = ROOT / ".ci/coverage.csv"
TARGET = ROOT / "target/coverage"
PROFILES = TARGET / "profiles"
LINES = TARGET / "lines.info"
# A change of a few lines in a small module moves its share by so much, in percent.
SLACK = 0.5
LISTED = 40


def tool(name):
    library = subprocess.run(
        ["rustc", "--print", "target-libdir"], check=True, capture_output=True, text=True, cwd=ROOT
    ).stdout.strip()
    path = pathlib.Path(library).parent / "bin" / name
    if not path.exists():
        sys.exit(f"no {name}: rustup component add llvm-tools")
    return path


def run():
    """Builds and runs the tests with counters, and writes how often each line was run."""
    shutil.rmtree(PROFILES, ignore_errors=True)
    env = dict(
        os.environ,
        RUSTFLAGS="-C instrument-coverage",
        CARGO_TARGET_DIR=str(TARGET),
        LLVM_PROFILE_FILE=str(PROFILES / "%4m.profraw"),
    )
    test = ["cargo", "test", "--all-features", "--lib", "--tests"]
    built = subprocess.run(
        [*test, "--no-run", "--message-format=json"], env=env, cwd=ROOT, check=True, stdout=subprocess.PIPE, text=True
    )
    messages = (json.loads(line) for line in built.stdout.splitlines() if line.startswith("{"))
    binaries = [message["executable"] for message in messages if message.get("executable")]
    # Times say nothing where every line counts.
    subprocess.run([*test, "--", "--skip", "growth"], env=env, cwd=ROOT, check=True, stdout=subprocess.DEVNULL)
    profile = TARGET / "all.profdata"
    subprocess.run([tool("llvm-profdata"), "merge", "-sparse", PROFILES, "-o", profile], check=True)
    objects = [part for binary in binaries[1:] for part in ("--object", binary)]
    export = [tool("llvm-cov"), "export", "--format=lcov", f"--instr-profile={profile}", binaries[0], *objects]
    with LINES.open("w") as out:
        subprocess.run([*export, "--sources", ROOT / "src"], check=True, stdout=out)


def counted(path):
    """How many lines of a file are of the library: those before its unit tests."""
    text = path.read_text().splitlines()
    for number, line in enumerate(text):
        if line == "#[cfg(test)]" and text[number + 1].startswith("mod tests {"):
            return number
    return len(text)


def lines():
    """Of every file of the library its lines, and how often each was run."""
    found, name, last = {}, None, 0
    for line in LINES.read_text().splitlines():
        key, _, value = line.partition(":")
        if key == "SF":
            path = pathlib.Path(value)
            name = path.relative_to(ROOT / "src")
            is_test = path.name in ("tests.rs", "bench.rs") or "generated" in path.parts
            last = 0 if is_test else counted(path)
        elif key == "DA":
            number, count = (int(part) for part in value.split(",")[:2])
            if number <= last:
                file = found.setdefault(name, {})
                file[number] = max(file.get(number, 0), count)
    return found


def module(name, known):
    """The longest of the known modules that a file is of; else the outermost folder."""
    path = str(name.with_suffix(""))
    of = [own for own in known if path == own or path.startswith(own + "/")]
    return max(of, key=len, default=path.split("/")[0])


def uncovered(found):
    """Runs of lines that no test reaches, the longest first."""
    runs = []
    for name, counts in found.items():
        start, length = None, 0
        for number in sorted(counts):
            if counts[number] == 0:
                start = start or number
                length += 1
            else:
                if start:
                    runs.append((length, f"src/{name}:{start}"))
                start, length = None, 0
        if start:
            runs.append((length, f"src/{name}:{start}"))
    return sorted(runs, reverse=True)


def main():
    options = set(sys.argv[1:])
    if "--again" not in options:
        run()
    floors = {}
    if FLOORS.exists():
        with FLOORS.open() as file:
            floors = {row["module"]: float(row["floor"]) for row in csv.DictReader(file)}
    found = lines()
    sums = {}
    for name, counts in found.items():
        own = sums.setdefault(module(name, floors), [0, 0])
        own[0] += sum(count > 0 for count in counts.values())
        own[1] += len(counts)
    shares = {own: 100.0 * hit / of for own, (hit, of) in sums.items()}
    for own in sorted(shares):
        print(f"{own:20} {shares[own]:6.2f} % of {sums[own][1]:6} lines")
    if "--list" in options:
        for length, place in uncovered(found)[:LISTED]:
            print(f"{length:4} lines from {place}")
    if "--move" in options:
        with FLOORS.open("w", newline="") as file:
            rows = csv.writer(file, lineterminator="\n")
            rows.writerow(["module", "floor"])
            rows.writerows([own, f"{max(0.0, shares[own] - SLACK):.1f}"] for own in sorted(shares))
        return
    wrong = [f"{own}: no floor in {FLOORS.name}" for own in sorted(shares.keys() - floors.keys())]
    wrong += [f"{own}: no such module any more" for own in sorted(floors.keys() - shares.keys())]
    wrong += [
        f"{own}: {shares[own]:.2f} %, and the floor is {floor}"
        for own, floor in sorted(floors.items())
        if own in shares and shares[own] < floor
    ]
    sys.exit("\n".join(wrong) or 0)


main()
