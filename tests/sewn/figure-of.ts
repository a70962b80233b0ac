import type { Body, BodyKind } from '../../app/body';
import type { Figure } from './figure';
import { fourLeggedFigure } from './four-legged-body';
import { roundFigure } from './round-body';
import { uprightFigure } from './upright-body';

const makers: { readonly [K in BodyKind]: (body: Body) => Figure } = {
  upright: uprightFigure,
  'four-legged': fourLeggedFigure,
  round: roundFigure,
};

/** The body a garment is tried on. */
export const figureOf = (body: Body): Figure => makers[body.kind](body);
