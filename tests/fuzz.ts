/**
 * Random drafts by the thousand: `npm run fuzz -- --drafts 30000 --seed 7 [--from 5898] [--nasty 0.3]
 * [--garment id,id]`. Prints what broke, with the card and order that broke it, then how many were drafted, refused (by
 * code) and broken, and the time. `--from` goes on from a draft by its number, the very draft that a row begun at 0
 * reaches: `--from 5898 --drafts 1` repeats one.
 */
import { EXIT, type Exit } from '../app/command/call';
import { command } from '../app/command/command';
import type { Outcome } from '../app/drafting/draft';
import { brokenIn } from './holds';
import { type Drawn, randomOrder, tried } from './holds/random-draft';
import { seeded } from './toys/random';

type Count = { readonly refused: Map<string, number>; drafted: number; broken: number };

await command(
  {
    name: 'fuzz',
    usage: ['[--drafts N] [--from N] [--seed N] [--nasty SHARE] [--garment ID,ID]'],
    options: { drafts: 'N', from: 'N', seed: 'N', nasty: 'SHARE', garment: 'ID,ID' },
    words: [0, 0],
    exits: [EXIT.done, EXIT.refused, EXIT.unreadable, EXIT.ours],
  },
  ({ values }) =>
    fuzz(
      { from: Number(values.from ?? 0), drafts: Number(values.drafts ?? 3000) },
      { seed: Number(values.seed ?? 1), nastyShare: Number(values.nasty ?? 0.3), only: values.garment?.split(',') },
    ),
);

type Numbered = Drawn & { readonly nasty: boolean };
type Row = { readonly from: number; readonly drafts: number };
type Kinds = { readonly seed: number; readonly nastyShare: number; readonly only: readonly string[] | undefined };

function fuzz({ from, drafts }: Row, { seed, nastyShare, only }: Kinds): Exit {
  const random = seeded(seed);
  const count: Count = { refused: new Map(), drafted: 0, broken: 0 };
  const started = performance.now();
  for (let n = 0; n < from + drafts; n++) {
    const nasty = random() < nastyShare;
    const drawn = randomOrder(random, nasty, only);
    if (n < from) continue;
    const outcome = attempt(count, n, { ...drawn, nasty });
    if (outcome?.ok) {
      count.drafted += 1;
      report(count, n, { ...drawn, nasty }, brokenIn(outcome.draft));
    } else if (outcome) {
      const codes = outcome.flags.map((flag) => flag.code);
      for (const code of codes.map((each) => `${nasty ? 'nasty' : 'plausible'} ${each}`))
        count.refused.set(code, (count.refused.get(code) ?? 0) + 1);
      if (codes.includes('draft-defect')) report(count, n, { ...drawn, nasty }, [JSON.stringify(outcome.flags)]);
    }
  }
  const { refused, drafted, broken } = count;
  console.log(JSON.stringify(Object.fromEntries([...refused].sort())));
  console.log(
    `seed ${seed}: ${drafts} tried, ${drafted} drafted, ${broken} broken, ${((performance.now() - started) / 1000).toFixed(1)} s`,
  );
  return broken > 0 ? EXIT.refused : EXIT.done;
}

function attempt(count: Count, n: number, drawn: Numbered): Outcome | null {
  try {
    return tried(drawn).outcome;
  } catch (error) {
    report(count, n, drawn, [`threw: ${error instanceof Error ? error.stack : String(error)}`]);
    return null;
  }
}

function report(count: Count, n: number, drawn: Numbered, faults: readonly string[]): void {
  if (faults.length === 0) return;
  count.broken += 1;
  if (count.broken > 20) return;
  console.log(
    `#${n} ${drawn.nasty ? 'nasty' : 'plausible'} ${drawn.garment.id} ${JSON.stringify(drawn.order)}\n  ${faults.join('\n  ')}\n  ${JSON.stringify(drawn.card)}`,
  );
}
