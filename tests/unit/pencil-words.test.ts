import { expect, test } from 'vitest';
import { drawnWords, joinWords, lineWords, pencilPlan } from '../../app/drafting/pencil';
import { createSay } from '../../app/words';
import { demoDrafts } from '../toys/demo-drafts';

test('of a line that is drawn all is said but how to draw it, which stands above', async () => {
  const say = await createSay('en');
  const [draft] = demoDrafts();
  const lines = draft ? pencilPlan(draft, 'cm').flatMap((plan) => plan.lines.map((line) => ({ line, plan }))) : [];
  expect(lines.length).toBeGreaterThan(10);
  for (const { line, plan } of lines) {
    const piece = draft?.pieces[plan.piece] ?? expect.fail('no piece');
    const drawn = drawnWords(line, piece, say, 'cm').join(' ');
    for (const join of line.joins) expect(drawn).not.toContain(joinWords(join, say));
    const whole = lineWords(line, piece, say, 'cm');
    for (const sentence of whole.slice(1)) expect(drawn).toContain(sentence);
    if (line.role !== 'grain') expect(whole[0]).toContain(/It measures .*?\./.exec(drawn)?.[0] ?? 'how long it is');
  }
});
