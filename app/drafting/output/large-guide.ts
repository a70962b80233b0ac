// The sewing in large print: a step's title and picture over the whole page, its words below.

import type { Mm } from '../../body';
import { line } from '../geometry';
import type { GuideStep } from '../guide';
import type { Paragraph } from './flow';
import { setIn, wordsOf } from './flow';
import { type Ink, smallestOf, stroke } from './ink';
import type { Lettering } from './lettering';
import { magnified, magnifiedBy, usualWidth } from './magnified';
import { sceneInk } from './scene-ink';
import { type Block, roomIn, wordPages } from './word-pages';

type Size = { readonly width: Mm; readonly height: Mm };

/** Its height at most, mm; a picture that is as wide as the page needs less. */
const PICTURE_MM = 100;
/** Names may stand above and below what is drawn, before it is magnified, mm. */
const NAMES_MM = 16;
const BETWEEN_MM = 5;

/** What is said of a step: its title, and the rest. */
export type Told = { readonly step: GuideStep; readonly title: Paragraph; readonly rest: readonly Paragraph[] };

export function largeGuideInk(
  before: readonly Paragraph[],
  steps: readonly Told[],
  after: readonly Paragraph[],
  page: Size,
  lettering: Lettering,
): readonly (readonly Ink[])[] {
  const { widthOf } = lettering;
  const parts = [
    ...before.map(spaced),
    ...steps.flatMap(({ step, title, rest }) => [
      pictureBlock(step, title, page, lettering),
      ...rest.map((each) => ({ ...each, before: 2.5 })),
    ]),
    ...after.map((each, index) => ({ ...each, before: index === 0 ? 10 : 2.5 })),
  ];
  return wordPages(parts, page, smallestOf(widthOf), widthOf).pages;
}

const spaced = (paragraph: Paragraph): Paragraph => ({ ...paragraph, before: paragraph.bold ? 6 : 1.5 });

function pictureBlock({ scene }: GuideStep, title: Paragraph, page: Size, { say, widthOf }: Lettering): Block {
  const by = magnifiedBy(widthOf);
  const { width } = roomIn(page);
  const set = setIn([title], smallestOf(widthOf), width, widthOf);
  const high = Math.min(PICTURE_MM, by * NAMES_MM + (width * scene.height) / scene.width);
  const picture = sceneInk(scene, { x: 0, y: 0, width: width / by, height: high / by }, say, usualWidth(widthOf));
  return {
    before: 2 * BETWEEN_MM,
    height: set.height + BETWEEN_MM + high,
    draw: ({ x, y }) => [
      stroke('marks', 'trim', [line({ x, y: y - BETWEEN_MM }, { x: x + width, y: y - BETWEEN_MM })]),
      ...wordsOf(set, { x, y, width, height: set.height }, 'words'),
      ...magnified(picture, by, { x, y: y + set.height + BETWEEN_MM }),
    ],
  };
}
