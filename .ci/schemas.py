"""Holds the documents in examples/data, and those that tests/schema.rs has laid out, against the kept schemas.

    python3 .ci/schemas.py DIRECTORY    # where the test has put documents.jsonl and spoiled.jsonl

What the crate reads or writes must pass; of what it refuses the schemas must refuse nearly all.
"""

import collections
import glob
import json
import pathlib
import sys

from jsonschema import Draft202012Validator

LEAST_AGREEMENT = 0.95

# Of requests the schema of what is read is kept, of answers that of what is written: the test lays out the others.
OTHER_WAY = {
    "joint": "written_joint",
    "report": "read_report",
    "length_report": "read_length_report",
    "design_report": "read_design_report",
}

data = pathlib.Path(__file__).parent.parent / "examples" / "data"
laid_out = pathlib.Path(sys.argv[1])


def load(path):
    with open(path, encoding="utf-8") as file:
        return json.load(file)


def lines(name):
    with open(laid_out / name, encoding="utf-8") as file:
        for line in file:
            yield json.loads(line)


validators = {}
for path in [*data.glob("*.schema.json"), *laid_out.glob("*.schema.json")]:
    schema = load(path)
    Draft202012Validator.check_schema(schema)
    validators[path.name.removesuffix(".schema.json")] = Draft202012Validator(schema)

wrong = 0


def must_pass(name, kind, document):
    global wrong
    for error in validators[kind].iter_errors(document):
        wrong += 1
        print(f"{name}: {error.json_path}: {error.message[:300]}")
        break


examples = 0
for path in sorted(glob.glob(str(data / "*.json"))):
    name = pathlib.Path(path).name
    document = load(path)
    if name.endswith(".schema.json"):
        continue
    if name.endswith("_designs.json"):
        must_pass(name, "design_report", document)
    elif name.endswith("_report.json"):
        must_pass(name, "report", document)
    elif name.endswith("_design.json"):
        must_pass(name, "joint", document["joint"])
        must_pass(name, "design_space", document["space"])
    elif "bolt" in document:
        must_pass(name, "joint", document)
    else:
        continue
    examples += 1

random = collections.Counter()
for number, line in enumerate(lines("documents.jsonl")):
    # An assembly is only written.
    for kind in filter(None, (line["schema"], OTHER_WAY.get(line["schema"]))):
        must_pass(f"random document {number} ({kind})", kind, line["document"])
    random[line["schema"]] += 1

total = agreed = refused = both = 0
kinds_of = collections.Counter()
kinds = collections.Counter()
sides = collections.defaultdict(collections.Counter)
for line in lines("spoiled.jsonl"):
    passes = validators[line["schema"]].is_valid(line["document"])
    reads = line["refusal"] is None
    total += 1
    kinds_of[line["schema"]] += 1
    # What is refused when it is read was never written: the kept schema of an answer refuses it too.
    kept = line["schema"].removeprefix("read_")
    if not passes and kept != line["schema"] and validators[kept].is_valid(line["document"]):
        wrong += 1
        print(f"{kept}: passes, and its readers refuse it: {line['at']}: {line['kind']}")
    refused += not reads
    both += not reads and not passes
    kinds[line["kind"]] += 1
    if passes == reads:
        agreed += 1
    else:
        side = "the crate alone refuses" if passes else "the schema alone refuses"
        sides[side, line["kind"]][line["at"].rsplit("/", 1)[-1]] += 1
        if "--all" in sys.argv:
            print(side, "|", line["kind"], "|", line["at"], "|", line["refusal"])

print(f"{examples} examples and {sum(random.values())} random documents {dict(random)}, {wrong} of them refused")
print(f"{total} spoiled documents {dict(kinds_of)}: schema and crate agree on {agreed} ({agreed / total:.1%})")
print(f"the crate refuses {refused}, the schema {both} of these ({both / refused:.1%})")
for (side, kind), places in sorted(sides.items(), key=lambda item: -item[1].total()):
    shown = ", ".join(f"{place} {count}" for place, count in places.most_common(6))
    print(f"  {side}: {kind}: {places.total()} of {kinds[kind]} ({shown})")

if wrong or agreed < LEAST_AGREEMENT * total or both < LEAST_AGREEMENT * refused:
    sys.exit("FAILED: the schemas and the crate do not agree")
