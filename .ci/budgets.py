"""Instructions of key calls and the weight of a small program, held against .ci/budgets.csv.

    python3 .ci/budgets.py            # fails if anything is over its budget, or far below it
    python3 .ci/budgets.py --move     # writes what was measured as the new budgets: say why in the commit

Instructions are counted by valgrind, as the difference of two runs, so that neither the machine nor what else it does
counts. A budget may be passed by its slack; one that is no longer reached by far is too wide to guard anything, and must be moved.
"""

import csv
import os
import pathlib
import re
import shutil
import subprocess
import sys

here = pathlib.Path(__file__).parent
target = pathlib.Path(os.environ.get("CARGO_TARGET_DIR", here.parent / "target")).resolve()
budgets_file = here / "budgets.csv"

FEW, MANY = 2, 22


def build(package):
    command = ["cargo", "build", "--release", "--locked", "--quiet", "--target-dir", str(target)]
    subprocess.run(command, cwd=here / package, check=True)
    return target / "release" / package


def instructions(program, call, times):
    command = ["valgrind", "--tool=callgrind", "--callgrind-out-file=/dev/null", program, call, str(times)]
    told = subprocess.run(command, check=True, capture_output=True, text=True).stderr
    return int(re.search(r"Collected : (\d+)", told).group(1))


with open(budgets_file, encoding="utf-8", newline="") as file:
    rows = list(csv.DictReader(file))

program, small = build("measured"), build("small")
valgrind = shutil.which("valgrind")
if not valgrind:
    print("SKIPPED: there is no valgrind here, so that no instructions are counted")

wrong = 0
for row in rows:
    if row["what"] == "bytes":
        measured = small.stat().st_size
    elif valgrind:
        both = [instructions(program, row["name"], times) for times in (FEW, MANY)]
        measured = round((both[1] - both[0]) / (MANY - FEW))
    else:
        continue
    budget, slack = int(row["budget"] or 0), float(row["slack"])
    share = measured / budget if budget else float("inf")
    print(f"{row['name']:32} {measured:>10} {row['what']:12} {share:6.2f} of its budget")
    if "--move" in sys.argv:
        row["budget"] = measured
    elif not 1 / (1 + 2 * slack) <= share <= 1 + slack:
        wrong += 1
        print(f"  outside of it (slack {slack}): find out why, or move it with --move and say why")

if "--move" in sys.argv:
    with open(budgets_file, "w", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, rows[0].keys(), lineterminator="\n")
        writer.writeheader()
        writer.writerows(rows)
elif wrong:
    sys.exit(f"FAILED: {wrong} outside of their budgets")
