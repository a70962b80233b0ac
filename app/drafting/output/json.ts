import type { Flag } from '../../body';
import type {
  Adjustment,
  Draft,
  FitRow,
  FullOrder,
  Notch,
  Notion,
  OpeningRow,
  Piece,
  Role,
  Seam,
  SewingStep,
} from '../draft-types';
import { type Path, type Point, toSvg } from '../geometry';

/** Output is rounded to 1e-4 (mm, or a ratio's parts): engines' trigonometry differs below that. */
const STEPS = 1e4;

type XY = readonly [x: number, y: number];

/** draft.json, version 1: paths are SVG path data in mm, absolute M L C Z; see assets/schema/draft-1.json. */
export type DraftFile = {
  readonly format: 'hemling-draft';
  readonly version: 1;
  readonly engine: string;
  readonly order: FullOrder;
  readonly toy: string;
  readonly pieces: readonly PieceRecord[];
  readonly seams: readonly Seam[];
  readonly fit: readonly FitRow[];
  readonly openings: readonly OpeningRow[];
  readonly adjustments: readonly Adjustment[];
  readonly flags: readonly Flag[];
  readonly sewing: readonly SewingStep[];
  /** Missing from what older engines wrote. */
  readonly notions?: readonly Notion[];
};

export type PieceRecord = {
  readonly name: string;
  readonly copies: number;
  readonly mirrored: boolean;
  readonly onFold: boolean;
  readonly of?: string;
  readonly edges: readonly {
    readonly name: string;
    readonly role: Role;
    readonly length: number;
    readonly allowance: number;
    readonly path: string;
  }[];
  readonly lines: readonly { readonly name: string; readonly length: number; readonly path: string }[];
  readonly seamLine: string;
  readonly cutLine: string;
  readonly grain: readonly [XY, XY];
  readonly notches: readonly Notch[];
  readonly cuts: readonly string[];
};

/** A draft as the data other programs read, numbers rounded: a plain value, ready for `JSON.stringify`. */
export function toJson(draft: Draft): DraftFile {
  const { engine, order, toy, seams, fit, openings, adjustments, flags, sewing, notions } = draft;
  return {
    format: 'hemling-draft',
    version: 1,
    engine,
    order,
    toy,
    pieces: draft.pieces.map(pieceRecord),
    seams: rounded(seams),
    fit: rounded(fit),
    openings: rounded(openings),
    adjustments: rounded(adjustments),
    flags: rounded(flags),
    sewing,
    notions: rounded(notions),
  };
}

function pieceRecord(piece: Piece): PieceRecord {
  const { name, copies, mirrored, onFold, of, grain, notches } = piece;
  return {
    name,
    copies,
    mirrored,
    onFold,
    ...(of ? { of } : {}),
    edges: piece.edges.map((edge) => ({
      name: edge.name,
      role: edge.role,
      length: round(edge.length),
      allowance: round(edge.allowance),
      path: open(edge.path),
    })),
    lines: piece.lines.map((line) => ({ name: line.name, length: round(line.length), path: open(line.path) })),
    seamLine: toSvg(piece.seamLine, { closed: true }),
    cutLine: toSvg(piece.cutLine, { closed: true }),
    grain: [pair(grain[0]), pair(grain[1])],
    notches: rounded(notches),
    cuts: piece.cuts.map(open),
  };
}

function open(path: Path): string {
  return toSvg(path);
}

function pair({ x, y }: Point): XY {
  return [round(x), round(y)];
}

/** The rows with every number in them rounded, however deep. */
function rounded<T>(rows: readonly T[]): readonly T[] {
  return rows.map(roundedValue);
}

function roundedValue<T>(value: T): T {
  if (typeof value === 'number') return round(value) as T & number;
  if (Array.isArray(value)) return value.map(roundedValue) as T & unknown[];
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, roundedValue(each)])) as T;
}

function round(value: number): number {
  return Math.round(value * STEPS) / STEPS + 0;
}
