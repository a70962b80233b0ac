/**
 * Words on patterns that lie over a line, over each other or off their page: `npm run labels -- --drafts 100 --seed 1
 * [--language de] [--paper letter] [--print large] [--form card] [--garment id,id]`, random toys in random garments; with
 * `--demo`, every garment of every demo toy. Prints each pattern with such words, then how many words were looked at.
 */
import { EXIT, type Exit } from '../app/command/call';
import { command } from '../app/command/command';
import type { Draft } from '../app/drafting/draft-types';
import { garments } from '../app/drafting/garments';
import { largeInk, pagesInk } from '../app/drafting/output';
import { type Form, findPaper, forms, layOut, type Paper, type Print, prints } from '../app/drafting/sheets';
import { createSay } from '../app/words';
import { randomDraft } from './holds/random-draft';
import { demoDrafts } from './toys/demo-drafts';
import { seeded } from './toys/random';
import { printedWidth, wordsOver } from './unit/words-over';

/** Little is tried to save a page: what must hold holds for any lay. */
const EFFORT = 2;

await command(
  {
    name: 'labels',
    usage: [
      '--demo',
      '[--drafts N] [--seed N]',
      '[--language ID] [--paper ID] [--print KIND] [--form KIND] [--garment ID,ID]',
    ],
    options: {
      demo: null,
      drafts: 'N',
      seed: 'N',
      language: 'ID',
      paper: 'ID',
      print: 'KIND',
      form: 'KIND',
      garment: 'ID,ID',
    },
    words: [0, 0],
    exits: [EXIT.done, EXIT.refused, EXIT.unreadable, EXIT.ours],
  },
  async ({ values, on }) => {
    const paper = findPaper(values.paper ?? 'a4');
    const form = forms.find((each) => each === (values.form ?? 'cut'));
    const print = prints.find((each) => each === (values.print ?? 'usual'));
    if (!paper || !form || !print) return EXIT.unreadable;
    const wished = values.garment?.split(',') ?? garments.map(({ id }) => id);
    const drafts = on('demo')
      ? wished.flatMap((garment) => demoDrafts('quilting-cotton', garment))
      : randomDrafts(Number(values.drafts ?? 100), Number(values.seed ?? 1), wished);
    const language = values.language ?? 'en';
    const lettering = {
      say: await createSay(language),
      units: 'cm' as const,
      widthOf: await printedWidth(language, print),
    };
    return looked(drafts, { paper, form, print, lettering });
  },
);

type How = {
  readonly paper: Paper;
  readonly form: Form;
  readonly print: Print;
  readonly lettering: Parameters<typeof pagesInk>[2];
};

function* randomDrafts(count: number, seed: number, wished: readonly string[]): Iterable<Draft> {
  const random = seeded(seed);
  for (let drafted = 0; drafted < count; ) {
    const { outcome } = randomDraft(random, false, wished);
    if (!outcome.ok) continue;
    drafted += 1;
    yield outcome.draft;
  }
}

function looked(drafts: Iterable<Draft>, how: How): Exit {
  const count = { drafts: 0, words: 0, faults: 0 };
  for (const draft of drafts) {
    const { words, faults } = faultsOn(draft, how);
    count.drafts += 1;
    count.words += words;
    count.faults += faults.length;
    if (faults.length > 0)
      console.log(`#${count.drafts} ${draft.toy}, ${JSON.stringify(draft.order)}\n  ${faults.join('\n  ')}`);
  }
  console.log(`${count.drafts} patterns, ${count.words} words, ${count.faults} faults`);
  return count.faults > 0 ? EXIT.refused : EXIT.done;
}

function faultsOn(draft: Draft, { paper, form, print, lettering }: How) {
  const layout = layOut(draft, paper, { effort: EFFORT, seed: 1, form, print });
  const inkOn = pagesInk(draft, layout, lettering);
  const pages = [
    ...layout.pages.map((page) => ({ ink: inkOn(page), page })),
    ...(print === 'large' ? largeInk(draft, layout, paper, lettering) : []).map((ink) => ({ ink, page: paper })),
  ];
  return {
    words: pages.reduce((sum, { ink }) => sum + ink.filter(({ kind }) => kind === 'words').length, 0),
    faults: pages.flatMap(({ ink, page }) => wordsOver(ink, lettering.widthOf, page)),
  };
}
