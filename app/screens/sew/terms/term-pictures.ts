import type { Term } from '../../../drafting/guide';

/** A stroke in a frame 120 wide and 64 high: the right side of cloth, its wrong side, a line, stitches, thread, the thing meant. */
type Stroke = readonly [as: 'right' | 'wrong' | 'line' | 'stitch' | 'thread' | 'meant', d: string];

const sheet = (d: string): Stroke => ['right', d];
const back = (d: string): Stroke => ['wrong', d];
const line = (d: string): Stroke => ['line', d];
const stitch = (d: string): Stroke => ['stitch', d];
const thread = (d: string): Stroke => ['thread', d];
const meant = (d: string): Stroke => ['meant', d];

/** A needle from its point to its eye. */
const needle = (x: number, y: number): Stroke => line(`M${x} ${y}l26-12m-3-1a3 1.500 0 1 0 4-2a3 1.500 0 1 0-4 2`);

export const termPictures: Readonly<Record<Term, readonly Stroke[]>> = {
  'right-sides': [
    sheet('M18 12h70v34H18z'),
    back('M28 20h70v34H28z'),
    sheet('M98 54 80 54l18-16z'),
    stitch('M88 24v26'),
  ],
  allowance: [back('M22 10h76v46H22z'), stitch('M84 10v46'), meant('M84 33h14M87 30l-3 3 3 3M95 30l3 3-3 3')],
  notch: [
    sheet('M16 12h34v42H16zM70 12h34v42H70z'),
    meant('M46 28h8M46 40h8M66 28h8M66 40h8'),
    thread('M54 28h12M54 40h12'),
  ],
  grain: [
    sheet('M14 8h92v48H14z'),
    thread('M14 16h92M14 24h92M14 32h92M14 40h92M14 48h92'),
    meant('M30 32h58M36 27l-6 5 6 5M82 27l6 5-6 5'),
  ],
  fold: [
    sheet('M30 10h60v46H30z'),
    back('M30 10h52v46H30z'),
    meant('M30 8v50'),
    line('M38 26c-10 0-10 14 0 14M34 37l4 3-4 4'),
  ],
  bias: [
    sheet('M20 6h80v52H20z'),
    thread('M20 16h80M20 26h80M20 36h80M20 46h80M34 6v52M48 6v52M62 6v52M76 6v52M90 6v52'),
    meant('M34 54 82 8M34 47v7h7M75 8h7v7'),
  ],
  'stay-stitch': [
    sheet('M16 10h20c4 26 44 26 48 0h20v46H16z'),
    ['meant', 'M31 10c5 33 53 33 58 0'],
    stitch('M31 10c5 33 53 33 58 0'),
  ],
  ease: [
    sheet('M14 30h92v26H14z'),
    back('M14 30c8-7 15-7 23 0s15 7 23 0 15-7 23 0 15 7 23 0V10H14z'),
    meant('M22 30h76'),
  ],
  gather: [
    sheet('M16 24h88v32H16z'),
    line(
      'M24 24c2 8 0 14-2 22M34 24c2 8 0 14-2 24M46 24c1 8 0 14-1 22M60 24v26M74 24c-1 8 0 14 1 22M86 24c-2 8 0 14 2 24M96 24c-2 8 0 14 2 22',
    ),
    meant('M10 24h100M10 24l-4-5M110 24l4-5'),
    stitch('M16 30h88'),
  ],
  pleat: [
    sheet('M12 18h28l10 8h-6l12-8h22l10 8h-6l12-8h14v38H12z'),
    line('M46 26v30M84 26v30'),
    meant('M40 12h14m-5-4 5 4-5 4M78 12h14m-5-4 5 4-5 4'),
  ],
  dart: [
    sheet('M16 8h88v50H16z'),
    meant('M60 12 70 30 60 54 50 30z'),
    line('M60 12v42'),
    thread('M52 30h16M66 27l2 3-2 3M54 27l-2 3 2 3'),
  ],
  binding: [sheet('M10 34h70v6H10z'), meant('M60 28h30c10 0 10 18 0 18H60v-5h28c4 0 4-8 0-8H60z'), stitch('M68 24v26')],
  facing: [
    sheet('M18 8h22c4 22 36 22 40 0h22v48H18z'),
    back('M28 8h12c4 22 36 22 40 0h12c-4 38-60 38-64 0z'),
    stitch('M37 8c4 27 42 27 46 0'),
  ],
  hem: [sheet('M24 8h72v32H24z'), back('M24 40h72v12H24z'), meant('M24 52h72'), stitch('M24 43h72')],
  casing: [sheet('M14 12h92v40H14z'), stitch('M14 40h92'), meant('M4 26h112'), line('M30 20v12M60 20v12M90 20v12')],
  tack: [sheet('M14 10h92v44H14z'), meant('M20 32h14M42 32h14M64 32h14M86 32h14'), thread('M34 32h8M56 32h8M78 32h8')],
  snip: [sheet('M14 8h92v48H14z'), stitch('M20 50c14-34 66-34 80 0'), meant('M34 14l5 12M60 8v15M86 14l-5 12')],
  overcast: [
    sheet('M14 8h92v34H14z'),
    meant('M20 30l6 18M32 30l6 18M44 30l6 18M56 30l6 18M68 30l6 18M80 30l6 18'),
    thread('M26 48l6-18M38 48l6-18M50 48l6-18M62 48l6-18M74 48l6-18'),
  ],
  backstitch: [
    sheet('M10 10h100v44H10z'),
    meant('M18 34h16M38 34h16M58 34h16'),
    thread('M74 34c8 8 18 2 20-8'),
    needle(86, 30),
    line('M78 22c-8-8-16-8-20 4M57 20l1 6 6-2'),
  ],
  'ladder-stitch': [
    sheet('M10 8h100v20H10zM10 36h100v20H10z'),
    meant('M22 28v8M42 28v8M62 28v8M82 28v8'),
    thread('M22 36h20M42 28h20M62 36h20M82 28h14'),
  ],
};
