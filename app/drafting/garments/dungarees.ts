import { dungareesHead } from '../heads/dungarees';
import { assemble } from '../rows/garment';
import { bibFrontPart } from './parts/bib-front';
import { elasticWaistParts } from './parts/elastic-waist';
import { fastenedPart } from './parts/fastened';
import { legsPart } from './parts/legs';

export const dungarees = assemble(dungareesHead, [fastenedPart, legsPart, ...elasticWaistParts, bibFrontPart]);
