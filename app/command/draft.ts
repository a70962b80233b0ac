/**
 * From an order file to the paper: `draft order.json --out DIR [--paper P] [--units in|cm] [--locale L]` writes
 * pattern.pdf, pieces.svg and draft.json; `draft --list` prints what an order may name. Exit 0; 1 refused, one line a
 * flag on stderr; 2 unreadable or unknown, one line: where and why; 70 our own fault. Nothing is written unless 0.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { type Draft, draft, fullOrder, type Outcome } from '../drafting/draft';
import { lettersWithout, toJson, toPdf, toSvg } from '../drafting/output';
import { findPaper, layOut, USUAL_EFFORT } from '../drafting/sheets';
import { bodyFrom } from '../measuring';
import { createSay, locales } from '../words';
import { catalogue } from './catalogue';
import { readOrder } from './read-order';

const EXIT = { refused: 1, unreadable: 2, ours: 70 } as const;
const SEED = 1;

type Options = { readonly out: string; readonly paper?: string; readonly units?: 'in' | 'cm'; readonly locale: string };
type Asked = { readonly path: string; readonly options: Options } | 'list' | string[];

try {
  process.exitCode = await run(process.argv.slice(2));
} catch (error) {
  console.error(`ours ${error instanceof Error ? error.message : String(error)}`.replace(/\s+/gu, ' '));
  process.exitCode = EXIT.ours;
}

async function run(words: readonly string[]): Promise<number> {
  const asked = readArguments(words);
  if (asked === 'list') {
    console.log(JSON.stringify(catalogue(), null, 2));
    return 0;
  }
  if (Array.isArray(asked) || typeof asked === 'string') return unreadable(...(asked as string[]));
  const file = readOrder(asked.path);
  if (!file.ok) return unreadable(file.fault.where, file.fault.code);
  const { out, paper, units = file.card.unit, locale } = asked.options;
  const full = fullOrder({ ...file.order, ...(paper ? { paper } : {}) }, file.card.taken);
  if (!full.ok) return unreadable(full.fault.where, full.fault.code);
  const sheet = findPaper(full.order.paper);
  if (!sheet) return unreadable('paper', 'unknown-paper');
  const outcome = draft(bodyFrom(file.card), full.order, full.garment, file.card.toy.name);
  if (!outcome.ok) return refused(outcome);
  const say = await createSay(locale);
  const layout = layOut(outcome.draft, sheet, { effort: USUAL_EFFORT, seed: SEED });
  const pdf = await toPdf(outcome.draft, layout, { say, units });
  const missing = lettersWithout(file.card.toy.name);
  if (missing.length > 0) console.error(`note letters-drawn-as-boxes ${missing.join('')}`);
  return write(out, outcome.draft, pdf, toSvg(outcome.draft, say));
}

/** What was asked, or where and why it cannot be understood. */
function readArguments(words: readonly string[]): Asked {
  const parsed = parse(words);
  if (Array.isArray(parsed)) return parsed;
  const { values, positionals } = parsed;
  if (values.list) return 'list';
  const [path, ...others] = positionals;
  if (path === undefined || others.length > 0) return ['arguments', 'usage: draft order.json --out DIR | draft --list'];
  if (!values.out) return ['--out', 'missing'];
  if (values.units !== undefined && values.units !== 'in' && values.units !== 'cm') return ['--units', 'unknown-units'];
  const locale = values.locale ?? 'en';
  if (!(locales as readonly string[]).includes(locale)) return ['--locale', 'unknown-locale'];
  const { out, paper, units } = values;
  return { path, options: { out, locale, ...(paper ? { paper } : {}), ...(units ? { units } : {}) } };
}

function parse(words: readonly string[]) {
  const text = { type: 'string' } as const;
  const options = { out: text, paper: text, units: text, locale: text, list: { type: 'boolean' } } as const;
  try {
    return parseArgs({ args: [...words], options, allowPositionals: true });
  } catch (error) {
    return ['arguments', error instanceof Error ? error.message : 'unknown'];
  }
}

function refused({ flags }: Extract<Outcome, { ok: false }>): number {
  for (const flag of flags) console.error(`${flag.severity} ${flag.code} ${flag.measures.join(',')}`.trimEnd());
  return flags.some((flag) => flag.code === 'draft-defect') ? EXIT.ours : EXIT.refused;
}

function unreadable(where = 'arguments', why = 'unknown'): number {
  console.error(`${where}: ${why}`.replace(/\s+/gu, ' '));
  return EXIT.unreadable;
}

function write(out: string, made: Draft, pdf: Uint8Array, svg: string): number {
  const files = { 'pattern.pdf': pdf, 'pieces.svg': svg, 'draft.json': `${JSON.stringify(toJson(made))}\n` };
  try {
    mkdirSync(out, { recursive: true });
    for (const [name, content] of Object.entries(files)) writeFileSync(join(out, name), content);
  } catch {
    return unreadable('--out', 'cannot-write');
  }
  return 0;
}
