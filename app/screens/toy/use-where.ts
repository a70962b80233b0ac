import { findMeasure, type MeasureId } from '../../body';
import { isWish } from '../../measuring';
import type { Garment } from '../../storage';
import { useGarments } from '../shared/making/garments-known';
import { askedFor } from '../shared/making/making';
import { placeAddress } from '../shared/places';
import { to } from '../shared/route';
import type { Known } from '../shared/with-toy';

/** Where a garment opens: finished at its pattern; else where she was, or at its numbers. */
export function useWhere({ toy, readings, place }: Known): (garment: Garment) => string {
  const rows = useGarments();
  return (garment) => {
    const row = rows?.find(({ id }) => id === garment.order.garment);
    const here = place?.garmentId === garment.id ? place : null;
    if (here?.step.startsWith('sew')) return placeAddress(here);
    const drawn = here?.step === 'pattern' || here?.step === 'print';
    const whole = row && askedFor({ toy, garment, row, readings }).every((id) => readings[id] || isExtra(id));
    if (drawn || (whole && Object.keys(readings).length > 0)) return to('toy', toy.id, garment.id, 'pattern');
    return here ? placeAddress(here) : to('toy', toy.id, garment.id, 'review');
  };
}

/** Hard to take, or chosen on a page of its own: a garment is finished without it. */
const isExtra = (id: MeasureId) => isWish(id) || findMeasure(id)?.optional === true;
