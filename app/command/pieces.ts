/**
 * A picture sheet for each garment, with the pieces of every demo toy it suits and the order of sewing, to look at:
 * `pieces [--garment ID] [--choices JSON] [--out DIR]` writes one page a garment into DIR (pieces/ if left out).
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import type { Card, Say } from '../body';
import { type Draft, draft, fullOrder } from '../drafting/draft';
import { type Garment, garments } from '../drafting/garments';
import { toSvg } from '../drafting/output';
import { bodyFrom, demoCards } from '../measuring';
import { createSay } from '../words';

const text = { type: 'string' } as const;
const { values } = parseArgs({ options: { garment: text, choices: text, out: text } });
const out = values.out ?? 'pieces';
const choices = JSON.parse(values.choices ?? '{}');
const say = await createSay('en');

mkdirSync(out, { recursive: true });
for (const garment of garments.filter((each) => !values.garment || each.id === values.garment)) {
  const toys = demoCards.filter((card) => garment.bodies.includes(card.toy.body));
  writeFileSync(
    join(out, `${garment.id}.html`),
    page(
      garment,
      toys.map((card) => rowOf(garment, card, say)),
    ),
  );
  console.log(join(out, `${garment.id}.html`));
}

function rowOf(garment: Garment, card: Card, words: Say): string {
  const full = fullOrder({ garment: garment.id, choices }, card.taken);
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
