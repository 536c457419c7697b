#!/usr/bin/env python3
"""Reads cut files with independent readers and holds them against the manifest.

audit.py FOLDER...   each with job.json. ezdxf reads and audits the DXF, shapely checks that every outline is valid
and as large as the manifest says, and that bend lines lie on it. Prints one line a problem; exit 1 if there is any.
"""
import json, math, os, sys
import ezdxf
from shapely.geometry import LineString, Polygon

SAGITTA = 0.001


def bulged(vertices):
    """Points of a closed polyline with bulges."""
    out = []
    for (x, y, b), (u, v, _) in zip(vertices, vertices[1:] + vertices[:1]):
        out.append((x, y))
        if not b:
            continue
        h = (1 - b * b) / (4 * b)
        cx, cy = (x + u) / 2 - (v - y) * h, (y + v) / 2 + (u - x) * h
        r, start, sweep = math.hypot(x - cx, y - cy), math.atan2(y - cy, x - cx), 4 * math.atan(b)
        n = max(2, math.ceil(abs(sweep) / (2 * math.acos(max(0.0, 1 - SAGITTA / r)))))
        out += [(cx + r * math.cos(start + sweep * i / n), cy + r * math.sin(start + sweep * i / n)) for i in range(1, n)]
    return out


def loops(space):
    for e in space:
        if e.dxf.layer != "CUT":
            continue
        if e.dxftype() == "CIRCLE":
            c, r = e.dxf.center, e.dxf.radius
            yield [(c.x + r * math.cos(a / 100), c.y + r * math.sin(a / 100)) for a in range(628)]
        elif e.dxftype() == "LWPOLYLINE":
            yield bulged([p for p in e.get_points("xyb")])
        elif e.dxftype() == "POLYLINE":
            yield bulged([(v.dxf.location.x, v.dxf.location.y, v.dxf.get("bulge", 0)) for v in e.vertices])
        else:
            raise ValueError(f"{e.dxftype()} on CUT")


def audit(folder, part):
    doc = ezdxf.readfile(os.path.join(folder, part["files"]["dxf"]))
    found = doc.audit()
    for e in list(found.errors) + list(found.fixes):
        yield f"ezdxf: {e.message}"
    shapes = sorted((Polygon(l) for l in loops(doc.modelspace())), key=lambda p: -p.area)
    if not all(s.is_valid for s in shapes):
        yield "an outline crosses itself"
        return
    outer, holes = shapes[0], shapes[1:]
    net = outer.area - sum(h.area for h in holes)
    if abs(net - part["area"]) > 0.02 + 1e-4 * part["area"]:
        yield f"area {net:.3f}, the manifest says {part['area']:.3f}"
    x0, y0, x1, y1 = outer.bounds
    if max(abs(x0), abs(y0), abs(x1 - part["blank"]["x"]), abs(y1 - part["blank"]["y"])) > 0.01:
        yield f"outline {outer.bounds}, the blank is {part['blank']}"
    lines = [e for e in doc.modelspace() if e.dxf.layer in ("BEND-UP", "BEND-DOWN")]
    if len(lines) != len(part["bends"]):
        yield f"{len(lines)} bend lines, the manifest has {len(part['bends'])}"
    grown = outer.buffer(0.01)
    for e in lines:
        if not grown.covers(LineString([e.dxf.start.vec2, e.dxf.end.vec2])):
            yield f"a bend line leaves the outline near {e.dxf.start}"


def main(folders):
    bad = count = 0
    for folder in folders:
        with open(os.path.join(folder, "job.json")) as f:
            parts = json.load(f)["parts"]
        for part in parts:
            count += 1
            for problem in audit(folder, part):
                bad += 1
                print(f"{folder}/{part['files']['dxf']}: {problem}")
    print(f"{count} cut files read by ezdxf and shapely, {bad} problems")
    return 1 if bad or not count else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
