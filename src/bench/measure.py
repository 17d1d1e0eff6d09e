#!/usr/bin/python3
"""Measures the commands and writes the tables of docs/performance.md anew, as ratios within one run.

    src/bench/measure.py             every part, some minutes on two idle cores
    src/bench/measure.py --long      with 10,000,000 rows besides
    src/bench/measure.py PART...     some parts only, printed and not written: conversion folder commands fit

Needs a build (./faintwind --version), a JDK and Debian's python3-pandas, python3-scipy and python3-numba.
"""
import hashlib
import json
import os
import platform
import re
import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path

HOME = Path(__file__).resolve().parents[2]
BENCH = HOME / "src" / "bench"
CAL = HOME / "demo-projects" / "cellar" / "calibrations" / "2026-09-13.json"
PAGE = HOME / "docs" / "performance.md"
CLASSES = f"{HOME}/target/faintwind.jar:{HOME}/target/lib/*"
FAINTWIND = str(HOME / "faintwind")
PYTHON = "/usr/bin/python3"
ROWS = [10_000, 100_000, 1_000_000]


class Took:
    """Least of several runs: seconds on the clock, seconds of processor time, most resident memory in MB."""

    def __init__(self, command, times=3, ends=(0,)):
        self.wall, self.cpu, self.memory = 1e9, 1e9, 0
        for _ in range(times):
            begun = time.monotonic()
            process = subprocess.Popen([str(c) for c in command], stdout=subprocess.DEVNULL, stderr=subprocess.PIPE)
            said = process.stderr.read()
            _, status, used = os.wait4(process.pid, 0)
            process.returncode = os.waitstatus_to_exitcode(status)
            if process.returncode not in ends:
                raise SystemExit(f"{command} ended with {process.returncode}: {said.decode()}")
            self.wall = min(self.wall, time.monotonic() - begun)
            self.cpu = min(self.cpu, used.ru_utime + used.ru_stime)
            self.memory = max(self.memory, used.ru_maxrss / 1024)

    def text(self):
        return f"{self.wall:.2f} s ({self.cpu:.2f})"


def java(work, name):
    """A program of src/bench/java, compiled, so that no measurement holds the compiler."""
    source = BENCH / "java" / "faintwind" / "bench" / f"{name}.java"
    subprocess.run(["javac", "-d", work, "-cp", CLASSES, str(source)], check=True)
    return ["java", "-XX:+UseSerialGC", "-cp", f"{CLASSES}:{work}", f"faintwind.bench.{name}"]


def log(work, rows):
    made = Path(work) / f"log-{rows}.csv"
    if not made.exists():
        subprocess.run([*java(work, "MakeLog"), str(CAL), str(rows), str(made)], check=True)
    return made


def script(name):
    return [PYTHON, BENCH / "python" / f"{name}.py", CAL]


def convert(made, out):
    return [FAINTWIND, "convert", CAL, made, "--out", out, "--force"]


def conversion(work, long):
    out = Path(work) / "out.csv"
    copy = java(work, "CopyCsv")
    # numba compiles once and keeps it: not measured
    Took([*script("same"), log(work, 10_000), out], 1)
    rows = ["| rows | convert | FastCSV copy | pandas and King's law | the same in numba | most memory |"]
    rows += ["| --- | --- | --- | --- | --- | --- |"]
    ratios = ["| rows | of the copy's speed | times King's law | times the same in numba |", "| --- | --- | --- | --- |"]
    per_row = []
    for count in ROWS + ([10_000_000] if long else []):
        made = log(work, count)
        times = 3 if count < 1_000_000 else 2
        ours = Took(convert(made, out), times)
        others = [Took([*c, made, out], times) for c in (copy, script("king"))]
        others += [Took([*script("same"), made, out], 1 if count >= 1_000_000 else 2)]
        rows.append(f"| {count:,} | {ours.text()} | " + " | ".join(o.text() for o in others) + f" | {ours.memory:.0f} MB |")
        ratios.append(f"| {count:,} | " + " | ".join(f"{o.wall / ours.wall:.2f} ({o.cpu / ours.cpu:.2f})" for o in others) + " |")
        per_row.append(f"{count:,} rows {1e6 * ours.wall / count:.2f} µs")
    return ["Seconds from command to exit, in brackets of processor time; below, their ratios.", "", *rows, "", *ratios, "",
            "A row takes: " + ", ".join(per_row) + "."]


def folder(work, _):
    made = log(work, 300_000)
    logs = []
    for i in range(4):
        logs.append(Path(work) / f"folder-{i}.csv")
        shutil.copy(made, logs[-1])
    one = ["taskset", "-c", "0"] if os.cpu_count() > 1 and shutil.which("taskset") else []
    many = [FAINTWIND, "convert", CAL, *logs, "--out-dir", Path(work) / "speeds", "--force"]
    single = convert(made, Path(work) / "out.csv")
    rows = ["| what | one processor | all | times |", "| --- | --- | --- | --- |"]
    for name, command in (("4 logs of 300,000 rows", many), ("one log of 300,000 rows", single)):
        slow, quick = Took([*one, *command], 2), Took(command, 2)
        rows.append(f"| {name} | {slow.wall:.2f} s | {quick.wall:.2f} s | {slow.wall / quick.wall:.2f} |")
    return rows


def instruments(work, count):
    """Copies of a project, each with a name, a journal and a calibration of its own."""
    many = Path(work) / "instruments"
    subprocess.run([PYTHON, BENCH / "python" / "many.py", HOME / "demo-projects" / "cellar", many, str(count)], check=True)
    return many


def long_record(work, entries):
    """A project whose journal has so many notes more, each bound to the one before by its hash."""
    project = Path(work) / "long-record"
    shutil.copytree(HOME / "demo-projects" / "cellar", project)
    journal = project / "journal.jsonl"
    lines = journal.read_text().splitlines()
    last = json.loads(lines[-1])
    while len(lines) < entries:
        note = {"id": f"e{len(lines) + 1:04d}", "at": last["at"], "who": last["who"], "what": "note",
                "text": f"note {len(lines)}", "prev": hashlib.sha256(lines[-1].encode()).hexdigest()}
        lines.append(json.dumps(note, separators=(",", ":")))
    journal.write_text("\n".join(lines) + "\n")
    return project


def commands(work, _):
    cellar = HOME / "demo-projects" / "cellar"
    out = Path(work) / "out.csv"
    report = Path(work) / "log.pdf"
    short = log(work, 9_000)
    what = [
        ("`--help`", [FAINTWIND, "--help"], "0.35 s", 5),
        ("`check` of a calibration", [FAINTWIND, "check", CAL], "0.35 s", 5),
        ("`check` of an instrument's folder", [FAINTWIND, "check", cellar], "–", 5),
        ("`convert` of 9,000 rows", convert(short, out), "0.5 s", 5),
        ("`list` of 500 instruments", [FAINTWIND, "list", instruments(work, 500)], "–", 1),
        ("`check` of a record of 10,000 entries", [FAINTWIND, "check", long_record(work, 10_000)], "–", 2),
        ("`report` to PDF", [FAINTWIND, "report", cellar, "--out", report, "--force"], "–", 2),
    ]
    rows = ["| what | limit | clock | processor | memory |", "| --- | --- | --- | --- | --- |"]
    for name, command, limit, times in what:
        took = Took(command, times, ends=(0, 4, 5))
        rows.append(f"| {name} | {limit} | {took.wall:.2f} s | {took.cpu:.2f} s | {took.memory:.0f} MB |")
    return rows


def fit(work, _):
    """Sample bench b, whole, and with fewer and more spins; SciPy's fit of the two-node balance with 500 refits."""
    bench = HOME / "src" / "test" / "resources" / "sample-runs" / "bench-b" / "in"
    out = Path(work) / "fit.json"
    whole = [FAINTWIND, "calibrate", bench / "runs.csv", "--out", out, "--force"]
    without = Took([*whole, "--refits", "0"], 1, ends=(0, 4, 5))
    refits = Took(whole, 1, ends=(0, 4, 5))
    scipy = Took([PYTHON, BENCH / "python" / "fit.py", bench, "0"], 1)
    scipy_refits = Took([PYTHON, BENCH / "python" / "fit.py", bench, "50"], 1)
    per_refit = (scipy_refits.cpu - scipy.cpu) / 50
    return [
        "| what | Faintwind, processor | SciPy, processor | times |",
        "| --- | --- | --- | --- |",
        f"| a fit with its choice of model, SciPy one model | {without.cpu:.1f} s | {scipy.cpu:.1f} s | {scipy.cpu / without.cpu:.1f} |",
        f"| 500 refits (SciPy: ten times 50) | {refits.cpu - without.cpu:.1f} s | {500 * per_refit:.1f} s | "
        f"{500 * per_refit / max(0.01, refits.cpu - without.cpu):.1f} |",
    ]


PARTS = {"conversion": conversion, "folder": folder, "commands": commands, "fit": fit}


def write(results):
    text = PAGE.read_text()
    machine = f"{time.strftime('%d %B %Y').lstrip('0')}, {os.cpu_count()} processors, {platform.machine()}, " + \
        subprocess.run(["java", "-version"], capture_output=True, text=True).stderr.splitlines()[0]
    for name, lines in results.items():
        block = f"<!-- {name} -->\n" + "\n".join(lines) + f"\n\nMeasured on {machine}.\n<!-- end of {name} -->"
        pattern = re.compile(f"<!-- {name} -->.*?<!-- end of {name} -->", re.S)
        if not pattern.search(text):
            raise SystemExit(f"{PAGE} has no place for {name}")
        text = pattern.sub(lambda _: block, text)
    PAGE.write_text(text)


def main(words):
    long = "--long" in words
    named = [word for word in words if word in PARTS]
    subprocess.run([FAINTWIND, "--version"], check=True, stdout=subprocess.DEVNULL)
    os.environ["PYTHONDONTWRITEBYTECODE"] = "1"
    results = {}
    with tempfile.TemporaryDirectory() as work:
        os.environ["NUMBA_CACHE_DIR"] = work
        for name in named or PARTS:
            results[name] = PARTS[name](work, long)
            print(f"\n{name}\n" + "\n".join(results[name]), flush=True)
    if not named:
        write(results)


if __name__ == "__main__":
    main(sys.argv[1:])
