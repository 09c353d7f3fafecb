# %% [markdown]
# A joint, its picture and its working. The cells run in an editor that knows `# %%`, or all at once:
#     python show_joint.py [JOINT.json] [PAGE.html]
# which writes one page to look at. In a notebook, `IPython.display.SVG(picture)` shows a picture.

# %%
import html
import json
import sys
from pathlib import Path

import shankline

DATA = Path(__file__).resolve().parent.parent.parent / "data"
file = Path(sys.argv[1]) if len(sys.argv) > 1 else DATA / "seesaw_pivot.json"
joint = json.loads(file.read_text())

# %% The verdict: one of three words, and why.
report = shankline.check(joint)
print(report["title"])
print(report["headline"])
for check in report["checks"][:5]:
    print(f"  {100 * check['utilisation']:5.1f} %  {check['mode']}: {check['method']}")

# %% A change: what would carry more?
heavier = {**joint, "load": {**joint["load"], "across": "8 kip"}}
print("under 8 kip:", shankline.verdict(heavier)["headline"])

# %% A mistake is refused with its place.
try:
    shankline.check({**joint, "bolt": {**joint["bolt"], "thread": "3/4-11 UNC"}})
except shankline.Refusal as refusal:
    print(f"{refusal.code} in {refusal.place.field}: {refusal.text}")

# %% Every load from nothing to 8 kip: where does it stop to hold?
steps = [35.6 * step for step in range(1000)]
swept = shankline.sweep(joint, steps, [0.0] * len(steps), least=shankline.STEADY)
held = sum(1 for word in swept.words if word == 1)
print(f"{held} of {len(steps)} loads hold")

# %% The pictures and the working, on one page.
section = shankline.draw(joint, "section")
checks = shankline.draw(joint, "checks")
working = shankline.explain(joint, "working", "text")
page = Path(sys.argv[2]) if len(sys.argv) > 2 else Path("joint.html")
page.write_text(
    f"<!doctype html><html lang=en><meta charset=utf-8><title>{html.escape(report['title'])}</title>"
    f"<h1>{html.escape(report['title'])}</h1><p>{html.escape(report['headline'])}</p>"
    f"{section}{checks}<h2>Working</h2><pre>{html.escape(working)}</pre>",
    encoding="utf-8",
)
print(page)
