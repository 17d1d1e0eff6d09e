# Checks the folder of an instrument, or an archive of one, by docs/formats/journal.md alone.
# Prints what is wrong, one a line; exit 3 where anything is an error, 0 where all is a warning.
import hashlib, json, os, re, sys, zipfile

findings = []
sha = lambda data: hashlib.sha256(data).hexdigest()
error = lambda place, text: findings.append(("error", place, text))
warning = lambda place, text: findings.append(("warning", place, text))


def folder_files(root):
    """Name to bytes of every plain file; None for what is none."""
    files = {}
    for base, _, names in os.walk(root):
        for name in names:
            path = os.path.join(base, name)
            plain = os.path.isfile(path) and not os.path.islink(path)
            files[os.path.relpath(path, root).replace(os.sep, "/")] = open(path, "rb").read() if plain else None
    return files


def unsealed(data):
    """The object of a sealed file; None where its bytes do not agree with its own sha256."""
    body, mark, rest = data.rpartition(b',\n  "sha256" : "')
    return json.loads(body + b"}") if mark and rest == sha(body).encode() + b'"\n}\n' else None


def archive_files(path):
    files, names = {}, []
    with zipfile.ZipFile(path) as archive:
        names = archive.namelist()
        manifest = unsealed(archive.read(names[0])) if names[0] == "manifest.json" else None
        if manifest is None:
            error("manifest.json", "not first, or altered")
            return {}, None
        for listed in manifest["files"]:
            name, known = listed["file"], archive.read("files/" + listed["file"])
            if len(known) != listed["bytes"] or sha(known) != listed["sha256"]:
                error(name, "not what was packed")
            files[name] = known
    for name in sorted(set(names) - {"manifest.json"} - {"files/" + n for n in files}):
        error(name, "not listed")
    return files, manifest["head"]


def check_journal(data, accepted):
    """The hashes of its lines and its entries."""
    lines = data.split(b"\n")
    torn = lines.pop()
    if torn:
        try:
            json.loads(torn)
            lines.append(torn)  # whole; only its line feed is missing
        except ValueError:
            (warning if b'{"id":"'.startswith(torn[:7]) else error)("journal.jsonl", "the last line is cut off")
    hashes, entries, broken = [sha(line) for line in lines], [], []
    carried = [re.search(rb',"prev":"([0-9a-f]{64})"}$', line) for line in lines]
    first = next((i for i, found in enumerate(carried) if found), len(lines))
    if first == len(lines) and lines:
        warning("journal.jsonl", "no chain yet")
    for i, line in enumerate(lines):
        try:
            entry = json.loads(line)
            entry["id"], entry["what"]
            entries.append(entry)
        except (ValueError, KeyError, TypeError):
            if line.strip():
                broken.append(i)
        follows = "0" * 64 if i == 0 else hashes[i - 1]
        if i >= first and not (carried[i] and carried[i][1].decode() == follows) and not (i == first > 0):
            broken += [i - 1, i]
    if 0 < first < len(lines):
        begun, before = json.loads(lines[first]), b"\n".join(lines[:first]) + b"\n"
        if begun["what"] != "chain" or begun["sha256"] != sha(before):
            error("journal.jsonl", "the lines before the chain are not what it sealed")
    for entry in entries:
        if entry["what"] == "accepted":
            accepted[entry["place"]] = entry["sha256"]
    if broken:
        known = any(accepted.get(f"journal.jsonl:{i + 1}") == hashes[i] for i in broken if i >= 0)
        (warning if known else error)("journal.jsonl", f"does not hold together about line {max(broken) + 1}")
    return hashes, entries


def check_files(files, entries, accepted):
    entered, struck, own = {}, set(), {}
    by_id = {entry["id"]: entry for entry in entries}
    for entry in entries:
        what = entry
        if entry["what"] == "correction":
            struck.add(entry["entry"])
            what = entry.get("replacement", {})
        if what.get("what") in ("photo", "file", "calibration"):
            entered[what["file"]] = (what["sha256"], entry["id"])
        if what.get("what") == "own-file":
            own["checklist/" + what["file"]] = True
    for name, (known, by) in entered.items():
        if files.get(name) is None:
            if by not in struck:
                error(name, "entered, and not there")
        elif sha(files[name]) != known:
            (warning if accepted.get(name) == sha(files[name]) else error)(name, "not what was entered")
    for name in files:
        if name not in entered and name not in own and name not in ("journal.jsonl", "instrument.json", "writer.lock"):
            warning(name, "nobody entered it")
    return entered


def main(path):
    files, head = (folder_files(path), None) if os.path.isdir(path) else archive_files(path)
    accepted = {}
    if files.get("journal.jsonl") is None:
        error("journal.jsonl", "not there")
        return
    hashes, entries = check_journal(files["journal.jsonl"], accepted)
    if head is not None and hashes[-1:] != [head]:
        error("journal.jsonl", "another head than the manifest says")
    summary = unsealed(files.get("instrument.json") or b"")
    if summary is None and len(hashes) > 1:
        error("instrument.json", "altered, or not there")
    elif summary is not None:
        if summary["head"] not in hashes or summary["lines"] > len(hashes):
            error("journal.jsonl", "does not hold the last line that instrument.json knows")
        elif summary["lines"] < len(hashes):
            warning("instrument.json", "does not know the last lines yet")
    check_files(files, entries, accepted)
    for entry in entries:
        made = files.get(entry["file"]) if entry["what"] == "calibration" else None
        head = re.search(rb'"journal_head" *: *"([0-9a-f]{64})"', made or b"")
        known = head[1].decode() if head and sha(made) == entry["sha256"] else None
        if known and known not in hashes and accepted.get(entry["file"]) != sha(made):
            lost = any(e["what"] == "lines-lost" for e in entries)
            (warning if lost else error)(entry["file"], "made with a line that the journal does not have")


main(sys.argv[1])
for severity, place, text in findings:
    print(f"{severity}: {place}: {text}")
sys.exit(3 if any(f[0] == "error" for f in findings) else 0)
