import type { Mm } from '../../body';
import type { Notion } from '../draft-types';
import type { Drawing } from '../drawing/draw';
import { active, type Garment } from '../rows/garment';
import { type Fastening, fastened, smallButton } from '../sizes/fastening';

/** What is bought for each way of closing. */
const bought: Readonly<Record<string, Fastening>> = {
  snaps: 'snaps',
  ties: 'ribbon',
  zip: 'zip',
};

/** What closes each opening, buttons over it, and the elastics, so wide: by the garment's own rows. */
export function fasteningsOf(garment: Garment, drawing: Drawing, elastic: Mm): readonly Notion[] {
  const { choices, wearer } = drawing;
  const closes: readonly Fastening[] = [
    bought[String(choices.closedBy)] ?? 'hook-and-loop',
    ...(choices.buttons === true ? (['buttons'] as const) : []),
  ];
  return active(garment.notions, choices).flatMap(({ kind, place, length, count: sides = 1 }): Notion[] => {
    const along = length(drawing);
    const several = (count: number) => (count > 1 ? { count } : {});
    if (kind === 'closure' && choices.closedBy === 'band') return [];
    // A small button and a loop of thread, where edges meet without a lap.
    if (kind === 'loop') return [{ kind, place, ...smallButton(wearer.scale) }];
    if (kind === 'filling') return [{ kind, place, length: along }];
    if (kind === 'elastic') return [{ kind, place, length: along, width: elastic, ...several(sides) }];
    return closes.map((each) => {
      const { length, width, count } = fastened(each, along, wearer.scale);
      return { kind: each, place, length, width, ...several(count * sides) };
    });
  });
}
