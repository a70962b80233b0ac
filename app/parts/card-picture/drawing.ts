/**
 * A card as a drawing: what stands where, as data. Units are pixels of the picture; x right, y down; no page and no
 * canvas here.
 */
export type Mark = Shape | Writing;

export type Shape = {
  readonly is: 'shape';
  /** SVG path data, in its own units: `at` moves it, `scale` enlarges it. */
  readonly path: string;
  readonly at: readonly [x: number, y: number];
  readonly scale: number;
  readonly fill?: string;
  readonly line?: { readonly colour: string; readonly width: number; readonly dash?: readonly number[] };
  readonly opacity?: number;
};

export type Writing = {
  readonly is: 'words';
  readonly words: string;
  /** Where the line of writing begins or ends, on the letters' foot. */
  readonly at: readonly [x: number, y: number];
  readonly side: 'left' | 'right';
  readonly size: number;
  readonly heavy: boolean;
  readonly colour: string;
  /** Drawn narrower where it would be wider than this. */
  readonly most: number;
};

export type CardDrawing = {
  readonly width: number;
  readonly height: number;
  readonly rightToLeft: boolean;
  readonly paper: string;
  readonly marks: readonly Mark[];
};

/** A picture leaves the app: it keeps one set of colours, whatever the screen's are. */
export const COLOURS = {
  paper: '#f5efe3',
  sheet: '#fffcf5',
  ink: '#2b2723',
  pencil: '#655d54',
  line: '#dccfb9',
  tape: '#f2c230',
  tapeInk: '#5b4300',
  white: '#ffffff',
  black: '#000000',
} as const;

/** The letters of the app, where the device has them. */
export const FACE =
  'ui-rounded, "Nunito", "Segoe UI", Roboto, "Helvetica Neue", "Liberation Sans", "Noto Sans", system-ui, sans-serif';

/** About how wide a line of writing is, in its own size: ideographs and emoji are as wide as high. From memory. */
export const widthOf = (words: string): number =>
  [...words].reduce((sum, letter) => sum + (letter > '\u2e7f' ? 1 : 0.5), 0);
