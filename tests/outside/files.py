"""Files that leave the page, read by programs that know nothing of it.

Run from anywhere, with the packages of requirements.txt installed:

    python tests/outside/files.py

`tests/outside/files.rs` writes the files, and beside each what the plan or the record says. Here two decoders read the QR
codes from rendered pictures, a reader of drawings audits the DXF files and gives back their lines and arcs, and two
readers of tables read the CSV files. The first thing that differs ends the run.
"""

import csv
import json
import math
import pathlib
import subprocess

import cv2
import ezdxf
import numpy as np
import pandas as pd
import resvg_py
import zxingcpp
from ezdxf import bbox

ROOT = pathlib.Path(__file__).resolve().parents[2]
NEAR = 2e-9


def written():
    command = ["cargo", "test", "--quiet", "--features", "json", "--test", "files", "--", "--ignored", "--nocapture"]
    done = subprocess.run(command, cwd=ROOT, check=True, capture_output=True, text=True)
    lines = [line for line in done.stdout.splitlines() if line.endswith("files") and pathlib.Path(line).is_dir()]
    return pathlib.Path(lines[-1])


def check(condition, *what):
    if not condition:
        raise SystemExit(f"differs: {what}")


# QR codes


def picture(svg, side, pixels):
    png = resvg_py.svg_to_bytes(svg_string=svg, width=side * pixels, height=side * pixels, dpi=96)
    return cv2.imdecode(np.frombuffer(bytes(png), np.uint8), cv2.IMREAD_GRAYSCALE)


def codes(folder):
    print(f"{'code':18} {'characters':>10} {'version':>7} {'level':>5} {'modules':>7} {'mm at 0.4':>9}  read by")
    missed = 0
    for about in sorted(folder.glob("*.json")):
        wanted = json.loads(about.read_text())
        svg = about.with_suffix(".svg").read_text()
        image = picture(svg, wanted["side"], 6)
        check(image.shape == (wanted["side"] * 6,) * 2, about, image.shape)
        readers = []
        found = zxingcpp.read_barcodes(image)
        check(len(found) == 1 and found[0].text == wanted["address"], about, "zxing-cpp")
        readers.append("zxing-cpp")
        # The detector of this library loses its way in very large codes; it is asked at several sizes.
        for pixels in (6, 4, 8, 10):
            text, _, _ = cv2.QRCodeDetector().detectAndDecode(picture(svg, wanted["side"], pixels))
            check(text in ("", wanted["address"]), about, "opencv", text)
            if text:
                readers.append("opencv")
                break
        missed += "opencv" not in readers
        # As a phone sees it: 3 pixels a module, turned by 7 degrees, blurred, with noise.
        image = picture(svg, wanted["side"], 4)
        wide = image.shape[0]
        turn = cv2.getRotationMatrix2D((wide / 2, wide / 2), 7, 0.75)
        seen = cv2.warpAffine(image, turn, (wide, wide), flags=cv2.INTER_AREA, borderValue=255)
        seen = cv2.GaussianBlur(seen, (0, 0), 0.6).astype(float)
        seen = (seen * 0.7 + 40 + np.random.default_rng(1).normal(0, 6, seen.shape)).clip(0, 255).astype(np.uint8)
        found = zxingcpp.read_barcodes(seen)
        if len(found) == 1 and found[0].text == wanted["address"]:
            readers.append("as a phone sees it")
        print(f"{about.stem:18} {wanted['characters'] or len(wanted['address']):10} {wanted['version']:7}"
              f" {wanted['level']:>5} {wanted['side'] - 8:7} {wanted['printed']:9.1f}  {', '.join(readers)}")
    check(missed <= 1, "opencv reads all but the largest", missed)


# DXF


def heights(entities, x):
    """Where lines and arcs stand at x; lines square to the axis are left out."""
    found = []
    for entity in entities:
        if entity.dxftype() == "LINE":
            a, b = entity.dxf.start, entity.dxf.end
            low, high = sorted((a.x, b.x))
            if low <= x <= high and high - low > 1e-9:
                found.append(a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x))
        elif entity.dxftype() == "ARC":
            centre, radius = entity.dxf.center, entity.dxf.radius
            if abs(x - centre.x) <= radius:
                rise = math.sqrt(radius**2 - (x - centre.x) ** 2)
                for y in (rise, -rise):
                    turn = math.degrees(math.atan2(y, x - centre.x))
                    span = (entity.dxf.end_angle - entity.dxf.start_angle) % 360
                    if (turn - entity.dxf.start_angle) % 360 <= span + 1e-9:
                        found.append(centre.y + y)
    return found


def drawings(folder):
    files, places, arcs, straight = 0, 0, 0, 0
    for path in sorted(folder.glob("*.dxf")):
        document = ezdxf.readfile(path)
        check(document.dxfversion == "AC1009", path)
        auditor = document.audit()
        check(not auditor.errors and not auditor.fixes, path, [str(it.message) for it in auditor.errors + auditor.fixes])
        wanted = json.loads(path.with_suffix(".json").read_text())
        by_layer = {}
        for entity in document.modelspace():
            by_layer.setdefault(entity.dxf.layer, []).append(entity)
        lines = [entity for entity in by_layer["RECEIVED"] if entity.dxftype() == "LINE"]
        ends = [point.x for line in lines for point in (line.dxf.start, line.dxf.end)]
        check(abs(min(ends) - wanted["start"]) <= NEAR and abs(max(ends) - wanted["end"]) <= NEAR, path, min(ends), max(ends))
        finished = by_layer.get("OUTLINE", [])
        if wanted["finished_end"] is not None:
            ends = [point.x for line in finished if line.dxftype() == "LINE" for point in (line.dxf.start, line.dxf.end)]
            check(abs(min(ends) - wanted["start"]) <= NEAR and abs(max(ends) - wanted["finished_end"]) <= NEAR, path, "ends")
        reach = 0.0
        for z, received, left in wanted["radii"]:
            reach = max(reach, received)
            for name, entities, radius in (("received", lines, received), ("finished", finished, left)):
                if radius == 0.0:
                    continue
                found = heights(entities, z)
                # A random part can be told a keyway or a hole wider than itself, which is drawn so.
                random = path.stem.startswith("random")
                check(found and (random or abs(max(found) - radius) <= NEAR), path, name, z, found, radius)
                # A steep line turns the last decimal along into more across.
                near = NEAR * 10 if random else NEAR
                for side in (radius, -radius):
                    check(min(abs(y - side) for y in found) <= near, path, name, z, found, side)
                places += 1
        low, high = document.header["$EXTMIN"], document.header["$EXTMAX"]
        check(low[0] <= wanted["start"] + NEAR and wanted["end"] - NEAR <= high[0], path, "extents along")
        check(low[1] <= -reach + NEAR and reach - NEAR <= high[1], path, "extents across")
        drawn = [entity for entities in by_layer.values() for entity in entities if entity.dxftype() in ("LINE", "ARC", "SOLID")]
        box = bbox.extents(drawn, fast=False)
        check(low[0] <= box.extmin.x + 1e-6 and box.extmax.x <= high[0] + 1e-6, path, "box along")
        check(low[1] <= box.extmin.y + 1e-6 and box.extmax.y <= high[1] + 1e-6, path, "box across")
        if not path.stem.startswith("random") and wanted["finished_end"] is not None:
            fillet, diameter = wanted["fillet"], wanted["diameter"]
            round_ = [entity for entity in finished if entity.dxftype() == "ARC" and entity.dxf.center.x == round(fillet, 9)]
            check(len(round_) == 2 if fillet else True, path, "fillets", len(round_))
            for arc in round_:
                check(arc.dxf.radius == round(fillet, 9), path, arc.dxf.radius)
                check(abs(abs(arc.dxf.center.y) - (diameter / 2 + fillet)) <= NEAR, path, arc.dxf.center)
                check((arc.dxf.end_angle - arc.dxf.start_angle) % 360 == 90.0, path, "a quarter circle")
                arcs += 1
            along = [
                abs(line.dxf.end.x - line.dxf.start.x)
                for line in finished
                if line.dxftype() == "LINE"
                and abs(line.dxf.start.y - diameter / 2) <= NEAR
                and abs(line.dxf.end.y - diameter / 2) <= NEAR
            ]
            whole = wanted["length"] - fillet - wanted["chamfer"]
            check(abs(sum(along) - whole) <= NEAR, path, "the straight shank", sum(along), whole)
            straight += 1
        files += 1
    print(f"{files} drawings audited without an error; radii the plan's at {places} places; {arcs} fillets, {straight} shanks")


# CSV


def tables(folder):
    rows = 0
    for about in sorted(folder.glob("*.json")):
        wanted = json.loads(about.read_text())
        for mark, separator, decimal in (("point", ",", "."), ("comma", ";", ",")):
            for table in ("passes", "readings", "events"):
                path = folder / f"{about.stem}-{table}-{mark}.csv"
                data = path.read_bytes()
                check(data.startswith(b"\xef\xbb\xbf") and data.count(b"\n") == data.count(b"\r\n"), path)
                with path.open(encoding="utf-8-sig", newline="") as file:
                    plain = list(csv.reader(file, delimiter=separator, strict=True))
                check(len({len(row) for row in plain}) == 1, path, "one width")
                frame = pd.read_csv(path, sep=separator, decimal=decimal)
                check(list(frame.columns) == plain[0] and len(frame) == len(plain) - 1, path)
                rows += len(frame)
                for cell in (cell for row in plain for cell in row):
                    number = cell.replace(decimal, ".")
                    harmless = not cell.startswith(tuple("=+-@\t\r"))
                    check(harmless or number.removeprefix("-").replace(".", "", 1).isdigit(), path, cell)
                if table == "passes":
                    check(len(frame) == len(wanted["passes"]), path)
                    columns = ("diameter after [mm]", "time [s]", "spindle speed [1/min]")
                    for column, decimals, index in zip(columns, (4, 1, 1), range(3)):
                        check(frame[column].dtype.kind in "fi", path, column)
                        for got, row in zip(frame[column], wanted["passes"]):
                            check(abs(got - row[index]) <= 0.51 * 10**-decimals, path, column, got, row)
                elif table == "readings":
                    check(len(frame) == len(wanted["readings"]), path)
                    times = pd.to_datetime(frame["time [UTC]"], utc=True)
                    for index, (seconds, value, warm, struck) in enumerate(wanted["readings"]):
                        check(times[index].timestamp() == seconds, path, times[index])
                        check(abs(frame["value [mm]"][index] - value) <= 5e-7, path, value)
                        got = frame["temperature [°C]"][index]
                        check(math.isnan(got) if warm is None else abs(got - warm) < 0.006, path, got)
                        check(frame["struck out"][index] == ("yes" if struck else "no"), path)
                else:
                    check(len(frame) == wanted["others"], path)
                    texts = [row[plain[0].index("text")] for row in plain[1:] if row[2] == "note"]
                    for text, note in zip(texts, wanted["notes"], strict=True):
                        dangerous = note.startswith(tuple("=+-@"))
                        check(text == "'" * dangerous + note.replace("\n", " "), path, text, note)
    print(f"{rows} rows of tables read by both readers with both decimal marks")


def main():
    folder = written()
    codes(folder / "qr")
    drawings(folder / "dxf")
    tables(folder / "csv")


if __name__ == "__main__":
    main()
