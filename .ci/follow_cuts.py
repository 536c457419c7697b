#!/usr/bin/env python3
"""Follows a shear plan as a person would: from the printed table alone, with a rectangle of paper for every sheet.

follow_cuts.py SHEAR   a folder of `shear`, one metal. Every row of the table in shear.pdf parts the piece it names at the
stop it names; what carries a blank's name at the end must be all blanks of cutlist.csv, each of its size. Reads nothing but
the print and the list. Prints one line a problem; exit 1 if there is any.
"""
import csv, os, re, subprocess, sys

ROUNDED = 0.05  # the print has tenths of a millimetre
SHEET = re.compile(r"^\s+(\d+) .+?\s{2,}([\d.]+) × ([\d.]+)\s+\d+\s+[\d.]+ %", re.M)
CUT = re.compile(r"^\s*(\d+) (sheet \d+|strip \w+)\s+([\d.]+|–)\s+(\w+): (.+?)\s{2,}(\w+): (.+?)\s*$", re.M)
ACROSS = {"left": ("right", True), "right": ("left", True), "lower": ("upper", False), "upper": ("lower", False)}


def parted(w, h, across, stop):
    """What lies against the stop, and what stays in front."""
    return ((stop, h), (w - stop, h)) if across else ((w, stop), (w, h - stop))


def follow(text):
    """Pieces by name once all rows are done, and how many rows there were."""
    pieces = {f"sheet {n}": (float(x), float(y)) for n, x, y in SHEET.findall(text)}
    stop, rows = None, 0
    for number, piece, set_to, side, behind, other, front in CUT.findall(text):
        rows += 1
        if int(number) != rows:
            yield f"cut {number} stands where cut {rows} should"
        stop = stop if set_to == "–" else float(set_to)
        if piece not in pieces or ACROSS[side][0] != other:
            yield f"cut {number}: {piece} is not there, or {side} and {other} do not face each other"
            continue
        for name, size in zip((behind, front), parted(*pieces.pop(piece), ACROSS[side][1], stop)):
            if min(size) <= 0:
                yield f"cut {number}: nothing is left for {name}"
            if name in pieces:
                yield f"cut {number}: there are two {name}"
            if name != "scrap":
                pieces[name] = size
    yield pieces, rows


def wrong(pieces, blanks):
    for blank in blanks:
        x, y = float(blank["x"]), float(blank["y"])
        if blank["blank"] not in pieces:
            yield f"{blank['blank']}: never cut"
            continue
        w, h = pieces.pop(blank["blank"])
        off = min(max(abs(w - x), abs(h - y)), max(abs(w - y), abs(h - x)))
        # a piece in front has the rounding of every stop before it
        if off > 4 * ROUNDED:
            yield f"{blank['blank']}: {w:.2f} x {h:.2f} on paper, {x} x {y} wanted"
    for name in pieces:
        if not name.startswith("offcut"):
            yield f"{name}: left over without a name to keep"


if __name__ == "__main__":
    folder = sys.argv[1]
    printed = subprocess.run(
        ["pdftotext", "-layout", os.path.join(folder, "shear.pdf"), "-"], capture_output=True, text=True, check=True
    ).stdout
    with open(os.path.join(folder, "cutlist.csv"), newline="") as f:
        blanks = [row for row in csv.DictReader(f) if row["sheet"]]
    *problems, (pieces, rows) = follow(printed)
    problems += wrong(pieces, blanks)
    for p in problems:
        print(f"{folder}: {p}")
    print(f"{rows} cuts followed, {len(blanks)} blanks")
    sys.exit(1 if problems or rows == 0 else 0)
