"""The app's own letters: Nunito (SIL Open Font License 1.1, `assets/letters/OFL.txt`) cut down to the signs the app
writes and the weights 400 to 700, with fractions of an inch stacked out of its own small digits, by themselves.

    apt-get install python3-fonttools python3-brotli
    npm install --no-save @fontsource-variable/nunito@5.3.0
    python3 .config/letters.py node_modules/@fontsource-variable/nunito/files/nunito-latin-wght-normal.woff2 \
        assets/letters/hemling-round.woff2
"""

import sys

from fontTools.feaLib.builder import addOpenTypeFeaturesFromString
from fontTools.subset import Options, Subsetter
from fontTools.ttLib import TTFont
from fontTools.ttLib.tables._g_l_y_f import Glyph, GlyphComponent
from fontTools.varLib.instancer import instantiateVariableFont

NAME = "Hemling Round"
DIGITS = dict(zip("0123456789", "zero one two three four five six seven eight nine".split()))
# Fractions with a character of their own; the others are written with U+2044.
SINGLE = {(1, 2): 0xBD, (1, 4): 0xBC, (3, 4): 0xBE, (1, 8): 0x215B, (3, 8): 0x215C, (5, 8): 0x215D, (7, 8): 0x215E}
SIGNS = [*range(0x20, 0x7F), *range(0xA0, 0x100), 0x131, 0x152, 0x153, 0x300, 0x301, 0x303, 0x304, 0x308]
SIGNS += [0x2013, 0x2014, 0x2018, 0x2019, 0x201A, 0x201C, 0x201D, 0x201E, 0x2022, 0x2026, 0x2032, 0x2033]
SIGNS += [0x2039, 0x203A, 0x2044, 0x20AC, 0x2212, *SINGLE.values()]
# In thousandths of the letter size: a small digit's step, the air at either side, and how high each part stands.
STEP, AIR, ABOVE, BELOW, BAR = 366, 54, 374, -192, 306
# The font's minus sign is as wide as this from here, its middle this high; the bar is a little thinner.
MINUS_LEFT, MINUS_WIDE, MINUS_HIGH, BAR_THIN = 49, 502, 287, 0.8
MOVED_BY_NUMBERS = 0x2


def main(source: str, target: str) -> None:
    font = instantiateVariableFont(TTFont(source), {"wght": (400, 400, 700)})
    stacked = {(n, d): stack(font, n, d) for d in (2, 4, 8, 16) for n in range(1, d, 2)}
    font.setGlyphOrder(list(dict.fromkeys([*font.getGlyphOrder(), *stacked.values()])))
    for table in font["cmap"].tables:
        if table.isUnicode():
            table.cmap.update({sign: stacked[pair] for pair, sign in SINGLE.items()})
    del font["HVAR"], font["GSUB"]
    addOpenTypeFeaturesFromString(font, rules(stacked), tables=["GSUB"])
    for glyph in font.getGlyphOrder():
        font["gvar"].variations.setdefault(glyph, [])
    for glyph in stacked.values():
        font["glyf"][glyph].recalcBounds(font["glyf"])
        font["hmtx"][glyph] = (font["hmtx"][glyph][0], font["glyf"][glyph].xMin)
    cut(font)
    for record in font["name"].names:
        if record.nameID in (1, 3, 4, 6):
            record.string = NAME.replace(" ", "") if record.nameID == 6 else NAME
    font.flavor = "woff2"
    font.save(target)


def stack(font: TTFont, above: int, below: int) -> str:
    """Adds the sign of one fraction: digits over a bar over digits, each thicker as the weight grows."""
    name = f"stack_{above}_{below}"
    width = max(len(str(above)), len(str(below))) * STEP + 2 * AIR
    parts = [part("minus", 25 - MINUS_LEFT * (width - 50) / MINUS_WIDE, BAR - MINUS_HIGH * BAR_THIN)]
    parts[0].transform = [[(width - 50) / MINUS_WIDE, 0], [0, BAR_THIN]]
    for text, high in ((str(above), ABOVE), (str(below), BELOW)):
        start = (width - len(text) * STEP) / 2 - 7
        parts += [part(f"{DIGITS[digit]}.dnom", start + at * STEP, high) for at, digit in enumerate(text)]
    glyph = Glyph()
    glyph.numberOfContours, glyph.components = -1, parts
    font["glyf"][name], font["hmtx"][name] = glyph, (width, 0)
    return name


def part(glyph: str, right: float, up: float) -> GlyphComponent:
    component = GlyphComponent()
    component.glyphName, component.flags = glyph, MOVED_BY_NUMBERS | 0x4
    component.x, component.y = round(right), round(up)
    return component


def rules(stacked: dict) -> str:
    """Longest first; in `ccmp`, which spacing of letters does not switch off."""
    spelt = lambda number: " ".join(DIGITS[digit] for digit in str(number))
    pairs = sorted(stacked, key=lambda pair: -len(str(pair[0])) - len(str(pair[1])))
    lines = [f"sub {spelt(n)} fraction {spelt(d)} by {stacked[n, d]};" for n, d in pairs]
    return "languagesystem DFLT dflt; languagesystem latn dflt; feature ccmp { " + " ".join(lines) + " } ccmp;"


def cut(font: TTFont) -> None:
    options = Options()
    options.layout_features, options.hinting = ["kern", "mark", "mkmk", "ccmp"], False
    options.name_IDs, options.notdef_outline = [0, 1, 2, 3, 4, 5, 6, 13, 14], True
    subsetter = Subsetter(options)
    subsetter.populate(unicodes=SIGNS)
    subsetter.subset(font)


main(*sys.argv[1:])
