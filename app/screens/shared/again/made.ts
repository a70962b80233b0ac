import type { MeasureId, Mm } from '../../../body';
import type { Draft } from '../../../drafting/draft-types';
import { garmentsIn } from '../../../drafting/outfit';
import type { Made } from '../../../storage';
import type { Making } from '../making/making';
import { idsOf } from '../making/outfit';
import { triedPoints } from '../trying/points';

/** A garment as it stands now, to be kept when it goes on paper and compared with another day. */
export function madeOf(draft: Draft, { toy, garment, needs, body }: Making, at: number): Made {
  const taken = needs.flatMap((id): [MeasureId, Mm][] => {
    const known = body.sizes[id];
    return known && known.from !== 'estimate' ? [[id, known.value]] : [];
  });
  return {
    ...{ at, engine: draft.engine, toyId: toy.id, toy: toy.name, order: garment.order, sizes: finishedOf(draft) },
    measures: Object.fromEntries(taken),
  };
}

/** The same of every garment of an outfit, by its id. */
export function madeOfAll(draft: Draft, making: Making, at: number): readonly (readonly [string, Made])[] {
  const garments = [making.garment, ...making.also.map((each) => each.garment)];
  return idsOf(making.garment.id, true).flatMap((id, index) => {
    const [garment, own] = [garments[index], garmentsIn(draft)[index]];
    return garment && own ? [[id, madeOf(own, { ...making, garment }, at)] as const] : [];
  });
}

/** The finished garment in numbers, mm, by the words that name them: its girths, and how long it is. */
export function finishedOf(draft: Draft): Readonly<Record<string, Mm>> {
  const girths = draft.fit.map(({ place, garment }) => [`place.${place}`, garment] as const);
  const lengths = triedPoints.flatMap(({ length }) =>
    length.flatMap(({ lead, measured }) => {
      const long = measured(draft);
      return long === null ? [] : [[`size.${lead}`, long] as const];
    }),
  );
  return Object.fromEntries([...girths, ...lengths]);
}
