"""Licences, sources and use of what the library depends on, from `cargo metadata`.

    python3 .ci/dependencies.py

What is built with the library (not with its tests) comes from the public registry, under a licence of the list below; each
dependency that Cargo.toml names is used somewhere in src, each dev-dependency there or in tests, examples or benches.
"""

import json
import pathlib
import re
import subprocess
import sys

ALLOWED = {"MIT", "Apache-2.0", "Unicode-3.0", "Unlicense", "0BSD", "BSD-3-Clause", "Zlib"}
REGISTRY = "registry+https://github.com/rust-lang/crates.io-index"

root = pathlib.Path(__file__).parent.parent
command = ["cargo", "metadata", "--format-version", "1", "--locked", "--all-features"]
metadata = json.loads(subprocess.run(command, cwd=root, check=True, capture_output=True, text=True).stdout)
packages = {package["id"]: package for package in metadata["packages"]}
nodes = {node["id"]: node for node in metadata["resolve"]["nodes"]}
own = metadata["resolve"]["root"]

reached, left = set(), [own]
while left:
    for dependency in nodes[left.pop()]["deps"]:
        is_built = any(kind["kind"] != "dev" for kind in dependency["dep_kinds"])
        if is_built and dependency["pkg"] not in reached:
            reached.add(dependency["pkg"])
            left.append(dependency["pkg"])

wrong = []
for package in sorted((packages[each] for each in reached), key=lambda each: each["name"]):
    licence = package["license"] or "none"
    # Any one of alternatives will do; of what is joined by AND, all are needed.
    alternatives = re.split(r"\s+OR\s+|/", licence.replace("(", "").replace(")", ""))
    if not any(all(part in ALLOWED for part in each.split(" AND ")) for each in alternatives):
        wrong.append(f"{package['name']}: licence {licence}")
    if package["source"] != REGISTRY:
        wrong.append(f"{package['name']}: from {package['source']}")

text = {
    kind: "\n".join(path.read_text(encoding="utf-8") for folder in folders for path in (root / folder).rglob("*.rs"))
    for kind, folders in {None: ["src"], "dev": ["src", "tests", "examples", "benches"]}.items()
}
for dependency in packages[own]["dependencies"]:
    name = (dependency["rename"] or dependency["name"]).replace("-", "_")
    if not re.search(rf"\b{name}\b", text[dependency["kind"]]):
        wrong.append(f"{dependency['name']} is not used")

print(f"{len(reached)} packages are built with the library: " + ", ".join(sorted(packages[each]["name"] for each in reached)))
if wrong:
    sys.exit("FAILED: " + "; ".join(wrong))
