import { expect, test } from 'vitest';
import { pathLength } from '../../app/drafting/geometry';
import { guideOf } from '../../app/drafting/guide';
import { knownOf } from '../../app/drafting/guide/known';
import { snipsOf } from '../../app/drafting/guide/snips';
import { guideFaults } from '../holds/guide';
import { edgeNamed, made } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

const [bear] = builds;
const tailed = () => {
  if (!bear) throw new RangeError('no builds');
  return buildCard(bear, { tail: true });
};

test.each(['trousers', 'dungarees', 'pants'])(
  'where the lap of %s ends above a tail, its hollow corner is snipped before either edge there is turned, and shown',
  (garment) => {
    const draft = made(tailed(), garment, { choices: { tail: 'waist' } });
    if (!draft) throw new RangeError('refused');
    const steps = guideOf(draft).steps;
    const at = steps.findIndex(({ kind }) => kind === 'snip');
    expect(steps.filter(({ kind }) => kind === 'snip')).toHaveLength(1);
    expect(steps[at + 1]?.id).toBe('tail');
    const [part] = steps[at]?.scene.parts ?? [];
    expect(part?.now).toHaveLength(1);
    // From the corner of the cut line to a tenth short of the seam line's: both allowances across.
    const piece = garment === 'pants' ? 'pants' : 'leg';
    const across = Math.hypot(
      edgeNamed(draft, piece, 'tail-end')?.allowance ?? 0,
      edgeNamed(draft, piece, 'tail')?.allowance ?? 0,
    );
    expect(pathLength(part?.now[0] ?? [])).toBeCloseTo(0.9 * across, 3);
    expect(guideFaults(draft)).toEqual([]);
  },
);

test('nothing is snipped where a tail comes out of a seam that runs straight on, nor twice at one corner', () => {
  const slit = made(tailed(), 'trousers', { choices: { tail: 'open' } });
  expect(slit && guideOf(slit).steps.some(({ kind }) => kind === 'snip')).toBe(false);
  const lapped = made(tailed(), 'trousers', { choices: { tail: 'waist' } });
  if (!lapped) throw new RangeError('refused');
  const known = knownOf(lapped);
  const tail = known.seam('tail');
  expect(snipsOf([tail], [], known)).toHaveLength(1);
  expect(snipsOf([tail], [tail], known)).toEqual([]);
});
