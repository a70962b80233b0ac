import type { Flag } from '../body';
import type { Drawing } from './drawing/draw';
import { active, type Garment } from './rows/garment';
import type { AnyNames, NoteRow } from './rows/rows';
import { THICK_FROM_MM } from './sizes/cloths';

/** What a draft tells that nobody needs to change: what its cloth asks for, then its garment's own rows in their order. */
export function notesOf(garment: Garment, drawing: Drawing): Flag[] {
  const told = active([thickCloth, ...garment.notes], drawing.choices).flatMap(({ code, measures, told }): Flag[] => {
    const values = told(drawing);
    return values ? [{ code, severity: 'note', measures, values }] : [];
  });
  // Two bindings ask for the same thin cloth: once is enough.
  return told.filter(({ code }, at) => told.findIndex((each) => each.code === code) === at);
}

/** Single hems and thin facings. */
const thickCloth: NoteRow<AnyNames> = {
  code: 'thick-cloth',
  measures: [],
  told: ({ wearer: { cloth } }) => (cloth.thickness > THICK_FROM_MM ? { thickness: cloth.thickness } : null),
};
