"""Prints the bytes of many answers of the native library, as answers.mjs does of the module: both must be the same."""

import re
import sys
from pathlib import Path

import shankline

HERE = Path(__file__).resolve().parent
DATA = HERE.parent.parent / "data"

for line in (HERE / "requests.txt").read_text().split("\n"):
    if not line:
        continue
    question, request = line.split("\t")
    text = re.sub(r"@(\w+\.json)", lambda found: (HERE if found[1] == "bracket.json" else DATA).joinpath(found[1]).read_text(), request)
    try:
        answer = shankline.ask_text(question, text.encode())
    except shankline.Refusal as refusal:
        answer = refusal.raw
    sys.stdout.buffer.write(f"{line}\n".encode() + answer + b"\n")
