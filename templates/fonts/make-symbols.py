"""Makes underlid-symbols-400.woff2 and -700.woff2: the letters and signs that Atkinson Hyperlegible lacks.

Greek letters and mathematical signs are taken from Roboto (SIL Open Font License 1.1, no reserved name) and scaled to the
cap height of Atkinson Hyperlegible; arrows, boxes and marks are drawn here. Run by hand, with fontTools and brotli installed:

    python make-symbols.py PATH-TO/@fontsource/roboto/files
"""

import sys
from pathlib import Path

from fontTools.fontBuilder import FontBuilder
from fontTools.pens.recordingPen import DecomposingRecordingPen
from fontTools.pens.transformPen import TransformPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont

CAP = 668  # cap height of Atkinson Hyperlegible Next and Mono, 1000 units to the em
ROBOTO_CAP = 1456
TAKEN = "ΓΔΘΛΞΠΣΦΨΩαβγδεζηθικλμνξοπρστυφχψω≈≠≤≥√∞∑∏∫∂′″⁰⁴⁵⁶⁷⁸⁹⁺⁻₀₁₂₃₄₅₆₇₈₉₊₋⅛⅜⅝⅞●○◊µ"
SPACES = {0x2002: 500, 0x2003: 1000, 0x2007: 600, 0x2008: 250, 0x200A: 100, 0x202F: 180, 0x2060: 0, 0x200B: 0}


def box(x0, y0, x1, y1, hole=0):
    outer = [(x0, y0), (x0, y1), (x1, y1), (x1, y0)]
    if not hole:
        return [outer]
    inner = [(x0 + hole, y0 + hole), (x1 - hole, y0 + hole), (x1 - hole, y1 - hole), (x0 + hole, y1 - hole)]
    return [outer, inner]


def arrow_right(s):
    """Width 860, on the middle of the figures; `s` is the stroke."""
    mid, tip, head = CAP / 2, 800, 230
    shaft = [(60, mid - s / 2), (60, mid + s / 2), (tip - s, mid + s / 2), (tip - s, mid - s / 2)]
    k = s * 0.72
    chevron = [
        (tip, mid),
        (tip - head, mid - head),
        (tip - head - k, mid - head + k),
        (tip - 2 * k, mid),
        (tip - head - k, mid + head - k),
        (tip - head, mid + head),
    ]
    return [shaft, chevron]


def turned(shapes, how, width=860):
    mid = CAP / 2
    turn = {
        "left": lambda x, y: (width - x, 2 * mid - y),
        "up": lambda x, y: (mid - (y - mid) + 96, x - 96),
        "down": lambda x, y: (y + 96 - 0, width - 96 - x),
    }[how]
    return [[turn(x, y) for x, y in shape] for shape in shapes]


def stroke(points, s):
    """A polyline of two or three points with thickness `s`, cut square."""
    shapes = []
    for (x0, y0), (x1, y1) in zip(points, points[1:]):
        length = ((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5
        ux, uy = (x1 - x0) / length * s / 2, (y1 - y0) / length * s / 2
        shapes.append(
            [
                (x0 - ux - uy, y0 - uy + ux),
                (x1 + ux - uy, y1 + uy + ux),
                (x1 + ux + uy, y1 + uy - ux),
                (x0 - ux + uy, y0 - uy - ux),
            ]
        )
    return shapes


def drawn(s):
    right = arrow_right(s)
    triangle = [(60, 0), (400, CAP), (740, 0)]
    inset = [(60 + 1.75 * s, s), (740 - 1.75 * s, s), (400, CAP - 2.2 * s)]
    return {
        0x2192: (right, 860),
        0x2190: (turned(right, "left"), 860),
        0x2191: (turned(right, "up"), 860),
        0x2193: (turned(right, "down"), 860),
        0x2010: (box(60, 220, 330, 220 + s), 390),
        0x2011: (box(60, 220, 330, 220 + s), 390),
        0x2610: (box(60, 0, 60 + CAP, CAP, s * 0.8), CAP + 120),
        0x25A1: (box(60, 0, 60 + CAP, CAP, s * 0.8), CAP + 120),
        0x25A0: (box(60, 0, 60 + CAP, CAP), CAP + 120),
        0x25B2: ([triangle], 800),
        0x25B3: ([triangle, inset], 800),
        0x2713: (stroke([(90, 300), (290, 90), (690, 600)], s * 1.2), 780),
        0x2717: (stroke([(90, 60), (630, 600)], s * 1.2) + stroke([(90, 600), (630, 60)], s * 1.2), 720),
    }


def from_roboto(files, weight):
    fonts = [TTFont(files / f"roboto-{part}-{weight}-normal.woff2") for part in ("math", "greek", "symbols", "latin")]
    scale = CAP / ROBOTO_CAP
    for char in TAKEN:
        font = next((f for f in fonts if ord(char) in f.getBestCmap()), None)
        if font is None:
            raise SystemExit(f"no glyph for {char}")
        glyphs, name = font.getGlyphSet(), font.getBestCmap()[ord(char)]
        recording = DecomposingRecordingPen(glyphs)
        glyphs[name].draw(recording)
        pen = TTGlyphPen(None)
        recording.replay(TransformPen(pen, (scale, 0, 0, scale, 0, 0)))
        yield ord(char), pen.glyph(), round(glyphs[name].width * scale)


def make(files, weight, stroke_width, out):
    glyphs, widths, cmap = {".notdef": TTGlyphPen(None).glyph()}, {".notdef": 500}, {}

    def add(code, glyph, width):
        name = f"uni{code:04X}"
        glyphs[name], widths[name], cmap[code] = glyph, width, name

    for code, glyph, width in from_roboto(files, weight):
        add(code, glyph, width)
    for code, (shapes, width) in drawn(stroke_width).items():
        pen = TTGlyphPen(None)
        for shape in shapes:
            pen.moveTo(tuple(map(round, shape[0])))
            for point in shape[1:]:
                pen.lineTo(tuple(map(round, point)))
            pen.closePath()
        add(code, pen.glyph(), round(width))
    for code, width in SPACES.items():
        add(code, TTGlyphPen(None).glyph(), width)

    builder = FontBuilder(1000, isTTF=True)
    builder.setupGlyphOrder(list(glyphs))
    builder.setupCharacterMap(cmap)
    builder.setupGlyf(glyphs)
    builder.setupHorizontalMetrics({name: (widths[name], builder.font["glyf"][name].xMin if glyphs[name].numberOfContours else 0) for name in glyphs})
    builder.setupHorizontalHeader(ascent=984, descent=-316)
    builder.setupOS2(sTypoAscender=984, sTypoDescender=-316, usWeightClass=weight, sCapHeight=CAP, sxHeight=496, fsType=0)
    builder.setupNameTable(
        {
            "familyName": "Underlid Symbols",
            "styleName": "Bold" if weight == 700 else "Regular",
            "copyright": "Greek and mathematical glyphs: Copyright 2011 The Roboto Project Authors. Arrows and boxes: drawn for Underlid.",
            "licenseDescription": "SIL Open Font License, Version 1.1",
        }
    )
    builder.setupPost()
    builder.font["head"].created = builder.font["head"].modified = 0
    builder.font.recalcTimestamp = False
    builder.font.flavor = "woff2"
    builder.save(out)


if __name__ == "__main__":
    here = Path(__file__).parent
    for weight, width in ((400, 78), (700, 124)):
        make(Path(sys.argv[1]), weight, width, here / f"underlid-symbols-{weight}.woff2")
