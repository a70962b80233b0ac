/**
 * A picture sheet for each garment, with the pieces of every demo toy it suits and the order of sewing, to look at:
 * `pieces [--garment ID] [--choices JSON] [--out DIR]` writes one page a garment into DIR (pieces/ if left out).
 */
import { join } from 'node:path';
import type { Order, Say } from '../body';
import { findGarment, garments } from '../drafting/garments';
import { demoCards } from '../measuring';
import { type Asked, EXIT, type Exit } from './call';
import { command } from './command';
import { piecesPage } from './pieces-page';
import { print } from './terminal';
import { unreadable } from './unreadable';
import { writeAll } from './write-all';

await command(
  {
    name: 'pieces',
    usage: ['[--garment ID] [--choices JSON] [--out DIR]'],
    options: { garment: 'ID', choices: 'JSON', out: 'DIR' },
    words: [0, 0],
    exits: [EXIT.done, EXIT.unreadable, EXIT.ours],
  },
  drawPages,
);

function drawPages({ values: { garment: id, choices = '{}', out = 'pieces' } }: Asked, say: Say): Exit {
  const wanted = id === undefined ? garments : [findGarment(id)].filter((garment) => garment !== undefined);
  const chosen = choicesFrom(choices);
  if (wanted.length === 0) return unreadable('--garment', 'unknown-garment');
  if (!chosen) return unreadable('--choices', 'not-json');
  const pages = wanted.map((garment) => {
    const toys = demoCards.filter((card) => garment.bodies.includes(card.toy.body));
    return [`${garment.id}.html`, piecesPage(garment, toys, chosen, say)] as const;
  });
  try {
    writeAll(out, Object.fromEntries(pages));
  } catch {
    return unreadable('--out', 'cannot-write');
  }
  for (const [name] of pages) print(join(out, name));
  return EXIT.done;
}

function choicesFrom(json: string): NonNullable<Order['choices']> | null {
  try {
    const choices: unknown = JSON.parse(json);
    return typeof choices === 'object' && !Array.isArray(choices) ? (choices as NonNullable<Order['choices']>) : null;
  } catch {
    return null;
  }
}
