// The faces of printed pages (SIL Open Font License 1.1, kept beside them), cut down to the letters of a script. Arabic is one
// whose letters are whole, dots and all: a file is then smaller by half, and what is found in it is what was written.
import { readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import subsetFont from 'subset-font';

/** @param {number} from @param {number} to */
const range = (from, to) => Array.from({ length: to - from + 1 }, (_, n) => String.fromCodePoint(from + n)).join('');

/** What joins letters, sets marks and chooses shapes; small capitals and other finery stay out. */
const SHAPING = ['ccmp', 'locl', 'mark', 'mkmk', 'init', 'medi', 'fina', 'isol', 'rlig', 'calt', 'rclt'];
const DROPPED = ['gasp', 'STAT', 'DSIG', 'vmtx', 'vhea', 'VORG', 'BASE', 'meta'];

/** Signs that stand between words of any script. */
const BETWEEN = ` ()[]{}.,:;!?/-+=%'"·•–—…«»‘’“”×÷±−\u200c\u200d`;

/** The letters kept of each font, by its file; and whether it is fetched only by whoever needs it. */
const FACES = {
  NotoSans_400Regular: {
    name: 'latin',
    // Latin with its extensions and marks, Greek, Cyrillic, Vietnamese; punctuation, prices and arrows.
    letters: [
      ...[range(0x20, 0x7e), range(0xa0, 0x24f), range(0x2c6, 0x2dd), range(0x300, 0x338), range(0x370, 0x3ff)],
      ...[range(0x400, 0x52f), range(0x1e00, 0x1eff), range(0x2010, 0x2044), range(0x20a0, 0x20bf)],
      ...['™−×÷≤≥≈√←↑→↓', BETWEEN],
    ].join(''),
  },
  Vazirmatn_400Regular: {
    name: 'arabic',
    letters: range(0x600, 0x6ff) + range(0x750, 0x77f) + range(0x30, 0x39) + BETWEEN,
  },
  NotoSansJP_400Regular: {
    name: 'japanese',
    letters: range(0x20, 0x7e) + range(0x3000, 0x303f) + range(0x3040, 0x30ff) + range(0xff01, 0xff9f) + standardRows(),
  },
};

/** The language of a file that is fetched with it, or when a name needs it: too large to be kept by everybody. */
export const languageNeeding = (/** @type {string} */ name) =>
  /^assets\/face-japanese-[\w-]+\.ttf$/.test(name) ? 'ja' : undefined;

/** Signs, kana and the kanji of level 1: rows 1 to 8 and 16 to 47 of JIS X 0208. */
function standardRows() {
  const read = new TextDecoder('euc-jp');
  const rows = Array.from({ length: 47 }, (_, n) => n + 1).filter((row) => row <= 8 || row >= 16);
  const cells = Array.from({ length: 94 }, (_, n) => n + 1);
  return rows
    .flatMap((row) => cells.map((cell) => read.decode(new Uint8Array([0xa0 + row, 0xa0 + cell]))))
    .filter((letter) => letter.length === 1 && letter !== '\ufffd')
    .join('');
}

/** Loads `….ttf?face`: the address of what is left of a font; while developing, of the whole one. @type {import('vite').Plugin} */
export const faces = {
  name: 'faces',
  enforce: 'pre',
  async load(id) {
    const [, file] = /^(.*\.ttf)\?face$/.exec(id) ?? [];
    if (!file) return undefined;
    if (this.environment.mode === 'dev') return `export { default } from ${JSON.stringify(`${file}?url`)}`;
    const { name, letters } = rowOf(file);
    const options = {
      targetFormat: /** @type {const} */ ('sfnt'),
      noHinting: true,
      keepFeatures: SHAPING,
      dropTables: DROPPED,
    };
    const source = await subsetFont(readFileSync(file), letters, options);
    const address = this.emitFile({ type: 'asset', name: `face-${name}.ttf`, source });
    const licence = readFileSync(join(dirname(file), '../LICENSE_FONT'));
    this.emitFile({ type: 'asset', fileName: `licences/face-${name}.txt`, source: licence });
    return { code: `export default import.meta.ROLLUP_FILE_URL_${address}`, moduleType: 'js' };
  },
};

/** @param {string} file */
function rowOf(file) {
  const row = Object.entries(FACES).find(([name]) => name === basename(file, '.ttf'))?.[1];
  if (!row) throw new Error(`no face is made of ${file}`);
  return row;
}
