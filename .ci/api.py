"""The public interface, one line an item, compared with the kept .ci/api.txt, so that every change of it is seen in review.

    python3 .ci/api.py            # fails if the interface is not what the file says
    python3 .ci/api.py --update   # writes the file

The listing is made from what rustdoc knows of the crate with all features, and of the toolchain only from the format of that.
"""

import difflib
import json
import os
import pathlib
import subprocess
import sys

here = pathlib.Path(__file__).parent
target = pathlib.Path(os.environ.get("CARGO_TARGET_DIR", here.parent / "target"))
kept_file = here / "api.txt"

command = ["cargo", "rustdoc", "--locked", "--quiet", "--lib", "--all-features", "--"]
command += ["-Z", "unstable-options", "--output-format", "json", "--cap-lints", "allow"]
# The format is not stable; nothing else of the build is bootstrapped.
subprocess.run(command, cwd=here.parent, check=True, env={**os.environ, "RUSTC_BOOTSTRAP": "1"})
crate = json.loads((target / "doc" / "shankline.json").read_text(encoding="utf-8"))
index = crate["index"]
lines = set()
# Where an item stands first: under other names only that is told.
first = {}


def generic_args(args):
    if not args:
        return ""
    if "angle_bracketed" in args:
        inner = args["angle_bracketed"]
        parts = [
            each["lifetime"] if "lifetime" in each else each["const"]["expr"] if "const" in each else shown(each.get("type"))
            for each in inner["args"]
        ]
        for each in inner["constraints"]:
            equal = each["binding"].get("equality", {})
            parts.append(f"{each['name']} = {shown(equal.get('type'))}")
        return f"<{', '.join(parts)}>" if parts else ""
    inner = args["parenthesized"]
    output = f" -> {shown(inner['output'])}" if inner["output"] else ""
    return f"({', '.join(map(shown, inner['inputs']))}){output}"


def bound(each):
    if "outlives" in each:
        return each["outlives"]
    if "trait_bound" not in each:
        return "use<..>"
    maybe = "?" if each["trait_bound"]["modifier"] == "maybe" else ""
    trait = each["trait_bound"]["trait"]
    return maybe + trait["path"].split("::")[-1] + generic_args(trait["args"])


def shown(kind):
    if kind is None:
        return "_"
    [(what, of)] = kind.items() if isinstance(kind, dict) else [(kind, None)]
    if what == "resolved_path":
        return of["path"].split("::")[-1] + generic_args(of["args"])
    if what in ("generic", "primitive"):
        return of
    if what == "borrowed_ref":
        lifetime = f"{of['lifetime']} " if of["lifetime"] else ""
        return f"&{lifetime}{'mut ' if of['is_mutable'] else ''}{shown(of['type'])}"
    if what == "tuple":
        return f"({', '.join(map(shown, of))})"
    if what == "slice":
        return f"[{shown(of)}]"
    if what == "array":
        return f"[{shown(of['type'])}; {of['len']}]"
    if what == "impl_trait":
        return "impl " + " + ".join(map(bound, of))
    if what == "dyn_trait":
        return "dyn " + " + ".join(each["trait"]["path"] for each in of["traits"])
    if what == "qualified_path":
        return f"{shown(of['self_type'])}::{of['name']}"
    if what == "function_pointer":
        return f"fn{signature(of['sig'])}"
    return what


def signature(sig):
    inputs = ", ".join(name if name == "self" and shown(kind) == "Self" else f"{name}: {shown(kind)}" for name, kind in sig["inputs"])
    output = f" -> {shown(sig['output'])}" if sig["output"] else ""
    return f"({inputs}){output}"


def generics(of):
    params = []
    for each in of["params"]:
        kind = each["kind"]
        if "type" in kind and not kind["type"]["is_synthetic"]:
            bounds = " + ".join(map(bound, kind["type"]["bounds"]))
            params.append(each["name"] + (f": {bounds}" if bounds else ""))
        elif "const" in kind:
            params.append(f"const {each['name']}")
        elif "lifetime" in kind:
            params.append(each["name"])
    for each in of["where_predicates"]:
        if "bound_predicate" in each:
            predicate = each["bound_predicate"]
            params.append(f"{shown(predicate['type'])}: {' + '.join(map(bound, predicate['bounds']))}")
    return f"<{', '.join(params)}>" if params else ""


def function(path, item):
    of = item["inner"]["function"]
    const = "const " if of["header"]["is_const"] else ""
    lines.add(f"{const}fn {path}{generics(of['generics'])}{signature(of['sig'])}")


def marks(item):
    return "non_exhaustive " if "non_exhaustive" in str(item["attrs"]) else ""


def implementations(path, ids):
    traits = set()
    for each in ids:
        item = index.get(str(each))
        if item is None:
            continue
        of = item["inner"]["impl"]
        if of["is_synthetic"] or of["blanket_impl"] or of["trait"] and of["trait"]["path"] == "StructuralPartialEq":
            continue
        if of["trait"]:
            trait = of["trait"]["path"].split("::")[-1] + generic_args(of["trait"]["args"])
            traits.add(trait)
        else:
            for inner in of["items"]:
                member(path, index[str(inner)])
    if traits:
        lines.add(f"impl of {path}: {', '.join(sorted(traits))}")


def member(path, item):
    inner = item["inner"]
    if item["visibility"] not in ("public", "default"):
        return
    name = f"{path}::{item['name']}"
    if "function" in inner:
        function(name, item)
    elif "assoc_const" in inner:
        lines.add(f"const {name}: {shown(inner['assoc_const']['type'])}")
    elif "assoc_type" in inner:
        lines.add(f"type {name}")


def fields(path, ids):
    for each in ids:
        item = index.get(str(each)) if each is not None else None
        if item and item["visibility"] in ("public", "default"):
            lines.add(f"field {path}.{item['name']}: {shown(item['inner']['struct_field'])}")


def walk(path, item, name=None):
    kind, of = next(iter(item["inner"].items()))
    if kind == "use":
        target_item = index.get(str(of["id"])) if of["id"] is not None else None
        if target_item is None or of["is_glob"] and "module" not in target_item["inner"]:
            lines.add(f"use {path}::{of['name']} = {of['source']}")
        elif of["is_glob"]:
            for each in target_item["inner"]["module"]["items"]:
                child(path, index[str(each)])
        else:
            walk(path, target_item, of["name"])
        return
    path = f"{path}::{name or item['name']}" if path else item["name"]
    if first.setdefault(item["id"], path) != path:
        lines.add(f"use {path} = {first[item['id']]}")
        return
    if kind == "module":
        lines.add(f"mod {path}")
        # Last those that only repeat what stands elsewhere.
        for each in sorted((index[str(each)] for each in of["items"]), key=lambda own: "use" in own["inner"] or own["name"] == "prelude"):
            child(path, each)
    elif kind == "struct":
        lines.add(f"{marks(item)}struct {path}{generics(of['generics'])}")
        shape = of["kind"]
        if isinstance(shape, dict):
            fields(path, shape["plain"]["fields"] if "plain" in shape else shape["tuple"])
        implementations(path, of["impls"])
    elif kind == "enum":
        lines.add(f"{marks(item)}enum {path}{generics(of['generics'])}")
        for each in of["variants"]:
            variant = index[str(each)]
            shape = variant["inner"]["variant"]["kind"]
            inner = f"{path}::{variant['name']}"
            lines.add(f"{marks(variant)}variant {inner}")
            if isinstance(shape, dict):
                fields(inner, shape["struct"]["fields"] if "struct" in shape else shape["tuple"])
        implementations(path, of["impls"])
    elif kind == "trait":
        lines.add(f"trait {path}{generics(of['generics'])}")
        for each in of["items"]:
            member(path, index[str(each)])
    elif kind == "function":
        function(path, item)
    elif kind in ("constant", "static"):
        lines.add(f"const {path}: {shown(of['type'])}")
    elif kind == "type_alias":
        lines.add(f"type {path} = {shown(of['type'])}")
    else:
        lines.add(f"{kind} {path}")


def child(path, item):
    if item["visibility"] == "public":
        walk(path, item)


walk("", index[str(crate["root"])])
# By path, so that what belongs to a type stands with it.
listing = sorted(lines, key=lambda line: (line.split("shankline", 1)[-1], line))
if "--update" in sys.argv:
    kept_file.write_text("\n".join(listing) + "\n", encoding="utf-8")
kept = kept_file.read_text(encoding="utf-8").splitlines() if kept_file.exists() else []
print(f"{len(listing)} public items")
if kept != listing:
    for line in difflib.unified_diff(kept, listing, "kept", "now", lineterm="", n=0):
        print(line)
    sys.exit("FAILED: the public interface is another: python3 .ci/api.py --update, and say why in the commit")
