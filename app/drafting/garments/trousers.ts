import { trousersHead } from '../heads/trousers';
import { assemble } from '../rows/garment';
import { elasticWaist } from './parts/elastic-waist';
import { fastenedPart } from './parts/fastened';
import { lapsAtTail, legWaist } from './parts/leg-names';
import { legsPart } from './parts/legs';

export const trousers = assemble(trousersHead, [
  fastenedPart,
  legsPart,
  ...elasticWaist({ edges: legWaist, opens: lapsAtTail }),
]);
