import type { Flag } from '../body';
import type { Drawing } from './drawing';
import { active, type Garment } from './garments/garment';

/** What a garment's own rows tell of a draft that nobody needs to change: notes, in the order of the rows. */
export function notesOf(garment: Garment, drawing: Drawing): Flag[] {
  return active(garment.notes, drawing.choices).flatMap(({ code, measures, told }): Flag[] => {
    const values = told(drawing);
    return values ? [{ code, severity: 'note', measures, values }] : [];
  });
}
