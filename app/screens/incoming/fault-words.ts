import { findMeasure, type Say } from '../../body';
import { sayFirst } from '../../parts';
import type { Fault } from '../../sharing';

/** Why a card cannot be read, and which number is meant where it is one. */
export function faultWords(say: Say, { code, where, values }: Fault): string {
  const why = sayFirst(say, [`fault.${code}`, 'fault.other'], values);
  const [, id = ''] = /^readings\.([a-z-]+)/.exec(where) ?? [];
  return findMeasure(id) ? say('list.named', { name: say(`measure.${id}.name`), what: why }) : why;
}
