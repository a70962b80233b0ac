import { dungareesHead } from '../heads/dungarees';
import { assemble } from '../rows/garment';
import { bibFrontPart } from './parts/bib-front';
import { elasticWaist } from './parts/elastic-waist';
import { fastenedPart } from './parts/fastened';
import { lapsAtTail, legWaist } from './parts/leg-names';
import { legsPart } from './parts/legs';

export const dungarees = assemble(dungareesHead, [
  fastenedPart,
  legsPart,
  ...elasticWaist({ edges: legWaist, opens: lapsAtTail }),
  bibFrontPart,
]);
