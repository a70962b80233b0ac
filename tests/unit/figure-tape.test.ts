import { describe, expect, it } from 'vitest';
import { type BodyKind, bodyKinds, type Knowns, type Traits, usualTraits } from '../../app/body';
import { type Point, point } from '../../app/body/point';
import { type Diagram, diagram, type Frame, figure, portrait, SNUG, WIDE } from '../../app/measuring/figure';
import { gapTo, overlap } from '../../app/measuring/figure/labels';
import { seeded } from '../toys/seeded';
import { anyKnowns, anyTraits, drawnLine, gapToLine, isInside, pathsOf, pointsIn, steps } from './figure-support';

/** Half the tape's width and its line: how far from a place on the body its middle may lie, in frame units. */
const ON_BODY = 10;
/** The arrow of a ring stands before its start mark. */
const MEETING = 9;
const BODIES = 6;
/** The buttons before a figure on the smallest phone, in wide letters, seen in frame units: how high, and how far in from each side. */
const BUTTON = { high: 44, speaks: 48, photo: 124 };

type Case = {
  readonly name: string;
  readonly kind: BodyKind;
  readonly traits: Traits;
  readonly knowns: Knowns;
  readonly frame: Frame;
};

const cases: readonly Case[] = bodyKinds.flatMap((kind) => {
  const random = seeded(kind.length);
  const usual = [WIDE, SNUG].map((frame) => ({ name: 'typical', kind, traits: usualTraits, knowns: {}, frame }));
  const any = Array.from({ length: BODIES }, (_, index) => ({
    name: `random ${index}`,
    kind,
    traits: anyTraits(random),
    knowns: anyKnowns(kind, random),
    frame: index % 2 === 0 ? WIDE : SNUG,
  }));
  return [...usual, ...any];
});

type Laid = { readonly drawn: Diagram; readonly where: string; readonly frame: Frame };

const laid: readonly Laid[] = cases.flatMap(({ name, kind, traits, knowns, frame }) =>
  steps
    .filter(([of]) => of === kind)
    .flatMap(([, id]) => {
      const drawn = diagram(kind, traits, knowns, id, frame);
      return drawn ? [{ drawn, where: `${kind}, ${name}, ${id}`, frame }] : [];
    }),
);

/** Where a rule is broken: nowhere, one hopes. */
const broken = (rule: (each: Laid) => boolean) => laid.filter((each) => !rule(each)).map(({ where }) => where);

const isIn =
  ({ width, height }: Frame, slack = 0) =>
  ({ x, y }: Point) =>
    x >= -slack && y >= -slack && x <= width + slack && y <= height + slack;

describe('a tape on any body', () => {
  it('is there for every measure', () => {
    expect(laid.length).toBe(steps.length * (BODIES + 2));
  });

  it('is drawn with numbers that are numbers', () => {
    const isNumber = ({ drawn: { figure: toy, tape } }: Laid) =>
      pathsOf(toy, tape).every((path) => path.startsWith('M') && !/NaN|Infinity/.test(path)) &&
      [tape.start.x, tape.start.y, tape.end.x, tape.end.y, tape.arrival, tape.dot].every(Number.isFinite);
    expect(broken(isNumber)).toEqual([]);
  });

  it('stays in the picture, with its marks and words', () => {
    const stays = ({ drawn: { tape }, frame }: Laid) => {
      const strips = [...tape.visible, ...tape.hidden].flatMap(({ outline }) => drawnLine(outline));
      const words = tape.labels.flatMap(({ box }) => [point(box.left, box.top), point(box.right, box.bottom)]);
      return [...strips, ...pointsIn(tape.arrow), ...words].every(isIn(frame));
    };
    expect(broken(stays)).toEqual([]);
  });

  it('starts and ends on the body, or level with it', () => {
    expect(broken(({ drawn }) => isOnBody(drawn, drawn.tape.start))).toEqual([]);
    expect(broken(({ drawn }) => isOnBody(drawn, drawn.tape.end))).toEqual([]);
  });

  it('closes round the body when it is a ring', () => {
    const closes = ({ drawn: { tape } }: Laid) => {
      if (!tape.ring) return true;
      const meets = Math.hypot(tape.start.x - tape.end.x, tape.start.y - tape.end.y) <= MEETING;
      const way = drawnLine(tape.way);
      return meets && tape.visible.length > 0 && tape.hidden.length > 0 && isInside(way, middleOf(way));
    };
    expect(broken(closes)).toEqual([]);
    expect(laid.filter(({ drawn }) => drawn.tape.nature === 'girth' && !drawn.tape.ring)).toEqual([]);
  });

  it('keeps words off the marks and each other', () => {
    const keepsOff = ({ drawn: { tape } }: Laid) =>
      tape.labels.every(({ box }, index) => {
        const clear = gapTo(box, tape.start) > tape.dot && pointsIn(tape.arrow).every((here) => gapTo(box, here) > 0);
        return clear && tape.labels.slice(index + 1).every((other) => !overlap(box, other.box));
      });
    expect(broken(keepsOff)).toEqual([]);
  });

  it('keeps words off the buttons in its lower corners: the one that speaks, and of a straight measure the one to its photo', () => {
    const keepsOff = ({ drawn: { tape }, frame: { width, height } }: Laid) => {
      const low = { top: height - BUTTON.high, bottom: height };
      const buttons = [{ ...low, left: width - BUTTON.speaks, right: width }];
      if (tape.nature === 'straight') buttons.push({ ...low, left: 0, right: BUTTON.photo });
      return tape.labels.every(({ box }) => buttons.every((button) => !overlap(box, button)));
    };
    expect(broken(keepsOff)).toEqual([]);
  });
});

describe('the rules above', () => {
  const drawn = diagram('upright', usualTraits, {}, 'front-width');
  it('reject a mark beside the body', () => {
    if (!drawn) throw new Error('no drawing');
    const highest = drawn.figure.shapes
      .filter(({ look }) => FURS.includes(look))
      .flatMap(({ path }) => drawnLine(path))
      .reduce((top, here) => (here.y < top.y ? here : top));
    expect(isOnBody(drawn, point(highest.x, highest.y - 0.9 * ON_BODY))).toBe(true);
    expect(isOnBody(drawn, point(highest.x, highest.y - 1.1 * ON_BODY))).toBe(false);
  });

  it('reject a place just outside a line, and an open line as a ring', () => {
    const square = [point(0, 0), point(9, 0), point(9, 9), point(0, 9)];
    expect(isInside(square, { x: 8.9, y: 5 })).toBe(true);
    expect(isInside(square, { x: 9.1, y: 5 })).toBe(false);
    expect(drawn?.tape.ring).toBe(false);
    expect(overlap({ left: 0, top: 0, right: 5, bottom: 5 }, { left: 5.1, top: 0, right: 9, bottom: 5 })).toBe(false);
    expect(overlap({ left: 0, top: 0, right: 5, bottom: 5 }, { left: 4.9, top: 0, right: 9, bottom: 5 })).toBe(true);
  });
});

describe('figures of any body', () => {
  it.each(cases)('$kind, $name: whole from every side, inside the frame', ({ kind, traits, knowns, frame }) => {
    for (const view of ['front', 'side', 'back'] as const) {
      const drawn = figure(kind, traits, knowns, view, frame);
      const points = drawn.shapes.filter(({ layer }) => layer === 'toy').flatMap(({ path }) => drawnLine(path));
      expect(points.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
      expect(points.filter((here) => !isIn(frame, 4)(here))).toEqual([]);
    }
    expect(pathsOf(portrait(kind, traits, knowns)).every((path) => !/NaN|Infinity/.test(path))).toBe(true);
  });
});

const FURS = ['fur', 'fur-deep', 'fur-pale'];

/** In or near a part of fur; a ruler beside the toy and a wished hem are level with it: at the end of a pencil line. */
function isOnBody({ figure: drawn, tape }: Diagram, mark: Point): boolean {
  const furs = drawn.shapes.filter(({ look }) => FURS.includes(look)).map(({ path }) => drawnLine(path));
  const onFur = furs.some((outline) => isInside(outline, mark) || gapToLine(outline, mark) <= ON_BODY);
  return onFur || tape.guides.some((path) => gapToLine(drawnLine(path), mark) <= ON_BODY);
}

const middleOf = (line: readonly Point[]) =>
  point(line.reduce((sum, { x }) => sum + x, 0) / line.length, line.reduce((sum, { y }) => sum + y, 0) / line.length);
