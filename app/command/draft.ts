/**
 * From an order file to the paper: `draft order.json --out DIR [--paper P] [--print usual|large] [--units in|cm] [--locale L]` writes
 * pattern.pdf, pencil-plan.pdf, sewing.pdf, pattern.html, pieces.svg and draft.json; `draft --list` prints what an order may name. Exit 0; 1 refused, one line a
 * flag on stderr; 2 unreadable or unknown, one line: where and why; 70 our own fault. Nothing is written unless 0.
 */
import type { Say, Unit } from '../body';
import { draft, fullOrder, type Outcome } from '../drafting/draft';
import { facesAtHand, facesOfLanguage } from '../drafting/faces';
import { lettersWithout, toGuidePdf, toJson, toPdf, toPencilPdf, toSvg, toTwin } from '../drafting/output';
import { findPaper, layOut, type Print, prints, USUAL_EFFORT } from '../drafting/sheets';
import { bodyFrom } from '../measuring';
import { createSay, directionOf, locales } from '../words';
import { type Asked, EXIT, type Exit } from './call';
import { catalogue } from './catalogue';
import { command } from './command';
import { readFace } from './faces';
import { readOrder } from './read-order';
import { summary } from './summary';
import { complain, print, printJson } from './terminal';
import { unreadable } from './unreadable';
import { writeAll } from './write-all';

const SEED = 1;

type Options = {
  readonly out: string;
  readonly paper?: string;
  readonly units?: Unit;
  readonly locale: string;
  readonly print: Print;
};
type Wrong = readonly [where: string, why: string];

await command(
  {
    name: 'draft',
    usage: ['ORDER.json --out DIR', '- --out DIR < ORDER.json', '--list'],
    options: { out: 'DIR', paper: 'PAPER', print: 'usual|large', units: 'in|cm', locale: 'TAG', list: null },
    words: [1, 1],
    exits: [EXIT.done, EXIT.refused, EXIT.unreadable, EXIT.ours],
  },
  async (asked) => {
    if (!asked.on('list')) return draftFrom(asked);
    printJson(JSON.stringify(catalogue(), null, 2));
    return EXIT.done;
  },
);

async function draftFrom({ words: [path = ''], values }: Asked): Promise<Exit> {
  const options = readOptions(values);
  if (isWrong(options)) return unreadable(...options);
  const file = readOrder(path);
  if (!file.ok) return unreadable(file.fault.where, file.fault.code);
  const { out, paper, units = file.card.unit, locale, print: size } = options;
  const full = fullOrder({ ...file.order, ...(paper ? { paper } : {}) }, file.card.taken);
  if (!full.ok) return unreadable(full.fault.where, full.fault.code);
  const sheet = findPaper(full.order.paper);
  if (!sheet) return unreadable('paper', 'unknown-paper');
  const say = await createSay(locale);
  const outcome = draft(bodyFrom(file.card), full.order, full.garment, file.card.toy.name);
  if (!outcome.ok) return refused(outcome, say);
  const layout = layOut(outcome.draft, sheet, { effort: USUAL_EFFORT, seed: SEED, print: size });
  const letters = facesAtHand(readFace);
  await letters.fetch(facesOfLanguage(locale));
  const missing = await letters.make((faces) => lettersWithout(file.card.toy.name, faces));
  const pages = await letters.make((faces) => {
    const written = { say, units, print: size, script: { language: locale, direction: directionOf(locale), faces } };
    return {
      'pattern.pdf': toPdf([{ draft: outcome.draft, layout }], written),
      'pencil-plan.pdf': toPencilPdf(outcome.draft, written),
      'sewing.pdf': toGuidePdf(outcome.draft, { ...written, way: 'machine' }),
    };
  });
  const files = {
    ...pages,
    'pattern.html': toTwin(outcome.draft, {
      say,
      units,
      way: 'machine',
      language: locale,
      direction: directionOf(locale),
      layout,
    }),
    'pieces.svg': toSvg(outcome.draft, say, { units, direction: directionOf(locale) }),
    'draft.json': `${JSON.stringify(toJson(outcome.draft))}\n`,
  };
  if (missing.boxes.length > 0) complain(`note letters-drawn-as-boxes ${missing.boxes.join('')}`);
  if (missing.pictures.length > 0) complain(`note pictures-left-out ${missing.pictures.join('')}`);
  try {
    writeAll(out, files);
  } catch {
    return unreadable('--out', 'cannot-write');
  }
  if (process.stdout.isTTY) for (const line of summary(outcome.draft, layout, out, say, units)) print(line);
  return EXIT.done;
}

/** The options, or where and why they cannot be understood. */
function readOptions({ out, paper, units, print: size = 'usual', locale = 'en' }: Asked['values']): Options | Wrong {
  if (out === undefined) return ['--out', 'missing'];
  if (units !== undefined && units !== 'in' && units !== 'cm') return ['--units', 'unknown-units'];
  const print = prints.find((each) => each === size);
  if (!print) return ['--print', 'unknown-print'];
  if (!(locales as readonly string[]).includes(locale)) return ['--locale', 'unknown-locale'];
  return { out, locale, print, ...(paper ? { paper } : {}), ...(units ? { units } : {}) };
}

function isWrong(options: Options | Wrong): options is Wrong {
  return Array.isArray(options);
}

/** One line a flag; what is not measured yet is told in one line together. */
function refused({ flags }: Extract<Outcome, { ok: false }>, say: Say): Exit {
  const unmeasured = flags.filter(({ code }) => code === 'cannot-estimate').flatMap(({ measures }) => measures);
  if (unmeasured.length > 0)
    complain(`impossible cannot-estimate ${say('command.draft.measure-first', { measures: unmeasured })}`);
  for (const { severity, code, measures } of flags)
    if (code !== 'cannot-estimate') complain(`${severity} ${code} ${measures.join(',')}`);
  return flags.some((flag) => flag.code === 'draft-defect') ? EXIT.ours : EXIT.refused;
}
