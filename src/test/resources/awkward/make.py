"""Writes the awkward files of this folder. Made up from end to end; see README.md."""

import datetime as dt
import io
import math
import random
import zipfile
from pathlib import Path
from zoneinfo import ZoneInfo

HERE = Path(__file__).parent
BERLIN = ZoneInfo("Europe/Berlin")
BEGIN = dt.datetime(2026, 11, 27, 18, 30, 0, tzinfo=BERLIN)
STEP_S = 5
RADIUS_M = 0.300
SPEEDS_M_S = [0.12, 0.25, 0.5, 1.0, 1.8, 3.0]
WARM_S, SPIN_S, REST_S = 2700, 480, 180


def staircase():
    """Spins as (start, stop, speed), on the recording's clock."""
    spins, at = [], WARM_S
    for speed in SPEEDS_M_S:
        spins.append((at, at + SPIN_S, speed))
        at += SPIN_S + REST_S
    return spins, at + 300


def recording(seed=20261127):
    """Rows (t, mV, air C, V): a lumped heat balance, stepped once a second."""
    rng = random.Random(seed)
    spins, end_s = staircase()
    delta_K, rows = 0.0, []
    for t in range(0, end_s + 1):
        speed = next((v for a, b, v in spins if a <= t < b), 0.0)
        if t % STEP_S == 0:
            air_C = 19.4 + 0.2 * math.sin(t / 2500.0)
            signal_mV = 0.0405 * delta_K + rng.gauss(0, 0.0002)
            rows.append((t, round(signal_mV, 4), round(air_C, 1), round(5.0 + rng.gauss(0, 0.004), 2)))
        loss_W_K = 0.0062 + 0.0011 * (delta_K / 20) + 0.0165 * math.sqrt(speed)
        delta_K += (0.28 - loss_W_K * delta_K) / 3.4
    return rows


def off(seed=7):
    rng = random.Random(seed)
    return [(t, round(rng.gauss(0, 0.0002), 4), 19.3, 0.0) for t in range(0, 601, STEP_S)]


def table():
    spins, end_s = staircase()
    head = ("run file from_s to_s kind radius_mm u_radius_mm turns turns_time_s u_turns_time_s first_click_s "
            "spin_start_s spin_stop_s air_C pressure_hPa rh_pct direction note").split()
    rows = [["off", "off", "", "", "zero"] + [""] * 8 + ["19.3", "1002", "48", "", "heater off"],
            ["warm-up", "session", "0", str(WARM_S - 60), "still"] + [""] * 8 + ["19.4", "1002", "48", "", "door shut"]]
    for i, (start, stop, speed) in enumerate(spins):
        turn_s = 2 * math.pi * RADIUS_M / speed
        turns = int((SPIN_S - 10) / turn_s)
        click = start + 5.0
        rows.append([f"speed {i + 1}", "session", str(start - 60), str(stop + REST_S - 60), "spin", "300.5", "0.5",
                     str(turns), f"{turns * turn_s:.1f}", "0.3", f"{click:.0f}", str(start), str(stop),
                     "19.5", "1002.5", "48", "cw", "first click seen"])
    rows.append(["end", "session", str(end_s - 300), str(end_s), "still"] + [""] * 8
                + ["19.5", "1002", "48", "", "still air again"])
    return head, rows


def write(name, text, encoding="utf-8", newline="\n"):
    path = HERE / name
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes(text.replace("\n", newline).encode(encoding))


def iso(moment):
    return moment.isoformat(timespec="seconds")


def moment(t, begin=BEGIN):
    return (begin.astimezone(dt.timezone.utc) + dt.timedelta(seconds=t)).astimezone(BERLIN)


def comma(number, places):
    return f"{number:.{places}f}".replace(".", ",")


def plain():
    for name, rows, begin in (("session", recording(), BEGIN), ("off", off(), BEGIN - dt.timedelta(minutes=30))):
        lines = [f"# start: {iso(begin)}", "time_s,signal_mV,air_C,supply_V"]
        lines += [f"{t},{mv:.4f},{air:.1f},{v:.2f}" for t, mv, air, v in rows]
        write(f"plain/{name}.csv", "\n".join(lines) + "\n")
    head, rows = table()
    rows = [[r[0], r[1] + ".csv"] + r[2:] for r in rows]
    write("plain/runs.csv", "\n".join(",".join(r) for r in [head] + rows) + "\n")


LOCAL_HEAD = "Datum;Uhrzeit;Spannung [mV];Lufttemperatur [°C];Versorgung [V]"


def local_lines(rows, begin=BEGIN):
    for t, mv, air, v in rows:
        at = moment(t, begin)
        yield f"{at:%d.%m.%Y};{at:%H:%M:%S};{comma(mv, 4)};{comma(air, 1)};{comma(v, 2)}"


def workshop():
    for name, rows, begin in (("Messung", recording(), BEGIN), ("Heizung aus", off(), BEGIN - dt.timedelta(minutes=30))):
        lines = ["Meßgerät: Schreiber im Keller (erfunden)", LOCAL_HEAD] + list(local_lines(rows, begin))
        write(f"workshop/{name}.csv", "\n".join(lines) + "\n", "cp1252", "\r\n")
    head, rows = table()
    clocks = [head.index(n) for n in ("from_s", "to_s", "first_click_s", "spin_start_s", "spin_stop_s")]
    out = [";".join(head)]
    for r in rows:
        cells = list(r)
        cells[1] = {"session": "Messung.csv", "off": "Heizung aus.csv"}[r[1]]
        for c in clocks:
            if cells[c]:
                cells[c] = f"{moment(float(cells[c])):%H:%M:%S}"
        cells = [c.replace(".", ",") if i not in (1,) and c.replace(".", "", 1).isdigit() else c
                 for i, c in enumerate(cells)]
        cells[-1] = "Tür zu, größter Abstand zur Wand"
        out.append(";".join(cells))
    write("workshop/runs.csv", "\n".join(out) + "\n", "cp1252", "\r\n")


def utf16():
    rows = recording()[:61]
    lines = ["Zeit [s]\tSpannung [mV]\tLuft [°C]"] + [f"{t}\t{comma(mv, 4)}\t{comma(a, 1)}" for t, mv, a, _ in rows]
    (HERE / "utf16le.txt").write_bytes(b"\xff\xfe" + "\r\n".join(lines + [""]).encode("utf-16-le"))
    lines = ["time_s;signal_mV;air_C;Bemerkung"] + [f"{t};{comma(mv, 4)};{comma(a, 1)};Tür" for t, mv, a, _ in rows]
    (HERE / "utf16be.csv").write_bytes(b"\xfe\xff" + "\r\n".join(lines + [""]).encode("utf-16-be"))


def night(name, begin, rows):
    """Local clock of a night in which the clocks change, and nothing that says which hour it is."""
    lines = ["Datum/Zeit;dT [K]"]
    for i in range(rows):
        at = moment(20 * i, begin)
        lines.append(f"{at:%d.%m.%Y %H:%M:%S};{comma(20 + 0.01 * (i % 50), 2)}")
    write(name, "\n".join(lines) + "\n")


def heads():
    rows = recording()[:61]
    lines = ["time [s],signal [mV],air (°C),supply [V]"] + [f"{t},{mv:.4f},{a:.1f},{v:.2f}" for t, mv, a, v in rows]
    write("units-in-heads.csv", "\n".join(lines) + "\n")
    lines = ["t;U;T"] + ["s;mV;°C"] + [f"{t};{comma(mv, 4)};{comma(a, 1)}" for t, mv, a, _ in rows]
    write("two-heads.csv", "\n".join(lines) + "\n")
    lines = ["Time,Voltage (mV),Air temp (°F)"]
    for t, mv, a, _ in rows:
        lines.append(f"{moment(t):%m/%d/%Y %I:%M:%S %p},{mv:.4f},{a * 1.8 + 32:.2f}")
    write("month-first.csv", "\n".join(lines) + "\n")


def packed(name, parts, first=None):
    data = io.BytesIO()
    with zipfile.ZipFile(data, "w") as z:
        for path, text in parts:
            info = zipfile.ZipInfo(path, (2026, 11, 28, 12, 0, 0))
            info.compress_type = zipfile.ZIP_STORED if path == first else zipfile.ZIP_DEFLATED
            z.writestr(info, text)
    path = HERE / name
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes(data.getvalue())


MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
REL = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
PKG = "http://schemas.openxmlformats.org/package/2006/relationships"
TYPES = "http://schemas.openxmlformats.org/package/2006/content-types"
APP = "application/vnd.openxmlformats-officedocument.spreadsheetml."
DECL = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'


def letters(i):
    return chr(65 + i)


def cell_x(r, c, value):
    ref = f"{letters(c)}{r}"
    if value is None:
        return ""
    if isinstance(value, dt.datetime):
        days = (value.replace(tzinfo=None) - dt.datetime(1899, 12, 30)) / dt.timedelta(days=1)
        return f'<c r="{ref}" s="1"><v>{days:.10f}</v></c>'
    if isinstance(value, dt.time):
        part = (value.hour * 3600 + value.minute * 60 + value.second) / 86400
        return f'<c r="{ref}" s="2"><v>{part:.12f}</v></c>'
    if isinstance(value, (int, float)):
        return f'<c r="{ref}"><v>{value!r}</v></c>'
    return f'<c r="{ref}" t="inlineStr"><is><t>{value}</t></is></c>'


def xlsx(name, rows, merged=(), pivot=False):
    body = "".join(f'<row r="{r}">' + "".join(cell_x(r, c, v) for c, v in enumerate(row)) + "</row>"
                   for r, row in enumerate(rows, 1))
    merges = ""
    if merged:
        merges = f'<mergeCells count="{len(merged)}">' + "".join(f'<mergeCell ref="{m}"/>' for m in merged) + "</mergeCells>"
    parts = [
        ("[Content_Types].xml", DECL + f'<Types xmlns="{TYPES}">'
         '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>'
         '<Default Extension="xml" ContentType="application/xml"/>'
         f'<Override PartName="/xl/workbook.xml" ContentType="{APP}sheet.main+xml"/>'
         f'<Override PartName="/xl/worksheets/sheet1.xml" ContentType="{APP}worksheet+xml"/>'
         f'<Override PartName="/xl/styles.xml" ContentType="{APP}styles+xml"/>'
         + (f'<Override PartName="/xl/pivotTables/pivotTable1.xml" ContentType="{APP}pivotTable+xml"/>' if pivot else "")
         + "</Types>"),
        ("_rels/.rels", DECL + f'<Relationships xmlns="{PKG}">'
         f'<Relationship Id="r1" Type="{REL}/officeDocument" Target="xl/workbook.xml"/></Relationships>'),
        ("xl/workbook.xml", DECL + f'<workbook xmlns="{MAIN}" xmlns:r="{REL}"><sheets>'
         '<sheet name="Messung" sheetId="1" r:id="r1"/></sheets></workbook>'),
        ("xl/_rels/workbook.xml.rels", DECL + f'<Relationships xmlns="{PKG}">'
         f'<Relationship Id="r1" Type="{REL}/worksheet" Target="worksheets/sheet1.xml"/>'
         f'<Relationship Id="r2" Type="{REL}/styles" Target="styles.xml"/></Relationships>'),
        ("xl/styles.xml", DECL + f'<styleSheet xmlns="{MAIN}"><numFmts count="2">'
         '<numFmt numFmtId="164" formatCode="dd\\.mm\\.yyyy\\ hh:mm:ss"/><numFmt numFmtId="165" formatCode="hh:mm:ss"/></numFmts>'
         '<fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders>'
         '<cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="3"><xf/><xf numFmtId="164" applyNumberFormat="1"/>'
         '<xf numFmtId="165" applyNumberFormat="1"/></cellXfs></styleSheet>'),
        ("xl/worksheets/sheet1.xml", DECL + f'<worksheet xmlns="{MAIN}"><sheetData>{body}</sheetData>{merges}</worksheet>'),
    ]
    if pivot:
        parts.append(("xl/worksheets/_rels/sheet1.xml.rels", DECL + f'<Relationships xmlns="{PKG}">'
                      f'<Relationship Id="r1" Type="{REL}/pivotTable" Target="../pivotTables/pivotTable1.xml"/></Relationships>'))
        parts.append(("xl/pivotTables/pivotTable1.xml", DECL + f'<pivotTableDefinition xmlns="{MAIN}" name="Auswertung" '
                      'cacheId="1" dataCaption="Werte"><location ref="A1:B4" firstHeaderRow="1" firstDataRow="1" '
                      'firstDataCol="1"/></pivotTableDefinition>'))
    packed(name, parts)


def cell_o(value):
    if value is None:
        return "<table:table-cell/>"
    if isinstance(value, tuple):
        span, text = value
        return (f'<table:table-cell table:number-columns-spanned="{span}" table:number-rows-spanned="1" '
                f'office:value-type="string"><text:p>{text}</text:p></table:table-cell>'
                f'<table:covered-table-cell table:number-columns-repeated="{span - 1}"/>')
    if isinstance(value, dt.datetime):
        at = value.replace(tzinfo=None)
        return (f'<table:table-cell office:value-type="date" office:date-value="{at.isoformat()}">'
                f'<text:p>{at:%d.%m.%Y %H:%M:%S}</text:p></table:table-cell>')
    if isinstance(value, dt.time):
        return (f'<table:table-cell office:value-type="time" office:time-value="PT{value:%HH%MM%SS}">'
                f'<text:p>{value:%H:%M:%S}</text:p></table:table-cell>')
    if isinstance(value, (int, float)):
        shown = str(value).replace(".", ",")
        return f'<table:table-cell office:value-type="float" office:value="{value!r}"><text:p>{shown}</text:p></table:table-cell>'
    return f'<table:table-cell office:value-type="string"><text:p>{value}</text:p></table:table-cell>'


def ods(name, rows, manifest=None):
    body = "".join("<table:table-row>" + "".join(cell_o(v) for v in row) + "</table:table-row>" for row in rows)
    ns = ('xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" '
          'xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" '
          'xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"')
    content = (DECL + f'<office:document-content {ns} office:version="1.2"><office:body><office:spreadsheet>'
               f'<table:table table:name="Messung">{body}'
               '<table:table-row table:number-rows-repeated="1048000"><table:table-cell table:number-columns-repeated="1024"/>'
               '</table:table-row></table:table></office:spreadsheet></office:body></office:document-content>')
    plain_manifest = ('<manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0">'
                      '<manifest:file-entry manifest:full-path="/" '
                      'manifest:media-type="application/vnd.oasis.opendocument.spreadsheet"/>'
                      '<manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/></manifest:manifest>')
    packed(name, [("mimetype", "application/vnd.oasis.opendocument.spreadsheet"),
                  ("META-INF/manifest.xml", DECL + (manifest or plain_manifest)), ("content.xml", content)], "mimetype")


def sheets():
    rows = [["Zeitpunkt", "Spannung [mV]", "Luft [°C]"]]
    rows += [[moment(t), mv, a] for t, mv, a, _ in recording()[:61]]
    xlsx("sheet.xlsx", rows)
    ods("sheet.ods", rows)
    head, lines = table()
    cells = [head]
    for r in lines:
        row = [r[0], r[1] + ".csv"] + [float(c) if c.replace(".", "", 1).isdigit() else (c or None) for c in r[2:]]
        for n in ("spin_start_s", "spin_stop_s"):
            i = head.index(n)
            row[i] = moment(row[i]).time() if row[i] is not None else None
        cells.append(row)
    xlsx("plain/runs.xlsx", cells)


def refused():
    """What no table can be read from; the gallery of refusals has them."""
    gallery = "../refused/table/"
    rows = recording()[:4]
    xlsx(gallery + "merged-heads.xlsx", [["Messung vom Abend", None, None], ["time_s", "signal_mV", "air_C"]]
         + [[t, mv, a] for t, mv, a, _ in rows], merged=["A1:C1"])
    xlsx(gallery + "pivot-table.xlsx", [["time_s", "signal_mV"]] + [[t, mv] for t, mv, _, _ in rows], pivot=True)
    ods(gallery + "merged-heads-in-ods.ods", [[(2, "Messung vom Abend"), None], ["time_s", "signal_mV", "air_C"]]
        + [[t, mv, a] for t, mv, a, _ in rows])
    locked = ('<manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0">'
              '<manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml">'
              '<manifest:encryption-data/></manifest:file-entry></manifest:manifest>')
    ods(gallery + "password-on-ods.ods", [["time_s"]], locked)
    (HERE / gallery / "old-sheet.xls").write_bytes(bytes.fromhex("d0cf11e0a1b11ae1") + bytes(504))
    write(gallery + "two-header-rows.csv", "time_s;delta_K;air_C\ns;K;°C\n0;20,1;19,4\n10;20,2;19,4\n")
    write(gallery + "mixed-decimals.csv", "time_s;delta_K;air_C\n0;20,1;19,4\n10;20.2;19,4\n20;20,3;19,4\n")
    write(gallery + "two-header-rows-in-the-table.csv",
          "run;file;kind;radius_mm;air_C\n;;;mm;°C\nstill;still.csv;still;;19,4\n")
    write(gallery + "files/old-encoding.csv", "Zeit;Größe\n0;20,1\n10;20,2\n", "cp850")


plain()
workshop()
utf16()
night("autumn.csv", dt.datetime(2026, 10, 24, 23, 0, 0, tzinfo=BERLIN), 1080)
night("spring.csv", dt.datetime(2026, 3, 28, 23, 0, 0, tzinfo=BERLIN), 900)
heads()
sheets()
refused()
