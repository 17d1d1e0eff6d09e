#!/usr/bin/env python3
"""Copies an instrument's folder many times, each with a name, a design, a journal and a calibration of its own, whose
hashes hold: nothing that is the same in two of them could be worked out for both at once but what a class shares.

    many.py FOLDER TARGET HOW-MANY"""

import hashlib
import pathlib
import shutil
import sys


def sha256(data):
    return hashlib.sha256(data).hexdigest()


def copy(source, folder, name):
    shutil.copytree(source, folder)
    file = next(folder.glob("calibrations/*.json"))
    calibration = file.read_text()
    old = sha256(calibration.encode())
    hashes = {}
    head, journal = "0" * 64, []
    for line in (source / "journal.jsonl").read_text().splitlines():
        was = sha256(line.encode())
        if old in line and old not in hashes:
            for known, new in hashes.items():
                calibration = calibration.replace(known, new)
            calibration = calibration.replace("Rind 1", name)
            file.write_text(calibration)
            hashes[old] = sha256(calibration.encode())
        line = line.replace(old, hashes.get(old, old)).replace("Rind 1", name)
        line = line[: line.rindex('"prev":"')] + f'"prev":"{head}"}}'
        head = hashes[was] = sha256(line.encode())
        journal.append(line + "\n")
    (folder / "journal.jsonl").write_text("".join(journal))
    summary = (source / "instrument.json").read_text().replace("Rind 1", name)
    body = summary[: summary.rindex(',\n  "sha256"')].replace(was, head)
    (folder / "instrument.json").write_text(f'{body},\n  "sha256" : "{sha256(body.encode())}"\n}}\n')


for i in range(int(sys.argv[3])):
    copy(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]) / f"rind-{i}", f"Rind {i}")
