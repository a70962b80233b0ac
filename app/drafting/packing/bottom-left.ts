// The first lay, at once: pieces one after another, each as far to the left as it goes, and there as high.

import { ALIKE, type Field, type Job, type Packed, roomFor } from './job';
import type { Lay } from './lay';
import type { Shape } from './shape';
import { blockedAlong, blockedList, firstFree, slideBack } from './slide';

/** How many levels of a field are tried, beside those that touch what lies there. */
const LEVELS = 24;

type Tried = {
  readonly shape: number;
  readonly x: number;
  readonly y: number;
  readonly end: number;
};

/** Lays every piece by the given order in the first field that has room for it; returns those it found no room for. */
export function bottomLeft(lay: Lay, job: Job, fields: readonly Field[], order: readonly number[]): readonly number[] {
  const layOne = fresh(lay, job, fields);
  return order.filter((index) => !layOne(index));
}

/** The same, but given up at the first piece that finds no room: whether all did. */
export function bottomLeftAll(lay: Lay, job: Job, fields: readonly Field[], order: readonly number[]): boolean {
  return order.every(fresh(lay, job, fields));
}

/** Lays one piece after another, beginning with none: whether there is room. */
function fresh(lay: Lay, job: Job, fields: readonly Field[]): (index: number) => boolean {
  for (let index = 0; index < lay.movable; index += 1) lay.putAside(index);
  const starts = fields.map(() => new Map<number, number>());
  return (index) =>
    fields.some((field, at) => {
      const found = leftmost(lay, job, index, field, starts[at] ?? new Map());
      if (!found) return false;
      lay.put(index, found.shape, found.x, found.y);
      slideIn(lay, job, index, field);
      return true;
    });
}

/** Slides a piece up and left as far as it goes without passing over another. */
export function slideIn(lay: Lay, job: Job, index: number, field: Field): void {
  const shape = lay.shape[index] as number;
  const room = roomFor(job, job.pieces[index] as Packed, shape, field);
  for (let turn = 0; turn < 2; turn += 1) {
    const [x, from] = [lay.x[index] as number, lay.y[index] as number];
    blockedAlong(lay, index, shape, { at: x, least: room.top, most: from, level: false }, blocked);
    const y = slideBack(blocked, from, room.top);
    blockedAlong(lay, index, shape, { at: y, least: room.left, most: x, level: true }, blocked);
    lay.put(index, shape, slideBack(blocked, x, room.left), y);
  }
}

const blocked = blockedList();

/** `starts`: how far left each shape went before; the next of them goes no further, since more lies in its way. */
function leftmost(lay: Lay, job: Job, index: number, field: Field, starts: Map<number, number>): Tried | undefined {
  const piece = job.pieces[index] as Packed;
  /** Where ends are alike the higher place is taken. */
  let best: Tried | undefined;
  for (const shape of piece.turns) {
    const { width } = lay.stock.shapes[shape] as Shape;
    const room = roomFor(job, piece, shape, field);
    if (room.bottom < room.top) continue;
    const start = piece.hold ? room.left : Math.max(room.left, starts.get(shape) ?? room.left);
    let least = Infinity;
    for (const y of start > room.right ? [] : levels(lay, shape, room, start, best ? best.end : room.right + width)) {
      const most = best ? Math.min(room.right, best.end + ALIKE - width) : room.right;
      if (start > most) break;
      lay.steps += 1;
      blockedAlong(lay, index, shape, { at: y, least: start, most, level: true }, blocked);
      const x = firstFree(blocked, start, most);
      least = Math.min(least, x);
      if (x > most) continue;
      const end = x + width;
      if (!best || end < best.end - ALIKE || (end < best.end + ALIKE && y < best.y)) best = { shape, x, y, end };
    }
    if (!piece.hold && least < Infinity) starts.set(shape, least);
  }
  return best;
}

/** Levels evenly over the room, and those at which the piece would touch another between `from` and `to`, above or below. */
function levels(lay: Lay, shape: number, { top, bottom }: Field, from: number, to: number): readonly number[] {
  if (bottom <= top) return [top];
  const height = lay.heights[shape] as number;
  const { apart } = lay.stock;
  const out: number[] = [];
  for (let n = 0; n <= LEVELS; n += 1) out.push(top + ((bottom - top) * n) / LEVELS);
  for (let other = 0; other < lay.count; other += 1) {
    if ((lay.right[other] as number) + apart <= from || (lay.x[other] as number) >= to) continue;
    const below = (lay.bottom[other] as number) + apart;
    const above = (lay.y[other] as number) - height - apart;
    if (below > top && below < bottom) out.push(below);
    if (above > top && above < bottom) out.push(above);
  }
  return out;
}
