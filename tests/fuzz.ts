/**
 * Random drafts by the thousand: `npm run fuzz -- --drafts 30000 --seed 7 [--nasty 0.3] [--garment id]`. Prints what
 * broke, with the card and order that broke it, then how many were drafted, refused (by code) and broken, and the time.
 */
import { parseArgs } from 'node:util';
import { brokenIn } from './holds';
import { randomDraft, type Tried } from './holds/random-draft';
import { seeded } from './toys/random';

const text = { type: 'string' } as const;
const { values } = parseArgs({ options: { drafts: text, seed: text, nasty: text, garment: text } });
const drafts = Number(values.drafts ?? 3000);
const seed = Number(values.seed ?? 1);
const nastyShare = Number(values.nasty ?? 0.3);

const random = seeded(seed);
const refused = new Map<string, number>();
let [drafted, broken] = [0, 0];
const started = performance.now();
for (let n = 0; n < drafts; n++) {
  const nasty = random() < nastyShare;
  const tried = attempt(nasty);
  if (!tried) continue;
  if (tried.outcome.ok) {
    drafted += 1;
    report(n, tried, brokenIn(tried.outcome.draft));
  } else {
    const codes = tried.outcome.flags.map((flag) => flag.code);
    for (const code of codes)
      refused.set(
        `${nasty ? 'nasty' : 'plausible'} ${code}`,
        (refused.get(`${nasty ? 'nasty' : 'plausible'} ${code}`) ?? 0) + 1,
      );
    if (codes.includes('draft-defect')) report(n, tried, [JSON.stringify(tried.outcome.flags)]);
  }
}
console.log(JSON.stringify(Object.fromEntries([...refused].sort())));
console.log(
  `seed ${seed}: ${drafts} tried, ${drafted} drafted, ${broken} broken, ${((performance.now() - started) / 1000).toFixed(1)} s`,
);
process.exitCode = broken > 0 ? 1 : 0;

function attempt(nasty: boolean): Tried | null {
  try {
    return randomDraft(random, nasty, values.garment);
  } catch (error) {
    broken += 1;
    console.log(`threw: ${error instanceof Error ? error.stack : String(error)}`);
    return null;
  }
}

function report(n: number, tried: Tried, faults: readonly string[]): void {
  if (faults.length === 0) return;
  broken += 1;
  if (broken > 20) return;
  console.log(
    `#${n} ${tried.garment.id} ${JSON.stringify(tried.order)}\n  ${faults.join('\n  ')}\n  ${JSON.stringify(tried.card)}`,
  );
}
