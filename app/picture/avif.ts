import type { Area } from './area';

/** Brands of still pictures in boxes (ISO/IEC 23008-12 and the AV1 image format). */
const BRANDS = ['avif', 'mif1', 'heic', 'heix'];
/** The boxes that lead to the sizes; `meta` has four bytes of its own before its first. */
const PATH = [
  { name: 'meta', skip: 4 },
  { name: 'iprp', skip: 0 },
  { name: 'ipco', skip: 0 },
];

/**
 * AVIF and its kin (ISO/IEC 14496-12): the largest width and height stated in `ispe`, for a picture may be put together
 * from tiles. A file with a film in it (`moov`) has none: its sizes lie elsewhere.
 */
export function avifSize(view: DataView): Area | null {
  const file = { from: 0, to: view.byteLength };
  const [first] = boxesIn(view, file);
  if (first?.name !== 'ftyp' || !BRANDS.some((brand) => brandsOf(view, first).includes(brand))) return null;
  if (boxesIn(view, file).some(({ name }) => name === 'moov')) return null;
  let inside = [file];
  for (const { name, skip } of PATH) {
    inside = inside.flatMap((part) =>
      boxesIn(view, part)
        .filter((box) => box.name === name)
        .map(({ from, to }) => ({ from: from + skip, to })),
    );
  }
  const sizes = inside
    .flatMap((part) => boxesIn(view, part))
    .filter(({ name }) => name === 'ispe')
    .map(({ from }) => ({ width: view.getUint32(from + 4), height: view.getUint32(from + 8) }));
  if (sizes.length === 0) return null;
  return { width: Math.max(...sizes.map((size) => size.width)), height: Math.max(...sizes.map((size) => size.height)) };
}

type Part = { readonly from: number; readonly to: number };
type Box = Part & { readonly name: string };

/** The boxes that lie side by side in a part; one that claims to reach beyond it ends the list. */
function boxesIn(view: DataView, { from, to }: Part): Box[] {
  const found: Box[] = [];
  for (let at = from; at + 8 <= to; ) {
    const said = view.getUint32(at);
    const size = said === 0 ? to - at : said === 1 ? Number(view.getBigUint64(at + 8)) : said;
    const head = said === 1 ? 16 : 8;
    if (size < head || at + size > to) break;
    found.push({ name: letters(view, at + 4), from: at + head, to: at + size });
    at += size;
  }
  return found;
}

const brandsOf = (view: DataView, { from, to }: Part): string[] =>
  Array.from({ length: Math.floor((to - from) / 4) }, (_, place) => letters(view, from + 4 * place));

const letters = (view: DataView, at: number) =>
  String.fromCharCode(...[0, 1, 2, 3].map((place) => view.getUint8(at + place)));
