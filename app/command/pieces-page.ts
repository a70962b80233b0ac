/** The pieces of a garment for several toys at one scale, what was changed for each and why, and the order of sewing: to look at. */
import type { Card, Order, Say } from '../body';
import { type Draft, draft, fullOrder } from '../drafting/draft';
import type { Garment } from '../drafting/garments';
import { guideOf, kindWords, noteWords, titleOf } from '../drafting/guide';
import { toSvg } from '../drafting/output';
import { bodyFrom } from '../measuring';

/** One scale for all: a toy of a metre beside one of 18 cm. */
const PX_PER_MM = 1;

/** A page of HTML with a row for each card. */
export function piecesPage(
  garment: Garment,
  cards: readonly Card[],
  choices: NonNullable<Order['choices']>,
  words: Say,
): string {
  return pageOf(
    garment,
    cards.map((card) => rowOf(garment, card, choices, words)),
  );
}

function rowOf(garment: Garment, card: Card, choices: NonNullable<Order['choices']>, words: Say): string {
  const head = `<h2>${card.toy.name}</h2>`;
  const full = fullOrder({ garment: garment.id, choices }, card.taken);
  if (!full.ok) return `${head}<p>${full.fault.code} ${full.fault.where}</p>`;
  const outcome = draft(bodyFrom(card), full.order, garment, card.toy.name);
  if (!outcome.ok) return `${head}<p>${outcome.flags.map((flag) => flag.code).join(', ')}</p>`;
  const drawn = toSvg(outcome.draft, words).replace(
    /(width|height)="([\d.]+)mm"/g,
    (_, side, mm) => `${side}="${mm * PX_PER_MM}"`,
  );
  return `${head}<p>${told(outcome.draft)}</p>${drawn}${sewingOf(outcome.draft, words)}`;
}

/** What was chosen, changed, finished and opened, in numbers. */
function told({ adjustments, order, fit, openings, flags }: Draft): string {
  return [
    Object.entries(order.choices).map(([name, value]) => `${name} ${value}`),
    adjustments.map(({ code, by }) => (by === 0 ? code : `${code} ${by.toFixed(0)}`)),
    fit.map(({ place, body, garment }) => `${place} ${body.toFixed(0)} → ${garment.toFixed(0)}`),
    openings.map(
      ({ through, needs, gives, closure }) =>
        `${through} needs ${needs.toFixed(0)}, gives ${gives.toFixed(0)} (${closure})`,
    ),
    flags.map(({ code }) => code),
  ]
    .map((words) => words.join(', '))
    .join('<br>');
}

/** The order of sewing, a line a step. */
function sewingOf(draft: Draft, words: Say): string {
  const telling = { say: words, unit: 'cm', way: 'machine' } as const;
  const steps = guideOf(draft).steps.map((step) =>
    [
      `${titleOf(step, words)}: ${kindWords(step, telling)}`,
      ...step.notes.map((note) => noteWords(note, telling)),
    ].join(' '),
  );
  return `<ol>${steps.map((step) => `<li>${step}</li>`).join('')}</ol>`;
}

function pageOf(garment: Garment, rows: readonly string[]): string {
  const style =
    'body{font:14px/1.4 sans-serif;margin:24px;background:#fff}h2{margin:12px 0 0}p{font-size:12px;margin:4px 0}ol{columns:3;font-size:12px}';
  return `<!doctype html><meta charset="utf-8"><title>${garment.id}</title><style>${style}</style>${rows.join('\n')}\n`;
}
