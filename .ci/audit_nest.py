#!/usr/bin/env python3
"""Holds a nest against the parts' own cut files with shapely.

audit_nest.py NEST MAKE...   a folder with nest.json, and folders of `make`, called as the jobs nested. Every piece is laid by
its matrix: pieces keep the spacing, lie on the sheet, and are not mirrored. Where cuts serve two parts at once, the cuts of
the sheets' files, a kerf wide, have to leave every piece as if it were cut alone. Prints one line a problem; exit 1 if any.
"""
import json, os, sys
import ezdxf
from ezdxf.path import make_path
from shapely.affinity import affine_transform
from shapely.geometry import LineString, Polygon, box
from shapely.ops import unary_union
from audit import loops

CHORDS = 0.005  # arcs are cut to chords, mm


def outlines(folders):
    found = {}
    for folder in folders:
        with open(os.path.join(folder, "job.json")) as f:
            for part in json.load(f)["parts"]:
                space = ezdxf.readfile(os.path.join(folder, part["files"]["dxf"])).modelspace()
                shapes = sorted((Polygon(l) for l in loops(space)), key=lambda p: -p.area)
                shape = Polygon(shapes[0].exterior.coords, [s.exterior.coords for s in shapes[1:]])
                found[part["name"]] = shape
                found[f"{os.path.basename(folder.rstrip('/'))}.{part['name']}"] = shape  # a name two jobs have
    return found


def files(folder, nest):
    """The sheets' own files, through the strict loader."""
    for path in (p for p in nest["files"] if p.endswith(".dxf")):
        found = ezdxf.readfile(os.path.join(folder, path)).audit()
        for e in list(found.errors) + list(found.fixes):
            yield f"{path}: {e.message}"
        layers = [e.dxf.layer for e in found.doc.modelspace()]
        first = min(layers.index(name) for name in ("LEAD", "CUT") if name in layers)
        if set(layers[first:]) - {"LEAD", "CUT", "NOTE"}:
            yield f"{path}: what is marked does not stand before what is cut"


def freed(folder, nest, parts):
    """Every piece of a sheet with common cuts is an island once its file's cuts are taken off the sheet."""
    half = nest["kerf"] / 2
    files = [p for p in nest["files"] if p.endswith(".dxf")]
    for sheet, path in zip(nest["sheets"], files):
        if "cut" not in sheet:
            continue
        cuts = [c for c in ezdxf.readfile(os.path.join(folder, path)).modelspace() if c.dxf.layer == "CUT"]
        lines = [LineString([(v.x, v.y) for v in make_path(c).flattening(0.001)]) for c in cuts]
        left = box(0, 0, sheet["x"], sheet["y"]).difference(unary_union([l.buffer(half, 64) for l in lines]))
        for piece in sheet["pieces"]:
            a, b, c, d, e, f = piece["matrix"]
            shape = affine_transform(parts[piece["part"]], [a, c, b, d, e, f])
            alone = shape.buffer(half, 64).buffer(-half, 64)  # a round torch leaves inner corners round
            off = min(alone.symmetric_difference(island).area for island in left.geoms if island.intersects(shape))
            if off > 0.003 * shape.length:
                yield f"{piece['id']}: {off:.2f} mm2 off what it would be if it were cut alone"


def audit(nest, parts):
    spacing = nest["kerf"] if any("cut" in s for s in nest["sheets"]) else nest["spacing"]
    for sheet in nest["sheets"]:
        room = Polygon(sheet["outline"]) if "outline" in sheet else box(0, 0, sheet["x"], sheet["y"])
        laid = []
        for piece in sheet["pieces"]:
            a, b, c, d, e, f = piece["matrix"]
            if abs(a * d - b * c - 1) > 1e-9:
                yield f"{piece['id']}: mirrored or stretched"
            shape = affine_transform(parts[piece["part"]], [a, c, b, d, e, f])
            laid.append((piece["id"], shape))
            if not room.buffer(1e-6).contains(shape) or room.exterior.distance(shape) < nest["edge"] - CHORDS:
                yield f"{piece['id']}: off the sheet {sheet['name']}"
        shapes = [s for _, s in laid]
        for i, (name, shape) in enumerate(laid):
            for j in range(i):
                gap = shape.distance(shapes[j])
                if gap < spacing - CHORDS:
                    yield f"{name} and {laid[j][0]}: {gap:.3f} mm apart, {spacing} asked"


if __name__ == "__main__":
    with open(os.path.join(sys.argv[1], "nest.json")) as f:
        nest = json.load(f)
    folder, parts = sys.argv[1], outlines(sys.argv[2:])
    problems = [*files(folder, nest), *audit(nest, parts), *freed(folder, nest, parts)]
    for p in problems:
        print(p)
    print(f"{sum(len(s['pieces']) for s in nest['sheets'])} pieces on {len(nest['sheets'])} sheets, {len(problems)} problems")
    sys.exit(1 if problems else 0)
