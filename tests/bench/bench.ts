/**
 * How long things take, as medians with their spread: `npm run bench [-- --runs N]`; with `--app`, how the
 * built app feels on a phone instead, with `--sheets`, how many pages more than the
 * least there could be the patterns of N random toys take; with `--pdf`, how long and how large patterns' PDFs are beside
 * those of a bare program that writes the same; with `--toys`, what thousands of toys cost it (`npm run build` before both). Times differ between machines; the ratios to the first row (one length of a cubic)
 * travel better.
 */
import { EXIT, type Exit } from '../../app/command/call';
import { command } from '../../app/command/command';
import { draft, fullOrder } from '../../app/drafting/draft';
import { garments } from '../../app/drafting/garments';
import { cubic, curveLength, point } from '../../app/drafting/geometry';
import { findPaper, layOut, USUAL_EFFORT } from '../../app/drafting/sheets';
import { bodyFrom, demoCards } from '../../app/measuring';
import { randomCard, seeded } from '../toys/random';

await command(
  {
    name: 'bench',
    usage: ['[--app] [--runs N]', '--sheets [--runs N]', '--pdf [--runs N]', '--toys'],
    options: { app: null, sheets: null, pdf: null, toys: null, runs: 'N' },
    words: [0, 0],
    exits: [EXIT.done, EXIT.unreadable, EXIT.ours],
  },
  async ({ values, on }) => {
    if (on('sheets')) {
      const { benchSheets } = await import('./sheets');
      benchSheets(Number(values.runs ?? 12));
      return EXIT.done;
    }
    if (on('pdf')) {
      const { benchPdf } = await import('./pdf');
      await benchPdf(Number(values.runs ?? 15));
      return EXIT.done;
    }
    if (on('toys')) {
      const { benchToys } = await import('./many-toys');
      await benchToys();
      return EXIT.done;
    }
    if (!on('app')) return bench(Number(values.runs ?? 60));
    const { benchApp } = await import('./app');
    await benchApp(Number(values.runs ?? 15));
    return EXIT.done;
  },
);

function bench(runs: number): Exit {
  const curve = cubic(point(0, 0), point(40, 0), point(80, 60), point(100, 120));
  const one =
    median('length of one cubic', runs, () => {
      for (let n = 0; n < 1000; n++) curveLength(curve);
    }) / 1000;

  for (const garment of garments) {
    const random = seeded(5);
    const bodies = [0, 1, 2, 3, 4, 5, 6, 7].map(() => bodyFrom(randomCard(random, garment.bodies[0] ?? 'upright')));
    const full = fullOrder({ garment: garment.id }, '2026-11-20');
    if (!full.ok) throw new RangeError(full.fault.where);
    let turn = 0;
    const time = median(`one draft of ${garment.id}`, runs, () => {
      draft(
        bodies[turn++ % bodies.length] ?? bodyFrom(randomCard(random, 'upright')),
        full.order,
        full.garment,
        'bench',
      );
    });
    console.log(`    ${(time / one).toFixed(0)} lengths`);
  }

  const card = demoCards[0];
  const full = fullOrder({ garment: 'hooded-top' }, '2026-11-20');
  const paper = findPaper('a4');
  if (card && full.ok && paper) {
    const outcome = draft(bodyFrom(card), full.order, full.garment, card.toy.name);
    if (outcome.ok)
      median('laying a hooded top out on A4', 7, () => layOut(outcome.draft, paper, { effort: USUAL_EFFORT, seed: 1 }));
  }
  return EXIT.done;
}

/** Prints and returns the median, ms. */
function median(name: string, times: number, work: () => unknown): number {
  for (let n = 0; n < Math.min(times, 10); n++) work();
  const took = Array.from({ length: times }, () => {
    const started = performance.now();
    work();
    return performance.now() - started;
  }).sort((a, b) => a - b);
  const at = (share: number) => took[Math.floor((took.length - 1) * share)] ?? Number.NaN;
  console.log(`${name}: ${at(0.5).toFixed(3)} ms (${at(0).toFixed(3)} to ${at(0.9).toFixed(3)})`);
  return at(0.5);
}
