# Checks the folder of an instrument by docs/formats/journal.md alone. Prints what is wrong, one a line; exit 1 where anything is.
import hashlib, json, os, re, sys

folder, wrong = sys.argv[1], []
sha = lambda data: hashlib.sha256(data).hexdigest()
read = lambda name: open(os.path.join(folder, name), "rb").read()

lines = read("journal.jsonl").split(b"\n")
if lines[-1]:
    wrong.append("journal.jsonl: the last line has no line feed")
else:
    lines.pop()
before, entered = "0" * 64, {}
for number, line in enumerate(lines, 1):
    carried = re.search(rb',"prev":"([0-9a-f]{64})"}$', line)
    if not carried or carried[1].decode() != before:
        wrong.append(f"journal.jsonl: line {number} does not follow on line {number - 1}")
    before = sha(line)
    try:
        entry = json.loads(line)
        if entry["what"] in ("photo", "file", "calibration"):
            entered[entry["file"]] = entry["sha256"]
    except (ValueError, KeyError, TypeError):
        wrong.append(f"journal.jsonl: line {number} is no entry")

body, mark, rest = read("instrument.json").rpartition(b',\n  "sha256" : "')
if not mark or rest != sha(body).encode() + b'"\n}\n':
    wrong.append("instrument.json: altered")
else:
    summary = json.loads(body + b"}")
    if summary["head"] not in [sha(line) for line in lines] or summary["lines"] > len(lines):
        wrong.append("journal.jsonl: does not hold the last line that instrument.json knows")

for name, known in entered.items():
    path = os.path.join(folder, name)
    if not os.path.isfile(path) or sha(open(path, "rb").read()) != known:
        wrong.append(f"{name}: not what was entered")
own = {"journal.jsonl", "instrument.json", "writer.lock", *entered}
for base, _, names in os.walk(folder):
    for name in (os.path.relpath(os.path.join(base, n), folder).replace(os.sep, "/") for n in names):
        if name not in own and not name.startswith("checklist/"):
            wrong.append(f"{name}: nobody entered it")

print("\n".join(wrong))
sys.exit(1 if wrong else 0)
