import type { Say } from '../../../body';
import type { Garment } from '../../../storage';
import { to } from '../route';
import type { Making } from './making';

/** What joins the ids of an outfit's garments into one. */
const JOIN = '+';
/** More garments at once are more than anybody lays out on a table; and their ids fit into what is kept of a place. */
export const MOST_TOGETHER = 4;

export const outfitId = (garments: readonly Pick<Garment, 'id'>[]): string => garments.map(({ id }) => id).join(JOIN);

/** The garments an address names: one, or several where the screen may be about several. */
export const idsOf = (named = '', several: boolean): readonly string[] =>
  several ? [...new Set(named.split(JOIN))].slice(0, MOST_TOGETHER) : [named];

/** What is being made, in words: the garment, or all of an outfit. */
export const makingWords = (say: Say, { garment, also }: Pick<Making, 'garment' | 'also'>): string =>
  say('list.row', {
    of: [garment, ...also.map((each) => each.garment)].map(({ order }) => say(`garment.${order.garment}.name`)),
  });

/** Where the numbers lead once they are there: to the pattern, or to the outfit they were taken for. */
export const wholeAddress = ({ toy, garment, also }: Making): string =>
  to('toy', toy.id, garment.id, also.length > 0 ? 'outfit' : 'pattern');

/** And where what is made was chosen. */
export const chosenAddress = ({ toy, garment, also }: Making): string =>
  to('toy', toy.id, garment.id, also.length > 0 ? 'outfit' : 'choices');
