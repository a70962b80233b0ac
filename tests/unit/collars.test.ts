import { describe, expect, test } from 'vitest';
import { collar } from '../../app/drafting/blocks/collar';
import { neckline } from '../../app/drafting/curves/neckline';
import {
  angleBetween,
  curvature,
  endTangent,
  pathLength,
  pointAtLength,
  startTangent,
} from '../../app/drafting/geometry';
import { bandShare } from '../../app/drafting/sizes/band';
import { cloths } from '../../app/drafting/sizes/cloths';
import { made } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

const half = { neckHalfWidth: 26, frontNeckDrop: 30, backNeckDrop: 8, slope: 0.35 };
/** The tightest bend of a trued neck edge, as a share of its length; untrued, shallow ones bend in 1/16 to 1/50 (measured). */
const TIGHTEST_SHARE = 1 / 12;
const neckLength = pathLength(neckline(26, 30, 0.35)) + pathLength(neckline(26, 8, 0.35));
const drawn = (overlap: number) => {
  const {
    neck = [],
    round = [],
    end = [],
  } = collar.draw({ ...half, overlap, collarNeck: neckLength, collarWidth: 20 }).edges;
  return { neck, round, end };
};

describe('a flat collar is traced from the joined bodice (common practice, no source)', () => {
  const { neck, round, end } = drawn(0.15);

  test('its neck edge is as long as the neck, square to both centres, and never one arc', () => {
    expect(pathLength(neck)).toBeCloseTo(neckLength, 6);
    expect(angleBetween(endTangent(end), startTangent(neck))).toBeCloseTo(Math.PI / 2, 6);
    expect(angleBetween(endTangent(neck), startTangent(round))).toBeCloseTo(Math.PI / 2, 6);
    const bends = neck.flatMap((curve) => [0.1, 0.5, 0.9].map((t) => Math.abs(curvature(curve, t))));
    expect(Math.max(...bends)).toBeGreaterThan(2 * Math.min(...bends));
  });

  test('it is as wide all along, and round at both ends', () => {
    const turns = round
      .slice(1)
      .map((curve, i) => angleBetween(endTangent([round[i] ?? curve]), startTangent([curve])));
    expect(Math.max(...turns)).toBeLessThan(1e-3);
    const middle = pointAtLength(round, pathLength(round) / 2).point;
    const away = Array.from({ length: 400 }, (_, i) => pointAtLength(neck, (neckLength * i) / 399).point).map((p) =>
      Math.hypot(p.x - middle.x, p.y - middle.y),
    );
    expect(Math.min(...away)).toBeCloseTo(20, 1);
  });

  test('across the shoulder its neck edge is trued to one line, however shallow the back neck', () => {
    for (const backNeckDrop of [5, 8, 20]) {
      const { neck = [] } = collar.draw({
        ...half,
        backNeckDrop,
        overlap: 0.3,
        collarNeck: neckLength,
        collarWidth: 20,
      }).edges;
      const bends = neck.flatMap((curve) => Array.from({ length: 51 }, (_, i) => Math.abs(curvature(curve, i / 50))));
      expect(1 / Math.max(...bends)).toBeGreaterThan(neckLength * TIGHTEST_SHARE);
    }
  });

  test('the more the shoulders overlap, the shorter its outer edge', () => {
    const lengths = [0, 0.1, 0.2].map((overlap) => pathLength(drawn(overlap).round));
    expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
    expect(new Set(lengths).size).toBe(3);
  });

  test('on every build it is cut in two pairs, and its neck is faced on the bias', () => {
    for (const build of builds) {
      const draft = made(buildCard(build), 'tee', { choices: { neck: 'flat' } });
      const pieces = Object.fromEntries(draft?.pieces.map((piece) => [piece.name, piece]) ?? []);
      expect(pieces.collar).toMatchObject({ copies: 4, mirrored: true, onFold: false });
      expect(pieces['collar-facing']).toBeDefined();
    }
  });
});

describe('a knit neckband (handbooks of sewing knits)', () => {
  test.each(cloths.filter(({ stretch }) => stretch > 0))('of $id is 0.85 to 0.90 of its edge', (cloth) => {
    expect(bandShare(cloth)).toBeGreaterThanOrEqual(0.85);
    expect(bandShare(cloth)).toBeLessThanOrEqual(0.9);
  });

  test('is stretched to the neck, its one seam behind; of woven cloth it is as long as its edge', () => {
    const band = (cloth: string) => {
      const [card = expect.fail('no toy')] = builds.map((build) => buildCard(build));
      const draft = made(card, 'tee', { choices: { neck: 'band', opening: 'none' }, cloth });
      return draft?.seams.find(({ name }) => name === 'collar-neck');
    };
    expect(band('jersey')).toMatchObject({ join: 'stretched' });
    expect(band('jersey')?.ratio).toBeCloseTo(1.15, 6);
    expect(band('jersey')?.second.some(({ piece, back }) => piece === 'back' && back)).toBe(true);
    expect(band('quilting-cotton')).toMatchObject({ join: 'sewn' });
  });
});
