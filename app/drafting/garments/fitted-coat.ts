import { fittedCoatHead } from '../heads/fitted-coat';
import { assemble } from '../rows/garment';
import { barrelPart } from './parts/barrel';
import { coatNeckParts } from './parts/coat-neck';
import { fastenedPart } from './parts/fastened';
import { legHoleParts } from './parts/leg-holes';

export const fittedCoat = assemble(fittedCoatHead, [fastenedPart, barrelPart, ...coatNeckParts, ...legHoleParts]);
