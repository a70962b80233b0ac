import { decimalMark, type Hand, type Say, signedMillimetre } from '../body';
import { eighths, type Key, sixteenthsIn } from './keys';
import { spoken } from './spoken';

/** One key as shown: `called` where its face alone would not be understood, `down` where it stays pressed. */
export type Cell = {
  readonly id: string;
  readonly key: Key;
  readonly face: string;
  readonly called?: string;
  readonly down?: boolean;
};

/** The three rows of the pad for a unit: digits, digits, and a piece of tape. */
export function padCells(text: string, hand: Hand, say: Say): readonly (readonly Cell[])[] {
  const erase: Cell = { id: 'erase', key: { press: 'erase' }, face: '', called: say('screen.keypad.erase') };
  const first = [...'12345'].map(digit);
  const second = [...'67890'].map(digit);
  if (hand.unit === 'in') {
    const sixteenths = sixteenthsIn(text);
    return [
      [...first, erase],
      [...second, sixteenth(sixteenths, say)],
      eighths.map((face, index) => ({
        ...eighth(face, index + 1, sixteenths),
        called: spoken(face, hand, say),
      })),
    ];
  }
  const mark = decimalMark(hand.locale);
  const point: Cell = { id: 'point', key: { press: 'point', mark }, face: mark, called: say('screen.keypad.point') };
  return [
    [...first, erase],
    [...second, point],
    [millimetre(-1, hand, say), millimetre(1, hand, say)],
  ];
}

/** The cell that an arrow key leads to from `id`; null where there is none that way. */
export function neighbourCell(rows: readonly (readonly Cell[])[], id: string, arrow: string): string | null {
  const row = rows.findIndex((cells) => cells.some((cell) => cell.id === id));
  const column = rows[row]?.findIndex((cell) => cell.id === id) ?? 0;
  const moves: Readonly<Record<string, readonly [number, number]>> = {
    ArrowRight: [0, 1],
    ArrowLeft: [0, -1],
    ArrowDown: [1, 0],
    ArrowUp: [-1, 0],
  };
  const move = moves[arrow];
  const cells = move && rows[row + move[0]];
  if (!move || !cells) return null;
  return cells[Math.min(column, cells.length - 1) + move[1]]?.id ?? null;
}

const digit = (face: string): Cell => ({ id: face, key: { press: 'digit', digit: face }, face });

const eighth = (face: string, count: number, sixteenths: number): Cell => ({
  id: face,
  key: { press: 'eighth', count },
  face,
  down: Math.floor(sixteenths / 2) === count,
});

const sixteenth = (sixteenths: number, say: Say): Cell => ({
  id: 'sixteenth',
  key: { press: 'sixteenth' },
  face: '+1⁄16',
  called: say('screen.keypad.sixteenth'),
  down: sixteenths % 2 === 1,
});

const millimetre = (by: 1 | -1, { locale }: Hand, say: Say): Cell => ({
  id: by === 1 ? 'more' : 'less',
  key: { press: 'millimetre', by },
  face: signedMillimetre(by, locale),
  called: say(by === 1 ? 'screen.keypad.more' : 'screen.keypad.less'),
});
