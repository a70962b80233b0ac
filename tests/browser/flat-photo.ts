import type { Page } from 'playwright-core';
import { BANK_CARD_MM } from '../../app/body';

export type Spot = { readonly x: number; readonly y: number };

type File = { readonly name: string; readonly mimeType: string; readonly buffer: Buffer };

/** A photo drawn by arithmetic: the file, where card and length are seen in it (px), and how long that is (mm). */
export type FlatPhoto = { readonly file: File; readonly spots: readonly Spot[]; readonly truth: number };

/** The same of a scrap: the card, a thread that runs away from the camera, the corners; and how long and wide it is, mm. */
export type ScrapPhoto = {
  readonly file: File;
  readonly card: readonly Spot[];
  readonly thread: readonly Spot[];
  readonly corners: readonly Spot[];
  readonly long: number;
  readonly wide: number;
};

const PICTURE = { width: 1800, height: 2400 };
/** A phone's usual lens (26 mm on 36 × 24 mm film), held 330 mm above the table, leaning by 15°. */
const FOCAL = (26 / Math.hypot(36, 24)) * Math.hypot(PICTURE.width, PICTURE.height);
const ABOVE = 330;
const LEAN = (15 * Math.PI) / 180;

/** The card turned a little, beside the toy; the length, from an arm's end down to where the arm begins. Table, mm. */
const TURN = 0.2;
const CARD = { x: -75, y: 55 };
const ENDS: readonly Spot[] = [
  { x: 48, y: -52 },
  { x: 62, y: 14 },
];

const onCard: readonly Spot[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
].map(([a = 0, b = 0]) => {
  const [along, across] = [a * BANK_CARD_MM.width, b * BANK_CARD_MM.height];
  return {
    x: CARD.x + along * Math.cos(TURN) - across * Math.sin(TURN),
    y: CARD.y + along * Math.sin(TURN) + across * Math.cos(TURN),
  };
});

/** A scrap with a bay cut out of it, under the card. Table, mm. */
const SCRAP: readonly Spot[] = [
  { x: -110, y: -140 },
  { x: 20, y: -135 },
  { x: 25, y: -30 },
  { x: 105, y: -20 },
  { x: 100, y: 135 },
  { x: -112, y: 150 },
];
const THREAD: readonly Spot[] = [
  { x: -40, y: -100 },
  { x: -40, y: 40 },
];

/** Where a spot of the table is seen through the pinhole, px. */
function seen({ x, y }: Spot): Spot {
  const depth = ABOVE + y * Math.sin(LEAN);
  return { x: PICTURE.width / 2 + (FOCAL * x) / depth, y: PICTURE.height / 2 + (FOCAL * y * Math.cos(LEAN)) / depth };
}

const round = (middle: Spot, across: number, along: number): readonly Spot[] =>
  Array.from({ length: 60 }, (_, at) => {
    const angle = (at / 60) * 2 * Math.PI;
    return { x: middle.x + across * Math.cos(angle), y: middle.y + along * Math.sin(angle) };
  });

/** Draws the table, the toy, the card and a dot at either end, each seen through the pinhole, in the page's own canvas. */
export async function flatPhoto(page: Page): Promise<FlatPhoto> {
  const shapes = [
    { colour: '#b98f62', outline: round({ x: 52, y: -50 }, 18, 22) },
    { colour: '#b98f62', outline: round({ x: -48, y: -40 }, 18, 24) },
    { colour: '#c9a277', outline: round({ x: 0, y: -20 }, 62, 66) },
    { colour: '#d8b78e', outline: round({ x: 0, y: -10 }, 36, 42) },
    { colour: '#d8b78e', outline: round({ x: 0, y: -105 }, 44, 38) },
    { colour: '#2f5f6d', outline: onCard },
    ...ENDS.map((end) => ({ colour: '#f7f2e8', outline: round(end, 1.2, 1.2) })),
  ];
  const [one = { x: 0, y: 0 }, other = { x: 0, y: 0 }] = ENDS;
  return {
    file: await fileOf(page, shapes),
    spots: [...onCard, ...ENDS].map(seen),
    truth: Math.hypot(one.x - other.x, one.y - other.y),
  };
}

/** Draws the table, the scrap with a stripe of another colour along its thread, and the card on it. */
export async function flatScrap(page: Page): Promise<ScrapPhoto> {
  const stripe = [...THREAD, ...THREAD.map(({ x, y }) => ({ x: x + 3, y })).reverse()];
  const file = await fileOf(page, [
    { colour: '#c4708a', outline: SCRAP },
    { colour: '#e7b7c4', outline: stripe },
    { colour: '#2f5f6d', outline: onCard },
  ]);
  const span = (places: readonly number[]) => Math.max(...places) - Math.min(...places);
  return {
    file,
    card: onCard.map(seen),
    thread: THREAD.map(seen),
    corners: SCRAP.map(seen),
    long: span(SCRAP.map(({ y }) => y)),
    wide: span(SCRAP.map(({ x }) => x)),
  };
}

type Shape = { readonly colour: string; readonly outline: readonly Spot[] };

async function fileOf(page: Page, shapes: readonly Shape[]): Promise<File> {
  const onPicture = shapes.map(({ colour, outline }) => ({ colour, outline: outline.map(seen) }));
  const data = await page.evaluate(drawn, { shapes: onPicture, ...PICTURE });
  return { name: 'flat.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(data.replace(/^.*,/, ''), 'base64') };
}

type Drawing = {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
};

/** In the page: the drawing as the data address of a JPEG. */
function drawn({ width, height, shapes }: Drawing): string {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d');
  if (!context) return '';
  context.fillStyle = '#e9e1d2';
  context.fillRect(0, 0, width, height);
  for (const { colour, outline } of shapes) {
    context.fillStyle = colour;
    context.beginPath();
    for (const { x, y } of outline) context.lineTo(x, y);
    context.fill();
  }
  return canvas.toDataURL('image/jpeg', 0.92);
}
