import type { MeasureId, Mm } from '../../body';
import type { Wearer } from './wearer';

/** A firm head passes only with room to spare (common practice, no source). */
const FIRM_ROOM_MM = 5;

/** What an opening has to measure for a part of the toy to go through it. */
export function passingGirth({ traits, softPass, of }: Pick<Wearer, 'traits' | 'softPass' | 'of'>, id: MeasureId): Mm {
  const firm = traits.stuffing === 'firm' || (id === 'head-girth' && traits.head === 'firm');
  return firm ? of(id) + FIRM_ROOM_MM : of(id) * softPass;
}
