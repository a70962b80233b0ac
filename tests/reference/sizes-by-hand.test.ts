import { describe, expect, test } from 'vitest';
import { type Asked, bearDraft, edgeOf } from '../toys/round-numbers';

/**
 * Finished sizes as a cutter reckons them on paper from what the tape said. The shares and least amounts are the usual
 * ones of the trade (common practice, no source); that a layer t thick needs π·t more round a girth, and each of its
 * seams 2·t, is geometry. Only the arithmetic is the test's own: it shares no number with what it judges.
 */
const round = (girth: number, ease: number, seams: number, thickness = 0.3) =>
  girth + ease + (Math.PI + 2 * seams) * thickness;

const along = (asked: Asked, piece: string, edge: string) => edgeOf(bearDraft(asked), piece, edge).length;
const fitAt = (asked: Asked, place: string) => bearDraft(asked).fit.find((row) => row.place === place)?.garment;

const waist = round(390, 23.4, 2);
const skirt = (style: string, more: Partial<Asked> = {}): Asked => ({
  garment: 'skirt',
  choices: { skirt: style },
  ...more,
});

describe('ease', () => {
  test.each([
    ['a close waist: 3 %', round(390, 11.7, 2), skirt('gathered', { fit: 'close' }), 'waist'],
    ['an easy waist: 6 %', waist, skirt('gathered'), 'waist'],
    ['a roomy waist: 12 %', round(390, 46.8, 2), skirt('gathered', { fit: 'roomy' }), 'waist'],
    [
      'a small waist: 4 mm at least',
      round(90, 5.4, 2),
      skirt('gathered', { readings: { 'waist-girth': 90 } }),
      'waist',
    ],
    ['an arm: 10 mm at least', round(150, 10, 1), { garment: 'tee' }, 'bicep'],
    ['a wrist: 10 mm at least', round(140, 10, 1), { garment: 'wrist-warmers' }, 'cuff'],
    ['a neck: 3 %, whatever the fit', 260 * 1.03 + Math.PI * 0.3, { garment: 'cape', fit: 'roomy' }, 'neck'],
    ['a neck of 100: 4 mm at least', 104 + Math.PI * 0.3, { garment: 'cape', readings: { 'neck-girth': 100 } }, 'neck'],
    ['a waist in felt, 1.2 mm thick', round(390, 23.4, 2, 1.2), skirt('a-line', { cloth: 'felt' }), 'waist'],
    ['a face edge: 2 %', 306, { garment: 'hooded-top' }, 'face'],
    ['a hood’s depth: 6 %, here 7.2', 127.2, { garment: 'hooded-top' }, 'hood-depth'],
    ['a crown: as the tape has it', 190, { garment: 'hooded-top', choices: { hood: 'three' } }, 'crown'],
  ] as const)('%s', (_, byHand, asked, place) => expect(fitAt(asked, place)).toBeCloseTo(byHand, 1));
});

describe('skirts', () => {
  test.each([
    ['gathered in thin cloth: twice the waist', (2 * waist) / 4, skirt('gathered'), 'top'],
    [
      'gathered in flannel: one and a half times',
      (1.5 * round(390, 23.4, 2, 0.7)) / 4,
      skirt('gathered', { cloth: 'flannel' }),
      'top',
    ],
    ['box pleats: three times', (3 * waist) / 4, skirt('box'), 'top'],
    ['elastic: one and a half times the waist', (1.5 * waist) / 4, skirt('elastic'), 'top'],
    ['an A-line hem: 1.45 of the waist', (1.45 * waist) / 4, skirt('a-line'), 'bottom'],
    ['a waist as long as measured', 120, skirt('gathered'), 'side'],
    ['three tiers, a third of the length each', 40, skirt('tiers'), 'side'],
  ] as const)('%s', (_, byHand, asked, edge) => expect(along(asked, 'skirt-front', edge)).toBeCloseTo(byHand, 0));

  test('each tier is half as wide again as the one above', () => {
    const made = bearDraft(skirt('tiers'));
    const [top, second, third] = [
      edgeOf(made, 'skirt-front', 'top').length,
      edgeOf(made, 'tier-2', 'top').length,
      edgeOf(made, 'tier-3', 'top').length,
    ];
    expect(second / top).toBeCloseTo(1.5, 3);
    expect(third / second).toBeCloseTo(1.5, 3);
  });

  test.each([
    ['circle', 2 * Math.PI * 120],
    ['half-circle', Math.PI * 120],
  ])('a %s is as much wider at its hem as its turn asks (geometry: radius × angle)', (style, wider) => {
    const made = bearDraft(skirt(style));
    const grown = edgeOf(made, 'skirt-front', 'bottom').length - edgeOf(made, 'skirt-front', 'top').length;
    expect(grown).toBeCloseTo(wider / 4, 0);
  });

  test.each([
    ['at least a third of the length or so: 0.3 of it', 36, {}],
    ['as far as the hips need, and 10 mm for the hand', (500 - waist) / 2 + 10, { 'hip-girth': 500 }],
    ['never over 0.7 of the length', 84, { 'hip-girth': 640 }],
  ])('the back opens %s', (_, byHand, readings) =>
    expect(along(skirt('gathered', { readings }), 'skirt-back', 'opening')).toBeCloseTo(byHand, 1),
  );

  test.each([
    ['a fortieth of its waist', waist / 40, {}],
    ['8 mm at least', 8, { 'waist-girth': 200 }],
  ])('a band is folded to %s', (_, byHand, readings) =>
    expect(along(skirt('gathered', { readings }), 'waistband', 'side')).toBeCloseTo(2 * byHand, 6),
  );
});

describe('hoods and ears', () => {
  const hood: Asked = { garment: 'hooded-top', choices: { hood: 'three' } };
  test('a strip of 0.18 of the head, 0.6 of that at the nape, what is left of the face on either side', () => {
    const low = { ...hood, readings: { 'crown-arc': 148 } };
    const strip = 0.18 * 460;
    expect(along(low, 'strip', 'face')).toBeCloseTo(strip / 2, 2);
    expect(along(low, 'strip', 'nape')).toBeCloseTo((0.6 * strip) / 2, 1);
    expect(along(low, 'hood', 'face')).toBeCloseTo((306 - strip) / 2, 1);
  });
  test('narrowed down to 0.10 of the head where the crown would be too short', () =>
    expect(along({ ...hood, readings: { 'crown-arc': 220 } }, 'strip', 'face')).toBeCloseTo((0.1 * 460) / 2, 2));
  test('0.14 of the neck is left free under the chin, or nothing', () => {
    const half = (0.14 * (260 * 1.03 + Math.PI * 0.3)) / 2;
    expect(along(hood, 'front', 'chin')).toBeCloseTo(half, 2);
    expect(() => along({ ...hood, choices: { chin: 'meet' } }, 'front', 'chin')).toThrow();
  });
});

describe('what hangs straight', () => {
  test('a scarf is 0.11 of its length wide, 20 mm at least', () => {
    expect(along({ garment: 'scarf', readings: { 'scarf-length': 600 } }, 'scarf', 'top')).toBeCloseTo(33, 6);
    expect(along({ garment: 'scarf', readings: { 'scarf-length': 150 } }, 'scarf', 'top')).toBeCloseTo(10, 6);
  });
  test('a cape’s hem passes over the arms with 10 mm to spare', () =>
    expect(
      fitAt({ garment: 'cape', readings: { 'over-arms-girth': 900, 'cape-length': 150 } }, 'over-arms'),
    ).toBeCloseTo(910, 0));
  test('a cape’s hem is 2.4 mm wider than its neck for each mm of its length', () =>
    expect(
      fitAt({ garment: 'cape', readings: { 'over-arms-girth': 450, 'cape-length': 150 } }, 'over-arms'),
    ).toBeCloseTo(260 * 1.03 + Math.PI * 0.3 + 360, 0));
  test.each(['out', 'up'] as const)('over arms held %s it is 4 mm wider: there and back over each', (arms) =>
    expect(
      fitAt(
        { garment: 'cape', readings: { 'over-arms-girth': 450, 'cape-length': 150 }, traits: { arms } },
        'over-arms',
      ),
    ).toBeCloseTo(260 * 1.03 + Math.PI * 0.3 + 600, 0),
  );
});

describe('bodices', () => {
  test('an armhole is deeper than the arm: 6 %, 4 mm at least', () => {
    const side = (depth: number) => along({ garment: 'tank', readings: { 'armhole-depth': depth } }, 'front', 'side');
    expect(side(100) - side(80)).toBeCloseTo(-1.06 * 20, 0);
    expect(side(50) - side(40)).toBeCloseTo(-10, 0);
  });
  test('a nightshirt’s hem is 1.12 of the widest girth', () => {
    const made = bearDraft({ garment: 'nightshirt' });
    const hem = 2 * (edgeOf(made, 'front', 'hem').length + edgeOf(made, 'back', 'hem').length);
    expect(hem).toBeCloseTo(1.12 * round(440, 26.4, 2), -1);
  });
});

describe('what must pass', () => {
  const tee = (more: Partial<Asked> & { choices?: Asked['choices'] } = {}): Asked => ({
    garment: 'tee',
    ...more,
    choices: { opening: 'slit', ...more.choices },
  });
  const openings = (asked: Asked) => new Map(bearDraft(asked).openings.map((row) => [row.through, row]));

  test('a soft head gives a tenth, a firm one needs 5 mm over', () => {
    expect(openings(tee()).get('neck')?.needs).toBeCloseTo(414, 6);
    expect(openings(tee({ traits: { stuffing: 'firm' } })).get('neck')?.needs).toBeCloseTo(465, 6);
  });
  test('a slit is half of what is missing, and 10 mm so that its end is not the tightest place', () => {
    const row = openings(tee({ readings: { 'head-girth': 380 } })).get('neck');
    expect(row).toMatchObject({ closure: 'slit' });
    expect(row?.gives).toBeCloseTo(0.9 * 380 + 20, 4);
  });
  test('a slit nobody needs is 0.3 of the centre long; none is over 0.6 of it', () => {
    const given = (head: number) => {
      const made = bearDraft(tee({ readings: { 'head-girth': head } }));
      return (made.openings.find((row) => row.through === 'neck')?.gives ?? 0) - (made.fit[0]?.garment ?? 0);
    };
    expect(given(900) / given(200)).toBeCloseTo(2, 3);
  });
  test('cloth that stretches counts in full at an open edge, and half where it is seamed', () => {
    const cotton = openings(tee({ cloth: 'flannel', choices: { opening: 'none' } }));
    const jersey = openings(tee({ cloth: 'jersey', choices: { opening: 'none' } }));
    expect((jersey.get('chest')?.gives ?? 0) / (cotton.get('chest')?.gives ?? 1)).toBeCloseTo(1.25, 6);
  });
  test('a back or front that opens all the way adds twice its length', () => {
    const made = bearDraft(tee({ choices: { opening: 'back' } }));
    const neck = made.openings.find((row) => row.through === 'neck');
    expect(neck?.closure).toBe('hook-and-loop');
    const centre = edgeOf(made, 'front', 'centre').length;
    expect(neck?.gives).toBeCloseTo((made.fit[0]?.garment ?? 0) + 2 * centre, 0);
  });
});

describe('allowances, mm', () => {
  const allowance = (asked: Asked, piece: string, edge: string) => edgeOf(bearDraft(asked), piece, edge).allowance;
  test.each([
    ['a seam', 6, skirt('gathered'), 'skirt-front', 'side'],
    ['a hem', 12, skirt('gathered'), 'skirt-front', 'bottom'],
    ['a hem on the round', 6, skirt('circle'), 'skirt-front', 'bottom'],
    ['a hem in felt, which is cut', 0, skirt('a-line', { cloth: 'felt' }), 'skirt-front', 'bottom'],
    [
      'a hem in jersey, which does not fray but curls',
      12,
      skirt('gathered', { cloth: 'jersey' }),
      'skirt-front',
      'bottom',
    ],
    ['a casing', 14, skirt('elastic'), 'skirt-front', 'top'],
    ['a closure', 20, { garment: 'tee', choices: { opening: 'back' } }, 'back', 'centre'],
    ['an opening', 6, skirt('gathered'), 'skirt-back', 'opening'],
    ['a fold', 0, skirt('gathered'), 'skirt-front', 'centre'],
    ['a faced neckline', 6, { garment: 'tee', choices: { neck: 'faced', opening: 'none' } }, 'front', 'neckline'],
    [
      'a bound neckline, whose strip folds over it',
      0,
      { garment: 'tee', choices: { opening: 'none' } },
      'front',
      'neckline',
    ],
    ['the strip that binds it', 0, { garment: 'tee', choices: { opening: 'none' } }, 'binding', 'top'],
  ] as const)('%s: %d', (_, byHand, asked, piece, edge) => expect(allowance(asked, piece, edge)).toBe(byHand));
});

test('a correction learnt from trying on changes its size by as much, and what follows from it', () => {
  const hood: Asked = { garment: 'hooded-top', choices: { hood: 'three' } };
  const plain = along(hood, 'strip', 'centre');
  expect(along({ ...hood, corrections: { hoodCrown: 8 } }, 'strip', 'centre')).toBeCloseTo(plain + 8, 0);
  expect(along({ ...skirt('gathered'), corrections: { skirtLength: -15 } }, 'skirt-front', 'side')).toBeCloseTo(105, 1);
});
