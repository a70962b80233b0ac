/**
 * Random drafts by the thousand: `npm run fuzz -- --drafts 30000 --seed 7 [--nasty 0.3] [--garment id]`. Prints what
 * broke, with the card and order that broke it, then how many were drafted, refused (by code) and broken, and the time.
 */
import { EXIT, type Exit } from '../app/command/call';
import { command } from '../app/command/command';
import { brokenIn } from './holds';
import { randomDraft, type Tried } from './holds/random-draft';
import { seeded } from './toys/random';

type Count = { readonly refused: Map<string, number>; drafted: number; broken: number };

await command(
  {
    name: 'fuzz',
    usage: ['[--drafts N] [--seed N] [--nasty SHARE] [--garment ID]'],
    options: { drafts: 'N', seed: 'N', nasty: 'SHARE', garment: 'ID' },
    words: [0, 0],
    exits: [EXIT.done, EXIT.refused, EXIT.unreadable, EXIT.ours],
  },
  ({ values }) =>
    fuzz(Number(values.drafts ?? 3000), Number(values.seed ?? 1), Number(values.nasty ?? 0.3), values.garment),
);

function fuzz(drafts: number, seed: number, nastyShare: number, garment: string | undefined): Exit {
  const random = seeded(seed);
  const count: Count = { refused: new Map(), drafted: 0, broken: 0 };
  const started = performance.now();
  for (let n = 0; n < drafts; n++) {
    const nasty = random() < nastyShare;
    const tried = attempt(count, random, nasty, garment);
    if (!tried) continue;
    if (tried.outcome.ok) {
      count.drafted += 1;
      report(count, n, tried, brokenIn(tried.outcome.draft));
    } else {
      const codes = tried.outcome.flags.map((flag) => flag.code);
      for (const code of codes.map((each) => `${nasty ? 'nasty' : 'plausible'} ${each}`))
        count.refused.set(code, (count.refused.get(code) ?? 0) + 1);
      if (codes.includes('draft-defect')) report(count, n, tried, [JSON.stringify(tried.outcome.flags)]);
    }
  }
  const { refused, drafted, broken } = count;
  console.log(JSON.stringify(Object.fromEntries([...refused].sort())));
  console.log(
    `seed ${seed}: ${drafts} tried, ${drafted} drafted, ${broken} broken, ${((performance.now() - started) / 1000).toFixed(1)} s`,
  );
  return broken > 0 ? EXIT.refused : EXIT.done;
}

function attempt(count: Count, random: () => number, nasty: boolean, garment?: string): Tried | null {
  try {
    return randomDraft(random, nasty, garment);
  } catch (error) {
    count.broken += 1;
    console.log(`threw: ${error instanceof Error ? error.stack : String(error)}`);
    return null;
  }
}

function report(count: Count, n: number, tried: Tried, faults: readonly string[]): void {
  if (faults.length === 0) return;
  count.broken += 1;
  if (count.broken > 20) return;
  console.log(
    `#${n} ${tried.garment.id} ${JSON.stringify(tried.order)}\n  ${faults.join('\n  ')}\n  ${JSON.stringify(tried.card)}`,
  );
}
