/**
 * A picture sheet for each garment, with the pieces of every demo toy it suits and the order of sewing, to look at:
 * `pieces [--garment ID] [--choices JSON] [--out DIR]` writes one page a garment into DIR (pieces/ if left out).
 */
import { join } from 'node:path';
import type { Card, Order, Say } from '../body';
import { type Draft, draft, fullOrder } from '../drafting/draft';
import { findGarment, type Garment, garments } from '../drafting/garments';
import { toSvg } from '../drafting/output';
import { bodyFrom, demoCards } from '../measuring';
import { type Asked, EXIT, type Exit } from './call';
import { command } from './command';
import { complain, print } from './terminal';
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
    const rows = toys.map((card) => rowOf(garment, chosen, card, say));
    return [`${garment.id}.html`, page(garment, rows)] as const;
  });
  try {
    writeAll(out, Object.fromEntries(pages));
  } catch {
    return unreadable('--out', 'cannot-write');
  }
  for (const [name] of pages) print(join(out, name));
  return EXIT.done;
}

function choicesFrom(json: string): Order['choices'] | null {
  try {
    const choices: unknown = JSON.parse(json);
    return typeof choices === 'object' && !Array.isArray(choices) ? (choices as Order['choices']) : null;
  } catch {
    return null;
  }
}

function unreadable(where: string, why: string): Exit {
  complain(`${where}: ${why}`);
  return EXIT.unreadable;
}

function rowOf(garment: Garment, choices: Order['choices'], card: Card, words: Say): string {
  const full = fullOrder({ garment: garment.id, ...(choices ? { choices } : {}) }, card.taken);
  if (!full.ok) return `<h2>${card.toy.name}</h2><p>${full.fault.code} ${full.fault.where}</p>`;
  const outcome = draft(bodyFrom(card), full.order, garment, card.toy.name);
  if (!outcome.ok) return `<h2>${card.toy.name}</h2><p>${outcome.flags.map((flag) => flag.code).join(', ')}</p>`;
  const { adjustments, order } = outcome.draft;
  const said = adjustments.map(({ code, by }) => (by === 0 ? code : `${code} ${by.toFixed(0)} mm`)).join(', ');
  return `<h2>${card.toy.name}</h2><p>${Object.values(order.choices).join(', ')}. ${said}</p>${toSvg(outcome.draft, words)}${sewingOf(outcome.draft, words)}`;
}

/** The order of sewing, a line a step. */
function sewingOf({ sewing }: Draft, words: Say): string {
  const steps = sewing.map(({ step, seams }) =>
    words(`sewing.${step}`, { seam: seams.map((name) => words(`seam.${name}`)).join(', ') }),
  );
  return `<ol>${steps.map((step) => `<li>${step}</li>`).join('')}</ol>`;
}

function page(garment: Garment, rows: readonly string[]): string {
  const style =
    'body{font:14px/1.4 sans-serif;margin:24px;background:#fff}svg{max-width:100%;height:auto;max-height:420px}ol{columns:3;font-size:12px}';
  return `<!doctype html><meta charset="utf-8"><title>${garment.id}</title><style>${style}</style>${rows.join('\n')}\n`;
}
