import { trousersHead } from '../heads/trousers';
import { assemble } from '../rows/garment';
import { elasticWaistParts } from './parts/elastic-waist';
import { fastenedPart } from './parts/fastened';
import { legsPart } from './parts/legs';

export const trousers = assemble(trousersHead, [fastenedPart, legsPart, ...elasticWaistParts]);
