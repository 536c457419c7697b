#!/usr/bin/env python3
"""Holds a nest against the parts' own cut files with shapely.

audit_nest.py NEST MAKE...   a folder with nest.json, and folders of `make`, called as the jobs nested. Every piece is laid by
its matrix: pieces keep the spacing, lie on the sheet, and are not mirrored. Prints one line a problem; exit 1 if any.
"""
import json, os, sys
import ezdxf
from shapely.affinity import affine_transform
from shapely.geometry import Polygon, box
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
        first, last = layers.index("CUT"), len(layers) - layers[::-1].index("CUT")
        cuts = layers[first - 1 : last + 1]  # a way in before the first, a way out after the last
        if set(cuts) - {"LEAD", "CUT", "NOTE"} or {"LEAD", "CUT"} & set(layers[: first - 1]):
            yield f"{path}: what is marked does not stand before what is cut"


def audit(nest, parts):
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
                if gap < nest["spacing"] - CHORDS:
                    yield f"{name} and {laid[j][0]}: {gap:.3f} mm apart, {nest['spacing']} asked"


if __name__ == "__main__":
    with open(os.path.join(sys.argv[1], "nest.json")) as f:
        nest = json.load(f)
    problems = [*files(sys.argv[1], nest), *audit(nest, outlines(sys.argv[2:]))]
    for p in problems:
        print(p)
    print(f"{sum(len(s['pieces']) for s in nest['sheets'])} pieces on {len(nest['sheets'])} sheets, {len(problems)} problems")
    sys.exit(1 if problems else 0)
